import type { CaseInput, PublishedCase } from '../module.ts'

const base = {
  mouth: '1',
  spectrum: 'fallout',
  required_factor: '1',
  doors: [{ material: 'steel', thickness: '0 mm' }],
}
const at = (first: { width: string; height: string; length: string }): Readonly<Record<string, CaseInput>> => ({
  ...base,
  first_width: first.width,
  first_height: first.height,
  first_length: first.length,
})
const leg = (width: string, height: string, length: string) => ({ turn: 'left', width, height, length })

/** One bend, two bends and solid angles worked apart; a known solid angle and a known factor. */
export const passageBendsCases: readonly PublishedCase[] = [
  {
    id: 'PB-1',
    source: 'Albedo rule worked by hand: albedo 0.008, corner 1.2 m by 2.1 m, leg 3.0 m',
    status: 'computed',
    says: 'one bend right behind the mouth',
    inputs: {
      ...at({ width: '1.2 m', height: '2.1 m', length: '0 m' }),
      rule: 'albedo',
      albedo: '0.008',
      legs: [leg('1.2 m', '2.1 m', '3.0 m')],
    },
    answers: { K_p: '2.24e-3' },
    tolerance: { relative: 1e-6 },
  },
  {
    id: 'PB-2',
    source: 'Solid-angle rule (from memory) worked apart: opening 0.9 m by 2.0 m from 2.5 m, then from 3.0 m',
    status: 'computed',
    says: 'two bends, the first right behind the mouth',
    inputs: {
      ...at({ width: '0.9 m', height: '2.0 m', length: '0 m' }),
      rule: 'solid angle',
      legs: [leg('0.9 m', '2.0 m', '2.5 m'), leg('0.9 m', '2.0 m', '3.0 m')],
    },
    answers: { K_p: '6.2610e-5' },
    tolerance: { relative: 1e-4 },
  },
  {
    id: 'PB-3',
    source: 'A face of a cube seen from its centre is a sixth of the whole sphere',
    status: 'computed',
    says: 'an opening of 2 m by 2 m from 1 m',
    inputs: {
      ...at({ width: '2 m', height: '2 m', length: '1 m' }),
      rule: 'solid angle',
      legs: [leg('2 m', '2 m', '2 m')],
    },
    answers: { Omega_f: '2.094395', k_f: '0.3333333' },
  },
  {
    id: 'PB-4',
    source: 'Solid angle of a rectangle, integrated numerically over the opening',
    status: 'computed',
    says: 'an opening of 0.8 m by 2.0 m from 3.0 m',
    inputs: {
      ...at({ width: '0.8 m', height: '2.0 m', length: '3.0 m' }),
      rule: 'solid angle',
      legs: [leg('0.8 m', '2.0 m', '3.0 m')],
    },
    answers: { Omega_f: '0.1672241', k_f: '0.0266145' },
    tolerance: { relative: 2e-6 },
  },
  {
    id: 'PB-5',
    source: 'Square degree: 3.046e-4 steradians, in tables of units of astronomy',
    status: 'memory',
    says: 'an opening one degree wide and one degree high',
    inputs: {
      ...at({ width: '2 * tan(0.5 deg) * (10 m)', height: '2 * tan(0.5 deg) * (10 m)', length: '10 m' }),
      rule: 'solid angle',
      legs: [leg('0.2 m', '0.2 m', '2 m')],
    },
    answers: { Omega_f: '3.046e-4' },
  },
  {
    id: 'PB-6',
    source: 'C. H. Kearny, Nuclear War Survival Skills: a right-angled turn keeps back nine tenths',
    status: 'memory',
    says: 'one turn by the flat factor',
    inputs: {
      ...at({ width: '1.2 m', height: '2.1 m', length: '2 m' }),
      rule: 'flat factor',
      legs: [leg('1.2 m', '2.1 m', '3.0 m')],
    },
    answers: { K_p: '0.10' },
  },
]
