import { numberLines } from '../evaluation/anchors.ts'
import type { Results } from '../evaluation/evaluate.ts'
import type { PlannedAssumption, PlannedCheck, Typed } from '../evaluation/plan-types.ts'
import { typedDigits } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Shown } from '../quantity/types.ts'
import type { MarginEnd } from './margin-end.ts'
import type { Margin, Margins, Unsearched } from './margins.ts'
import { tightness } from './margins.ts'
import { roundTowards } from './round-towards.ts'
import type { Verdict } from './watch.ts'

/** A check as the package numbers it; without number and anchor where the notebook as written does not reach it. */
export interface ShownCheck {
  readonly number: string
  readonly id: string
  readonly block: string
  readonly says: string
  readonly becomes: Verdict
}

interface ShownAt {
  readonly si: number
  /** Rounded towards the value, so that what is printed has not passed it. */
  readonly at: Shown
}

/** One end of a margin made ready for print. */
export type ShownEnd =
  | (ShownAt & { readonly kind: 'turn'; readonly checks: readonly ShownCheck[]; readonly inRange: boolean })
  | (ShownAt & { readonly kind: 'refusal'; readonly says: string; readonly rule: string; readonly inRange: boolean })
  | (ShownAt & { readonly kind: 'none' })

/** How far one assumption can move by itself, made ready for print. */
export interface ShownMargin {
  readonly key: string
  /** The assumption's anchor and number in the register. */
  readonly id: string
  readonly number: string
  readonly si: number
  readonly value: Shown
  readonly range?: { readonly from: Shown; readonly to: Shown }
  readonly searched: { readonly from: Shown; readonly to: Shown }
  readonly down: ShownEnd
  readonly up: ShownEnd
  /** The nearer end as a share of the value; absent where neither way anything ends. */
  readonly share?: number
}

/** Every margin of a notebook, tightest first, and what has none. */
export interface ShownMargins {
  readonly margins: readonly ShownMargin[]
  readonly unsearched: readonly Unsearched[]
  readonly runs: number
}

/** Margins with their digits, units and the numbers that the package gives its checks. */
export function showMargins({ margins, unsearched, runs }: Margins, results: Results): ShownMargins {
  const rows = results.plan.blocks.flatMap(block => (block?.kind === 'assume' ? block.rows : []))
  const context: Context = { results, numbering: numberLines(results) }
  const shown = margins.map(margin => {
    const row = rows.find(({ named }) => named === margin.variable.entity)
    if (!row) throw new Error('a margin is of an assumption')
    return showMargin(context, margin, row)
  })
  return { margins: shown, unsearched, runs }
}

interface Context {
  readonly results: Results
  readonly numbering: ReturnType<typeof numberLines>
}

function showMargin(context: Context, margin: Margin, row: PlannedAssumption): ShownMargin {
  const { variable, value, interval, down, up } = margin
  const { entity } = variable
  const share = tightness(margin)
  const at = (si: number): Shown => ({
    digits: roundTowards(inUnit(si, entity.unit), inUnit(value, entity.unit)),
    unit: entity.unit,
    exact: false,
  })
  const end = (of: MarginEnd): ShownEnd => ({ si: of.at, at: at(of.at), ...endWords(context, of) })
  return {
    key: entity.key,
    ...(context.numbering.assumptions.get(entity.key) ?? { id: '', number: '' }),
    si: value,
    value: entity.typed ? asTyped(entity.typed) : at(value),
    ...(row.range ? { range: { from: asTyped(row.range.from), to: asTyped(row.range.to) } } : {}),
    searched: { from: at(interval.from), to: at(interval.to) },
    down: end(down),
    up: end(up),
    ...(Number.isFinite(share) ? { share } : {}),
  }
}

const asTyped = ({ digits, unit }: Typed): Shown => ({ digits: typedDigits(digits), unit, exact: true })

function endWords(context: Context, end: MarginEnd) {
  if (end.kind === 'none') return { kind: end.kind }
  const { inRange } = end
  if (end.kind === 'refusal') return { kind: end.kind, inRange, says: end.fault.says, rule: end.fault.rule }
  const checks = end.turned.map(({ check, state }) => ({ ...showCheck(context, check), becomes: state }))
  return { kind: end.kind, inRange, checks }
}

function showCheck({ results, numbering }: Context, check: PlannedCheck) {
  const { plan } = results
  const index = plan.blocks.findIndex(block => block && block.kind !== 'assume' && block.lines.includes(check))
  const block = plan.notebook.blocks[index]?.name.text ?? ''
  return { ...(numbering.lines.get(check) ?? { id: '', number: '' }), block, says: check.says }
}
