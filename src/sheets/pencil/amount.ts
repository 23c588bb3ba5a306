import { Unreadable } from './mark.ts'

/** A number in the pencil's hand: its value, the exponents of its units, and whether any unit was written. */
export interface Amount {
  readonly value: number
  readonly exponents: readonly number[]
  readonly units: boolean
}

const none: readonly number[] = [0, 0, 0, 0, 0, 0, 0, 0, 0]

/** A bare number. */
export const bare = (value: number): Amount => ({ value, exponents: none, units: false })

/** Whether two amounts are of one kind. */
export function alike(a: Amount, b: Amount): boolean {
  return a.exponents.every((exponent, index) => Math.abs(exponent - (b.exponents[index] ?? 0)) < 1e-9)
}

export const isPlain = (a: Amount): boolean => alike(a, bare(0))

/** Refuses amounts of two kinds. */
export function sum(a: Amount, b: Amount, sign: 1 | -1): Amount {
  const { exponents } = ofOneKind([a, b])
  return { value: a.value + sign * b.value, exponents, units: a.units || b.units }
}

export function product(a: Amount, b: Amount): Amount {
  return { value: a.value * b.value, exponents: joined(a, b, 1), units: a.units || b.units }
}

export function quotient(a: Amount, b: Amount): Amount {
  return { value: a.value / b.value, exponents: joined(a, b, -1), units: a.units || b.units }
}

/** Refuses an exponent with units. */
export function raised(base: Amount, exponent: Amount): Amount {
  if (!isPlain(exponent)) throw new Unreadable('an exponent with units')
  const exponents = base.exponents.map(each => each * exponent.value)
  return { value: powerOf(base.value, exponent.value), exponents, units: base.units || exponent.units }
}

/** The same kind, another value. */
export const revalued = (a: Amount, value: number): Amount => ({ ...a, value })

/** Nought without a unit is nought of every kind. */
const isNought = (a: Amount): boolean => a.value === 0 && !a.units && isPlain(a)

/** One of the amounts, which tells the kind of all. Refuses amounts of two kinds, and none. */
export function ofOneKind(amounts: readonly Amount[]): Amount {
  const [kind = amounts[0], ...others] = amounts.filter(each => !isNought(each))
  if (!kind) throw new Unreadable('a function of nothing')
  if (!others.every(each => alike(kind, each))) throw new Unreadable('units that do not fit')
  return kind
}

function joined(a: Amount, b: Amount, sign: 1 | -1): readonly number[] {
  return a.exponents.map((exponent, index) => exponent + sign * (b.exponents[index] ?? 0))
}

function powerOf(base: number, exponent: number): number {
  return Math.abs(exponent - 1 / 3) < 1e-12 ? Math.cbrt(base) : base ** exponent
}
