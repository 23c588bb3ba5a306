import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { allowable } from './bearing-allowable.ts'
import {
  byStrength,
  effectiveArea,
  loadLessUplift,
  overburden,
  prandtlFactors,
  totalOverburden,
  weightBelow,
} from './bearing-steps.ts'
import { angleUnit, pressureUnit } from './ground-units.ts'

const meyerhof = cite('meyerhof-1963', 'from memory')
const factor = (name: string, formula: string, says: string, symbol?: string): Step =>
  step(name, formula, { says, source: meyerhof, ...(symbol ? { symbol } : {}) })
const stress = (name: string, formula: string, more: { says: string; source?: Citation; symbol?: string }): Step =>
  step(name, formula, { source: meyerhof, ...more, unit: pressureUnit })
const slant = (load: string): Step =>
  step('alpha_V', `atan(H / ${load})`, {
    says: 'slope of the load from the vertical',
    symbol: 'alpha_V',
    unit: angleUnit,
    source: cite('statics'),
  })

/** Lines where the depth is counted and where a horizontal load is given, and the one line that takes the factors of both. */
const withFactors = (of: {
  readonly depth: readonly Step[]
  readonly slant: readonly Step[]
  readonly line: (depth: boolean, slant: boolean) => Step
}): Step => {
  const inclined = (depth: boolean): Step =>
    when({ given: 'H' }, { yes: [...of.slant, of.line(depth, true)], no: [of.line(depth, false)] })
  return when({ choice: 'above', is: ['counted'] }, { yes: [...of.depth, inclined(true)], no: [inclined(false)] })
}

const drained: readonly Step[] = [
  loadLessUplift,
  ...effectiveArea('V_eff'),
  weightBelow('width'),
  ...prandtlFactors('phi'),
  factor('N_gamma', '(N_q - 1) * tan(1.4 * phi)', 'factor of the weight'),
  factor('K_p', 'tan(45 deg + phi / 2)^2', 'passive coefficient, which the other factors take'),
  factor('s_c', '1 + 0.2 * K_p * B_e / L_e', 'shape, cohesion'),
  factor('s_q', '1 + 0.1 * K_p * B_e / L_e', 'shape, overburden and weight'),
  withFactors({
    depth: [
      factor('d_c', '1 + 0.2 * sqrt(K_p) * depth / width', 'depth, cohesion'),
      factor('d_q', '1 + 0.1 * sqrt(K_p) * depth / width', 'depth, overburden and weight'),
    ],
    slant: [
      slant('V_eff'),
      factor('i_q', '(1 - alpha_V / (90 deg))^2', 'inclination, cohesion and overburden'),
      factor('i_gamma', '(1 - alpha_V / phi)^2', 'inclination, weight'),
    ],
    line: (depth, inclined) => {
      const [c, q, g] = [
        `c * N_c * s_c${depth ? ' * d_c' : ''}`,
        `q_eff * N_q * s_q${depth ? ' * d_q' : ''}`,
        `gamma_below * B_e / 2 * N_gamma * s_q${depth ? ' * d_q' : ''}`,
      ]
      return stress('q_R', inclined ? `(${c} + ${q}) * i_q + ${g} * i_gamma` : `${c} + ${q} + ${g}`, {
        says: 'effective bearing resistance: cohesion, overburden, weight',
        symbol: "q'_R",
      })
    },
  }),
  stress('q_gross', 'q_R + u', { says: 'gross, in total stress', symbol: 'q_g', source: cite('statics') }),
  stress('q_net', 'q_R - q_eff', { says: 'net of the overburden', symbol: 'q_n', source: cite('statics') }),
  ...allowable('V_eff / A_e - q_eff'),
]

const undrained: readonly Step[] = [
  totalOverburden,
  ...effectiveArea('load'),
  factor('s_c', '1 + 0.2 * B_e / L_e', 'shape'),
  withFactors({
    depth: [factor('d_c', '1 + 0.2 * depth / width', 'depth')],
    slant: [slant('load'), factor('i_q', '(1 - alpha_V / (90 deg))^2', 'inclination')],
    line: (depth, inclined) =>
      stress(
        'q_gross',
        inclined
          ? `((pi + 2) * c_u * s_c${depth ? ' * d_c' : ''} + q_tot) * i_q`
          : `(pi + 2) * c_u * s_c${depth ? ' * d_c' : ''} + q_tot`,
        { says: 'gross, in total stress', symbol: 'q_g' },
      ),
  }),
  stress('q_net', 'q_gross - q_tot', { says: 'net of the overburden', symbol: 'q_n', source: cite('statics') }),
  ...allowable('load / A_e - q_tot'),
]

/** Meyerhof's resistance and the pressure that it allows. */
export const bearingMeyerhofSteps: readonly Step[] = [...overburden, byStrength(drained, undrained)]
