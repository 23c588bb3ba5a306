import type { CaseInput, PublishedCase } from '../module.ts'

const room = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  volume: '100 m^3',
  supply: '100 m^3/hr',
  sources: [{ gas: '10 m^3/hr', monoxide: '1000 ppm' }],
  burning: '1 hr',
  exposure: 'WHO 1 h',
  leaving: '5 min',
  ...more,
})
const who = 'WHO guidelines for indoor air quality 2010, carbon monoxide, over 1.145 mg/m³ for each ppm at 25 °C'

/** The limits as published, and the well-mixed room by hand. */
export const carbonMonoxideCases: readonly PublishedCase[] = [
  {
    id: 'CO1a',
    source: who,
    status: 'memory',
    says: '10 mg/m³ for 8 hours',
    inputs: room({ exposure: 'WHO 8 h' }),
    answers: { chi_lim: '8.73 ppm', t_lim: '8 hr' },
  },
  {
    id: 'CO1b',
    source: '29 CFR 1910.1000, Table Z-1',
    status: 'memory',
    says: '50 ppm for 8 hours',
    inputs: room({ exposure: 'OSHA 8 h' }),
    answers: { chi_lim: '50 ppm', t_lim: '8 hr' },
  },
  {
    id: 'CO2a',
    source: 'Well-mixed room by hand: a gas has gone 63.2 % of its way after one change of air',
    status: 'computed',
    says: '0.01 m³/h in 100 m³/h, one hour',
    inputs: room({}),
    answers: { chi_s: '100 ppm', chi_t: '63.2 ppm', t_x: '1 hr' },
  },
  {
    id: 'CO2b',
    source: 'The same: 95.0 % after three changes',
    status: 'computed',
    says: 'three hours',
    inputs: room({ burning: '3 hr' }),
    answers: { chi_t: '95.0 ppm' },
  },
  {
    id: 'CO3',
    source: 'The same: half of the way after 0.693 of a change of air, 41.6 min of an hour',
    status: 'computed',
    says: '400 ppm in the end: the time until 200 ppm',
    inputs: room({ sources: [{ gas: '40 m^3/hr', monoxide: '1000 ppm' }] }),
    answers: { chi_s: '400 ppm', t_danger: '41.6 min' },
  },
]
