import { givenAnchor } from './anchors.ts'
import type { PlannedCalc, PlannedGiven, Row } from './plan-types.ts'
import { isKnown, type PrintContext, shownOf } from './print-context.ts'
import type { PrintedRow } from './printed-line.ts'
import { referenceOf } from './reference-of.ts'
import type { GivenRow } from './workings.ts'

/** The Given table of a calc block: inputs that have a value, rows of lists one by one. */
export function printGiven(context: PrintContext, block: PlannedCalc): GivenRow[] {
  return block.given.filter(({ value }) => isKnown(context, value)).map(given => rowOf(context, block, given))
}

function rowOf(context: PrintContext, block: PlannedCalc, given: PlannedGiven): GivenRow {
  const { name, symbol, says, value, taken, place, row } = given
  const blockName = context.results.plan.notebook.blocks[block.index]?.name.text ?? ''
  return {
    id: givenAnchor(blockName, given),
    name,
    symbol,
    says,
    value: typeof value === 'string' ? value : shownOf(context, value),
    ...fromOf(context, given),
    taken,
    ...referenceOf(given.source),
    ...(row ? { row: rowForPrint(row) } : {}),
    place,
  }
}

export const rowForPrint = ({ index, of, label, made }: Row): PrintedRow => ({
  index: index + 1,
  of,
  label,
  ...(made ? { made } : {}),
})

function fromOf(context: PrintContext, given: PlannedGiven): { from: string; to?: string } {
  const { numbering } = context
  if (given.taken) return { from: 'default' }
  if (given.line) {
    const origin = numbering.lines.get(given.line)
    return origin ? { from: origin.number, to: origin.id } : { from: 'worked out' }
  }
  const { word, value } = given
  const same = typeof value === 'string' ? undefined : value.same
  const number = word?.kind === 'number' ? word : same
  const origin = word?.kind === 'word' ? numbering.assumptions.get(word.key) : number && numbering.origins.get(number)
  return origin ? { from: origin.number, to: origin.id } : { from: number?.key ?? 'typed here' }
}
