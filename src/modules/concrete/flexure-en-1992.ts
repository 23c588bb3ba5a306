import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit, quantity, ratio } from '../words.ts'
import { concreteFactors, cylinderStrength } from './en1992-concrete.ts'
import { flexureEn1992Cases } from './flexure-en-1992-cases.ts'
import { flexureEn1992Second } from './flexure-en-1992-second.ts'
import { enCapacitySteps, enRequiredSteps, enSectionSteps, enSpacingSteps } from './flexure-en-1992-steps.ts'
import { flexureInputs, stripInputs } from './flexure-inputs.ts'
import { flexureSketch } from './flexure-sketch.ts'

/** Bars for a moment, and the moment that bars carry: a slab or wall, singly reinforced, by EN 1992-1-1, concrete to C50. */
export const flexureEn1992 = defineModule({
  id: 'flexure-en-1992',
  version: '1.0.0',
  title: 'Bending steel by EN 1992',
  asks: 'What steel does this moment need, and what moment do these bars carry?',
  code: 'EN 1992-1-1',
  inputs: {
    ...flexureInputs({ thickness: 'h', cover: 'c', outer: 'phi_o', bar: 'phi' }),
    f_ck: cylinderStrength('50 MPa'),
    f_yk: quantity('stress', {
      says: 'characteristic strength of the steel',
      unit: { SI: 'MPa', US: 'psi' },
      least: '400 MPa',
      most: '600 MPa',
      source: cite('en-1992-1-1', '3.2.2(3)'),
    }),
    ...concreteFactors,
    gamma_s: ratio({
      says: 'partial factor of steel',
      symbol: 'gamma_S',
      least: '1',
      most: '1.15',
      default: '1.15',
      source: cite('en-1992-1-1', 'Table 2.1N'),
    }),
    ...stripInputs,
  },
  steps: [...enSectionSteps, ...enRequiredSteps, ...enCapacitySteps, ...enSpacingSteps],
  results: ['M_R', 'A_need', 'A_s', 's_need', 'd', 'x', 'rho_l', 's_most', 'A_req'],
  covers: ['bending', 'detailing'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'f_ck', 'f_yk'],
  limits: [
    limit('d > 0 mm', { says: 'cover and bars leave an effective depth', otherwise: 'refuse', on: 'cover' }),
    limit('d >= 0.5 * thickness', {
      says: 'the effective depth is at least half the thickness',
      otherwise: 'warn',
      on: 'cover',
      source: cite('practice'),
    }),
    limit('spacing > bar_size', { says: 'the bars do not touch', otherwise: 'refuse', on: 'spacing' }),
    limit('M_Ed <= M_lim', {
      says: 'the section carries the moment without compression steel',
      advice: 'Make it thicker, or the concrete stronger',
      otherwise: 'refuse',
      on: 'moment',
      source: cite('en-1992-1-1', '5.5(4)'),
    }),
  ],
  cautions: [
    'The strength is that of cylinders: a cube strength is about a quarter higher for the same concrete and must not be entered as it is.',
    'Moments that were redistributed have a lower limit of the neutral axis (5.5) than here.',
    'One face and one direction are checked. Cover, layer and bars are those of the face that the moment puts in tension.',
    'Shear, crack width, deflection and anchorage each need their own check; at a buried or wet face crack width often asks for more steel than strength.',
    'The bars that cross these are at least a fifth of them (9.3.1.1(2)); a wall also has the least steel of 9.6.',
    'Factors and least steel are the recommended ones: see the national annex. Cover is by 4.4, and more where concrete is cast against the ground.',
    {
      says: 'Least steel governs here, not the moment: it does not make the section watertight.',
      when: { formula: 'A_min > A_req' },
    },
  ],
  second: flexureEn1992Second,
  sketch: flexureSketch({ steel: 'A_s', axis: 'x' }),
  published: flexureEn1992Cases,
  example: {
    moment: '38 kN*m/m',
    thickness: '250 mm',
    cover: '40 mm',
    bar_size: '12 mm',
    spacing: '150 mm',
    f_ck: '30 MPa',
    f_yk: '500 MPa',
  },
})
