import type { Graph } from './graph.ts'

/** Both graphs in one: who rests on a node in the old notebook or in the new one. */
export interface Reach {
  /** Nodes that are planned otherwise than before, or stand in one graph only. */
  readonly differ: ReadonlySet<string>
  /** Everything that rests on some nodes, each with the node it was reached from; the first ones with nothing. */
  readonly from: (starts: readonly string[]) => ReadonlyMap<string, string | undefined>
  readonly has: (node: string) => boolean
  readonly nodes: readonly string[]
}

/** `extra` are further uses: node to the nodes that it rests on. */
export function reachOf(old: Graph, now: Graph, extra: ReadonlyMap<string, readonly string[]>): Reach {
  const nodes = [...new Set([...old.keys(), ...now.keys()])]
  const users = new Map<string, Set<string>>()
  const addUses = (node: string, uses: Iterable<string>): void => {
    for (const use of uses) {
      const known = users.get(use) ?? new Set<string>()
      users.set(use, known.add(node))
    }
  }
  for (const graph of [old, now]) for (const [node, { uses }] of graph) addUses(node, uses)
  for (const [node, uses] of extra) addUses(node, uses)
  const planned = (graph: Graph, node: string): string | undefined => graph.get(node)?.planned.toSorted().join('\n')
  const differ = new Set(nodes.filter(node => planned(old, node) !== planned(now, node)))
  return { differ, from: starts => follow(users, starts), has: node => old.has(node) || now.has(node), nodes }
}

/** Breadth first, so that the way back is a shortest one. */
function follow(users: ReadonlyMap<string, ReadonlySet<string>>, starts: readonly string[]) {
  const from = new Map<string, string | undefined>(starts.map(start => [start, undefined]))
  const queue = [...starts]
  for (let node = queue.shift(); node !== undefined; node = queue.shift()) {
    for (const user of users.get(node) ?? []) {
      if (from.has(user)) continue
      from.set(user, node)
      queue.push(user)
    }
  }
  return from
}
