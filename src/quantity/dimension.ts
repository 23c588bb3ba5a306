import { add, multiply, rational, rationalText, subtract, zero } from './rational.ts'
import { type Base, bases, type Dimension, type Rational } from './types.ts'

const interned = new Map<string, Dimension>()

function intern(exponents: readonly Rational[]): Dimension {
  const key = exponents.map(rationalText).join(' ')
  const known = interned.get(key)
  if (known) return known
  const made: Dimension = Object.freeze({ key, exponents: Object.freeze([...exponents]) })
  interned.set(key, made)
  return made
}

/** The dimension with these exponents of the bases, all others nought. Equal dimensions are the same object. */
export function dimensionOf(exponents: Partial<Record<Base, Rational | number>>): Dimension {
  return intern(
    bases.map(base => {
      const given = exponents[base] ?? 0
      return typeof given === 'number' ? rational(given) : given
    }),
  )
}

function pairwise(a: Dimension, b: Dimension, join: (x: Rational, y: Rational) => Rational): Dimension {
  return intern(bases.map((_, i) => join(exponentAt(a, i), exponentAt(b, i))))
}

function exponentAt(dimension: Dimension, index: number): Rational {
  return dimension.exponents[index] ?? zero
}

/** Exponent of one base. */
export const exponentOf = (dimension: Dimension, base: Base): Rational => exponentAt(dimension, bases.indexOf(base))

/** Dimension of a product. */
export const times = (a: Dimension, b: Dimension): Dimension => pairwise(a, b, add)

/** Dimension of a quotient. */
export const over = (a: Dimension, b: Dimension): Dimension => pairwise(a, b, subtract)

/** Dimension of a power. */
export const power = (dimension: Dimension, exponent: Rational): Dimension =>
  intern(dimension.exponents.map(each => multiply(each, exponent)))

/** The dimension of plain numbers. */
export const dimensionless: Dimension = dimensionOf({})

/** Whether every exponent is one that a formula may reach: at most 64 in size, denominator at most 1000. */
export const withinReach = (dimension: Dimension): boolean =>
  dimension.exponents.every(({ n, d }) => Math.abs(n) <= 64 * d && d <= 1000)
