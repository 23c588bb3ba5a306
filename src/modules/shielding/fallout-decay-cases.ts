import type { CaseInput, PublishedCase } from '../module.ts'

type Inputs = Readonly<Record<string, CaseInput>>

/** A stay in the open; the sources print roentgen, taken here as rem. */
const stay = (rate: string, measured_at: string, times: readonly [enter: string, leave: string]): Inputs => ({
  rate,
  measured_at,
  enter_at: times[0],
  leave_at: times[1],
  protection_factor: '1',
  dose_limit: '10000 rem',
})

const fall = (id: string, hours: string, answer: string): PublishedCase => ({
  id,
  source: `Law of fallout decay, ${hours} h against 1 h; the rule of sevenfold time and tenfold fall is its approximation`,
  status: 'computed',
  says: `fall of the rate from 1 h to ${hours} h`,
  inputs: stay('100 rem/hr', '1 hr', ['1 hr', `${hours} hr`]),
  answers: { k_fall: answer },
  tolerance: { relative: 0.0001 },
})

const glasstone = (id: string, hours: string, answer: string): PublishedCase => ({
  id,
  source: 'The Effects of Nuclear Weapons, 1977, chapter IX, table of relative dose rates, 1000 at 1 h',
  status: 'memory',
  says: `relative rate at ${hours} h`,
  inputs: stay('1000 rem/hr', '1 hr', ['1 hr', `${hours} hr`]),
  answers: { R_b: answer },
  tolerance: { relative: 0.01 },
})

/** Rates and doses of the law worked apart, and two entries of a published table. */
export const falloutDecayCases: readonly PublishedCase[] = [
  fall('FD-1a', '7', '10.33041'),
  fall('FD-1b', '49', '106.7174'),
  fall('FD-1c', '343', '1102.435'),
  {
    id: 'FD-2',
    source: 'Law of fallout decay, closed form and quadrature: 100 R/h at 1 h, dose from 1 to 48 h',
    status: 'computed',
    says: 'dose in the open from 1 to 48 h',
    inputs: stay('100 rem/hr', '1 hr', ['1 hr', '48 hr']),
    answers: { D_out: '269.473 rem' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'FD-3',
    source: 'Law of fallout decay, closed form and quadrature: 1000 R/h at 1 h, dose from 2 h on',
    status: 'computed',
    says: 'dose in the open from 2 to 336 h, and without end',
    inputs: stay('1000 rem/hr', '1 hr', ['2 hr', '336 hr']),
    answers: { D_out: '2790.68 rem', D_end: '4352.75 rem' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'FD-4',
    source: 'Law of fallout decay: 20 R/h at 5 h, carried to 1 h and to 30 h',
    status: 'computed',
    says: 'rates from one measured at 5 h',
    inputs: stay('20 rem/hr', '5 hr', ['5 hr', '30 hr']),
    answers: { R_1: '137.973 rem/hr', R_b: '2.32942 rem/hr' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'FD-5',
    source: 'Law of fallout decay: 100 R/h at 1 h, time of 1 R/h',
    status: 'computed',
    says: 'time at which 100 has fallen to 1',
    inputs: { ...stay('100 rem/hr', '1 hr', ['1 hr', '48 hr']), rate_wanted: '1 rem/hr' },
    answers: { t_wanted: '46.416 hr' },
    tolerance: { relative: 1e-5 },
  },
  glasstone('FD-6', '100', '4.0 rem/hr'),
  glasstone('FD-7', '10', '63 rem/hr'),
]
