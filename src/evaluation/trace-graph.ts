import { numberLines } from './anchors.ts'
import { linesOf } from './block-lines.ts'
import type { Results } from './evaluate.ts'
import { blockSpots } from './trace-block.ts'
import { type LineContext, lineSpots } from './trace-lines.ts'
import { textSpots } from './trace-text.ts'
import type { Spot, TraceGraph, TraceNode } from './trace-types.ts'
import type { Workings } from './workings.ts'

/**
 * The graph of the whole notebook: assumptions, inputs, steps of both methods, branches, checks, limits, tables and the sentences that
 * show a value, each with what it uses and what uses it. What was not evaluated has no value.
 */
export function traceGraph(results: Results, workings: Workings): TraceGraph {
  const spots = new Map<string, Spot>()
  const context: LineContext = {
    results,
    numbering: numberLines(results),
    printed: new Map(workings.blocks.flatMap(block => linesOf(block).map(line => [line.id, line]))),
  }
  const printedBlocks = new Map(workings.blocks.map(block => [block.index, block]))
  for (const block of results.plan.blocks) {
    const printed = block && printedBlocks.get(block.index)
    if (!block || !printed) continue
    for (const spot of blockSpots(results, block, printed)) spots.set(spot.id, spot)
    for (const spot of lineSpots(context, block))
      spots.set(spot.id, spots.get(spot.id)?.kind === 'given' ? asGiven(spot) : spot)
  }
  for (const spot of textSpots(results)) spots.set(spot.id, spot)
  return withUsers(spots)
}

/** An input that the author wrote as a formula: its line says how it was worked out, and it stays an input. */
const asGiven = (spot: Spot): Spot => ({ ...spot, kind: 'given' })

function withUsers(spots: ReadonlyMap<string, Spot>): TraceGraph {
  const usedBy = new Map<string, string[]>([...spots.keys()].map(id => [id, []]))
  const known = (ids: readonly string[]): string[] => [...new Set(ids)].filter(id => spots.has(id))
  for (const spot of spots.values()) for (const id of known(spot.restsOn)) usedBy.get(id)?.push(spot.id)
  return new Map(
    [...spots].map(([id, spot]): [string, TraceNode] => [
      id,
      { ...spot, restsOn: known(spot.restsOn), usedBy: usedBy.get(id) ?? [] },
    ]),
  )
}
