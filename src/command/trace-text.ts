import type { TraceNode } from '../evaluation/trace-types.ts'
import { linksOf, type Way } from '../evaluation/trace-walk.ts'
import { plural } from './count-of.ts'
import type { Evaluated } from './evaluated.ts'
import type { Traced, TracePart } from './trace-data.ts'
import { detailOf, headOf, titleOf, type Wording } from './trace-wording.ts'
import { wrapped } from './wrapped.ts'

/** As deep as a tree goes to the right before it goes on further down the page. */
const deepest = 16

const heads: Readonly<Record<Way, { readonly some: string; readonly none: string; readonly on: string }>> = {
  down: { some: 'Rests on', none: 'Rests on nothing else.', on: 'what it rests on' },
  up: { some: 'Used by', none: 'Nothing uses it.', on: 'what uses it' },
}

/** A word is given to a block as a whole: no line refers to it, and yet it may decide which lines there are. */
const wordUnused = 'No step refers to it; a word may choose which steps its block has.'

/** A trace as trees in plain text: what is met again is shown once and referred to after. */
export function traceText({ notebook, workings }: Evaluated, traced: Traced): string {
  const shorts = new Map(workings.references.map(({ key, short }) => [key, short]))
  const wording: Wording = { path: notebook.path, short: key => shorts.get(key) ?? key }
  const { graph, root, to, parts } = traced
  const node = graph.get(root)
  if (!node) throw new Error(`\`${root}\` is in the graph`)
  const head = [headOf(node), ...detailOf(node, wording).map(line => `  ${line}`)]
  const trees = parts.map(part => [partHead(traced, part), ...sumOf(traced, part), ...partLines(traced, part, wording)])
  if (to !== undefined && parts.length === 0)
    trees.push([
      `Neither \`${titleOf(graph.get(to) ?? node)}\` nor this rests on the other: no path leads from one to the other.`,
    ])
  return [head, ...trees].map(lines => lines.join('\n')).join('\n\n')
}

function partHead({ graph, root, to }: Traced, { way }: TracePart): string {
  const node = graph.get(root)
  const goal = to === undefined ? undefined : graph.get(to)
  if (goal) return `${way === 'down' ? 'Rests on' : 'Is used by'} ${titleOf(goal)}, by these paths`
  if (node && linksOf(node, way).length > 0) return heads[way].some
  return way === 'up' && node?.kind === 'given' && typeof node.value === 'string' ? wordUnused : heads[way].none
}

/** What a checker looks for in a long tree: the assumptions at its foot, or the checks at its head. */
function sumOf({ graph, root, to }: Traced, { way, ids }: TracePart): string[] {
  if (to !== undefined) return []
  const kind = way === 'down' ? 'assumption' : 'check'
  const found = [...ids].flatMap(id => graph.get(id) ?? []).filter(node => node.kind === kind && node.id !== root)
  const numbers = found.map(({ number, value }) => (value === 'NOT SATISFIED' ? `${number} NOT SATISFIED` : number))
  if (numbers.length === 0) return []
  const sorted = numbers.sort((a, b) => a.localeCompare(b, 'en', { numeric: true })).join(', ')
  return wrapped([`${plural(numbers.length, kind)}: ${sorted}`], { first: '  ', rest: '  ' })
}

interface Tree {
  readonly traced: Traced
  readonly part: TracePart
  readonly wording: Wording
  readonly seen: Set<string>
  /** What was too deep, and goes on further down. */
  readonly waiting: TraceNode[]
  readonly lines: string[]
}

function partLines(traced: Traced, part: TracePart, wording: Wording): string[] {
  const root = traced.graph.get(traced.root)
  const tree: Tree = { traced, part, wording, seen: new Set([traced.root]), waiting: [], lines: [] }
  if (root) addBelow(tree, root, [])
  for (const node of tree.waiting) {
    tree.lines.push('', `${titleOf(node)}, ${heads[part.way].on}`)
    addBelow(tree, node, [])
  }
  return tree.lines
}

/** `bars` says for each level whether it goes on below. */
function addBelow(tree: Tree, node: TraceNode, bars: readonly boolean[]): void {
  const { traced, part } = tree
  const next = linksOf(node, part.way).flatMap(id => (part.ids.has(id) ? (traced.graph.get(id) ?? []) : []))
  for (const [index, each] of next.entries()) addNode(tree, each, [...bars, index < next.length - 1])
}

function addNode(tree: Tree, node: TraceNode, bars: readonly boolean[]): void {
  const { seen, lines, wording, waiting, part } = tree
  const outer = bars
    .slice(0, -1)
    .map(goesOn => (goesOn ? '│ ' : '  '))
    .join('')
  const goesOn = bars.at(-1) === true
  const first = `${outer}${goesOn ? '├ ' : '└ '}`
  const known = seen.has(node.id)
  const further = linksOf(node, part.way).some(id => part.ids.has(id))
  const isDeep = !known && further && bars.length >= deepest
  const more = known ? '  (see above)' : isDeep ? '  (goes on below)' : ''
  const inner = `${outer}${goesOn ? '│ ' : '  '}`
  lines.push(...wrapped([`${headOf(node)}${more}`], { first, rest: `${inner}  ` }))
  if (known) return
  seen.add(node.id)
  const under = `${inner}${further && !isDeep ? '│ ' : '  '}  `
  lines.push(...detailOf(node, wording, under.length).map(line => `${under}${line}`))
  if (isDeep) waiting.push(node)
  else addBelow(tree, node, bars)
}
