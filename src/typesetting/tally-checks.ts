import type { CheckLine } from '../evaluation/workings.ts'

/** Whether a check is satisfied only with a doubt. */
export const isDoubtful = ({ satisfied, doubts }: Pick<CheckLine, 'satisfied' | 'doubts'>): boolean =>
  satisfied && doubts.length > 0

/** Some checks by their verdict in words: `not satisfied` first, then those with doubts, then `satisfied`. */
export function tallyChecks(checks: readonly CheckLine[]): ReadonlyMap<string, readonly CheckLine[]> {
  const tally = new Map<string, CheckLine[]>()
  const rank = (check: CheckLine): number => (check.satisfied ? (isDoubtful(check) ? 1 : 2) : 0)
  for (const check of checks.toSorted((a, b) => rank(a) - rank(b)))
    tally.set(check.verdict, [...(tally.get(check.verdict) ?? []), check])
  return tally
}
