import { numberLines } from '../evaluation/anchors.ts'
import { checkRatio } from '../evaluation/check-ratio.ts'
import type { Results } from '../evaluation/evaluate.ts'
import { entitiesOf } from '../evaluation/operands.ts'
import type { Plan, PlannedCheck } from '../evaluation/plan-types.ts'
import type { Unit } from '../quantity/types.ts'
import { one } from '../quantity/unit.ts'
import { firstLines, readsOf, type Watch } from './watch.ts'

/** What a study looks at: a value, the ratio of a check, or the largest ratio of a section. */
export interface Measure {
  readonly name: string
  readonly says: string
  readonly unit: Unit
  /** The checks it is a ratio of; none for a value. */
  readonly checks: readonly PlannedCheck[]
  /** Every slot that `read` looks at, and that the state of its checks rests on. */
  readonly reads: readonly number[]
  /** In coherent SI; NaN where there is none. */
  readonly read: (slots: Float64Array) => number
}

/** The value of that name (`roof.M_x`), or the ratio of the check that the package gives that number (`4.11`). */
export function measureOf(results: Results, name: string): Measure | undefined {
  const { plan } = results
  const entity = plan.names.get(name)
  if (entity?.kind === 'number') {
    const { slot, unit, says } = entity
    return { name, says, unit, checks: [], reads: [slot], read: slots => slots[slot] ?? Number.NaN }
  }
  const { lines } = numberLines(results)
  const check = firstLines(plan).find(
    line => line.kind === 'check' && (lines.get(line)?.number === name || nameIn(plan, line) === name),
  )
  return check?.kind === 'check' ? { name, says: check.says, ...ratioIn([check]) } : undefined
}

/** A module's check as the checking record calls it: `steel.area`. */
function nameIn({ blocks, notebook }: Plan, check: PlannedCheck): string | undefined {
  const index = blocks.findIndex(block => block?.kind === 'calc' && block.lines.includes(check))
  return index < 0 ? undefined : `${notebook.blocks[index]?.name.text}.${check.name}`
}

/** The measure in a run; NaN where it, or one of the checks it is the largest ratio of, is lost. */
export function readIn({ checks, read }: Measure, slots: Float64Array, { state }: Pick<Watch, 'state'>): number {
  return checks.some(check => state(check, slots) === 'lost') ? Number.NaN : read(slots)
}

/** The largest ratio of each section of the author's text (headings of the second level) that has a check with one. */
export function sectionMeasures({ plan, slots }: Results): readonly Measure[] {
  return sectionsOf(plan)
    .map(({ title, checks }) => ({ name: title, says: 'largest ratio', ...ratioIn(checks) }))
    .filter(({ read }) => Number.isFinite(read(slots)))
}

const ratioIn = (checks: readonly PlannedCheck[]): Pick<Measure, 'unit' | 'checks' | 'reads' | 'read'> => ({
  unit: one,
  checks,
  reads: checks.flatMap(check => [...readsOf(check), ...entitiesOf(check.operands).map(({ slot }) => slot)]),
  read: slots => {
    let largest = Number.NaN
    for (const check of checks) {
      if (!check.guards.every(guard => slots[guard] === 1)) continue
      const ratio = checkRatio(check, slots) ?? Number.NaN
      if (!(ratio <= largest) && !Number.isNaN(ratio)) largest = ratio
    }
    return largest
  },
})

function sectionsOf(plan: Plan): readonly { readonly title: string; readonly checks: readonly PlannedCheck[] }[] {
  const heads = plan.notebook.tree.children.flatMap(node =>
    node.type === 'heading' && node.depth === 2
      ? [{ title: textOf(node), line: node.position?.start.line ?? 0, checks: [] as PlannedCheck[] }]
      : [],
  )
  const loose = { title: 'Checks', line: 0, checks: [] as PlannedCheck[] }
  for (const block of plan.blocks) {
    if (!block || block.kind === 'assume') continue
    const at = plan.notebook.blocks[block.index]?.place.line ?? 0
    const section = heads.findLast(({ line }) => line < at) ?? loose
    section.checks.push(...block.lines.filter(line => line.kind === 'check'))
  }
  return [loose, ...heads].filter(({ checks }) => checks.length > 0)
}

/** The words of a heading. */
function textOf(node: object): string {
  if ('value' in node && typeof node.value === 'string') return node.value
  return 'children' in node && Array.isArray(node.children) ? node.children.map(textOf).join('') : ''
}
