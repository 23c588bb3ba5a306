import { slips } from './slips.ts'

/**
 * Returns the candidate that `name` was most likely meant to be, or nothing where none is near: at most a third of the
 * name's letters may differ, and never more than three. Capitals, and blanks, hyphens or underscores between words, count as equal.
 */
export function nearestName(name: string, candidates: Iterable<string>): string | undefined {
  const wanted = plain(name)
  let best: string | undefined
  let least = Math.min(3, Math.max(1, Math.floor(wanted.length / 3))) + 1
  for (const candidate of candidates) {
    const differs = slips(wanted, plain(candidate))
    if (differs < least) {
      best = candidate
      least = differs
    }
  }
  return best
}

const plain = (name: string): string =>
  name
    .slice(0, 100)
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '_')
