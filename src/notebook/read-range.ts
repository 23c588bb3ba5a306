import { error, type Reading } from './reading.ts'
import type { Assumption, Written } from './types.ts'
import { writtenPart } from './written-part.ts'

/** Returns the two ends of `A to B`. Refuses any other form. */
export function readRange(written: Written | undefined, reading: Reading): Assumption['range'] {
  if (written === undefined) return undefined
  const parts = written.text.split(/\s+to\s+/)
  const [from, to] = parts
  if (parts.length === 2 && from && to) {
    const start = written.text.length - to.length
    return { from: writtenPart(written, 0, from.length), to: writtenPart(written, start, written.text.length) }
  }
  const says = `\`${written.text}\` is not a range`
  error(reading, 'value-kind', {
    place: written.place,
    says,
    help: 'Write the least and the greatest: `2.4 m to 4.0 m`',
  })
  return undefined
}
