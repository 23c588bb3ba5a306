import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, look, quantity, step, when } from '../words.ts'
import { cableDropAwgCases } from './cable-drop-awg-cases.ts'
import {
  cableDropCautions,
  cableDropInputs,
  cableDropLimits,
  cableDropResults,
  cableDropSteps,
  lineResistance,
} from './cable-drop-steps.ts'
import { awgMakes, awgResistance, awgSizes } from './conductor-tables.ts'

const warm = { says: 'resistance of the warm conductor', unit: lineResistance } as const

/** Drop of voltage in a copper cable by American wire gauge, and its fuse. */
export const cableDropAwg = defineModule({
  id: 'cable-drop-awg',
  version: '1.2.0',
  title: 'Drop of voltage in a cable, American wire gauge',
  asks: 'What voltage does this copper cable lose, and does its fuse protect it?',
  code: 'NFPA 70',
  inputs: {
    gauge: choice({ says: 'American wire gauge', words: awgSizes }),
    make: choice({ says: 'solid or stranded', words: awgMakes }),
    maker_resistance: quantity('resistance_per_length', {
      says: "maker's resistance of one conductor at 20 °C",
      note: 'Where it is given it is used instead of the table',
      symbol: 'R_m',
      unit: lineResistance,
      above: '0 mohm/ft',
      optional: true,
    }),
    ...cableDropInputs,
  },
  steps: [
    when(
      { given: 'maker_resistance' },
      {
        yes: [
          step('R_t', 'maker_resistance * (1 + 0.00393 * (conductor_temperature / degC - 20))', {
            ...warm,
            source: cite('iec-60228', 'copper, memory'),
          }),
        ],
        no: [
          look('R_75', awgResistance, {
            row: 'gauge',
            column: 'make',
            says: 'resistance at 75 °C',
            unit: lineResistance,
          }),
          step('R_t', 'R_75 * (1 + 0.00323 * (conductor_temperature / degC - 75))', {
            ...warm,
            source: cite('nec', 'Chapter 9, Table 8, note, memory'),
          }),
        ],
      },
    ),
    ...cableDropSteps,
  ],
  results: [...cableDropResults],
  covers: ['cables'],
  drawing: ['gauge', 'make', 'fuse'],
  limits: cableDropLimits,
  cautions: [
    ...cableDropCautions,
    'The table is of uncoated copper: tinned wire has 1 to 4 % more. Boat cable of the same gauge may be larger or smaller.',
  ],
  published: cableDropAwgCases,
  example: {
    gauge: 'AWG 4',
    make: 'stranded',
    current: '20 A',
    run: '20 ft',
    voltage: '12 V',
    drop_limit: '3 percent',
    conductor_temperature: '104 degF',
    fuse: '40 A',
    ampacity: '70 A',
  },
})
