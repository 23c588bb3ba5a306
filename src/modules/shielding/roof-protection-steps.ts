import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step, when } from '../words.ts'
import { exponentialIntegralOf } from './exponential-integral-step.ts'
import { airAttenuation, airC, airD, stackC, stackD } from './gamma-tables.ts'
import { massAttenuation } from './halving-tables.ts'
import { massOfLayer, massUnit } from './slab-inputs.ts'

const perMass = { SI: 'cm^2/g', US: 'cm^2/g' }
const kernel = cite('point-kernel')

/** One of the two energies: the suffix of its names, its choice and what it is called. */
interface At {
  readonly of: 'm' | 'h'
  readonly energy: 'energy' | 'energy_hard'
  readonly called: string
}
const mean: At = { of: 'm', energy: 'energy', called: 'middle energy' }
const hard: At = { of: 'h', energy: 'energy_hard', called: 'hard energy' }

const inLayer = ({ of, energy, called }: At): readonly Step[] => [
  look(`mu_${of}`, massAttenuation, {
    row: 'material',
    column: energy,
    says: `mass attenuation coefficient, ${called}`,
    unit: perMass,
  }),
  step(`b_layer_${of}`, `mu_${of} * X`, { says: `mean free paths in this layer, ${called}`, symbol: `b_l${of}` }),
]

const path = ({ of, energy, called }: At): readonly Step[] => [
  step(`b_${of}`, `sum(layers.b_layer_${of})`, { says: `mean free paths in all, ${called}` }),
  look(`C_${of}`, stackC, { row: 'build_up', column: energy, says: `build-up, factor, ${called}` }),
  look(`D_${of}`, stackD, { row: 'build_up', column: energy, says: `build-up, exponent, ${called}` }),
  exponentialIntegralOf(`E_${of}`, `b_${of}`, { says: `exponential integral, ${called}`, symbol: `E_1${of}` }),
  step(`f_${of}`, `(E_${of} + C_${of} / (1 - D_${of}) * exp(-(1 - D_${of}) * b_${of})) / 2`, {
    says: `fluence under a roof without end, ${called}`,
    source: kernel,
  }),
]

const open = ({ of, energy, called }: At): readonly Step[] => [
  look(`mu_air_${of}`, airAttenuation, { row: energy, says: `attenuation of air, ${called}`, unit: perMass }),
  step(`b_air_${of}`, `mu_air_${of} * 1.205 kg/m^3 * 1 m`, {
    says: `mean free paths in 1 m of air, ${called}`,
    symbol: `b_0${of}`,
  }),
  look(`C_air_${of}`, airC, { row: 'build_up', column: energy, says: `build-up in air, factor, ${called}` }),
  look(`D_air_${of}`, airD, { row: 'build_up', column: energy, says: `build-up in air, exponent, ${called}` }),
  exponentialIntegralOf(`E_air_${of}`, `b_air_${of}`, {
    says: `exponential integral in the open, ${called}`,
    symbol: `E_0${of}`,
  }),
  step(`f_open_${of}`, `(E_air_${of} + C_air_${of} / (1 - D_air_${of}) * exp(-(1 - D_air_${of}) * b_air_${of})) / 2`, {
    says: `fluence 1 m above open ground, ${called}`,
    symbol: `f_0${of}`,
    source: kernel,
  }),
  step(`K_${of}`, `f_${of} / f_open_${of}`, { says: `barrier factor, ${called}`, source: cite('barrier-geometry') }),
]

const limited = ({ of, called }: At): readonly Step[] => [
  step(`b_rim_${of}`, `b_${of} * s_rim`, { says: `mean free paths from the rim, ${called}`, symbol: `b_R${of}` }),
  exponentialIntegralOf(`E_rim_${of}`, `b_rim_${of}`, {
    says: `exponential integral from the rim, ${called}`,
    symbol: `E_R${of}`,
  }),
  step(`G_${of}`, `1 - (E_rim_${of} + C_${of} / (1 - D_${of}) * exp(-(1 - D_${of}) * b_rim_${of})) / (2 * f_${of})`, {
    says: `geometry factor, ${called}`,
    source: cite('barrier-geometry'),
  }),
  step(`P_${of}`, `1 / (K_${of} * G_${of})`, { says: `protection factor, ${called}` }),
]

const endless = ({ of, called }: At): Step =>
  step(`P_${of}`, `1 / K_${of}`, { says: `protection factor, ${called}, geometry factor 1` })

/** Protection of the roof at two energies by barrier and geometry factor; the lesser governs. */
export const roofProtectionSteps: readonly Step[] = [
  each('layers', [...massOfLayer, ...inLayer(mean), ...inLayer(hard)]),
  step('X_all', 'sum(layers.X)', { says: 'mass per area of the roof', unit: massUnit }),
  step('t_all', 'sum(layers.thickness)', { says: 'thickness in all', unit: { SI: 'm', US: 'ft' } }),
  ...path(mean),
  ...path(hard),
  ...open(mean),
  ...open(hard),
  when(
    { given: 'radius' },
    {
      yes: [
        step('s_rim', 'sqrt(1 + (radius / (t_all + height))^2)', { says: 'slant from the rim', symbol: 's_R' }),
        ...limited(mean),
        ...limited(hard),
      ],
      no: [endless(mean), endless(hard)],
    },
  ),
  step('P', 'min(P_m, P_h)', { says: 'protection factor of the roof, the lesser' }),
  step('T', '1 / P', { says: 'share of the open field that comes through' }),
]
