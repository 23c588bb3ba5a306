import { legendre } from './legendre.ts'
import { entry, whole } from './numeric-refusal.ts'

/** Places and weights of a quadrature rule on -1 to 1. */
export type QuadratureRule = { readonly places: readonly number[]; readonly weights: readonly number[] }

/**
 * The Gauss-Legendre rule of `count` places (1 to 200) on -1 to 1, exact for polynomials to degree 2 `count` - 1.
 * Refuses other counts. Source: zeros of P_n by Newton's method, weights 2/((1-s^2) P_n'(s)^2) (Abramowitz and
 * Stegun 25.4.29; memory).
 */
export function gaussLegendre(count: number): QuadratureRule {
  whole(count, 'count', { least: 1, most: 200 })
  const rule = rules.get(count) ?? legendreRule(count)
  rules.set(count, rule)
  return rule
}

const rules = new Map<number, QuadratureRule>()

function legendreRule(count: number): QuadratureRule {
  const places = Array.from({ length: count }, (_, i) => legendreZero(count, i))
  const weights = places.map(s => 2 / ((1 - s * s) * entry(legendre(count, s).slope, count) ** 2))
  return { places, weights }
}

function legendreZero(count: number, i: number): number {
  let s = -Math.cos((Math.PI * (i + 0.75)) / (count + 0.5))
  for (let pass = 0; pass < 8; pass++) {
    const { value, slope } = legendre(count, s)
    const step = entry(value, count) / entry(slope, count)
    s -= step
    // Newton's steps square the error: after one this small the next changes nothing.
    if (Math.abs(step) < 1e-9) break
  }
  return s
}
