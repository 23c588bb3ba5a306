import { placeWithin } from '../diagnostic/place-within.ts'
import type { Written } from './types.ts'

/** Returns a part of what the author wrote, without the blanks at its ends. Where columns cannot be told, its place is the whole. */
export function writtenPart(written: Written, from: number, to: number): Written {
  const raw = written.text.slice(from, to)
  const text = raw.trim()
  if (written.exact === false) return { ...written, text }
  const start = from + raw.length - raw.trimStart().length
  return { text, place: placeWithin(written.place, { start, end: start + text.length }) }
}
