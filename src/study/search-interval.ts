import type { Variable } from './assumptions.ts'

/** Where margins are searched, in coherent SI. */
export interface SearchInterval {
  readonly from: number
  readonly to: number
}

/** Kelvin either way for a temperature on a scale, whose own zero says nothing. */
const kelvin = 25

/**
 * The interval a margin is searched in: as far each way as the value itself (from nought to its double), and at least twice as far as
 * either end of the stated range. A positive value whose range is not negative stays from nought up. Nothing for a value of nought
 * without a range: nothing says how far it might move.
 */
export function searchInterval({ entity, range }: Variable, value: number): SearchInterval | undefined {
  const reach = Math.max(
    entity.point ? kelvin : Math.abs(value),
    range ? 2 * (value - range.from) : 0,
    range ? 2 * (range.to - value) : 0,
  )
  if (!(reach > 0)) return undefined
  const [from, to] = [value - reach, value + reach]
  if (value > 0 && (range?.from ?? 0) >= 0) return { from: Math.max(0, from), to }
  if (value < 0 && (range?.to ?? 0) <= 0) return { from, to: Math.min(0, to) }
  return { from, to }
}
