import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step, when } from '../words.ts'
import { exponentialIntegralOf } from './exponential-integral-step.ts'
import { airAbsorption, airAttenuation, airC, airD, photonEnergy, stackC, stackD } from './gamma-tables.ts'
import { massAttenuation } from './halving-tables.ts'
import { massOfLayer, massUnit, thin } from './slab-inputs.ts'

const perMass = { SI: 'cm^2/g', US: 'cm^2/g' }
const kernel = cite('point-kernel')

/** Optical thickness of the stack and its build-up factor in an unlimited medium. */
export const opticalThickness: readonly Step[] = [
  each('layers', [
    ...massOfLayer,
    look('mu_rho', massAttenuation, {
      row: 'material',
      column: 'energy',
      says: 'mass attenuation coefficient',
      unit: perMass,
    }),
    step('b_layer', 'mu_rho * X', { says: 'mean free paths in this layer' }),
  ]),
  step('X_all', 'sum(layers.X)', { says: 'mass per area in all', unit: massUnit }),
  step('t_all', 'sum(layers.thickness)', { says: 'thickness in all', unit: thin }),
  step('b', 'sum(layers.b_layer)', { says: 'mean free paths in all' }),
  look('C_b', stackC, { row: 'build_up', column: 'energy', says: 'build-up, factor of the Berger form' }),
  look('D_b', stackD, { row: 'build_up', column: 'energy', says: 'build-up, exponent of the Berger form' }),
  step('B', '1 + C_b * b * exp(D_b * b)', { says: 'build-up factor straight through', source: cite('buildup-media') }),
]

/** Reference of a plane source: 1 m above the same emitters in the open, on smooth ground without end. */
const openField: readonly Step[] = [
  look('mu_air', airAttenuation, { row: 'energy', says: 'mass attenuation coefficient of air', unit: perMass }),
  step('b_air', 'mu_air * 1.205 kg/m^3 * 1 m', { says: 'mean free paths in 1 m of air of 20 degrees', symbol: 'b_0' }),
  look('C_air', airC, { row: 'build_up', column: 'energy', says: 'build-up in air, factor of the Berger form' }),
  look('D_air', airD, { row: 'build_up', column: 'energy', says: 'build-up in air, exponent of the Berger form' }),
  exponentialIntegralOf('E_air', 'b_air', { says: 'exponential integral in the open', symbol: 'E_1' }),
  step('f_open', '(E_air + C_air / (1 - D_air) * exp(-(1 - D_air) * b_air)) / 2', {
    says: 'fluence 1 m above the open field, for each emitted photon',
    symbol: 'f_0',
    source: kernel,
  }),
]

const disc: readonly Step[] = [
  step('d', 't_all + gap', { says: 'distance from the source to the person', symbol: 'd_s' }),
  step('u_rim', 'radius / d', { says: 'radius over the distance', symbol: 'u_R' }),
  step('b_rim', 'b * sqrt(1 + u_rim^2)', { says: 'mean free paths on the slant from the rim', symbol: 'b_R' }),
  exponentialIntegralOf('E_rim', 'b_rim', { says: 'exponential integral from the rim', symbol: 'E_1R' }),
  step('f_slab', '(E_b - E_rim + C_b / (1 - D_b) * (exp(-(1 - D_b) * b) - exp(-(1 - D_b) * b_rim))) / 2', {
    says: 'fluence behind the stack, for each emitted photon',
    symbol: 'f',
    source: kernel,
  }),
]

const unlimited: readonly Step[] = [
  step('f_slab', '(E_b + C_b / (1 - D_b) * exp(-(1 - D_b) * b)) / 2', {
    says: 'fluence behind the stack, for each emitted photon',
    symbol: 'f',
    source: kernel,
  }),
]

/** Transmission of a plane source, without end or as far as a radius, over the open field. */
export const throughPlane: readonly Step[] = [
  exponentialIntegralOf('E_b', 'b', { says: 'exponential integral at the stack', symbol: 'E_1b' }),
  when({ given: 'radius' }, { yes: disc, no: unlimited }),
  ...openField,
  step('T', 'f_slab / f_open', { says: 'share of the open field that is left', source: kernel }),
]

/** Transmission of a beam or point source over the same distance with nothing between. */
export const throughBeam: readonly Step[] = [
  step('T', 'B * exp(-b)', { says: 'share that comes through, over the same distance without it', source: kernel }),
]

const rate = (fluence: string, says: string): Step =>
  step('K_air', `${fluence} * strength * E_photon * mu_en`, {
    says,
    unit: { SI: 'mGy/hr', US: 'mGy/hr' },
    source: kernel,
  })

/** Air kerma rate where the strength of the source is known. */
export const kermaRate: Step = when(
  { given: 'strength' },
  {
    yes: [
      look('E_photon', photonEnergy, {
        row: 'energy',
        says: 'energy of one photon',
        symbol: 'E_gamma',
        unit: { SI: 'MeV', US: 'MeV' },
      }),
      look('mu_en', airAbsorption, {
        row: 'energy',
        says: 'mass energy-absorption coefficient of air',
        unit: perMass,
      }),
      when(
        { choice: 'source', is: ['plane'] },
        {
          yes: [rate('f_slab', 'air kerma rate behind the stack')],
          no: [rate('T', 'air kerma rate behind the stack')],
        },
      ),
    ],
  },
)
