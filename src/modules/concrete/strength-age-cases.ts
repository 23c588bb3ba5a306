import type { PublishedCase } from '../module.ts'

const concrete = { f_ck: '30 MPa', cement: 'class N', temperature: '20 degC' }
const work = (strength_needed: string, planned_age: string) => [{ strength_needed, planned_age }]
const within = { relative: 0.003 }

/** Worked apart by the formulas of the standard, and coefficients that agree with CEB-FIP Model Code 1990 for its three classes. */
export const strengthAgeCases: readonly PublishedCase[] = [
  {
    id: 'age-1',
    source: 'EN 1992-1-1, Eq. 3.1 and 3.2, C30/37, class N, 7 days at 20 °C, worked apart',
    status: 'computed',
    says: 'strength at 7 days, 21.59 MPa without the last thousandths of Eq. B.10',
    inputs: { ...concrete, works: work('10 MPa', '7 day') },
    answers: { f_cm: '38 MPa', f_age_1: '21.59 MPa' },
    tolerance: within,
  },
  {
    id: 'age-2a',
    source: 'EN 1992-1-1, Eq. B.10, worked apart',
    status: 'computed',
    says: 'a day at 10 °C',
    inputs: { ...concrete, temperature: '10 degC', works: work('10 MPa', '7 day') },
    answers: { k_T: '0.616', t_T_1: '4.31 day' },
  },
  {
    id: 'age-2b',
    source: 'EN 1992-1-1, Eq. B.10, worked apart',
    status: 'computed',
    says: 'a day at 5 °C',
    inputs: { ...concrete, temperature: '5 degC', works: work('10 MPa', '7 day') },
    answers: { k_T: '0.478' },
  },
  {
    id: 'age-2c',
    source: 'EN 1992-1-1, Eq. B.10, worked apart',
    status: 'computed',
    says: 'a day at 20 °C',
    inputs: { ...concrete, works: work('10 MPa', '7 day') },
    answers: { k_T: '0.998' },
  },
]
