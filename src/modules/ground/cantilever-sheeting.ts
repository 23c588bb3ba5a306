import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { cantileverSheetingCases } from './cantilever-sheeting-cases.ts'
import { cantileverSheetingInputs } from './cantilever-sheeting-inputs.ts'
import { cantileverSheetingSecond } from './cantilever-sheeting-second.ts'
import { cantileverSheetingSketch } from './cantilever-sheeting-sketch.ts'
import { cantileverSheetingSteps } from './cantilever-sheeting-steps.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

const das = cite('das-foundation', 'cantilever sheet piles')

/** Embedment and section of a sheet wall that stands by its embedment alone. */
export const cantileverSheeting = defineModule({
  id: 'cantilever-sheeting',
  version: '1.0.2',
  title: 'Cantilever sheet wall',
  asks: 'How deep must the sheet wall of the pit be driven, and what moment does it bear?',
  inputs: cantileverSheetingInputs,
  steps: cantileverSheetingSteps,
  results: ['D_d', 'D_0', 'M_max', 'W_req', 'L_w', 'P', 'y_P'],
  covers: ['pit-sides'],
  drawing: ['D_d', 'L_w', 'W_req'],
  limits: [
    saturatedNoLighter(),
    limit('sigma_6 > 0 kPa', {
      says: 'the clay resists more than the ground behind the wall presses',
      advice: 'No embedment holds this wall: prop it, or retain less',
      otherwise: 'refuse',
      on: 'c_below',
      source: das,
    }),
    {
      holds: { given: 'c_below' },
      when: { choice: 'below', is: ['clay'] },
      says: 'clay below formation has its undrained strength',
      advice: 'Give `c_below`',
      otherwise: 'refuse',
      on: 'below',
    },
    choiceLimit('below', ['clay'], {
      when: { given: 'c_below' },
      says: 'undrained strength goes with clay',
      advice: 'Leave `c_below` out, or choose `clay`',
      otherwise: 'refuse',
      on: 'c_below',
    }),
    limit('water_depth >= L_w', {
      when: { choice: 'water', is: ['below the toe'] },
      says: 'the water stands below the toe of the wall',
      advice: 'Choose `level on both sides`, or lower the water further',
      otherwise: 'refuse',
      on: 'water_depth',
      source: cite('statics'),
    }),
    limit('passive_factor * (1 + longer) >= 1.2', {
      says: 'the wall has a reserve of a fifth in depth, or a passive factor',
      otherwise: 'warn',
      on: 'longer',
      source: das,
    }),
    limit('depth <= 5 m', {
      says: 'the wall retains no more than about 5 m (16 ft)',
      advice: 'A higher cantilever moves too much: prop it',
      otherwise: 'warn',
      on: 'depth',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Water that stands higher behind the wall than before it is not covered: it presses in full, and seeps round the toe. Pump from wells on both sides or choose another wall.',
    'A cantilever leans into the pit by a per cent or so of its height, and the ground behind it settles: keep buildings, pipes and heavy plant away.',
    'The balance holds for the depth given: over-dig, trenches for drains and softening at the foot of the wall belong to it.',
    'Moments are those of service at the balance: factors on them come from the code of the wall.',
    {
      says: 'Clay is strong only for a while: after months, reckon with its drained strength too. Cracks behind the wall may fill with rain.',
      when: { choice: 'below', is: ['clay'] },
    },
    {
      says: 'Below formation the soil is taken as submerged, also where the water has been lowered to formation: on the safe side.',
      when: { choice: 'water', is: ['level on both sides'] },
    },
  ],
  second: cantileverSheetingSecond,
  sketch: cantileverSheetingSketch,
  published: cantileverSheetingCases,
  example: {
    below: 'sand',
    water: 'level on both sides',
    depth: '3 m',
    water_depth: '2.8 m',
    surcharge: '10 kPa',
    gamma: '17.5 kN/m^3',
    gamma_sat: '20 kN/m^3',
    phi: '33 deg',
    steel_stress: '160 MPa',
  },
})
