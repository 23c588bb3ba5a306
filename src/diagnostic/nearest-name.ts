import { slips } from './slips.ts'

/**
 * Returns the candidate that `name` was most likely meant to be, or nothing where none is near: at most a third of the
 * name's letters may differ, and never more than three; one letter of two to five, none of a single one. Capitals, and blanks,
 * hyphens or underscores between words, count as equal.
 */
export const nearestName = (name: string, candidates: Iterable<string>): string | undefined =>
  nearestNames(name, candidates)[0]

/** The candidates that are nearest to `name`, all equally near, in their order. */
export function nearestNames(name: string, candidates: Iterable<string>): readonly string[] {
  const wanted = plain(name)
  let near: string[] = []
  let least = Math.min(3, Math.max(wanted.length > 1 ? 1 : 0, Math.floor(wanted.length / 3)))
  for (const candidate of candidates) {
    const differs = slips(wanted, plain(candidate))
    if (differs > least) continue
    near = differs < least ? [candidate] : [...near, candidate]
    least = differs
  }
  return near
}

const plain = (name: string): string =>
  name
    .slice(0, 100)
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '_')
