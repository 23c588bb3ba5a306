import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice } from '../words.ts'
import { flexureInputs, stripInputs } from './flexure-inputs.ts'
import { flexureIs456Cases } from './flexure-is-456-cases.ts'
import { flexureIs456Second } from './flexure-is-456-second.ts'

import { capacitySteps, requiredSteps, sectionSteps, spacingSteps } from './flexure-is-456-steps.ts'
import { flexureAbout, flexureCautions, flexureLimits } from './flexure-parts.ts'
import { flexureSketch } from './flexure-sketch.ts'
import { cubeStrength } from './is456-concrete.ts'
import { steelWords } from './is456-steel.ts'

/** Bars for a moment, and the moment that bars carry: a slab or wall, singly reinforced, by IS 456 Annex G. */
export const flexureIs456 = defineModule({
  id: 'flexure-is-456',
  version: '1.0.0',
  title: 'Bending steel by IS 456',
  ...flexureAbout,
  code: 'IS 456:2000',
  inputs: {
    ...flexureInputs({ thickness: 'D', cover: 'c', outer: 'phi_o', bar: 'phi' }),
    f_ck: cubeStrength('55 MPa'),
    steel: choice({ says: 'grade of the bars', words: steelWords }),
    ...stripInputs,
  },
  steps: [...sectionSteps, ...requiredSteps, ...capacitySteps, ...spacingSteps],
  results: ['M_R', 'A_need', 'A_st', 's_need', 'd', 'x_u', 'p_t', 's_most'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'f_ck', 'steel'],
  limits: flexureLimits({ moment: 'M_u', most: 'M_lim', source: cite('is-456', 'Annex G, G-1.1') }),
  cautions: [
    'The strength is that of cubes. A cylinder strength is about a fifth smaller than the cube strength of the same concrete and must not be entered as it is.',
    flexureCautions.face,
    flexureCautions.others,
    'A wall also has the least vertical and horizontal steel of IS 456 cl. 32.5.',
    'Cover: the nominal cover of IS 456 Table 16 by exposure, and more where concrete is cast against the ground.',
    flexureCautions.least,
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
