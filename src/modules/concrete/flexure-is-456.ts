import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, quantity } from '../words.ts'
import { flexureInputs, stripInputs } from './flexure-inputs.ts'
import { flexureIs456Cases } from './flexure-is-456-cases.ts'
import { flexureIs456Second } from './flexure-is-456-second.ts'

import { capacitySteps, requiredSteps, sectionSteps, spacingSteps } from './flexure-is-456-steps.ts'
import { flexureSketch } from './flexure-sketch.ts'
import { steelWords } from './is456-steel.ts'

/** Bars for a moment, and the moment that bars carry: a slab or wall, singly reinforced, by IS 456 Annex G. */
export const flexureIs456 = defineModule({
  id: 'flexure-is-456',
  version: '1.0.0',
  title: 'Bending steel by IS 456',
  asks: 'What steel does this moment need, and what moment do these bars carry?',
  code: 'IS 456:2000',
  inputs: {
    ...flexureInputs({ thickness: 'D', cover: 'c', outer: 'phi_o', bar: 'phi' }),
    f_ck: quantity('stress', {
      says: 'characteristic cube strength of the concrete at 28 days',
      unit: { SI: 'MPa', US: 'psi' },
      least: '20 MPa',
      most: '55 MPa',
      source: cite('is-456', 'Table 2, Table 5'),
    }),
    steel: choice({ says: 'grade of the bars', words: steelWords }),
    ...stripInputs,
  },
  steps: [...sectionSteps, ...requiredSteps, ...capacitySteps, ...spacingSteps],
  results: ['M_R', 'A_need', 'A_st', 's_need', 'd', 'x_u', 'p_t', 's_most'],
  covers: ['bending', 'detailing'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'f_ck', 'steel'],
  limits: [
    limit('d > 0 mm', { says: 'cover and bars leave an effective depth', otherwise: 'refuse', on: 'cover' }),
    limit('d >= 0.5 * thickness', {
      says: 'the effective depth is at least half the thickness',
      otherwise: 'warn',
      on: 'cover',
      source: cite('practice'),
    }),
    limit('spacing > bar_size', { says: 'the bars do not touch', otherwise: 'refuse', on: 'spacing' }),
    limit('M_u <= M_lim', {
      says: 'the section carries the moment without compression steel',
      advice: 'Make it thicker, or the concrete stronger',
      otherwise: 'refuse',
      on: 'moment',
      source: cite('is-456', 'Annex G, G-1.1'),
    }),
  ],
  cautions: [
    'The strength is that of cubes. A cylinder strength is about a fifth smaller than the cube strength of the same concrete and must not be entered as it is.',
    'One face and one direction are checked. Cover, layer and bars are those of the face that the moment puts in tension.',
    'Shear, crack width, deflection and anchorage each need their own check; at a buried or wet face crack width often asks for more steel than strength.',
    'A wall also has the least vertical and horizontal steel of IS 456 cl. 32.5.',
    'Cover: the nominal cover of IS 456 Table 16 by exposure, and more where concrete is cast against the ground.',
    {
      says: 'Least steel governs here, not the moment: it does not make the section watertight.',
      when: { formula: 'A_min > A_req' },
    },
  ],
  second: flexureIs456Second,
  sketch: flexureSketch({ steel: 'A_st', axis: 'x_u' }),
  published: flexureIs456Cases,
  example: {
    moment: '38 kN*m/m',
    thickness: '250 mm',
    cover: '40 mm',
    bar_size: '12 mm',
    spacing: '150 mm',
    f_ck: '30 MPa',
    steel: 'Fe 500',
  },
})
