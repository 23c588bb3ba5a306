import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { check, limit, look, step } from '../words.ts'
import { cubeStrength } from './is456-concrete.ts'
import { greatestShear, shearStrength, slabFactor } from './is456-shear.ts'
import { shearCautions, shearInputs } from './shear-inputs.ts'

const stress = { SI: 'MPa', US: 'psi' }
const size = { SI: 'mm', US: 'in' }
const sp24 = cite('sp-24', 'cl. 39')

const ofTable19 = (id: string, steel: string, printed: string): PublishedCase => ({
  id,
  source: 'IS 456:2000, Table 19 as reprinted in a published design sheet, M20',
  status: 'looked up',
  says: `steel ${steel} of the effective section`,
  inputs: {
    shear: '40 kN/m',
    thickness: '300 mm',
    effective_depth: '250 mm',
    steel_ratio: steel,
    f_ck: '20 MPa',
  },
  answers: { tau_c: printed, k_s: '1.00' },
})

/** Whether a solid slab or wall needs shear steel, by IS 456 Table 19. */
export const oneWayShearIs456 = defineModule({
  id: 'one-way-shear-is-456',
  version: '1.0.0',
  title: 'One-way shear by IS 456',
  asks: 'Does this slab or wall carry its shear without shear steel?',
  code: 'IS 456:2000',
  inputs: {
    ...shearInputs({ shear: 'V_u', thickness: 'D', ratio: 'p_t', thrust: 'P_u' }),
    f_ck: cubeStrength('80 MPa'),
  },
  steps: [
    step('tau_v', 'abs(shear) / effective_depth', {
      says: 'shear stress',
      unit: stress,
      source: cite('is-456', 'cl. 40.1'),
    }),
    step('p_c', 'min(max(steel_ratio, 0.15 percent), 3 percent)', {
      says: 'steel within the table',
      unit: { SI: 'percent', US: 'percent' },
      source: cite('is-456', 'Table 19'),
    }),
    step('f_c', 'min(f_ck, 40 MPa)', {
      says: 'strength within the table',
      unit: stress,
      source: cite('is-456', 'Table 19'),
    }),
    look('tau_c', shearStrength, { row: 'p_c', column: 'f_c', says: 'design shear strength', unit: stress }),
    step('D_s', 'min(max(thickness, 150 mm), 300 mm)', { says: 'depth within the list of factors', unit: size }),
    look('k_s', slabFactor, { row: 'D_s', says: 'factor for a solid slab' }),
    step('delta_n', 'min(1 + 3 * thrust / (thickness * f_ck), 1.5)', {
      says: 'factor for thrust',
      source: cite('is-456', 'cl. 40.2.2'),
    }),
    step('V_c', 'k_s * delta_n * tau_c * effective_depth', {
      says: 'shear carried without shear steel',
      unit: { SI: 'kN/m', US: 'plf' },
      source: cite('is-456', 'cl. 40.2'),
    }),
    check('no_links', 'abs(shear) <= V_c', {
      says: 'the section needs no shear steel',
      source: cite('is-456', 'cl. 40.3'),
    }),
    look('tau_max', greatestShear, { row: 'f_c', says: 'greatest shear stress with shear steel', unit: stress }),
    check('slab_limit', 'tau_v <= tau_max / 2', {
      says: 'shear stress of a solid slab, with or without shear steel',
      source: cite('is-456', 'cl. 40.2.3.1'),
    }),
  ],
  results: ['V_c', 'tau_v', 'tau_c', 'k_s', 'tau_max'],
  covers: ['shear'],
  limits: [
    limit('effective_depth < thickness', {
      says: 'the effective depth is less than the overall depth',
      otherwise: 'refuse',
      on: 'effective_depth',
    }),
    limit('steel_ratio >= 0.12 percent', {
      says: 'the steel is at least the least steel of a slab',
      advice: 'The first row of the table is taken all the same',
      otherwise: 'warn',
      on: 'steel_ratio',
      source: cite('is-456', 'cl. 26.5.2.1'),
    }),
  ],
  cautions: [
    ...shearCautions,
    'The factor is for solid slabs, and for walls that span as slabs; a beam has none.',
    'The strength is that of cubes. Concrete stronger than 40 MPa counts as 40 MPa, as the table ends there.',
  ],
  second: {
    title: 'Formula behind the table',
    says: 'The design shear strength by the formula from which SP 24 says the table was drawn, at the steel and strength of this section.',
    steps: [
      step('beta_c', 'max(0.8 * f_c / (6.89 MPa * 100 * p_c), 1)', { says: 'parameter of the formula', source: sp24 }),
      step('tau_form', '0.85 * sqrt(0.8 * f_c / (1 MPa)) * (sqrt(1 + 5 * beta_c) - 1) / (6 * beta_c) * (1 MPa)', {
        says: 'design shear strength by the formula',
        unit: stress,
        source: sp24,
      }),
    ],
    compare: [
      {
        first: 'tau_c',
        second: 'tau_form',
        band: 0.03,
        says: 'the table is printed to two figures and straight between its rows',
      },
    ],
  },
  published: [
    ofTable19('shear-3a', '0.5 percent', '0.48 MPa'),
    ofTable19('shear-3b', '1 percent', '0.62 MPa'),
    ofTable19('shear-3c', '2 percent', '0.79 MPa'),
    {
      id: 'shear-k',
      source: 'IS 456:2000, cl. 40.2.1.1 and Table 20, as reprinted in a published design sheet',
      status: 'looked up',
      says: 'slab 225 mm thick, M30',
      inputs: {
        shear: '60 kN/m',
        thickness: '225 mm',
        effective_depth: '190 mm',
        steel_ratio: '0.3 percent',
        f_ck: '30 MPa',
      },
      answers: { k_s: '1.15', tau_max: '3.5 MPa' },
    },
  ],
  example: {
    shear: '82 kN/m',
    thickness: '250 mm',
    effective_depth: '204 mm',
    steel_ratio: '0.37 percent',
    f_ck: '30 MPa',
  },
})
