import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { bracedPitCases } from './braced-pit-cases.ts'
import { bracedPitInputs } from './braced-pit-inputs.ts'
import { bracedPitSecond } from './braced-pit-second.ts'
import { bracedPitSketch } from './braced-pit-sketch.ts'
import { bracedPitSteps } from './braced-pit-steps.ts'

const peck = cite('peck-1969')

/** Struts, walers, wall and lagging of a braced pit by the apparent pressure of Peck and hinges at the struts. */
export const bracedPit = defineModule({
  id: 'braced-pit',
  version: '1.1.0',
  title: 'Braced pit',
  asks: 'What do struts, walers, wall and lagging of the braced pit bear?',
  inputs: bracedPitInputs,
  steps: bracedPitSteps,
  results: ['N_max', 'R_max', 'M_waler', 'M_wall', 'M_pile', 't_lag', 'p_e', 'P_d'],
  covers: ['pit-sides'],
  drawing: ['top_strut', 'spacing', 'N_max', 't_lag'],
  limits: [
    {
      holds: { given: 'phi' },
      when: { choice: 'ground', is: ['sand'] },
      says: 'sand has its angle of friction',
      advice: 'Give `phi`',
      otherwise: 'refuse',
      on: 'ground',
    },
    {
      holds: { given: 'c' },
      when: { choice: 'ground', is: ['soft to medium clay', 'stiff clay'] },
      says: 'clay has its undrained strength',
      advice: 'Give `c`',
      otherwise: 'refuse',
      on: 'ground',
    },
    choiceLimit('ground', ['soft to medium clay', 'stiff clay'], {
      when: { given: 'c' },
      says: 'undrained strength goes with clay',
      advice: 'Leave `c` out, or choose a clay',
      otherwise: 'refuse',
      on: 'c',
    }),
    choiceLimit('ground', ['sand'], {
      when: { given: 'phi' },
      says: 'the angle of friction goes with sand',
      advice: 'Leave `phi` out, or choose `sand`',
      otherwise: 'refuse',
      on: 'phi',
    }),
    limit('N_s > 4', {
      when: { choice: 'ground', is: ['soft to medium clay'] },
      says: 'the stability number is above 4',
      advice: 'Choose `stiff clay`',
      otherwise: 'refuse',
      on: 'ground',
      source: peck,
    }),
    limit('N_s <= 4', {
      when: { choice: 'ground', is: ['stiff clay'] },
      says: 'the stability number is at most 4',
      advice: 'Choose `soft to medium clay`',
      otherwise: 'refuse',
      on: 'ground',
      source: peck,
    }),
    limit('water_depth >= depth', {
      when: { choice: 'ground', is: ['sand'] },
      says: 'the water beside the pit is held below formation',
      advice: 'The envelope holds no water: drain the sand, or design the wall for earth and water pressure',
      otherwise: 'refuse',
      on: 'water_depth',
      source: peck,
    }),
    limit('0.5 m + sum(struts.short) <= 0.5 m', {
      says: 'every strut stands at least half a metre below the one above',
      advice: 'List the struts downwards',
      otherwise: 'refuse',
      on: 'struts',
      source: cite('practice'),
    }),
    limit('z_low < depth', {
      says: 'the lowest strut stands above formation',
      otherwise: 'refuse',
      on: 'struts',
      source: cite('statics'),
    }),
    limit('depth >= 6 m', {
      says: 'the pit is about 6 m (20 ft) deep or deeper',
      otherwise: 'warn',
      on: 'depth',
      source: peck,
    }),
  ],
  cautions: [
    'An envelope of struts that were measured: it is no pressure that acts at one time, and not one for the buried walls.',
    'The finished pit only. Every stage of digging, and of taking the struts out again, is reckoned too, and the loss of any one strut.',
    'Loads are those of service: factors on them and on the members come from the code of the members.',
    'A heavy load close to the edge, frost and swelling clay are not in it; the uniform load is taken to follow the envelope.',
    'The pit bottom has its own checks: heave in clay, uplift and piping where water stands below.',
    {
      says: 'The angle of friction and the drained state of the sand hold only while the pumps run.',
      when: { choice: 'ground', is: ['sand'] },
    },
    {
      says: 'The water in the pores of undrained clay is in the envelope; water from sand seams and cracks is not.',
      when: { choice: 'ground', is: ['soft to medium clay', 'stiff clay'] },
    },
    {
      says: 'Lagging is set as the pit goes down, tight against the ground: what has run out behind it does not arch.',
      when: { given: 'pile_spacing' },
    },
  ],
  second: bracedPitSecond,
  sketch: bracedPitSketch,
  published: bracedPitCases,
  example: {
    ground: 'stiff clay',
    depth: '6.2 m',
    gamma: '19 kN/m^3',
    c: '60 kPa',
    surcharge: '10 kPa',
    water_depth: '2.8 m',
    top_strut: '1.0 m',
    struts: [
      { strut: 'middle', z: '3.0 m' },
      { strut: 'lowest', z: '5.0 m' },
    ],
    spacing: '3 m',
    pile_spacing: '1.5 m',
    lagging_stress: '8 MPa',
  },
})
