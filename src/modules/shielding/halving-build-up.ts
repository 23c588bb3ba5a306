import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { each, look, step } from '../words.ts'
import { bergerC, bergerD, massAttenuation, nominalDensity } from './halving-tables.ts'

const massPerArea = { SI: 'g/cm^2', US: 'g/cm^2' }

/** Exponential attenuation of a parallel beam of one energy, with the build-up factor of concrete. */
export const attenuationWithBuildUp: Second = {
  title: 'Exponential attenuation with build-up',
  says: 'A parallel beam of one photon energy through the same layers: mass per area times the published mass attenuation coefficient, with the build-up of scattered radiation in concrete for the whole stack. The band is wide on purpose: a beam of one energy is no spectrum, its first halving or two go slowly while scatter builds up, densities are nominal, and concrete stands for every layer in the build-up.',
  when: {
    condition: { formula: 'n_all <= 16' },
    otherwise:
      'the stack is deeper than sixteen halvings, about twenty mean free paths, where the build-up factors end',
  },
  steps: [
    each('layers', [
      look('rho', nominalDensity, {
        row: 'material',
        says: 'nominal density',
        unit: { SI: 'kg/m^3', US: 'lb/ft^3' },
      }),
      step('X', 'rho * thickness', { says: 'mass per area', unit: massPerArea }),
      look('mu_rho', massAttenuation, {
        row: 'material',
        column: 'energy',
        says: 'mass attenuation coefficient',
        symbol: 'mu_rho',
        unit: { SI: 'cm^2/g', US: 'cm^2/g' },
      }),
      step('b_layer', 'mu_rho * X', { says: 'mean free paths in this layer' }),
    ]),
    step('b', 'sum(layers.b_layer)', { says: 'mean free paths in all' }),
    look('C_b', bergerC, { row: 'energy', says: 'build-up, factor of the Berger form' }),
    look('D_b', bergerD, { row: 'energy', says: 'build-up, exponent of the Berger form' }),
    step('B', '1 + C_b * b * exp(D_b * b)', { says: 'build-up factor', source: cite('buildup-concrete') }),
    step('T_beam', 'B * exp(-b)', { says: 'share of the beam that comes through', symbol: 'T_beam' }),
    step('n_beam', '-log(T_beam) / log(2)', { says: 'halvings by this method', symbol: 'n_beam' }),
  ],
  compare: [
    {
      first: 'n_all',
      second: 'n_beam',
      band: 0.4,
      says: 'agreement shows that no unit, material or thickness is grossly wrong, no more',
      when: { formula: 'n_all >= 5' },
    },
  ],
}
