import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { ratio } from '../words.ts'
import { concreteFactors, cylinderStrength, ribbedStrength } from './en1992-concrete.ts'
import { flexureEn1992Cases } from './flexure-en-1992-cases.ts'
import { flexureEn1992Second } from './flexure-en-1992-second.ts'
import { enCapacitySteps, enRequiredSteps, enSectionSteps, enSpacingSteps } from './flexure-en-1992-steps.ts'
import { flexureInputs, stripInputs } from './flexure-inputs.ts'
import { flexureAbout, flexureCautions, flexureLimits } from './flexure-parts.ts'
import { flexureSketch } from './flexure-sketch.ts'

/** Bars for a moment, and the moment that bars carry: a slab or wall, singly reinforced, by EN 1992-1-1, concrete to C50. */
export const flexureEn1992 = defineModule({
  id: 'flexure-en-1992',
  version: '1.0.0',
  title: 'Bending steel by EN 1992',
  ...flexureAbout,
  code: 'EN 1992-1-1',
  inputs: {
    ...flexureInputs({ thickness: 'h', cover: 'c', outer: 'phi_o', bar: 'phi' }),
    f_ck: cylinderStrength('50 MPa'),
    f_yk: ribbedStrength(),
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
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'f_ck', 'f_yk'],
  limits: flexureLimits({ moment: 'M_Ed', most: 'M_lim', source: cite('en-1992-1-1', '5.5(4)') }),
  cautions: [
    flexureCautions.cylinders,
    'Moments that were redistributed have a lower limit of the neutral axis (5.5) than here.',
    flexureCautions.face,
    flexureCautions.others,
    'The bars that cross these are at least a fifth of them (9.3.1.1(2)); a wall also has the least steel of 9.6.',
    'Factors and least steel are the recommended ones: see the national annex. Cover is by 4.4, and more where concrete is cast against the ground.',
    flexureCautions.least,
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
