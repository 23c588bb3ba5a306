import { add, divide, multiply, negate, rational, rationalOfDecimal, subtract, toNumber } from '../quantity/rational.ts'
import type { Rational } from '../quantity/types.ts'
import type { Node } from './types.ts'

/** The exact fraction that an exponent of literals means, `(2/3)`, `-1`, `0.5`; undefined where it is not of literals alone. */
export function literalExponent(node: Node): Rational | undefined {
  switch (node.kind) {
    case 'number':
      return rationalOfDecimal(node.text)
    case 'negative': {
      const of = literalExponent(node.of)
      return of && negate(of)
    }
    case 'arithmetic':
      return combined(node.op, literalExponent(node.left), literalExponent(node.right))
    default:
      return undefined
  }
}

function combined(op: string, a: Rational | undefined, b: Rational | undefined): Rational | undefined {
  if (!a || !b || !isSmall(a) || !isSmall(b)) return undefined
  if (op === '+') return add(a, b)
  if (op === '-') return subtract(a, b)
  if (op === '*') return multiply(a, b)
  return op === '/' && b.n !== 0 ? divide(a, b) : undefined
}

const isSmall = ({ n, d }: Rational): boolean => Math.abs(n) <= 1e6 && d <= 1e6

/** The third that a decimal exponent stands near, `0.333` near 1/3, or undefined. */
export function thirdNear(exponent: Rational): Rational | undefined {
  const thirds = Math.round(toNumber(exponent) * 3)
  const third = rational(thirds, 3)
  const off = Math.abs(toNumber(exponent) - thirds / 3)
  return third.d === 3 && off > 0 && off < 0.01 ? third : undefined
}
