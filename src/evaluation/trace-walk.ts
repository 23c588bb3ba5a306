import type { TraceGraph, TraceNode } from './trace-types.ts'

/** Which way a trace goes: down to what a value rests on, or up to what uses it. */
export type Way = 'down' | 'up'

/** The ids one link further on. */
export const linksOf = ({ restsOn, usedBy }: TraceNode, way: Way): readonly string[] =>
  way === 'down' ? restsOn : usedBy

/** Every id that can be reached from one, itself among them. */
export function reachOf(graph: TraceGraph, from: string, way: Way): ReadonlySet<string> {
  const seen = new Set<string>([from])
  for (const id of seen) {
    const node = graph.get(id)
    if (node) for (const next of linksOf(node, way)) seen.add(next)
  }
  return seen
}

/** The ids on any path from one to the other, and which way it goes; nothing where neither rests on the other. */
export function between(
  graph: TraceGraph,
  from: string,
  to: string,
): { readonly way: Way; readonly ids: ReadonlySet<string> } | undefined {
  for (const [way, back] of [
    ['down', 'up'],
    ['up', 'down'],
  ] as const) {
    const reached = reachOf(graph, from, way)
    if (!reached.has(to)) continue
    const backward = reachOf(graph, to, back)
    return { way, ids: new Set([...reached].filter(id => backward.has(id))) }
  }
  return undefined
}
