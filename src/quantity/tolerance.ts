/** Comparisons, floor and ceil hold within this relative tolerance: a demand equal to its capacity is satisfied. */
export const tolerance = 1e-9

const near = (a: number, b: number): boolean =>
  Number.isFinite(a - b) && Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b))

/** Whether two numbers count as equal. */
export const isEqual = (a: number, b: number): boolean => a === b || near(a, b)

/** a <= b, equal numbers included. */
export const isAtMost = (a: number, b: number): boolean => a <= b || near(a, b)

/** a < b, equal numbers left out. */
export const isBelow = (a: number, b: number): boolean => a < b && !near(a, b)

/** How near a number must be to a whole one to count as it: relative, and never coarser than a millionth. */
const snap = (x: number): number => Math.min(tolerance * Math.max(1, Math.abs(x)), 1e-6)

const snapped = (x: number): number => {
  const whole = Math.round(x)
  return Math.abs(x - whole) <= snap(x) ? whole : x
}

/** The whole number at or below x; 2.9999999999 is 3. */
export const floorOf = (x: number): number => Math.floor(snapped(x))

/** The whole number at or above x; 3.0000000001 is 3. */
export const ceilOf = (x: number): number => Math.ceil(snapped(x))

/** The nearest whole number, halves away from nought. */
export const roundOf = (x: number): number => Math.sign(x) * floorOf(Math.abs(x) + 0.5)
