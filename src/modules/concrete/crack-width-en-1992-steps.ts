import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { size, strength } from './bar-steps.ts'
import { crackedSection, stripSteps } from './crack-width-parts.ts'

const en = (at: string) => cite('en-1992-1-1', at)
const modulus = { SI: 'GPa', US: 'ksi' }
const factor = (formula: string): Step =>
  step('k_t', formula, { says: 'factor for the duration of the load', source: en('7.3.4(2)') })

/** From the strip to the crack width `w_k`: cracked section with creep, effective area, strain, crack spacing. */
export const crackWidthEn1992Steps: readonly Step[] = [
  ...stripSteps,
  step('E_s', '200 GPa', { says: 'modulus of the steel', unit: modulus, source: en('3.2.7(4)') }),
  step('E_c_eff', 'E_cm / (1 + creep)', {
    says: 'modulus of the concrete with creep',
    unit: modulus,
    source: en('Eq. 7.20'),
  }),
  ...crackedSection('E_s * A_s / (E_c_eff * width * d)', 'sigma_s', en('7.3.4(2)')),
  step('h_c', 'min(2.5 * (thickness - d), (thickness - x) / 3, thickness / 2)', {
    says: 'depth of the effective area in tension',
    unit: size,
    source: en('7.3.2(3)'),
  }),
  step('rho_eff', 'A_s / (width * h_c)', { says: 'steel over the effective area', source: en('Eq. 7.10') }),
  when({ choice: 'duration', is: ['long'] }, { yes: [factor('0.4')], no: [factor('0.6')] }),
  step('sigma_ct', 'k_t * f_ct_eff / rho_eff * (1 + E_s / E_cm * rho_eff)', {
    says: 'part of that stress which the concrete between cracks carries',
    unit: strength,
    source: en('Eq. 7.9'),
  }),
  step('eps_m', 'max(sigma_s - sigma_ct, 0.6 * sigma_s) / E_s', {
    symbol: 'Delta_epsilon',
    says: 'mean strain of the steel over that of the concrete',
    source: en('Eq. 7.9'),
  }),
  when(
    { formula: 'spacing <= 5 * (cover + bar_size / 2)' },
    {
      says: 'the bars stand close enough to share the cracking',
      yes: [
        step('s_r_max', '3.4 * cover + 0.425 * 0.8 * 0.5 * bar_size / rho_eff', {
          says: 'largest distance of cracks: ribbed bars, bending',
          unit: size,
          source: en('Eq. 7.11'),
        }),
      ],
      no: [
        step('s_r_max', '1.3 * (thickness - x)', {
          says: 'largest distance of cracks',
          unit: size,
          source: en('Eq. 7.14'),
        }),
      ],
    },
  ),
  step('w_k', 's_r_max * eps_m', { says: 'crack width', unit: size, source: en('Eq. 7.8') }),
]
