import type { CaseInput, PublishedCase } from '../module.ts'

const bank: Readonly<Record<string, CaseInput>> = {
  voltage: '12 V',
  chemistry: 'lead-acid',
  margin: '1',
  unit_capacity: '100 Ah',
  unit_voltage: '12 V',
  strings: '7',
  rated_time: '20 hr',
  running_current: '5 A',
  charge_efficiency: '0.9',
}

/** Worksheets that were read, and the order of factors in the standard for standby. */
export const batteryBankCases: readonly PublishedCase[] = [
  {
    id: 'B1',
    source:
      'Public example of the simplified worksheet: 1000 Wh a day, 2.5 days, depth 0.5, 40 °F; 6500 Wh printed, then divided by 12 V (541.67, its last figure cut off where it was read)',
    status: 'looked up',
    says: '2500 Wh over 0.5 by 1.30',
    inputs: {
      ...bank,
      method: 'worksheet',
      daily_charge: '1000 Wh / (12 V)',
      autonomy: '2.5 day',
      discharge_most: '0.5',
      cell_temperature: '40 degF',
    },
    answers: { k_T: '1.30', E_req: '6500 Wh', C_req: '541.67 Ah' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'B2',
    source:
      'The same page, rule of thumb: 1000 Wh by 5 over 12 V, 416.66 Ah (2.5 days at a depth of 0.5, no factor for cold)',
    status: 'looked up',
    says: 'the rule without temperature',
    inputs: {
      ...bank,
      method: 'worksheet',
      daily_charge: '1000 Wh / (12 V)',
      autonomy: '2.5 day',
      discharge_most: '0.5',
      cell_temperature: '80 degF',
    },
    answers: { C_req: '416.66 Ah' },
    tolerance: { relative: 0.0001 },
  },
  {
    id: 'B3',
    source:
      'Open documentation of a small power system: 300 Wh for 2 days at a depth of 0.8 is 750 Wh, 62.5 Ah at 12 V',
    status: 'looked up',
    says: '600 Wh over 0.8',
    inputs: {
      ...bank,
      method: 'worksheet',
      daily_charge: '300 Wh / (12 V)',
      autonomy: '2 day',
      discharge_most: '0.8',
      cell_temperature: '80 degF',
      running_current: '2 A',
    },
    answers: { E_req: '750 Wh', C_req: '62.5 Ah' },
    tolerance: { relative: 1e-9 },
  },
  {
    id: 'B4',
    source: 'IEEE Std 485, order of the factors: 100 Ah by 1.11 (60 °F), 1.10 and 1.25',
    status: 'computed',
    says: 'cold, margin and ageing on an uncorrected size',
    inputs: {
      ...bank,
      method: 'IEEE 485',
      daily_charge: '100 Ah',
      autonomy: '1 day',
      cell_temperature: '60 degF',
      margin: '1.10',
      ageing: '1.25',
    },
    answers: { C_req: '152.625 Ah' },
    tolerance: { relative: 1e-9 },
  },
]
