import type { Rational } from './types.ts'

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b))

/** The fraction n/d in lowest terms, denominator positive. Refuses a zero denominator and parts that are not safe whole numbers. */
export function rational(n: number, d = 1): Rational {
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d) || d === 0)
    throw new RangeError(`No exact fraction ${n}/${d}`)
  const by = Math.sign(d) * (divisor(Math.abs(n), Math.abs(d)) || 1)
  return { n: n / by || 0, d: d / by }
}

export const zero = rational(0)
export const unity = rational(1)

export const add = (a: Rational, b: Rational): Rational => rational(a.n * b.d + b.n * a.d, a.d * b.d)
export const subtract = (a: Rational, b: Rational): Rational => rational(a.n * b.d - b.n * a.d, a.d * b.d)
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d)
export const divide = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n)
export const negate = (a: Rational): Rational => rational(-a.n, a.d)
export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d
export const toNumber = (a: Rational): number => a.n / a.d

/** `2`, `-1`, `1/3`. */
export const rationalText = (a: Rational): string => (a.d === 1 ? `${a.n}` : `${a.n}/${a.d}`)

/** The fraction a decimal means as it is written: `0.5` is 1/2, `0.333` is 333/1000. Undefined past six decimals or out of range. */
export function rationalOfDecimal(text: string): Rational | undefined {
  const found = /^(-?)(\d{0,6})(?:\.(\d{0,6}))?$/.exec(text)
  if (!found || !/\d/.test(text)) return undefined
  const [, sign, whole = '', decimals = ''] = found
  const n = Number(`${whole}${decimals}`)
  return rational(sign ? -n : n, 10 ** decimals.length)
}
