import type { CaseInput, PublishedCase } from '../module.ts'

const at = (least: string): Readonly<Record<string, CaseInput>> => ({
  voltage: '12 V',
  least_voltage: least,
  standing_power: '0 W',
})

/** A published household sum, and what follows from energy and power alone. */
export const dcLoadCases: readonly PublishedCase[] = [
  {
    id: 'L1',
    source:
      'Public household example of a load list: five lamps of 15 W for 4 h and a set of 40 W for 5 h use 500 Wh a day',
    status: 'looked up',
    says: 'lamps 300 Wh and set 200 Wh',
    inputs: {
      ...at('10.5 V'),
      loads: [
        { load: 'lamps', count: '5', power: '15 W', duty: '4 hr' },
        { load: 'set', count: '1', power: '40 W', duty: '5 hr' },
      ],
    },
    answers: { E_l_1: '300 Wh', E_l_2: '200 Wh', E_day: '500 Wh' },
  },
  {
    id: 'L2',
    source: 'Identity: power by time, over voltage',
    status: 'computed',
    says: '60 W day and night at 12 V',
    inputs: { ...at('12 V'), loads: [{ count: '1', power: '60 W', duty: '24 hr' }] },
    answers: { E_day: '1440 Wh', Q_day: '120 Ah', I_peak: '5 A' },
    tolerance: { relative: 1e-9 },
  },
  {
    id: 'L3a',
    source: 'Identity: constant power, 120 W at 12.0 V',
    status: 'computed',
    says: 'the current at the nominal voltage',
    inputs: { ...at('12 V'), loads: [{ count: '1', power: '120 W', duty: '1 hr' }] },
    answers: { I_peak: '10.0 A' },
  },
  {
    id: 'L3b',
    source: 'Identity: constant power, 120 W at 10.5 V, the end of discharge',
    status: 'computed',
    says: 'the current at the end of discharge',
    inputs: { ...at('10.5 V'), loads: [{ count: '1', power: '120 W', duty: '1 hr' }] },
    answers: { I_peak: '11.429 A' },
  },
]
