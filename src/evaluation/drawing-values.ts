import type { PlannedBlock, PlannedCalc } from './plan-types.ts'
import { isKnown, type PrintContext, printedOf } from './print-context.ts'
import type { BlockWorking, DrawingRow } from './workings.ts'

/** What goes to the drawings: the inputs and results that each module names for it, block by block; those without a value left out. */
export function drawingValues(context: PrintContext, blocks: readonly BlockWorking[]): DrawingRow[] {
  return blocks.flatMap(({ id, number, name, index }) => {
    const planned: PlannedBlock | undefined = context.results.plan.blocks[index]
    if (planned?.kind !== 'calc') return []
    const rows = (planned.module.drawing ?? []).flatMap(of => shownFor(context, planned, of) ?? [])
    return rows.map(row => ({ block: { id, number, name }, ...row }))
  })
}

function shownFor(context: PrintContext, block: PlannedCalc, name: string): Omit<DrawingRow, 'block'> | undefined {
  const says = block.module.inputs[name]?.says
  const word = block.words.get(name)
  if (word !== undefined) return { name, says: says ?? name, symbol: '', value: word }
  const entity = block.names.get(name)
  if (entity === undefined || !isKnown(context, entity)) return undefined
  const { symbol, shown, to } = printedOf(context, entity)
  return { name, says: says ?? entity.says, symbol, value: shown, ...(to ? { to } : {}) }
}
