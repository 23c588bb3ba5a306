import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { lengthUnit, lineLoadUnit, lineMomentUnit, pressureUnit } from './ground-units.ts'
import { slidingResistance } from './retaining-front.ts'

const statics = cite('statics')
const das = cite('das-foundation', 'from memory')
const long = (name: string, formula: string, says: string, symbol = name): Step =>
  step(name, formula, { says, symbol, unit: lengthUnit, source: statics })
const force = (name: string, formula: string, says: string, source: Citation = statics): Step =>
  step(name, formula, { says, unit: lineLoadUnit, source })
const moment = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lineMomentUnit, source: statics })
const stress = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: pressureUnit, source: statics })

const coefficient: Step = when(
  { given: 'K_given' },
  {
    yes: [step('K_a', 'K_given', { says: 'coefficient of the earth pressure, as given' })],
    no: [
      step('k_r', 'sqrt(cos(alpha)^2 - cos(phi)^2)', {
        says: 'root in the coefficient for sloping ground',
        source: cite('rankine', 'sloping ground'),
      }),
      step('K_a', 'cos(alpha) * (cos(alpha) - k_r) / (cos(alpha) + k_r)', {
        says: 'active coefficient, pressure parallel to the ground',
        source: cite('rankine', 'sloping ground'),
      }),
    ],
  },
)

const pressing: readonly Step[] = [
  long('B', 'toe + stem_foot + heel', 'width of the base'),
  long('h_p', 'base + stem + heel * tan(alpha)', 'height of the upright plane through the heel'),
  long('h_d', 'h_p - water', 'its height above the water'),
  coefficient,
  force(
    'P_e',
    'K_a * (surcharge * h_p + gamma * h_d^2 / 2 + gamma * h_d * water + (gamma_sat - gamma_w) * water^2 / 2)',
    'earth force on this plane: surcharge, fill above and below the water',
  ),
  moment(
    'M_e',
    'K_a * (surcharge * h_p^2 / 2 + gamma * h_d^2 / 2 * (water + h_d / 3) + gamma * h_d * water^2 / 2 + (gamma_sat - gamma_w) * water^3 / 6)',
    'its moment about the base, were it level',
  ),
  force('P_w', 'gamma_w * water^2 / 2', 'water force on this plane'),
  force('P_h', 'P_e * cos(alpha) + P_w', 'horizontal force'),
  force('P_v', 'P_e * sin(alpha)', 'upright part of the earth force'),
  force('U', 'gamma_w * water * B / 2', 'uplift, from all of it under the heel to none under the toe'),
]

const weighing: readonly Step[] = [
  force('W_s', 'gamma_c * stem_top * stem', 'stem, its upright part'),
  long('x_s', 'toe + stem_foot - stem_top / 2', 'its lever from the toe'),
  force('W_t', 'gamma_c * (stem_foot - stem_top) * stem / 2', 'stem, its taper'),
  long('x_t', 'toe + 2 / 3 * (stem_foot - stem_top)', 'its lever from the toe'),
  force('W_b', 'gamma_c * base * B', 'base, with its lever at the middle'),
  long('h_b', 'max(water - base, 0 m)', 'fill over the heel below the water'),
  force('W_f', 'heel * (gamma * (stem - h_b) + gamma_sat * h_b)', 'fill over the heel'),
  long('x_f', 'B - heel / 2', 'its lever from the toe'),
  force('W_r', 'gamma * heel^2 * tan(alpha) / 2', 'fill that rises above the stem'),
  long('x_r', 'B - heel / 3', 'its lever from the toe'),
]

const balance: readonly Step[] = [
  force('V_b', 'W_s + W_t + W_b + W_f + W_r + P_v - U', 'load on the ground'),
  moment(
    'M_R',
    'W_s * x_s + W_t * x_t + W_b * B / 2 + W_f * x_f + W_r * x_r + P_v * B',
    'moment that holds, about the toe',
  ),
  moment('M_O', 'M_e * cos(alpha) + P_w * water / 3 + U * 2 / 3 * B', 'moment that overturns, about the toe'),
  step('F_o', 'M_R / M_O', { says: 'factor against overturning', source: das }),
  check('stands', 'F_o >= F_over', { says: 'the wall does not overturn' }),
  slidingResistance,
  step('F_s', 'R_s / P_h', { says: 'factor against sliding', source: das }),
  check('holds', 'F_s >= F_slide', { says: 'the wall does not slide' }),
]

const pressure: readonly Step[] = [
  long('x_V', '(M_R - M_O) / V_b', 'lever of the resultant from the toe'),
  long('e', 'abs(B / 2 - x_V)', 'eccentricity of the load on the ground'),
  check('middle_third', 'e <= B / 6', { says: 'the resultant stands in the middle third: no gap under the heel' }),
  when(
    { formula: 'e <= B / 6' },
    {
      yes: [
        stress('q_max', 'V_b / B * (1 + 6 * e / B)', 'pressure under the edge that is pressed most'),
        stress('q_min', 'V_b / B * (1 - 6 * e / B)', 'pressure under the other edge'),
      ],
      no: [stress('q_max', '4 * V_b / (3 * (B - 2 * e))', 'pressure under the edge, where a gap opens at the other')],
    },
  ),
  step('F_b', 'q_ult / q_max', { says: 'factor on the bearing resistance', source: das }),
  check('bears', 'F_b >= F_bear', { says: 'the ground bears the wall' }),
]

/** Forces on a length of wall, and its factors against overturning, sliding and bearing failure. */
export const retainingSteps: readonly Step[] = [...pressing, ...weighing, ...balance, ...pressure]
