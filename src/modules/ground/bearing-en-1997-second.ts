import type { Second, Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { byStrength } from './bearing-steps.ts'
import { pressureUnit } from './ground-units.ts'
import { againstSlipLines, drainedStrip, fieldFits, undrainedStrip } from './strip-second.ts'

const hansen = cite('hansen-1970', 'from memory')
const factor = (name: string, formula: string, says: string, symbol: string): Step =>
  step(name, formula, { says, symbol, source: hansen })
const net = (formula: string, source: Citation = hansen): Step =>
  step('q_net_H', formula, {
    says: 'net bearing resistance by this theory',
    symbol: 'q_nH',
    unit: pressureUnit,
    source,
  })

const drained: readonly Step[] = [
  factor('N_gH', '1.5 * (N_q - 1) * tan(phi_d)', 'factor of the weight', 'N_gamma_H'),
  factor('s_cH', '1 + N_q / N_c * B_e / L_e', 'shape, cohesion', 's_c_H'),
  factor('s_gH', '1 - 0.4 * B_e / L_e', 'shape, weight', 's_gamma_H'),
  when(
    { given: 'H' },
    {
      yes: [
        factor('i_qH', '(1 - 0.5 * t_H)^5', 'inclination, overburden', 'i_q_H'),
        factor('i_cH', 'i_qH - (1 - i_qH) / (N_q - 1)', 'inclination, cohesion', 'i_c_H'),
        factor('i_gH', '(1 - 0.7 * t_H)^5', 'inclination, weight', 'i_gamma_H'),
        net('c_d * N_c * s_cH * i_cH + q_eff * N_q * s_q * i_qH + gamma_below * B_e / 2 * N_gH * s_gH * i_gH - q_eff'),
      ],
      no: [net('c_d * N_c * s_cH + q_eff * N_q * s_q + gamma_below * B_e / 2 * N_gH * s_gH - q_eff')],
    },
  ),
]

const undrained: readonly Step[] = [
  when(
    { given: 'H' },
    {
      yes: [net('(pi + 2) * c_ud * (1 + 0.2 * B_e / L_e - (1 - sqrt(1 - t_H)) / 2)')],
      no: [net('5 * c_ud * (1 + 0.2 * B_e / L_e)', cite('skempton', 'without his part of depth'))],
    },
  ),
]

/** Another theory for the same ground: Hansen's, and for clay under a vertical load Skempton's. */
export const bearingEn1997Second: Second = {
  title: 'Slip lines under a strip; beside it Hansen 1970, or Skempton 1951',
  says: 'A strip of this width by its slip lines checks the terms. Hansen and Skempton are a comparison, no check: the same terms with other factors, and without parts of depth.',
  limits: [fieldFits('c_d')],
  steps: [byStrength([...drainedStrip('phi_d', 'c_d'), ...drained], [...undrainedStrip('c_ud'), ...undrained])],
  compare: [
    ...againstSlipLines({ band: 0.35, says: 'a fifth at most from 15 degrees on, more with less friction' }),
    {
      first: 'q_net',
      second: 'q_net_H',
      band: 0.4,
      says: 'authors differ in the part of weight: Hansen has a quarter less, and less for a square',
      when: { choice: 'strength', is: ['drained'] },
    },
    {
      first: 'q_net',
      second: 'q_net_H',
      band: 0.06,
      says: '5 against 5.14, and another form of the horizontal load',
      when: { choice: 'strength', is: ['undrained'] },
    },
  ],
}
