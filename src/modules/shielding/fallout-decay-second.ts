import type { Method } from '../method.ts'
import type { Second } from '../module.ts'
import { integrate } from '../numerics/integrate.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { solve } from '../words.ts'
import { doseUnit } from './fallout-decay-steps.ts'

/** Dose between two times by quadrature of a rate that falls by a power of time. */
export const decayQuadrature: Method = {
  id: 'decay-quadrature',
  title: 'Rate added up over time',
  says: 'Adaptive Gauss-Kronrod quadrature of the rate outside, from the measured rate straight to each time.',
  takes: { rate: 'dose_rate', measured: 'time', from: 'time', to: 'time', exponent: 'ratio' },
  run: ({ rate, measured, from, to, exponent }) => {
    const [r, t0, n] = [Number(rate), Number(measured), Number(exponent)]
    try {
      const { value, evaluations } = integrate(t => r * (t0 / t) ** n, { from: Number(from), to: Number(to) })
      return { ok: true, values: { dose: value }, verified: `settled with the rate taken at ${evaluations} times` }
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}

/** The closed form of the dose against the rate added up. */
export const rateAddedUp: Second = {
  title: 'The rate added up over time',
  says: 'The rate is carried from the measured one to each time and added up numerically: no rate at one hour and no closed form. It finds a slip in the sums, not in the law.',
  steps: [
    solve(decayQuadrature, {
      takes: { rate: 'rate', measured: 'measured_at', from: 'enter_at', to: 'leave_at', exponent: 'exponent' },
      gives: { dose: { dimension: 'dose', name: 'D_sum', says: 'dose outside over the stay', unit: doseUnit } },
      says: 'rate outside added up over the stay',
    }),
  ],
  compare: [{ first: 'D_out', second: 'D_sum', band: 0.0001, says: 'the two are one integral' }],
}
