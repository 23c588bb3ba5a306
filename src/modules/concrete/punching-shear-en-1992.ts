import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { punchingCases } from './punching-shear-en-1992-cases.ts'
import { punchingInputs } from './punching-shear-en-1992-inputs.ts'
import { drawPunching } from './punching-shear-en-1992-sketch.ts'
import { punchingSteps } from './punching-shear-en-1992-steps.ts'

/** Whether a slab or raft carries a load on a small area without punching steel, by EN 1992-1-1 6.4. */
export const punchingShearEn1992 = defineModule({
  id: 'punching-shear-en-1992',
  version: '1.0.0',
  title: 'Punching shear by EN 1992',
  asks: 'Does this slab or raft carry a load on a small area without punching steel?',
  code: 'EN 1992-1-1',
  inputs: punchingInputs,
  steps: punchingSteps,
  results: ['F_Rd', 'v_Rd_c', 'v_1', 'v_0', 'u_1', 'd'],
  covers: ['punching'],
  drawing: ['side_1', 'side_2'],
  limits: [
    limit('max(side_1, side_2) <= 2 * min(side_1, side_2)', {
      says: 'the loaded area is at most twice as long as wide',
      advice: 'The shear of a long area gathers at its ends: take pieces there, each twice as long as wide at most',
      otherwise: 'warn',
      on: 'side_1',
      source: cite('practice'),
    }),
    limit('max(depth_1, depth_2) <= 1.25 * min(depth_1, depth_2)', {
      says: 'the depths of the two layers are within a quarter of each other',
      advice: 'Their mean stands for two layers that lie on each other',
      otherwise: 'warn',
      on: 'depth_1',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The area is that where the load meets the slab: through screed, timber or fill it has spread.',
    'Pressure of the ground under a raft within the perimeter relieves it (6.4.4(2)); it is not counted, on the safe side.',
    'Loads nearer to each other than four depths share a perimeter: check them together too.',
    'An opening within six depths of the load takes a part out of the perimeter (6.4.2(3)).',
    'Only bars that are anchored past the perimeter count. Bending under the load, and one-way shear, are checks of their own.',
    'Tension in the slab lessens the resistance; thrust, which helps, is not counted.',
    'A column that holds the building against sway, or spans that differ by more than a quarter, need the factor for uneven shear worked out.',
    'The strength is that of cylinders. The constants 0.18, 0.035, 0.4 and the factors for uneven shear are the recommended ones: see the national annex.',
  ],
  sketch: drawPunching,
  published: punchingCases,
  example: {
    load: '80 kN',
    place: 'inside, no moment',
    side_1: '250 mm',
    side_2: '250 mm',
    depth_1: '240 mm',
    depth_2: '228 mm',
    steel_1: '0.35 percent',
    steel_2: '0.37 percent',
    f_ck: '30 MPa',
  },
})
