import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { check, limit, quantity, ratio, step } from '../words.ts'
import { shearCautions, shearInputs } from './shear-inputs.ts'

const stress = { SI: 'MPa', US: 'psi' }
const perWidth = { SI: 'kN/m', US: 'plf' }
const table = (at: string) => cite('aci-318', at)

const slab = {
  shear: '5000 plf',
  thickness: '10 in',
  effective_depth: '8.5 in',
  steel_ratio: '0.0055',
  f_c: '4000 psi',
}
const sizeFactor = (id: string, depth: string, thickness: string, printed: string): PublishedCase => ({
  id,
  source: 'ACI 318-19, 22.5.5.1.3: square root of two over one and the depth over 10 in, at most 1',
  status: 'computed',
  says: `effective depth ${depth}`,
  inputs: { ...slab, effective_depth: depth, thickness },
  answers: { lambda_s: printed },
})

/** Whether a slab or wall needs shear steel, by ACI 318-19 22.5.5 with the size effect. */
export const oneWayShearAci318 = defineModule({
  id: 'one-way-shear-aci-318',
  version: '1.0.0',
  title: 'One-way shear by ACI 318',
  asks: 'Does this slab or wall carry its shear without shear steel?',
  code: 'ACI 318-19',
  inputs: {
    ...shearInputs({ shear: 'V_u', thickness: 'h', ratio: 'rho_w', thrust: 'N_u' }),
    f_c: quantity('stress', {
      says: 'specified cylinder strength of the concrete at 28 days',
      symbol: "f_c'",
      unit: stress,
      least: '2500 psi',
      most: '15000 psi',
      source: table('19.2.1.1'),
    }),
    lambda: ratio({
      says: 'factor for the weight of the concrete',
      note: '1 for normal weight; 0.75 is safe for any lightweight concrete',
      symbol: 'lambda',
      least: '0.75',
      most: '1',
      default: '1',
      source: table('19.2.4'),
    }),
  },
  steps: [
    step('lambda_s', 'min(sqrt(2 / (1 + effective_depth / (10 in))), 1)', {
      says: 'factor for the size of the member',
      source: table('22.5.5.1.3'),
    }),
    step('r_c', 'min(sqrt(f_c / (1 psi)), 100)', {
      says: 'root of the strength in psi, at most 100',
      source: table('22.5.3.1'),
    }),
    step('sigma_n', 'min(thrust / (6 * thickness), 0.05 * f_c)', {
      says: 'share of the thrust',
      unit: stress,
      source: table('22.5.5.1.2'),
    }),
    step('v_a', '8 * lambda_s * lambda * cbrt(steel_ratio) * r_c * (1 psi) + sigma_n', {
      says: 'shear stress that concrete without shear steel carries',
      unit: stress,
      source: table('Table 22.5.5.1(c)'),
    }),
    step('v_b', '5 * lambda * r_c * (1 psi)', {
      says: 'the most that may be reckoned with',
      unit: stress,
      source: table('22.5.5.1.1'),
    }),
    step('V_c', 'min(v_a, v_b) * effective_depth', { says: 'shear that the concrete carries', unit: perWidth }),
    step('V_d', '0.75 * V_c', {
      says: 'the same with the strength reduction factor for shear',
      symbol: 'V_d',
      unit: perWidth,
      source: table('Table 21.2.1'),
    }),
    check('no_stirrups', 'abs(shear) <= V_d', {
      says: 'the section needs no shear steel',
      source: table('7.6.3.1'),
    }),
  ],
  results: ['V_d', 'V_c', 'v_a', 'lambda_s'],
  covers: ['shear'],
  limits: [
    limit('effective_depth < thickness', {
      says: 'the effective depth is less than the overall depth',
      otherwise: 'refuse',
      on: 'effective_depth',
    }),
    limit('steel_ratio * effective_depth >= 0.0018 * thickness', {
      says: 'the steel is at least the least steel of a slab',
      advice: 'The line goes to nil with the steel: it is not tested where there is hardly any',
      otherwise: 'warn',
      on: 'steel_ratio',
      source: table('7.6.1.1'),
    }),
  ],
  cautions: [
    ...shearCautions,
    'The older rule of twice the root of the strength is only for members with least shear steel: a thick, lightly reinforced slab has far less.',
    'The strength is that of cylinders. Roots of strengths past 10,000 psi count as of 10,000.',
  ],
  published: [
    {
      id: 'shear-5',
      source: 'ACI 318-19, Table 22.5.5.1(c), worked for a strip 12 in wide (9110 and 6832 lb)',
      status: 'computed',
      says: 'effective depth 8.5 in, steel 0.0055, 4000 psi',
      inputs: slab,
      answers: { V_c: '9110 plf', V_d: '6832 plf' },
      tolerance: { relative: 0.002 },
    },
    sizeFactor('shear-4a', '8 in', '10 in', '1'),
    sizeFactor('shear-4b', '15 in', '18 in', '0.894'),
    sizeFactor('shear-4c', '20 in', '23 in', '0.816'),
    sizeFactor('shear-4d', '40 in', '44 in', '0.632'),
  ],
  example: {
    shear: '4800 plf',
    thickness: '10 in',
    effective_depth: '8 in',
    steel_ratio: '0.0044',
    f_c: '4000 psi',
  },
})
