import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { length, limit, pressure, ratio, unitWeight } from '../words.ts'
import { baseHeaveCases } from './base-heave-cases.ts'
import { baseHeaveSecond, baseHeaveSteps } from './base-heave-steps.ts'
import { groundLoad } from './ground-inputs.ts'
import { lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'

const side = { unit: lengthUnit, above: '0 m' } as const

/** Heave of the bottom of a pit in soft to firm saturated clay. */
export const baseHeave = defineModule({
  id: 'base-heave',
  version: '1.0.0',
  title: 'Heave of the pit bottom in clay',
  asks: 'Does the clay beside the pit push its bottom up?',
  inputs: {
    depth: length({
      says: 'depth of formation, with what may be dug too deep',
      symbol: 'd',
      ...side,
      usual: ['1.5 m', '12 m'],
    }),
    pit_width: length({ says: 'width of the pit at formation, the shorter side', symbol: 'B', ...side }),
    pit_length: length({ says: 'length of the pit at formation', symbol: 'L', ...side }),
    gamma: unitWeight({
      says: 'unit weight of the ground beside the pit, total, a high mean value',
      symbol: 'gamma',
      unit: weightUnit,
      above: '0 kN/m^3',
      usual: ['15 kN/m^3', '22 kN/m^3'],
    }),
    surcharge: groundLoad('uniform load on the ground beside the pit'),
    c_below: pressure({
      says: 'undrained strength of the clay below formation, a low mean value',
      note: 'To a depth of seven tenths of the width below formation, softened as it may be',
      symbol: 'c_b',
      unit: pressureUnit,
      above: '0 kPa',
      usual: ['10 kPa', '100 kPa'],
    }),
    c_side: pressure({
      says: 'undrained strength of the ground beside the pit, a low mean value',
      note: '0 kPa for sand or fill, or where it may crack: on the safe side',
      symbol: 'c_s',
      unit: pressureUnit,
      least: '0 kPa',
      usual: ['0 kPa', '100 kPa'],
    }),
    clay_below: length({
      says: 'clay between formation and firm ground',
      note: 'Left out, the clay is taken as deep: on the safe side',
      symbol: 'T',
      ...side,
      optional: true,
    }),
    factor: ratio({
      says: 'required factor against heave',
      symbol: 'F_req',
      least: '1',
      usual: ['1.2', '2'],
      default: '1.5',
      source: cite('practice', '1.5'),
    }),
  },
  steps: baseHeaveSteps,
  results: ['F_T', 'F_B', 'N_b', 'p_v', 'B_h'],
  covers: ['pit-bottom'],
  limits: [
    limit('pit_width <= pit_length', {
      says: 'the width of the pit is its shorter side',
      advice: 'Swap the two',
      otherwise: 'refuse',
      on: 'pit_width',
    }),
    limit('N_b <= 6', {
      says: 'the stability number at formation is at most 6',
      advice: 'Softer clay moves much before it fails: reckon the movements too',
      otherwise: 'warn',
      on: 'c_below',
      source: cite('peck-1969', 'base stability number'),
    }),
  ],
  cautions: [
    'For saturated clay while it stays undrained. Sand below formation is a matter of uplift and piping.',
    'The lower of the two factors governs. Terzaghi counts shear up through the ground beside the pit and suits a wide shallow pit; Bjerrum and Eide, from failures, suit a narrow deep one.',
    'Sheeting below formation, piles and the order of digging are not in it: they help only where they are designed for it.',
    'Strength is lost where clay softens or is kneaded at the bottom: blind it on the day it is dug. Heaps and plant beside the pit count as load.',
    {
      says: 'By the method of Terzaghi the ground beside the pit hangs in its own strength, and there is no factor: see the second method.',
      when: { formula: 'p_net <= 0 kPa' },
    },
  ],
  second: baseHeaveSecond,
  published: baseHeaveCases,
  example: {
    depth: '4.7 m',
    pit_width: '7.2 m',
    pit_length: '10.6 m',
    gamma: '18.5 kN/m^3',
    surcharge: '10 kPa',
    c_below: '35 kPa',
    c_side: '20 kPa',
  },
})
