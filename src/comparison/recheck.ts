import { isEqual } from '../quantity/tolerance.ts'
import type { Edit } from './edit.ts'
import { restOf } from './edit.ts'
import { type Graph, givenNode } from './graph.ts'
import { lineText, outcomeText } from './line-text.ts'
import type { PrintedLine } from './printed-lines.ts'
import { type Reach, reachOf } from './reach.ts'
import { allLines } from './title-edits.ts'
import type { LineMove, Recheck, Spot } from './types.ts'

/** One notebook's side of the proof. */
export interface Proven {
  readonly graph: Graph
  readonly lines: readonly PrintedLine[]
  /** Every planned line, printed or not, by its node: which of its guards held. */
  readonly reached: ReadonlyMap<string, string>
  /** Old name of the calc block that a line's node stands in. */
  readonly calcs: ReadonlyMap<string, string>
}

export interface IdentifiedEdit extends Edit {
  readonly id: string
}

/** What each change reaches, by node. */
export type Reached = ReadonlyMap<string, ReadonlyMap<string, string | undefined>>

/** Both notebooks' graphs in one, with the ways that only a change opens: a block that is planned, or reached, otherwise than before. */
export function joinGraphs(old: Proven, now: Proven): Reach {
  const plain = reachOf(old.graph, now.graph, new Map())
  const extra = new Map<string, string[]>()
  for (const [node, block] of [...old.calcs, ...now.calcs]) {
    const uses = extra.get(node) ?? []
    if (plain.differ.has(node)) uses.push(restOf(block))
    if (old.reached.get(node) !== now.reached.get(node)) uses.push(givenNode(block))
    if (uses.length > 0) extra.set(node, uses)
  }
  return reachOf(old.graph, now.graph, extra)
}

/** By id of the change: everything that rests on it, each with the node it was reached from. */
export function reachedBy(reach: Reach, edits: readonly IdentifiedEdit[]): Reached {
  return new Map(
    edits.map(edit => {
      const starts = edit.enters.flatMap(entry => entriesOf(reach, entry)).filter(node => reach.differ.has(node))
      return [edit.id, reach.from([...new Set(starts)])]
    }),
  )
}

/** The nodes that an entry of a change means: a value with its line, a check, a whole block, or all. */
function entriesOf(reach: Reach, entry: string): readonly string[] {
  if (entry === allLines) return reach.nodes
  const whole = !entry.includes('.') && !entry.includes(' ')
  if (!whole) return [entry, `line ${entry}`]
  const heads = ['', 'line ', 'second line '].map(role => `${role}${entry}.`)
  return reach.nodes.filter(node => heads.some(head => node.startsWith(head)) || node.startsWith(`check ${entry}: `))
}

/** Which printed lines differ, which rest on a change and print the same, and how many cannot have moved. */
export function recheck(old: Proven, now: Proven, about: { reach: Reach; reached: Reached }): Recheck {
  const { reach, reached } = about
  const before = new Map(old.lines.map(line => [line.id, line]))
  const after = new Set(now.lines.map(({ id }) => id))
  const resting = reach.from([...reach.differ])
  const differ: LineMove[] = []
  const same: Recheck['same'][number][] = []
  const unexplained: string[] = []
  for (const printed of now.lines) {
    const kind = kindOf(before.get(printed.id), printed)
    if (kind) differ.push(moveOf(printed, kind, reached))
    else if (resting.has(printed.node)) same.push({ ...spotOf(printed), id: printed.line.id })
    if (kind && !resting.has(printed.node)) unexplained.push(printed.line.number)
  }
  for (const printed of old.lines) if (!after.has(printed.id)) differ.push(moveOf(printed, 'removed', reached))
  const gone = differ.filter(({ kind }) => kind === 'removed').length
  const lines = now.lines.length
  return { lines, differ, same, cannot: lines - (differ.length - gone) - same.length, unexplained }
}

function kindOf(before: PrintedLine | undefined, now: PrintedLine): LineMove['kind'] | undefined {
  if (!before) return 'added'
  if (lineText(before.line) === lineText(now.line)) return undefined
  return outcomeText(before.line) === outcomeText(now.line) || comesToSame(before, now) ? 'restated' : 'moved'
}

/** The same numbers, in whatever unit they are printed. */
const comesToSame = ({ comesTo }: PrintedLine, now: PrintedLine): boolean =>
  comesTo.length > 0 &&
  comesTo.length === now.comesTo.length &&
  comesTo.every((value, index) => isEqual(value, now.comesTo[index] ?? Number.NaN))

export const spotOf = ({ key, block, line }: PrintedLine): Spot => ({
  key,
  block,
  number: line.number,
  says: line.says,
})

function moveOf(printed: PrintedLine, kind: LineMove['kind'], reached: Reached): LineMove {
  const changes = [...reached].filter(([, from]) => from.has(printed.node)).map(([id]) => id)
  const [first] = changes
  const chain = first === undefined ? [] : chainTo(printed.node, reached.get(first))
  return { ...spotOf(printed), id: printed.line.id, kind, changes, chain }
}

/** The keys from the change to the line; lines and helpers between them are left out. */
function chainTo(node: string, from: ReadonlyMap<string, string | undefined> | undefined): string[] {
  const chain: string[] = []
  for (let at: string | undefined = node; at !== undefined; at = from?.get(at)) chain.unshift(keyOf(at))
  return chain.filter((key, index) => key !== '' && key !== chain[index - 1])
}

/** The key that a node stands for, in the old names; of an author's check its block. */
function keyOf(node: string): string {
  if (node.startsWith('check ')) return node.slice('check '.length, node.indexOf(':'))
  if (node.startsWith('given ') || node.endsWith(' *')) return ''
  return node.replace(/^second /, '').replace(/^line /, '')
}
