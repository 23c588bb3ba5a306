import type { CaseInput, PublishedCase } from '../module.ts'

const ten: Readonly<Record<string, CaseInput>> = {
  current: '10 A',
  run: '10 m',
  voltage: '12 V',
  drop_limit: '10 percent',
  fuse: '15 A',
  ampacity: '25 A',
  conductor: 'plain copper, class 1 or 2',
  area: '6 mm^2',
}
const tableCells = 'IEC 60228:2004, Tables 2 and 3, 1.5 mm² at 20 °C'

/** Cells of the standard, and the drop they give. */
export const cableDropCases: readonly PublishedCase[] = [
  {
    id: 'E3a',
    source: 'IEC 60228, 6 mm² class 2, 3.08 Ω/km: 10 A over 10 m at 20 °C',
    status: 'computed',
    says: 'drop of a cold cable',
    inputs: { ...ten, conductor_temperature: '20 degC' },
    answers: { R_20: '3.08 ohm/km', V_drop: '0.6160 V' },
  },
  {
    id: 'E3b',
    source: 'IEC 60228, 6 mm² class 2, 3.08 Ω/km: 10 A over 10 m at 45 °C, with 0.00393 for each kelvin',
    status: 'computed',
    says: 'drop of a warm cable',
    inputs: { ...ten, conductor_temperature: '45 degC' },
    answers: { V_drop: '0.6765 V' },
  },
  {
    id: 'E5a',
    source: tableCells,
    status: 'looked up',
    says: 'class 2',
    inputs: { ...ten, area: '1.5 mm^2', drop_limit: '20 percent', conductor_temperature: '20 degC' },
    answers: { R_20: '12.1 ohm/km' },
  },
  {
    id: 'E5b',
    source: tableCells,
    status: 'looked up',
    says: 'class 5',
    inputs: {
      ...ten,
      conductor: 'plain copper, class 5 or 6',
      area: '1.5 mm^2',
      drop_limit: '20 percent',
      conductor_temperature: '20 degC',
    },
    answers: { R_20: '13.3 ohm/km' },
  },
]
