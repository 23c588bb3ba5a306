import { isEqual } from '../quantity/tolerance.ts'

/** Points of a table: x rising strictly, one y for each. */
interface Points {
  readonly x: readonly number[]
  readonly y: readonly number[]
}

/**
 * Linear interpolation between the points of a table. Outside the table it gives NaN; its ends count within a relative 1e-9.
 * Throws where x does not rise or the lengths differ.
 */
export function tableClosure({ x, y }: Points): (at: number) => number {
  if (x.length !== y.length || x.length === 0) throw new RangeError('A table needs one y for each x')
  if (x.some((each, i) => i > 0 && !(each > (x[i - 1] ?? Number.NaN))))
    throw new RangeError('The x of a table must rise')
  const first = x[0] ?? Number.NaN
  const last = x.at(-1) ?? Number.NaN
  return at => {
    if (at < first) return isEqual(at, first) ? (y[0] ?? Number.NaN) : Number.NaN
    if (at > last) return isEqual(at, last) ? (y.at(-1) ?? Number.NaN) : Number.NaN
    return Number.isNaN(at) ? at : between({ x, y }, at)
  }
}

function between({ x, y }: Points, at: number): number {
  let low = 0
  let high = x.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((x[middle] ?? 0) <= at) low = middle
    else high = middle
  }
  const [x0 = 0, x1 = x0] = [x[low], x[high]]
  const [y0 = 0, y1 = y0] = [y[low], y[high]]
  return x1 === x0 || at === x0 ? y0 : at === x1 ? y1 : y0 + ((y1 - y0) * (at - x0)) / (x1 - x0)
}
