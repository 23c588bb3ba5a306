import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, look, quantity, step, when } from '../words.ts'
import { cableDropCases } from './cable-drop-cases.ts'
import {
  cableDropCautions,
  cableDropInputs,
  cableDropLimits,
  cableDropResults,
  cableDropSteps,
  lineResistance,
} from './cable-drop-steps.ts'
import { iecConductors, iecResistance } from './conductor-tables.ts'

const coefficient = { says: 'rise of resistance for each kelvin, at 20 °C', symbol: 'alpha' } as const

/** Drop of voltage in a cable with conductors of IEC 60228, and its fuse. */
export const cableDrop = defineModule({
  id: 'cable-drop',
  version: '1.2.0',
  title: 'Drop of voltage in a cable, metric sizes',
  asks: 'What voltage does this cable lose, and does its fuse protect it?',
  code: 'IEC 60228',
  inputs: {
    conductor: choice({ says: 'conductor', words: iecConductors }),
    area: quantity('area', {
      says: 'nominal area of one conductor',
      note: 'A printed size: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95 or 120 `mm^2`',
      symbol: 'S',
      unit: { SI: 'mm^2', US: 'mm^2' },
      least: '0.5 mm^2',
      most: '120 mm^2',
    }),
    ...cableDropInputs,
  },
  steps: [
    look('R_20', iecResistance, {
      row: 'area',
      column: 'conductor',
      says: 'maximum resistance at 20 °C, stranding included',
      unit: lineResistance,
    }),
    when(
      { choice: 'conductor', is: ['aluminium'] },
      {
        yes: [step('alpha_20', '0.00403 / K', { ...coefficient, source: cite('iec-60228', 'aluminium, memory') })],
        no: [step('alpha_20', '0.00393 / K', { ...coefficient, source: cite('iec-60228', 'copper, memory') })],
      },
    ),
    step('R_t', 'R_20 * (1 + alpha_20 * (conductor_temperature / degC - 20) * K)', {
      says: 'resistance of the warm conductor',
      unit: lineResistance,
      source: cite('iec-60228', 'linear in temperature'),
    }),
    ...cableDropSteps,
  ],
  results: [...cableDropResults],
  covers: ['cables'],
  drawing: ['conductor', 'area', 'fuse'],
  limits: [
    ...cableDropLimits,
    limit('area >= 1.5 mm^2', {
      says: 'a fixed conductor has at least 1.5 square millimetres',
      otherwise: 'warn',
      on: 'area',
      source: cite('practice'),
    }),
  ],
  cautions: [
    ...cableDropCautions,
    'The table gives the greatest resistance the standard allows: a cable that is not to the standard may have more.',
  ],
  published: cableDropCases,
  example: {
    conductor: 'tinned copper, class 5 or 6',
    area: '16 mm^2',
    current: '20 A',
    run: '6 m',
    voltage: '12 V',
    drop_limit: '3 percent',
    conductor_temperature: '40 degC',
    fuse: '40 A',
    ampacity: '70 A',
  },
})
