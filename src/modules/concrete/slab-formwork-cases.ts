import type { CaseInput, PublishedCase } from '../module.ts'

const metre = {
  span: '1 m',
  spacing: '1 m',
  spans: 'one or two',
  moment_capacity: '5 kN*m',
  shear_capacity: '11 kN',
  stiffness: '450 kN*m^2',
}

const rest: Readonly<Record<string, CaseInput>> = {
  carting: 'hand',
  beams: [metre, metre],
  prop_capacity: '20 kN',
  panel_width: '4 m',
}

/** Loads worked apart, the minima of ACI 347R, and its level force. */
export const slabFormworkCases: readonly PublishedCase[] = [
  {
    id: 'prop-1',
    source: 'Load on forms worked apart: 0.25 m at 25 kN/m³, forms 0.5 kPa, live 2.4 kPa (50 psf)',
    status: 'computed',
    says: '9.15 on a square metre; a prop in the middle of two spans has a quarter more, 11.44',
    inputs: { ...rest, thickness: '0.25 m', unit_weight: '25 kN/m^3', forms_weight: '0.5 kPa' },
    answers: { w_f: '9.15 kPa', P: '11.44 kN', V_b_1: '5.72 kN', M_b_1: '1.14 kN*m' },
    tolerance: { relative: 0.003 },
  },
  {
    id: 'prop-2',
    source: 'ACI 347R minima (looked up in a formwork textbook): slab of 4 in at 150 pcf, forms 5 psf, live 50 psf',
    status: 'computed',
    says: '105 psf, above the least of 100',
    inputs: { ...rest, thickness: '4 in', unit_weight: '150 pcf', forms_weight: '5 psf' },
    answers: { w_f: '105 psf' },
  },
  {
    id: 'prop-3',
    source: 'ACI 347R minima, read in a formwork textbook: 75 psf live and 125 psf in all with motorised carts',
    status: 'looked up',
    says: 'a thin slab, where the least load governs',
    inputs: { ...rest, carting: 'motor carts', thickness: '3 in', unit_weight: '150 pcf', forms_weight: '5 psf' },
    answers: { w_L: '75 psf', w_f: '125 psf' },
  },
  {
    id: 'prop-4',
    source: 'State safety order quoted by an engineer: the larger of 100 lb on a foot of edge and 2 % of the dead load',
    status: 'looked up',
    says: 'a panel so small that the floor governs',
    inputs: { ...rest, thickness: '4 in', unit_weight: '150 pcf', forms_weight: '5 psf' },
    answers: { h_b: '100 plf' },
  },
]
