import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, limit, look, step, when } from '../words.ts'
import { bergerC, bergerD, massAttenuation, nominalDensity } from './halving-tables.ts'

const massPerArea = { SI: 'g/cm^2', US: 'g/cm^2' }

/** Exponential attenuation of a parallel beam of one energy, with the build-up factor of concrete. */
export const attenuationWithBuildUp: Second = {
  title: 'Exponential attenuation with build-up',
  says: 'A parallel beam of one photon energy through the same layers: mass per area times the published mass attenuation coefficient, with the build-up of scattered radiation in concrete for the whole stack. The band is wide on purpose: a beam of one energy is no spectrum, its first halving or two go slowly while scatter builds up, densities are nominal, and concrete stands for every layer in the build-up. The build-up was fitted from 1 to 10 mean free paths; from there to 20 the fit lies above the older tables (from memory), by less than half a halving: more comes through, on the safe side, but outside its range.',
  limits: [
    limit('b <= 20', {
      says: 'the stack is at most 20 mean free paths deep',
      advice: 'There the published build-up factors end: the second method is left out',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('buildup-concrete'),
    }),
    limit('b >= 1 and b <= 10', {
      says: 'the stack is 1 to 10 mean free paths deep',
      advice:
        'The build-up factors were fitted in this range; above it the fit lies over the older tables, on the safe side',
      otherwise: 'warn',
      on: 'layers',
      source: cite('buildup-concrete'),
    }),
  ],
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
    step('P_beam', '1 / T_beam', { says: 'protection factor by this method', symbol: 'P_beam' }),
    when(
      { formula: 'n_all > 10' },
      {
        says: 'past ten halvings this method has to meet the requirement too',
        yes: [
          check('protection_beam', 'P_beam >= required_factor', {
            says: 'the protection factor by the second method is as required',
          }),
        ],
      },
    ),
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
