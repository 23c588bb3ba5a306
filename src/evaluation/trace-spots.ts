import type { Entity, PlannedLine } from './plan-types.ts'
import { substituted } from './substituted.ts'
import type { Spot } from './trace-types.ts'
import type { BranchLine, CheckLine, FormulaLine, Line, LookedAxis, LookLine, SolveLine } from './workings.ts'

/** What is the same for whatever a line gives: its anchor, and what it uses. */
type Common = Pick<Spot, 'id' | 'restsOn'>

/** What a printed line puts into the trace: the value it gives, its table or method, its verdict. */
export function traceSpots(line: PlannedLine, printed: Line, common: Common): Spot[] {
  const { number, place, says, reference, row } = printed
  const base = {
    ...common,
    number,
    name: '',
    symbol: '',
    says: row?.label ? `${says}, ${row.label}` : says,
    ...(reference ? { reference } : {}),
    place,
  }
  if (printed.kind === 'branch') return [branchSpot(base, printed)]
  if (printed.kind === 'check') return [checkSpot(base, printed)]
  if (printed.kind === 'formula') return line.kind === 'formula' ? [stepSpot(base, printed, line.gives)] : []
  if (printed.kind === 'look') return line.kind === 'look' ? lookSpots(base, printed, line.gives) : []
  return line.kind === 'solve'
    ? methodSpots(
        base,
        printed,
        line.gives.map(({ entity }) => entity),
      )
    : []
}

type Base = Omit<Spot, 'kind'>

const giving = (entity: Entity) => ({ id: entity.key, name: entity.key, symbol: entity.symbol, entity })

const stepSpot = (base: Base, { result, working }: FormulaLine, gives: Entity): Spot => ({
  ...base,
  ...giving(gives),
  kind: 'step',
  value: result,
  formula: substituted(working).formula,
})

const branchSpot = (base: Base, { holds, working, because }: BranchLine): Spot => ({
  ...base,
  kind: 'branch',
  value: holds ? 'holds' : 'does not hold',
  ...(working ? { formula: substituted(working).formula } : { note: because ?? '' }),
})

const checkSpot = (base: Base, { satisfied, verdict, working, ratio }: CheckLine): Spot => ({
  ...base,
  kind: 'check',
  value: satisfied ? verdict : 'NOT SATISFIED',
  formula: substituted(working).formula,
  ...(ratio ? { note: `ratio ${ratio.shown.digits}` } : {}),
})

/** One table is one spot, however many lines read from it. */
export const tableId = (title: string): string => `table: ${title}`

function lookSpots(base: Base, { title, status, result, rowAxis, columnAxis }: LookLine, gives: Entity): Spot[] {
  const { place: _, ...published } = base
  const at = [rowAxis, columnAxis].flatMap(axis => (axis ? [axisText(axis)] : [])).join('; ')
  return [
    { ...published, id: tableId(title), kind: 'table', number: '', says: title, note: status, restsOn: [] },
    { ...base, ...giving(gives), kind: 'look', value: result, note: `read at ${at}` },
  ]
}

function axisText({ says, key, lower, upper }: LookedAxis): string {
  if (typeof key === 'string') return key
  const between = lower === upper ? `= ${lower}` : `between ${lower} and ${upper}`
  return `${says} ${between}`
}

function methodSpots(base: Base, printed: SolveLine, gives: readonly Entity[]): Spot[] {
  const shown = new Map(printed.gives.map(({ name, printed: { shown } }) => [name, shown]))
  const { reference: _, ...plain } = base
  const values = gives.map((entity): Spot => {
    const value = shown.get(entity.name)
    const own = { ...plain, ...giving(entity), says: entity.says, restsOn: [base.id] }
    return { ...own, kind: 'step', ...(value ? { value } : {}) }
  })
  return [{ ...base, kind: 'method', says: printed.title, note: printed.verified }, ...values]
}
