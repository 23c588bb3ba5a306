import type { Step } from '../modules/module.ts'
import type { PlannedLine } from './plan-types.ts'

/**
 * The lines of a list's rows, planned row by row, in the order in which they are printed: a step for all rows, then the next. Steps
 * between which a value goes on from row to row stay together, row by row, so that nothing is used before it is printed.
 */
export function stepByStep(lines: readonly PlannedLine[], steps: readonly Step[]): PlannedLine[] {
  const units = unitsOf(steps)
  const unit = new Map(units.flatMap((of, index) => of.map(step => [step, index] as const)))
  const place = ({ ofStep }: PlannedLine): number => (ofStep && unit.get(ofStep)) ?? units.length
  return [...lines].sort((a, b) => place(a) - place(b))
}

/** Steps that are printed together, in order; mostly each alone. */
function unitsOf(steps: readonly Step[]): Step[][] {
  const units: Step[][] = []
  let at = 0
  while (at < steps.length) {
    const end = endOfUnit(steps, at)
    const together = steps.slice(at, end)
    const [alone] = together
    const splits = together.length === 1 && alone?.kind === 'when' && !handsOn(alone, [alone])
    if (splits) units.push([alone], ...unitsOf(alone.yes), ...unitsOf(alone.no))
    else units.push(together.flatMap(withInner))
    at = end
  }
  return units
}

/** Past the last step whose value the next row needs in a step from `from` on. */
function endOfUnit(steps: readonly Step[], from: number): number {
  let end = from + 1
  for (let at = from; at < end; at += 1) {
    const step = steps[at]
    if (!step) break
    for (let later = steps.length - 1; later >= end; later -= 1) {
      const giver = steps[later]
      if (giver && handsOn(giver, [step])) end = later + 1
    }
  }
  return end
}

/** Whether a value of `giver` is what one of `takers` takes from the row before. */
function handsOn(giver: Step, takers: readonly Step[]): boolean {
  const given = new Set(withInner(giver).flatMap(namesOf))
  return takers.flatMap(withInner).some(taker => fromRowBefore(taker).some(name => given.has(name)))
}

/** A step and those inside it. */
const withInner = (step: Step): readonly Step[] =>
  step.kind === 'when' ? [step, ...[...step.yes, ...step.no].flatMap(withInner)] : [step]

function namesOf(step: Step): readonly string[] {
  if (step.kind === 'solve') return Object.values(step.gives).map(({ name }) => name)
  return 'name' in step ? [step.name] : []
}

/** What a step takes from the row before: `next` of a carried one, names that begin with `prev_`. */
function fromRowBefore(step: Step): readonly string[] {
  if (step.kind === 'carried') return [step.next]
  const texts = 'formula' in step ? [step.formula] : step.kind === 'solve' ? Object.values(step.takes) : []
  const condition = step.kind === 'when' && 'formula' in step.condition ? [step.condition.formula] : []
  return [...texts, ...condition].flatMap(text =>
    typeof text === 'string' ? [...text.matchAll(/\bprev_(\w+)/g)].map(found => found[1] ?? '') : [],
  )
}
