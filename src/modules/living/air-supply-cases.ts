import type { CaseInput, PublishedCase } from '../module.ts'

const paper =
  'A. Persily and L. de Jonge, Carbon dioxide generation rates for building occupants, Indoor Air 27 (2017) 868-879, Table 4'

const one = (who: string, activity: string): Readonly<Record<string, CaseInput>> => ({
  people: [{ count: '1 person', who, activity }],
  minimum_rate: 'ASHRAE 1981',
  co2_limit: '0.5 percent',
  outdoor_co2: '0.03 percent',
  room_temperature: '0 degC',
})

/** Cells of the published table, and the steady level that is quoted for 5 cfm. */
export const airSupplyCases: readonly PublishedCase[] = [
  {
    id: 'A2',
    source:
      'FEMA 453, Design guidance for shelters and safe rooms, 1.7, quoting ASHRAE 62-1981: 5 cfm for each person holds 0.25 % (0.0052 L/s for each and 0.03 % outdoors are ours)',
    status: 'looked up',
    says: 'one person who gives off 0.0052 L/s, 5 cfm',
    inputs: { ...one('male 21 to under 30', '1.3'), supply: '5 cfm' },
    answers: { G: '0.0052 L/s', c_s: '0.25 percent' },
    tolerance: { relative: 0.02 },
  },
  {
    id: 'A3',
    source: 'Mass balance with the values of A2 at 3 cfm',
    status: 'computed',
    says: 'one person who gives off 0.0052 L/s, 3 cfm',
    inputs: { ...one('male 21 to under 30', '1.3'), supply: '3 cfm', minimum_rate: 'US survival' },
    answers: { c_s: '0.3973 percent' },
    tolerance: { relative: 0.002 },
  },
  {
    id: 'A4',
    source: paper,
    status: 'looked up',
    says: 'a woman of 30 to under 40 at 1.2 met',
    inputs: { ...one('female 30 to under 40', '1.2'), supply: '5 cfm' },
    answers: { G_p_1: '0.0035 L/(s*person)' },
  },
  {
    id: 'A5',
    source: paper,
    status: 'looked up',
    says: 'a man of 21 to under 30 at 2.0 met',
    inputs: { ...one('male 21 to under 30', '2.0'), supply: '5 cfm' },
    answers: { G_p_1: '0.0080 L/(s*person)' },
  },
]
