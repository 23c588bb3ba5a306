import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { evaluate } from '../evaluation/evaluate.ts'
import type { Plan, PlannedCheck } from '../evaluation/plan-types.ts'
import type { Variable } from './assumptions.ts'
import type { TurnEnd } from './find-turn.ts'
import type { Verdict } from './watch.ts'

/** A check that turns, and what it turns to. */
export interface Turned {
  readonly check: PlannedCheck
  readonly state: Verdict
}

/** One end of a margin, in coherent SI. `inRange`: it lies within the assumption's stated range, ends included. */
export type MarginEnd =
  | {
      readonly kind: 'turn'
      readonly at: number
      /** All that turn there together; one or more. */
      readonly turned: readonly [Turned, ...Turned[]]
      readonly inRange: boolean
    }
  | {
      readonly kind: 'refusal'
      readonly at: number
      /** What is said just beyond. */
      readonly fault: Diagnostic
      readonly inRange: boolean
    }
  | { readonly kind: 'none'; readonly at: number }

/** A plan, and the errors that its numbers as written bring. */
export interface Searching {
  readonly plan: Plan
  readonly known: readonly Diagnostic[]
}

export const searchingOf = (plan: Plan): Searching => ({ plan, known: errorsOf(plan, new Map()) })

/** What a search came to, with the checks that turn, or what is said where an answer is lost. */
export function endOf(
  searching: Searching,
  { variable, checks, to }: { variable: Variable; checks: readonly PlannedCheck[]; to: number },
  found: TurnEnd,
): MarginEnd {
  if (found.kind === 'none') return found
  const { at } = found
  const { range, entity } = variable
  const inRange = range !== undefined && range.from <= at && at <= range.to
  if (found.kind === 'lost')
    return { kind: 'refusal', at, inRange, fault: faultAt(searching, entity.key, { ...found, to }) }
  const turned = found.checks.flatMap(({ index, state }): Turned[] => {
    const check = checks[index]
    return check ? [{ check, state }] : []
  })
  const [first, ...rest] = turned
  if (!first) throw new Error('a turn without a check')
  return { kind: 'turn', at, turned: [first, ...rest], inRange }
}

/**
 * What is said beyond a place where the answer is lost: a little further on, where the numbers in it can be read, or at once where
 * nothing is said there.
 */
function faultAt({ plan, known }: Searching, key: string, { beyond, to }: { beyond: number; to: number }): Diagnostic {
  const isNew = (fault: Diagnostic) => known.every(({ place, says }) => place !== fault.place || says !== fault.says)
  const says = (si: number) => errorsOf(plan, new Map([[key, si]])).find(isNew)
  const fault = says(beyond + (to - beyond) / 100) ?? says(beyond)
  if (!fault) throw new Error(`nothing says why \`${key}\` at ${beyond} gives no answer`)
  return fault
}

/** Errors of the run itself; those of the plan are the same for every number. */
function errorsOf(plan: Plan, changed: ReadonlyMap<string, number>): readonly Diagnostic[] {
  const planned = new Set(plan.diagnostics)
  const { diagnostics } = evaluate(plan, { changed, second: false })
  return diagnostics.filter(fault => fault.severity === 'error' && !planned.has(fault))
}
