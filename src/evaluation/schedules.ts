import type { Schedule } from '../modules/module.ts'
import { unitText } from '../quantity/unit.ts'
import type { PlannedCalc } from './plan-types.ts'
import { isKnown, type PrintContext, shownOf } from './print-context.ts'
import type { BlockWorking, ScheduleTable } from './workings.ts'

/** The schedules that the modules hand on, block by block. Numbers of a column stand in one unit, which its head names. */
export function schedulesOf(context: PrintContext, blocks: readonly BlockWorking[]): ScheduleTable[] {
  return blocks.flatMap(({ id, number, name, index }) => {
    const planned = context.results.plan.blocks[index]
    if (planned?.kind !== 'calc' || context.results.slots[planned.alive] !== 1) return []
    const { schedule } = planned.module
    if (schedule === undefined) return []
    const table =
      'lines' in schedule ? linesTable(context, planned, schedule.lines) : rowsTable(context, planned, schedule)
    return [{ block: { id, number, name }, title: schedule.title, ...table }]
  })
}

type Table = Pick<ScheduleTable, 'columns' | 'rows'>

function linesTable(context: PrintContext, { names }: PlannedCalc, lines: readonly string[]): Table {
  const rows = lines.flatMap(name => {
    const entity = names.get(name)
    if (entity === undefined || !isKnown(context, entity)) return []
    const { digits, unit } = shownOf(context, entity)
    return [[entity.says, { digits }, unitText(unit)]]
  })
  return { columns: [{ says: 'item' }, { says: 'amount' }, { says: 'unit' }], rows }
}

function rowsTable(
  context: PrintContext,
  block: PlannedCalc,
  { list, columns }: Extract<Schedule, { list: string }>,
): Table {
  const count = block.rows.get(list) ?? 0
  const made = columns.map(name => columnOf(context, block, { list, name, count }))
  return {
    columns: made.map(({ says, unit }) => ({ says, ...(unit ? { unit } : {}) })),
    rows: Array.from({ length: count }, (_, row) => made.map(({ cells }) => cells[row] ?? '')),
  }
}

function columnOf(context: PrintContext, block: PlannedCalc, of: { list: string; name: string; count: number }) {
  const input = block.module.inputs[of.list]
  const field = input?.kind === 'list' ? input.fields[of.name] : undefined
  const keys = Array.from({ length: of.count }, (_, row) => `${of.name}_${row + 1}`)
  const entities = keys.map(key => block.names.get(key))
  const first = entities.find(entity => entity !== undefined)
  const cells = entities.map((entity, row): ScheduleTable['rows'][number][number] => {
    if (entity === undefined) return wordOf(block, keys[row] ?? '')
    return isKnown(context, entity)
      ? { digits: shownOf(context, entity, first ? { unit: first.unit } : {}).digits }
      : ''
  })
  return { says: field?.says ?? first?.says ?? of.name, unit: first && unitText(first.unit), cells }
}

/** The word of a row's choice or label. */
function wordOf(block: PlannedCalc, key: string): string {
  const given = block.given.find(({ name }) => name === key)
  return typeof given?.value === 'string' ? given.value : (block.words.get(key) ?? '')
}
