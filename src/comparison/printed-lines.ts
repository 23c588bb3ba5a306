import { isPrinted } from '../evaluation/anchors.ts'
import { linesOf } from '../evaluation/block-lines.ts'
import type { PlannedBlock, PlannedLine } from '../evaluation/plan-types.ts'
import type { BlockWorking, Line } from '../evaluation/workings.ts'
import type { Naming } from './naming.ts'
import type { Evaluation } from './types.ts'

/** One printed line with its plan and an identity that both notebooks share. */
export interface PrintedLine {
  /** Of the line in the graph. */
  readonly node: string
  /** Unique: the node, and which of several where one node is printed more than once. */
  readonly id: string
  /** Block and name as this notebook has them: `roof.M_x`; of a check or branch the block alone. */
  readonly key: string
  readonly block: string
  readonly line: Line
  readonly planned: PlannedLine
  /** What it comes to, in SI, verdicts as 1 and 0; empty where it is no number. */
  readonly comesTo: readonly number[]
}

/** Every printed line of a package in its order, second methods included. */
export function printedLines({ results, workings }: Evaluation, naming: Naming): readonly PrintedLine[] {
  const seen = new Map<string, number>()
  return workings.blocks.flatMap(block => {
    const planned = results.plan.blocks[block.index]
    return pairsOf(planned, block, results.slots).map(({ planned, line }) => {
      const node = naming.lineId(planned)
      const count = (seen.get(node) ?? 0) + 1
      seen.set(node, count)
      const key = 'name' in line && line.kind !== 'check' ? `${block.name}.${line.name}` : block.name
      const comesTo = comesToOf(planned, line, results.slots)
      return { node, id: count === 1 ? node : `${node} #${count}`, key, block: block.name, line, planned, comesTo }
    })
  })
}

function pairsOf(planned: PlannedBlock | undefined, block: BlockWorking, slots: Float64Array) {
  const printed = linesOf<Line>(block)
  const reached = planned ? linesOf<PlannedLine>(planned).filter(line => isPrinted(line, slots)) : []
  if (reached.length !== printed.length) throw new Error(`block \`${block.name}\`: a printed line has no plan`)
  return reached.flatMap((each, index) => {
    const line = printed[index]
    return line ? [{ planned: each, line }] : []
  })
}

function comesToOf(planned: PlannedLine, line: Line, slots: Float64Array): readonly number[] {
  const value = ({ slot }: { readonly slot: number }): number => slots[slot] ?? Number.NaN
  switch (planned.kind) {
    case 'formula':
    case 'look':
      return [value(planned.gives)]
    case 'solve':
      return planned.gives.map(({ entity }) => value(entity))
    case 'check':
      return line.kind === 'check' && line.ratio ? [value(planned), line.ratio.value] : []
    case 'branch':
      return []
  }
}
