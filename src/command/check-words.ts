import type { CheckMove, VerdictMove } from '../comparison/types.ts'
import { plainNumber } from '../quantity/number-print.ts'
import { plural } from './count-of.ts'

/** `0.767 → 0.940`; a side that is not there or has no ratio is a dash. */
export function ratioText({ old, now }: CheckMove): readonly [string, string] {
  const of = (state: CheckMove['old']): string => (state?.ratio ? plainNumber(state.ratio.digits) : '–')
  return [of(old), of(now)]
}

/** What a limit, a range or a second method comes to now. */
export function verdictText({ what, block, says, now }: VerdictMove): string {
  const bad = now === false
  if (what === 'limit') return `${block}: the limit that ${says} is ${bad ? 'exceeded now' : 'kept now'}`
  if (what === 'range') return `${block} is ${bad ? 'outside' : 'inside'} its plausible range now`
  return `${block}: the second method ${bad ? 'no longer agrees' : 'agrees now'} (${says})`
}

/** A check that is satisfied as before and in doubt now, or in doubt no more. */
export function doubtTurn(old: CheckMove['old'], now: CheckMove['now']): string {
  if (!old?.satisfied || !now?.satisfied || old.doubts.join() === now.doubts.join()) return ''
  return now.doubts.length > 0 ? `IN DOUBT: ${now.doubts.join(' and ')}` : 'in doubt no more'
}

/** How the checks of the new notebook stand, those that turned among them. */
export function standingOf(checks: readonly CheckMove[]): string {
  const reached = checks.flatMap(({ now }) => now ?? [])
  const failing = reached.filter(({ satisfied }) => !satisfied).length
  const doubtful = reached.filter(({ doubts }) => doubts.length > 0)
  const why = [...new Set(doubtful.flatMap(({ doubts }) => doubts))].join(', ')
  if (reached.length === 0) return 'no check was reached in the new notebook'
  if (failing === 0)
    return `every check that was reached is satisfied (${reached.length})${doubtful.length > 0 ? `, ${doubtful.length} of them in doubt: ${why}` : ''}`
  return `${failing} of ${plural(reached.length, 'check')} not satisfied in the new notebook${doubtful.length > 0 ? `, ${doubtful.length} satisfied but in doubt: ${why}` : ''}`
}
