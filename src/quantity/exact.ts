import type { Rational } from './types.ts'

/** A positive number kept exactly: n/d times a whole power of pi. Where a root made it irrational, the double alone is left. */
export interface Exact {
  readonly n: bigint
  readonly d: bigint
  readonly pi: number
}

/** The exact number of `1000`, `0.45359237`, `1.602176634e-19`, `5/9`, `pi/180`. Throws on any other text. */
export function exactOf(text: string): Exact {
  const [top = '', below] = text.split('/')
  const over = top === 'pi' ? { n: 1n, d: 1n, pi: 1 } : decimal(top)
  return below === undefined ? over : exactOver(over, decimal(below))
}

function decimal(text: string): Exact {
  const found = /^(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(text)
  if (!found) throw new SyntaxError(`Not an exact number: ${text}`)
  const [, whole = '', decimals = '', exponent = '0'] = found
  const shift = Number(exponent) - decimals.length
  const n = BigInt(whole + decimals)
  return shift < 0 ? { n, d: 10n ** BigInt(-shift), pi: 0 } : { n: n * 10n ** BigInt(shift), d: 1n, pi: 0 }
}

/** The product, exact. */
export const exactTimes = (a: Exact, b: Exact): Exact => ({ n: a.n * b.n, d: a.d * b.d, pi: a.pi + b.pi })

const exactOver = (a: Exact, b: Exact): Exact => ({ n: a.n * b.d, d: a.d * b.n, pi: a.pi - b.pi })

function wholePower(a: Exact, k: number): Exact {
  const by = BigInt(Math.abs(k))
  const raised = { n: a.n ** by, d: a.d ** by, pi: a.pi * Math.abs(k) }
  return k < 0 ? { n: raised.d, d: raised.n, pi: -raised.pi } : raised
}

/** A power; a root is taken of the nearest double, the only place where exactness is lost. */
export function exactPower(a: Exact, exponent: Rational): Exact {
  if (exponent.d === 1) return wholePower(a, exponent.n)
  return wholePower(ofDouble(nearest(a) ** (1 / exponent.d)), exponent.n)
}

function ofDouble(value: number): Exact {
  const shift = 60 - Math.floor(Math.log2(value))
  const up = 2n ** BigInt(Math.abs(shift))
  return shift < 0
    ? { n: BigInt(Math.round(value * 2 ** shift)) * up, d: 1n, pi: 0 }
    : { n: BigInt(value * 2 ** shift), d: up, pi: 0 }
}

const bits = (a: bigint): number => a.toString(2).length

/** The double nearest to the number: one rounding for a rational, two with pi. */
export function nearest(a: Exact): number {
  const shift = 70 - (bits(a.n) - bits(a.d))
  const n = shift > 0 ? a.n << BigInt(shift) : a.n
  const d = shift < 0 ? a.d << BigInt(-shift) : a.d
  const sticky = n % d === 0n ? 0n : 1n
  return scaled(Number((n / d) | sticky), -shift) * Math.PI ** a.pi
}

/** value * 2^by, in two steps so that the power itself does not overflow. */
const scaled = (value: number, by: number): number => value * 2 ** Math.trunc(by / 2) * 2 ** (by - Math.trunc(by / 2))
