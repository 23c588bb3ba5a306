import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step, when } from '../words.ts'
import { darcyRings } from './darcy-rings.ts'
import { flowUnit, lengthUnit } from './ground-units.ts'

const head = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lengthUnit, source: cite('statics') })

const rings = (low: string, high: string, thickness: string): Step =>
  solve(darcyRings, {
    takes: { k: 'k_high', inner: 'r_e', outer: 'R_0_high', low, high, thickness },
    words: { aquifer: { choice: 'aquifer' } },
    gives: { flow: { dimension: 'flow', name: 'Q_rings', says: 'flow through every ring', unit: flowUnit } },
    says: 'head marched outwards from the ring, ring by ring',
    source: cite('dupuit-thiem', "Darcy's law"),
  })

/** The flow the pumps are sized for, by Darcy's law through rings instead of the logarithm. */
export const pitInflowSecond: Second = {
  title: "Darcy's law ring by ring",
  says: 'The flow for the highest permeability again, from the gradient in every ring; only the two radii are shared.',
  steps: [
    when(
      { choice: 'aquifer', is: ['confined'] },
      {
        yes: [
          head('h_low', 'aquifer_base - (water_depth + drawdown)', 'lowered head above the base of the aquifer'),
          head('h_high', 'aquifer_base - water_depth', 'the same far away'),
          rings('h_low', 'h_high', 'D'),
        ],
        no: [rings('h_e', 'H', 'H')],
      },
    ),
  ],
  compare: [{ first: 'Q_high', second: 'Q_rings', band: 0.001, says: 'thin rings take the place of the integral' }],
}
