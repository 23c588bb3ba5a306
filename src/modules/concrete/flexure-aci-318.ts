import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { quantity } from '../words.ts'
import { flexureAci318Second } from './flexure-aci-318-second.ts'
import { aciCapacitySteps, aciRequiredSteps, aciSectionSteps, aciSpacingSteps } from './flexure-aci-318-steps.ts'
import { flexureInputs, stripInputs } from './flexure-inputs.ts'
import { flexureAbout, flexureCautions, flexureLimits } from './flexure-parts.ts'
import { flexureSketch } from './flexure-sketch.ts'

const stress = { SI: 'MPa', US: 'psi' }

/** Bars for a moment, and the moment that bars carry: a slab or wall, singly reinforced, by ACI 318-19. */
export const flexureAci318 = defineModule({
  id: 'flexure-aci-318',
  version: '1.1.0',
  title: 'Bending steel by ACI 318',
  ...flexureAbout,
  code: 'ACI 318-19',
  inputs: {
    ...flexureInputs({ thickness: 'h', cover: 'c_c', outer: 'd_o', bar: 'd_b' }),
    f_c: quantity('stress', {
      says: 'specified cylinder strength of the concrete at 28 days',
      symbol: "f_c'",
      unit: stress,
      least: '2500 psi',
      most: '10000 psi',
      source: cite('aci-318', '19.2.1.1'),
    }),
    f_y: quantity('stress', {
      says: 'specified yield strength of the steel',
      unit: stress,
      least: '40000 psi',
      most: '100000 psi',
      source: cite('aci-318', 'Table 20.2.2.4(a)'),
    }),
    ...stripInputs,
  },
  steps: [...aciSectionSteps, ...aciRequiredSteps, ...aciCapacitySteps, ...aciSpacingSteps],
  results: ['M_R', 'A_need', 'A_s', 's_need', 'd', 'c', 'rho_w', 's_most', 'A_req'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'f_c', 'f_y'],
  limits: flexureLimits({ moment: 'M_u', most: 'M_t', source: cite('aci-318', '7.3.3.1') }),
  cautions: [
    flexureCautions.cylinders,
    flexureCautions.face,
    'Shear, deflection and development each need their own check. The spacing that controls cracks (24.3) is no promise of a dry room, nor enough in salt.',
    'The bars that cross these need the steel for shrinkage and temperature (24.4); a wall has the least steel of 11.6.',
    'Cover: Table 20.5.1.3.1, 3 in where concrete is cast against the ground and stays there.',
    flexureCautions.least,
  ],
  second: flexureAci318Second,
  sketch: flexureSketch({ steel: 'A_s', axis: 'c' }),
  published: [
    {
      id: 'flex-1',
      source: 'Nilson, Darwin and Dolan, Design of concrete structures, rectangular beam of chapter 3',
      status: 'memory',
      says: 'ten inches wide, 23 in deep to `2.37 in^2` of steel',
      inputs: {
        moment: '150 kip*ft/ft',
        thickness: '25.5 in',
        cover: '2 in',
        bar_size: '1 in',
        spacing: 'pi / 4 * (1 in)^2 / (2.37 in^2) * 10 in',
        f_c: '4000 psi',
        f_y: '60000 psi',
        width: '10 in',
      },
      answers: { d: '23 in', A_s: '2.37 in^2', a: '4.18 in', M_n: '248 kip*ft' },
    },
    {
      id: 'flex-crack',
      source: 'ACI 318-19, commentary R24.3.2: cover 2 in, Grade 60, stress 40 ksi, 10 in',
      status: 'memory',
      says: 'largest spacing for crack control, the figure of the commentary itself',
      inputs: {
        moment: '8 kip*ft/ft',
        thickness: '10 in',
        cover: '2 in',
        bar_size: '0.625 in',
        spacing: '10 in',
        f_c: '4000 psi',
        f_y: '60000 psi',
        width: '12 in',
      },
      answers: { s_crack: '10 in' },
    },
  ],
  example: {
    moment: '8000 lbf*ft/ft',
    thickness: '10 in',
    cover: '1.5 in',
    bar_size: '0.5 in',
    spacing: '6 in',
    f_c: '4000 psi',
    f_y: '60000 psi',
    aggregate: '0.75 in',
    width: '12 in',
  },
})
