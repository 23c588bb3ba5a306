import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { solve } from '../words.ts'
import { closedUpStepping } from './closed-up-stepping.ts'
import { percent } from './living-units.ts'

/** The same room by small steps of time. */
export const closedUpSecond: Second = {
  title: 'The room step by step',
  says: 'Gases and wall are stepped through the time wanted from their rates of change, without exponential, logarithm or root. It finds a slip in the closed forms, not in what people give off.',
  steps: [
    solve(closedUpStepping, {
      takes: {
        volume: 'volume',
        generation: 'generation',
        leakage: 'leakage',
        wanted: 'wanted',
        co2_start: 'co2_start',
        co2_outdoor: 'co2_outdoor',
        oxygen_start: 'o_0',
        oxygen_outdoor: 'oxygen_outdoor',
        quotient: 'quotient',
        flux: 'q_w',
        conductivity: 'conductivity',
        diffusivity: 'diffusivity',
      },
      gives: {
        c: { dimension: 'ratio', name: 'c_step', says: 'carbon dioxide at the end', symbol: 'c_t', unit: percent },
        o: { dimension: 'ratio', name: 'o_step', says: 'oxygen at the end', symbol: 'o_t', unit: percent },
        rise: {
          dimension: 'temperature',
          name: 'dT_step',
          says: 'rise of the face of the wall',
          symbol: 'Delta_T_t',
          unit: { SI: 'K', US: 'delta_degF' },
        },
      },
      says: 'the room stepped through the time wanted',
      source: cite('mass-balance'),
    }),
  ],
  compare: [
    { first: 'c_w', second: 'c_step', band: 0.002, says: 'small steps follow the closed form' },
    { first: 'o_w', second: 'o_step', band: 0.002, says: 'small steps follow the closed form' },
    { first: 'dT_s', second: 'dT_step', band: 0.01, says: 'the layers stand for a continuous wall' },
  ],
}
