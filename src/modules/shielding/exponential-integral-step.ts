import type { Method } from '../method.ts'
import type { Step } from '../module.ts'
import { exponentialIntegral } from '../numerics/exponential-integral.ts'
import { integrate } from '../numerics/integrate.ts'
import { cite } from '../sources.ts'
import { solve } from '../words.ts'

/** The exponential integral E1 of one number above 0, checked each time by quadrature. */
export const exponentialIntegralMethod: Method = {
  id: 'exponential-integral',
  title: 'Exponential integral',
  says: 'Power series up to 1, continued fraction above; the integral of exp(-t)/t from the number to infinity.',
  takes: { x: 'ratio' },
  run: ({ x }) => {
    const at = Number(x)
    if (!(at > 0)) return { ok: false, says: 'the exponential integral has no value at 0 mean free paths' }
    const value = exponentialIntegral(at)
    return { ok: true, values: { value }, verified: verifiedAt(at, value) }
  },
}

// Beyond 40 more mean free paths exp(-40) = 4e-18 is left.
function verifiedAt(x: number, value: number): string {
  const sum = integrate(t => Math.exp(-x * Math.expm1(t)), { from: 0, to: Math.log1p(40 / x) }).value * Math.exp(-x)
  if (value === 0) return 'nothing is left so deep'
  const difference = Math.abs(sum - value) / value
  return difference < 1e-8
    ? 'quadrature of the same integral differs by less than 1 part in 100 million'
    : `quadrature of the same integral differs by ${(100 * difference).toPrecision(2)} %`
}

/** The line `name = E1(of)`, `of` a name or formula. */
export const exponentialIntegralOf = (name: string, of: string, more: { says: string; symbol: string }): Step =>
  solve(exponentialIntegralMethod, {
    takes: { x: of },
    gives: { value: { dimension: 'ratio', name, says: more.says, symbol: more.symbol } },
    says: more.says,
    source: cite('exponential-integral', '5.1.1'),
  })
