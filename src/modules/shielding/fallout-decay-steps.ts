import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'

export const rateUnit = { SI: 'mSv/hr', US: 'rem/hr' }
export const doseUnit = { SI: 'mSv', US: 'rem' }
export const timeUnit = { SI: 'hr', US: 'hr' }

const law = cite('fallout-law')
const summed = cite('fallout-law', 'integral of the law')
const rate = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: rateUnit, source: law })

/** The rate referred to one hour, and the rates outside at both ends of the stay. */
export const rates: readonly Step[] = [
  rate('R_1', 'rate * (measured_at / (1 hr))^exponent', 'rate outside referred to one hour'),
  rate('R_a', 'R_1 * (enter_at / (1 hr))^(-exponent)', 'rate outside at the beginning'),
  rate('R_b', 'R_1 * (leave_at / (1 hr))^(-exponent)', 'rate outside at the end'),
  step('k_fall', 'R_a / R_b', { says: 'fall of the rate over the stay' }),
  step('R_in', 'R_a / protection_factor', { says: 'rate inside at the beginning', unit: rateUnit }),
]

/** Dose outside and inside over the stay; `D_end` is what the place has left from the beginning on. */
export const doseOfStay: readonly Step[] = [
  step('u_a', '(enter_at / (1 hr))^(1 - exponent)', { says: 'time term of the beginning' }),
  step('u_b', '(leave_at / (1 hr))^(1 - exponent)', { says: 'time term of the end' }),
  step('D_1', 'R_1 * (1 hr) / (exponent - 1)', {
    says: 'dose outside from one hour on without end',
    unit: doseUnit,
    source: summed,
  }),
  step('D_out', 'D_1 * (u_a - u_b)', { says: 'dose outside over the stay', unit: doseUnit, source: summed }),
  step('D_end', 'D_1 * u_a', {
    says: 'dose outside from the beginning on without end',
    symbol: 'D_inf',
    unit: doseUnit,
    source: summed,
  }),
  step('D_in', 'D_out / protection_factor', { says: 'dose of the stay', unit: doseUnit }),
]

/** When the limit would be reached inside, if it is within the law. */
export const limitReached: Step = when(
  { formula: 'protection_factor * dose_limit < D_end' },
  {
    says: 'a stay without end would pass the limit',
    yes: [
      step('u_stay', 'u_a - protection_factor * dose_limit / D_1', { says: 'time term at which the limit is reached' }),
      when(
        { formula: 'u_stay >= (4400 hr / (1 hr))^(1 - exponent)' },
        {
          says: 'that is within half a year, while the law holds',
          yes: [
            step('t_stay', '(1 hr) * u_stay^(-1 / (exponent - 1))', {
              says: 'time at which a longer stay reaches the limit',
              unit: timeUnit,
              source: summed,
            }),
          ],
        },
      ),
    ],
  },
)

/** The earliest end of the stay after which life in the open at the place keeps the limit, if there is one within the law. */
export const leaving: Step = when(
  { formula: 'D_end <= dose_limit' },
  {
    says: 'the open brings less than the limit from the beginning on',
    yes: [step('t_leave', 'enter_at', { says: 'earliest time of leaving for good', symbol: 't_l', unit: timeUnit })],
    no: [
      when(
        { formula: 'D_end < protection_factor * dose_limit' },
        {
          says: 'a stay without end would keep the limit',
          yes: [
            step('D_left', '(dose_limit - D_end / protection_factor) / (1 - 1 / protection_factor)', {
              says: 'dose that may be left outside at leaving',
              symbol: 'D_l',
              unit: doseUnit,
              source: summed,
            }),
            step('D_late', 'D_1 * (4400 hr / (1 hr))^(1 - exponent)', {
              says: 'dose outside from half a year on without end',
              symbol: 'D_rest',
              unit: doseUnit,
              source: summed,
            }),
            when(
              { formula: 'D_late <= D_left' },
              {
                says: 'so little is left within half a year, while the law holds',
                yes: [
                  step('t_leave', '(1 hr) * (D_1 / D_left)^(1 / (exponent - 1))', {
                    says: 'earliest time of leaving for good',
                    symbol: 't_l',
                    unit: timeUnit,
                    source: summed,
                  }),
                ],
              },
            ),
          ],
        },
      ),
    ],
  },
)

/** When the rate outside has fallen to the one waited for. */
export const wantedRate: Step = when(
  { given: 'rate_wanted' },
  {
    yes: [
      step('t_wanted', '(1 hr) * (R_1 / rate_wanted)^(1 / exponent)', {
        says: 'time at which the rate outside is the one waited for',
        symbol: 't_w',
        unit: timeUnit,
        source: law,
      }),
    ],
  },
)
