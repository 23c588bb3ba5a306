import { blockAnchor } from './anchors.ts'
import type { Results } from './evaluate.ts'
import { secondLimitsOf, truth } from './judge-blocks.ts'
import { percentText } from './percent-text.ts'
import type { PlannedBlock, PlannedCalc, PlannedGiven } from './plan-types.ts'
import type { Spot } from './trace-types.ts'
import { taken } from './users.ts'
import type { AssumptionRow, BlockWorking, CalcWorking } from './workings.ts'

/** What stands in a block beside its lines: assumptions, inputs, limits, comparisons of two methods, the author's own tables. */
export function blockSpots(results: Results, block: PlannedBlock, printed: BlockWorking): Spot[] {
  if (printed.kind === 'assume') return printed.rows.map(row => assumptionSpot(results, row))
  if (block.kind === 'calc' && printed.kind === 'calc')
    return [
      ...givenSpots(block, printed),
      ...limitSpots(results, block, printed),
      ...agreementSpots(results, block, printed),
    ]
  return pointsSpots(results, block.index)
}

function assumptionSpot(results: Results, row: AssumptionRow): Spot {
  const name = `${row.block}.${row.name}`
  const named = results.plan.names.get(name)
  return {
    id: name,
    kind: 'assumption',
    name,
    number: row.number,
    symbol: row.symbol || row.name,
    value: row.value,
    ...(named?.kind === 'number' ? { entity: named } : {}),
    says: row.basis || 'no basis given',
    ...(row.status === 'hold' ? { note: `hold${row.closes ? `: ${row.closes}` : ''}` } : {}),
    place: row.place,
    restsOn: [],
  }
}

function givenSpots(block: PlannedCalc, printed: CalcWorking): Spot[] {
  const rows = new Map(printed.given.map(row => [row.name, row]))
  return block.given.map(given => {
    const name = `${printed.name}.${given.name}`
    const value = rows.get(given.name)?.value
    const from = taken(given)
    return {
      id: name,
      kind: 'given',
      name,
      number: '',
      symbol: given.symbol || given.name,
      ...(value === undefined ? {} : { value }),
      ...(typeof given.value === 'string' ? {} : { entity: given.value }),
      says: given.row?.label && given.row.label !== value ? `${given.says}, ${given.row.label}` : given.says,
      ...(from ? { formula: from.key } : noteOf(given)),
      place: given.place,
      restsOn: from ? [from.key] : [],
    }
  })
}

const noteOf = ({ taken: byDefault }: PlannedGiven): { note: string } => ({
  note: byDefault ? "the module's default" : 'typed here',
})

function limitSpots({ slots }: Results, block: PlannedCalc, { name, place }: CalcWorking): Spot[] {
  const limits = [...block.limits, ...secondLimitsOf(block, slots)]
  return limits.flatMap(({ limit, judged, row }, index): Spot[] => {
    const kept = truth(judged, slots)
    if ('known' in judged || kept === undefined) return []
    return [
      {
        id: `${blockAnchor(name)}-limit-${index + 1}`,
        kind: 'limit',
        name: '',
        number: '',
        symbol: '',
        value: kept ? 'kept' : 'exceeded',
        says: `limit of ${name}${index < block.limits.length ? '' : ', second method'}: ${limit.says}${row ? `, row ${row.index + 1}` : ''}`,
        ...(limit.source ? { reference: { key: limit.source.key, at: limit.source.at } } : {}),
        place,
        restsOn: judged.operands.map(({ key }) => key),
      },
    ]
  })
}

function agreementSpots({ slots }: Results, block: PlannedCalc, { name, place, second }: CalcWorking): Spot[] {
  const printed = second?.comparisons ?? []
  return (block.second?.comparisons ?? []).flatMap(({ compare, applies, first, second: other }, index): Spot[] => {
    const found = printed.find(({ says }) => says === compare.says)
    if (!found || truth(applies, slots) !== true) return []
    return [
      {
        id: `${blockAnchor(name)}-agreement-${index + 1}`,
        kind: 'agreement',
        name: '',
        number: '',
        symbol: '',
        value: found.agrees ? 'agree' : 'do not agree',
        says: `the two methods of ${name}: ${compare.says}`,
        note: `${found.differenceShown} apart, ${percentText(compare.band)} allowed`,
        place,
        restsOn: [first.key, other.key],
      },
    ]
  })
}

function pointsSpots({ plan }: Results, index: number): Spot[] {
  return [...plan.names.values()].flatMap((named): Spot[] => {
    if (named.kind !== 'points' || named.block !== index) return []
    const { key, name, place, remark, typed } = named
    const value = `${typed.length} points`
    return [{ id: key, kind: 'table', name: key, number: '', symbol: name, value, says: remark, place, restsOn: [] }]
  })
}
