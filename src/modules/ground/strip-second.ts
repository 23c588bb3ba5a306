import type { Comparison, Limit, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { limit, solve, step } from '../words.ts'
import { pressureUnit } from './ground-units.ts'
import { stripSlipLines } from './strip-slip-lines.ts'

const byLines = (takes: Readonly<Record<string, string>>): Step =>
  solve(stripSlipLines, {
    takes,
    gives: {
      pressure: {
        dimension: 'pressure',
        name: 'q_slip',
        says: 'what such a strip bears by its slip lines',
        symbol: 'q_sl',
        unit: pressureUnit,
      },
    },
    says: 'field of slip lines under a rough strip as wide',
    source: cite('prandtl', 'with the weight of the soil'),
  })

/** The three terms of a method for a strip, and the same strip by its slip lines, in effective stress. */
export const drainedStrip = (phi: string, c: string): readonly Step[] => [
  step('q_strip', `${c} * N_c + q_eff * N_q + gamma_below * B_e / 2 * N_gamma`, {
    says: 'the three terms for a strip: no factors of shape, depth or slant',
    symbol: 'q_st',
    unit: pressureUnit,
  }),
  byLines({ phi, c, gamma: 'gamma_below', q: 'q_eff', width: 'B_e' }),
]

/** The one term of clay for a strip, and the same strip by its slip lines, net of the overburden. */
export const undrainedStrip = (c: string): readonly Step[] => [
  step('q_strip', `(pi + 2) * ${c}`, { says: 'the same for a strip', symbol: 'q_st', unit: pressureUnit }),
  byLines({ c, width: 'B_e' }),
]

/** A field of slip lines wants strength or load beside the strip. */
export const fieldFits = (c: string): Limit =>
  limit(`q_eff + ${c} >= 0.03 * gamma_below * B_e`, {
    says: 'ground beside the base or cohesion holds the edge of the base',
    otherwise: 'refuse',
    on: 'depth',
  })

/** How near the terms must come to the slip lines: in clay without friction they are one theory. */
export const againstSlipLines = (drained: { band: number; says: string }): readonly Comparison[] => [
  { first: 'q_strip', second: 'q_slip', ...drained, when: { choice: 'strength', is: ['drained'] } },
  {
    first: 'q_strip',
    second: 'q_slip',
    band: 0.01,
    says: 'one theory, in closed form and node by node',
    when: { choice: 'strength', is: ['undrained'] },
  },
]
