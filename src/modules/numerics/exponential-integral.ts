import { finite, NumericRefusal } from './numeric-refusal.ts'

const euler = 0.5772156649015329

/**
 * The exponential integral E1(x), the integral of exp(-t)/t from x to infinity: power series up to 1, continued fraction
 * (modified Lentz) above. Relative error below 1e-13; 0 where exp(-x) underflows. Refuses x of 0 and below.
 * Source: Abramowitz and Stegun, AMS 55, 5.1.11 and 5.1.22 (memory; checked by its Table 5.1 and by quadrature).
 */
export function exponentialIntegral(x: number): number {
  if (!(finite(x, 'x') > 0)) throw new NumericRefusal('x', `Expected \`x\` above 0, got ${x}`)
  return x <= 1 ? bySeries(x) : Math.exp(-x) * byFraction(x)
}

function bySeries(x: number): number {
  let [sum, term] = [-euler - Math.log(x), -1]
  for (let n = 1; n <= 30; n++) {
    term *= -x / n
    sum += term / n
  }
  return sum
}

function byFraction(x: number): number {
  let b = x + 1
  let c = 1e300
  let d = 1 / b
  let product = d
  for (let n = 1; n <= 200; n++) {
    b += 2
    d = 1 / (b - n * n * d)
    c = b - (n * n) / c
    product *= c * d
    if (Math.abs(c * d - 1) < Number.EPSILON) break
  }
  return product
}
