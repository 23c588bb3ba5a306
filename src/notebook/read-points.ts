import { error, type Reading } from './reading.ts'
import type { Written } from './types.ts'
import { writtenPart } from './written-part.ts'

type Point = readonly [Written, Written]

/** Returns the points of a table, `x1, y1; x2, y2; ...`. Refuses fewer than two, and a point that is not a pair. */
export function readPoints(written: Written, reading: Reading): readonly Point[] | undefined {
  const parts = split(written, ';').filter(({ text }, index, all) => text !== '' || index < all.length - 1)
  const points = parts.map(part => readPoint(part, reading))
  if (points.some(point => point === undefined)) return undefined
  if (points.length >= 2) return points.filter(point => point !== undefined)
  const help = 'Write `x, y` pairs divided by `;`: `0 m, 1.0; 2 m, 0.6`'
  error(reading, 'statement-unread', { place: written.place, says: 'A table has two points or more', help })
  return undefined
}

function readPoint(written: Written, reading: Reading): Point | undefined {
  const [x, y, extra] = split(written, ',')
  if (x?.text && y?.text && extra === undefined) return [x, y]
  const says = `\`${written.text}\` is not a point of a table`
  error(reading, 'statement-unread', { place: written.place, says, help: 'Write `x, y`, and `;` between points' })
  return undefined
}

function split(written: Written, mark: string): readonly Written[] {
  let from = 0
  return written.text.split(mark).map(part => {
    const start = from
    from += part.length + mark.length
    return writtenPart(written, start, start + part.length)
  })
}
