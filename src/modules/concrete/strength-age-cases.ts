import type { PublishedCase } from '../module.ts'

const concrete = { f_ck: '30 MPa', cement: 'class N', temperature: '20 degC' }
const work = (strength_needed: string, planned_age: string) => ({ strength_needed, planned_age })

/** The strength that a printed share of the mean strength of 38 MPa leaves, asked for at its printed age. */
const shares = (id: string, cement: string, [three, seven, fourteen]: readonly string[]): PublishedCase => ({
  id,
  source:
    'CEB-FIP Model Code 1990, 2.1.6.1: shares of the strength of 28 days at 3, 7 and 14 days at 20 °C, to two decimals',
  status: 'memory',
  says: `${cement}: ${three}, ${seven} and ${fourteen} of 38 MPa are reached at 3, 7 and 14 days`,
  inputs: {
    ...concrete,
    cement,
    works: [
      work(`${three} * (38 MPa) - 8 MPa`, '3 day'),
      work(`${seven} * (38 MPa) - 8 MPa`, '7 day'),
      work(`${fourteen} * (38 MPa) - 8 MPa`, '14 day'),
    ],
  },
  answers: { t_T_need_1: '3 day', t_T_need_2: '7 day', t_T_need_3: '14 day' },
})

/** Printed shares of the strength with age, and two answers worked apart. */
export const strengthAgeCases: readonly PublishedCase[] = [
  shares('age-3R', 'class R', ['0.66', '0.82', '0.92']),
  shares('age-3N', 'class N', ['0.60', '0.78', '0.90']),
  shares('age-3S', 'class S', ['0.46', '0.68', '0.85']),
  {
    id: 'age-1',
    source: 'EN 1992-1-1, Eq. 3.1 and 3.2, C30/37, class N, 7 days at 20 °C, worked apart',
    status: 'computed',
    says: 'strength at 7 days, 21.59 MPa without the last thousandths of Eq. B.10',
    inputs: { ...concrete, works: [work('10 MPa', '7 day')] },
    answers: { f_cm: '38 MPa', f_age_1: '21.59 MPa' },
    tolerance: { relative: 0.003 },
  },
  {
    id: 'age-2',
    source: 'EN 1992-1-1, Eq. B.10, worked apart',
    status: 'computed',
    says: 'a day at 10 °C',
    inputs: { ...concrete, temperature: '10 degC', works: [work('10 MPa', '7 day')] },
    answers: { k_T: '0.616', t_T_1: '4.31 day' },
  },
]
