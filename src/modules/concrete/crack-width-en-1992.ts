import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, limit, quantity, ratio } from '../words.ts'
import { size, strength } from './bar-steps.ts'
import { crackWidthEn1992Cases } from './crack-width-en-1992-cases.ts'
import { crackWidthEn1992Steps } from './crack-width-en-1992-steps.ts'
import { crackCautions, crackInputs, crackLimits } from './crack-width-parts.ts'
import { ribbedStrength } from './en1992-concrete.ts'

const en = (at: string) => cite('en-1992-1-1', at)
const modulus = { SI: 'GPa', US: 'ksi' }
const strip = { moment: '30 kN*m/m', thickness: '250 mm', cover: '35 mm', bar_size: '12 mm', spacing: '150 mm' }
const concrete = { E_cm: '33 GPa', creep: '2.0', f_ct_eff: '2.9 MPa', f_yk: '500 MPa' }

/** Crack width of a bent strip by EN 1992-1-1, 7.3.4, against a limit. */
export const crackWidthEn1992 = defineModule({
  id: 'crack-width-en-1992',
  version: '1.0.1',
  title: 'Crack width by EN 1992-1-1',
  asks: 'How wide do the cracks of this slab or wall open under load, and is that within the limit?',
  code: 'EN 1992-1-1',
  inputs: {
    ...crackInputs,
    thickness: length({ says: 'overall depth', symbol: 'h', unit: size, above: '0 mm', usual: ['150 mm', '1.5 m'] }),
    E_cm: quantity('stress', {
      says: 'mean modulus of the concrete',
      note: 'Table 3.1: 31 GPa for C25/30, 33 for C30/37, 34 for C35/45, 35 for C40/50',
      unit: modulus,
      least: '20 GPa',
      most: '45 GPa',
      source: en('Table 3.1'),
    }),
    creep: ratio({
      says: 'creep coefficient for the load that stays',
      note: '0 for a load of short duration',
      symbol: 'phi_c',
      least: '0',
      most: '5',
      usual: ['1', '3'],
      source: en('3.1.4'),
    }),
    f_ct_eff: quantity('stress', {
      says: 'tensile strength of the concrete when it first cracks',
      note: 'The mean strength, 2.9 MPa for C30/37 at 28 days; less where it cracks earlier',
      unit: strength,
      above: '0 MPa',
      usual: ['1.5 MPa', '4.5 MPa'],
      source: en('7.3.4(2)'),
    }),
    f_yk: ribbedStrength(),
    duration: choice({
      says: 'duration of the load',
      words: { long: 'soil, water and all that stays: factor 0.4', short: 'a passing load: factor 0.6' },
    }),
    w_max: length({
      says: 'crack width allowed',
      note: '0.3 mm by Table 7.1N for buried faces, 0.4 mm for dry ones; tightness asks for less, 0.2 mm or below',
      symbol: 'w_max',
      unit: size,
      above: '0 mm',
      usual: ['0.05 mm', '0.4 mm'],
      source: en('Table 7.1N'),
    }),
  },
  steps: [
    ...crackWidthEn1992Steps,
    check('width_kept', 'w_k <= w_max', { says: 'crack width against the limit', source: en('7.3.1') }),
  ],
  results: ['w_k', 'sigma_s', 'x', 's_r_max', 'eps_m', 'h_c'],
  covers: ['cracking'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'w_max'],
  limits: [
    ...crackLimits,
    limit('sigma_s <= f_yk', {
      says: 'the steel stays below its yield strength',
      advice: 'A yielding section has no crack width: give it more steel',
      otherwise: 'refuse',
      on: 'moment',
      source: en('7.3.4'),
    }),
    limit('sigma_s <= 0.8 * f_yk', {
      says: 'the steel stays below 0.8 of its yield strength',
      otherwise: 'warn',
      on: 'moment',
      source: en('7.2(5)'),
    }),
  ],
  cautions: [
    ...crackCautions,
    'Ribbed bars. Values recommended by the standard: a National Annex may set others, for cover above 40 mm in particular.',
    {
      says: 'The moment is below that at which the concrete cracks: the width is that of a section cracked by something else.',
      when: { formula: 'M_b < f_ct_eff * width * thickness^2 / 6' },
    },
  ],
  published: crackWidthEn1992Cases,
  example: { ...strip, ...concrete, duration: 'long', w_max: '0.2 mm' },
})
