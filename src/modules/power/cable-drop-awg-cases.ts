import type { CaseInput, PublishedCase } from '../module.ts'

const hundred: Readonly<Record<string, CaseInput>> = {
  gauge: 'AWG 10',
  make: 'stranded',
  current: '10 A',
  run: '100 ft',
  voltage: '48 V',
  drop_limit: '10 percent',
  fuse: '15 A',
  ampacity: '30 A',
}

/** A published drop, and a cell of the code. */
export const cableDropAwgCases: readonly PublishedCase[] = [
  {
    id: 'E1',
    source:
      'Engineering data site, "Example Voltage Drop": 100 ft one way, 10 gauge copper of 1.02 Ω for 1000 ft, 10 A',
    status: 'looked up',
    says: 'drop with the resistance that the example states',
    inputs: { ...hundred, conductor_temperature: '20 degC', maker_resistance: '1.02 mohm/ft' },
    answers: { V_drop: '2.04 V' },
  },
  {
    id: 'E7',
    source: 'NFPA 70, Chapter 9, Table 8: 12 gauge solid, 1.93 Ω for 1000 ft at 75 °C',
    status: 'looked up',
    says: 'a cell of the table at its own temperature',
    inputs: { ...hundred, gauge: 'AWG 12', make: 'solid', conductor_temperature: '75 degC' },
    answers: { R_t: '1.93 mohm/ft' },
  },
]
