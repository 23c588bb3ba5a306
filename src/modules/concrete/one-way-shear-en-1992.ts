import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { check, limit, quantity, step, when } from '../words.ts'
import { concreteFactors, cylinderStrength } from './en1992-concrete.ts'
import { shearCautions, shearInputs } from './shear-inputs.ts'
import { crackedFactor, designStrength, stressesCarried } from './shear-stress-en-1992.ts'

const stress = { SI: 'MPa', US: 'psi' }
const clause = (at: string) => cite('en-1992-1-1', at)

const ofTable7 = (depth: string, steel: string, printed: string): PublishedCase => ({
  id: `shear-${depth}-${steel}`.replaceAll(' ', ''),
  source: 'The Concrete Centre, How to design concrete structures using Eurocode 2, table 7, 30 MPa',
  status: 'looked up',
  says: `effective depth ${depth}, steel ${steel}`,
  inputs: {
    shear: '80 kN/m',
    thickness: `1.2 * ${depth}`,
    effective_depth: depth,
    steel_ratio: steel,
    f_ck: '30 MPa',
  },
  answers: { v_Rd_c: printed },
})

const crushing = (shear: string) =>
  check('crushing', `abs(${shear}) <= 0.5 * effective_depth * nu * f_cd`, {
    says: 'the concrete does not crush beside a support',
    source: clause('6.2.1(8), 6.2.2(6)'),
  })

/** Whether a slab or wall needs shear steel, by EN 1992-1-1 6.2.2. */
export const oneWayShearEn1992 = defineModule({
  id: 'one-way-shear-en-1992',
  version: '1.1.0',
  title: 'One-way shear by EN 1992',
  asks: 'Does this slab or wall carry its shear without shear steel?',
  code: 'EN 1992-1-1',
  inputs: {
    ...shearInputs({ shear: 'V_Ed', thickness: 'h', ratio: 'rho_l', thrust: 'N_Ed' }),
    shear_support: quantity('force_per_length', {
      says: 'factored shear per width at the face of the support',
      note: 'Where the section lies the effective depth from it: crushing is checked at the support',
      symbol: 'V_Ed_0',
      unit: { SI: 'kN/m', US: 'plf' },
      optional: true,
    }),
    f_ck: cylinderStrength('90 MPa'),
    ...concreteFactors,
  },
  steps: [
    designStrength,
    ...stressesCarried({ depth: 'effective_depth', ratio: 'steel_ratio', at: '6.2.2(1)', equation: '6.2a' }),
    step('sigma_cp', 'min(thrust / thickness, 0.2 * f_cd)', {
      says: 'stress of the thrust that counts',
      unit: stress,
      source: clause('6.2.2(1)'),
    }),
    step('v_Rd_c', 'max(v_steel, v_min) + 0.15 * sigma_cp', {
      says: 'shear stress that concrete without shear steel carries',
      unit: stress,
      source: clause('6.2.2(1)'),
    }),
    step('V_Rd_c', 'v_Rd_c * effective_depth', {
      says: 'shear carried without shear steel',
      unit: { SI: 'kN/m', US: 'plf' },
      source: clause('6.2.2(1)'),
    }),
    check('no_links', 'abs(shear) <= V_Rd_c', {
      says: 'the section needs no shear steel',
      source: clause('6.2.1(3)'),
    }),
    crackedFactor,
    when({ given: 'shear_support' }, { yes: [crushing('shear_support')], no: [crushing('shear')] }),
  ],
  results: ['V_Rd_c', 'v_Rd_c', 'v_min', 'k_d'],
  covers: ['shear'],
  limits: [
    limit('effective_depth < thickness', {
      says: 'the effective depth is less than the overall depth',
      otherwise: 'refuse',
      on: 'effective_depth',
    }),
    limit('abs(shear_support) >= abs(shear)', {
      says: 'the shear at the support is at least that of the section',
      when: { given: 'shear_support' },
      otherwise: 'warn',
      on: 'shear_support',
    }),
  ],
  cautions: [
    ...shearCautions,
    'The strength is that of cylinders. The constants 0.18, 0.035 and 0.15 are the recommended ones: see the national annex.',
    {
      says: 'The least stress governs: it rests on the strength of the concrete alone, so least steel must still be there.',
      when: { formula: 'v_min > v_steel' },
    },
  ],
  published: [
    ofTable7('200 mm', '0.25 percent', '0.54 MPa'),
    ofTable7('200 mm', '0.5 percent', '0.59 MPa'),
    ofTable7('200 mm', '1 percent', '0.75 MPa'),
    ofTable7('300 mm', '1 percent', '0.68 MPa'),
    ofTable7('750 mm', '2 percent', '0.71 MPa'),
  ],
  example: {
    shear: '82 kN/m',
    thickness: '250 mm',
    effective_depth: '204 mm',
    steel_ratio: '0.37 percent',
    f_ck: '30 MPa',
  },
})
