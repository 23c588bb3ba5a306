import { distance } from 'fastest-levenshtein'

/** Returns how many slips of the pen lie between two words: letters added, left out, changed, or two exchanged. */
export function slips(a: string, b: string): number {
  const differs = distance(a, b)
  return differs === 2 && [...a].sort().join('') === [...b].sort().join('') ? 1 : differs
}
