/** An exact fraction in lowest terms, denominator positive. */
export interface Rational {
  readonly n: number
  readonly d: number
}

/** The nine bases, in this order. Dose equivalent is its own base so that Sv and Gy never mix unsaid; a person is counted. */
export const bases = [
  'length',
  'mass',
  'time',
  'temperature',
  'current',
  'amount',
  'luminous',
  'person',
  'dose',
] as const
export type Base = (typeof bases)[number]

/** Exponents of the bases, interned: equal dimensions are the same object, so `===` compares them. */
export interface Dimension {
  readonly key: string
  readonly exponents: readonly Rational[]
}

/** One unit of a unit expression with its exponent: whole, save where a root is meant as in `MPa^(1/2)`. */
export interface UnitPart {
  readonly name: string
  readonly exponent: Rational
}

/** A unit expression of the closed list, `kN*m/m`: the written form is kept beside its exact factor and never cancelled. */
export interface Unit {
  /** Canonical text, as typed in a notebook: `kN*m/m`, `kN/m^2`. Empty text is the unit one. */
  readonly text: string
  readonly parts: readonly UnitPart[]
  /** Number in coherent SI of one such unit. */
  readonly factor: number
  readonly dimension: Dimension
  /** Only degC and degF standing alone: SI = value * factor + offset, a temperature point. */
  readonly offset?: number
}

export type System = 'SI' | 'US'

/** A number made ready for print. `digits` are the characters of the number: `-26.08`, `12500`, `1.2e-6`. */
export interface Shown {
  readonly digits: string
  readonly unit: Unit
  /** True where the digits are the author's own or a table's, so that they count as exact. */
  readonly exact: boolean
}
