import type { CaseInput, PublishedCase } from '../module.ts'

const pipes = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  column: 'metric',
  intake_height: '1 m',
  snow: '0 m',
  flood: '0 m',
  wind: 'intake',
  sources: [{ kind: 'exhaust class 3', apart: '6 m', mouth: '1 m' }],
  intake_flow: '100 L/s',
  intake_area: '0.1 m^2',
  ...more,
})
const reprint = 'ANSI/ASHRAE 62.1-2016, Table 5.5.1, in a reprint'

/** Rows of the published table, and the dilution formula by hand in both systems. */
export const ventSeparationCases: readonly PublishedCase[] = [
  {
    id: 'V1a',
    source: reprint,
    status: 'looked up',
    says: 'exhaust of class 3, flue and thoroughfare in metres',
    inputs: pipes({
      sources: [
        { kind: 'exhaust class 3', apart: '6 m', mouth: '1 m' },
        { kind: 'flue', apart: '6 m', mouth: '1 m' },
        { kind: 'thoroughfare', apart: '60 m', mouth: '0 m' },
      ],
    }),
    answers: { L_min_1: '5 m', L_min_2: '5 m', L_min_3: '7.5 m' },
  },
  {
    id: 'V1b',
    source: reprint,
    status: 'looked up',
    says: 'exhaust of class 4 and driveway in feet',
    inputs: pipes({
      column: 'feet',
      sources: [
        { kind: 'exhaust class 4', apart: '20 m', mouth: '1 m' },
        { kind: 'driveway', apart: '20 m', mouth: '0 m' },
      ],
    }),
    answers: { L_min_1: '30 ft', L_min_2: '5 ft' },
  },
  {
    id: 'V2',
    source: 'ANSI/ASHRAE 62.1, separation by dilution (formula from memory), by hand: 0.04 by 10 by the root of 15',
    status: 'computed',
    says: '100 L/s from a capped outlet, thinned 15 times',
    inputs: pipes({}),
    answers: { L_dil_1: '1.549 m' },
  },
  {
    id: 'V3',
    source: 'ANSI/ASHRAE 62.1, the same formula in feet (from memory): 0.09 by the root of 200 by the root of 50',
    status: 'computed',
    says: '200 cfm from a capped outlet, thinned 50 times, 9.0 ft',
    inputs: pipes({ sources: [{ kind: 'exhaust class 4', apart: '20 m', mouth: '1 m', exhaust_flow: '200 cfm' }] }),
    answers: { L_dil_1: '9.0 ft' },
    tolerance: { relative: 0.003 },
  },
]
