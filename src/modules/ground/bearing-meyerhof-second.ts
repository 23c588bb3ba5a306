import type { Second, Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { limit, step, when } from '../words.ts'
import { byStrength } from './bearing-steps.ts'
import { pressureUnit } from './ground-units.ts'
import { againstSlipLines, drainedStrip, fieldFits, undrainedStrip } from './strip-second.ts'

const vesic = cite('vesic-1973', 'from memory')
const hansen = cite('hansen-1970', 'from memory')
const factor = (name: string, formula: string, more: { says: string; symbol: string; source?: Citation }): Step =>
  step(name, formula, { source: vesic, ...more })
const net = (formula: string, source: Citation): Step =>
  step('q_net_V', formula, {
    says: 'net bearing resistance by this theory',
    symbol: 'q_nV',
    unit: pressureUnit,
    source,
  })

const ratioOfDepth: readonly Step[] = [
  when(
    { formula: 'depth <= width' },
    {
      says: 'the base is no deeper than it is wide',
      yes: [factor('k_D', 'depth / width', { says: 'measure of depth', symbol: 'k_D', source: hansen })],
      no: [factor('k_D', 'atan(depth / width)', { says: 'measure of depth', symbol: 'k_D', source: hansen })],
    },
  ),
]

/** The line with and without the factors of depth and of the horizontal load. */
const line = (formula: (depth: boolean, inclined: boolean) => Step, depth: readonly Step[], slant: readonly Step[]) => {
  const inclined = (counted: boolean): Step =>
    when({ given: 'H' }, { yes: [...slant, formula(counted, true)], no: [formula(counted, false)] })
  return when(
    { choice: 'above', is: ['counted'] },
    { yes: [...ratioOfDepth, ...depth, inclined(true)], no: [inclined(false)] },
  )
}

const drained: readonly Step[] = [
  factor('N_gV', '2 * (N_q + 1) * tan(phi)', { says: 'factor of the weight', symbol: 'N_gamma_V' }),
  factor('s_cV', '1 + N_q / N_c * B_e / L_e', { says: 'shape, cohesion', symbol: 's_c_V' }),
  factor('s_qV', '1 + B_e / L_e * tan(phi)', { says: 'shape, overburden', symbol: 's_q_V' }),
  factor('s_gV', '1 - 0.4 * B_e / L_e', { says: 'shape, weight', symbol: 's_gamma_V' }),
  line(
    (depth, inclined) => {
      const part = (all: string, deep: string, slanted: string) =>
        `${all}${depth ? deep : ''}${inclined ? slanted : ''}`
      return net(
        `${part('c * N_c * s_cV', ' * d_cV', ' * i_cV')} + ${part('q_eff * N_q * s_qV', ' * d_qV', ' * i_qV')} + ${part('gamma_below * B_e / 2 * N_gV * s_gV', '', ' * i_gV')} - q_eff`,
        vesic,
      )
    },
    [
      factor('d_qV', '1 + 2 * tan(phi) * (1 - sin(phi))^2 * k_D', {
        says: 'depth, overburden',
        symbol: 'd_q_V',
        source: hansen,
      }),
      factor('d_cV', '1 + 0.4 * k_D', { says: 'depth, cohesion', symbol: 'd_c_V', source: hansen }),
    ],
    [
      factor('t_H', 'H / (V_eff + A_e * c / tan(phi))', { says: 'share of the horizontal load', symbol: 't_H' }),
      factor('m_B', '(2 + B_e / L_e) / (1 + B_e / L_e)', { says: 'exponent, load along the width', symbol: 'm_B' }),
      factor('i_qV', '(1 - t_H)^m_B', { says: 'inclination, overburden', symbol: 'i_q_V' }),
      factor('i_gV', '(1 - t_H)^(m_B + 1)', { says: 'inclination, weight', symbol: 'i_gamma_V' }),
      factor('i_cV', 'i_qV - (1 - i_qV) / (N_c * tan(phi))', { says: 'inclination, cohesion', symbol: 'i_c_V' }),
    ],
  ),
]

const undrained: readonly Step[] = [
  line(
    (depth, inclined) =>
      net(
        `(pi + 2) * c_u * (1 + 0.2 * B_e / L_e${depth ? ' + 0.4 * k_D' : ''}${inclined ? ' - (1 - sqrt(1 - t_H)) / 2' : ''})`,
        hansen,
      ),
    [],
    [factor('t_H', 'H / (A_e * c_u)', { says: 'share of the horizontal load', symbol: 't_H', source: hansen })],
  ),
]

/** Another theory for the same ground: Vesic's, and for clay without friction Hansen's. */
export const bearingMeyerhofSecond: Second = {
  title: 'Slip lines under a strip; beside it Vesic 1973, or Hansen 1970',
  says: 'A strip of this width by its slip lines checks the terms. Vesic, and Hansen for clay, are a comparison, no check: the same terms with other factors.',
  limits: [
    fieldFits('c'),
    limit('t_H < 1', {
      says: 'the horizontal load is less than the base can take',
      advice: 'The base slides',
      otherwise: 'refuse',
      on: 'H',
      source: hansen,
    }),
  ],
  steps: [byStrength([...drainedStrip('phi', 'c'), ...drained], [...undrainedStrip('c_u'), ...undrained])],
  compare: [
    ...againstSlipLines({ band: 0.5, says: 'the terms fall short by a quarter at 20 degrees, more below' }),
    {
      first: 'q_net',
      second: 'q_net_V',
      band: 0.5,
      says: 'authors differ: for a square Meyerhof raises the part of weight and Vesic lowers it',
      when: { choice: 'strength', is: ['drained'] },
    },
    {
      first: 'q_net',
      second: 'q_net_V',
      band: 0.2,
      says: 'shape and depth are multiplied here and added there',
      when: { choice: 'strength', is: ['undrained'] },
    },
  ],
}
