import { defineModule, type Input } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, each, label, length, limit, list, ratio, step } from '../words.ts'
import { barScheduleCases } from './bar-schedule-cases.ts'
import { barScheduleSteps } from './bar-schedule-steps.ts'
import { shapesWith, shapeWords } from './bar-shapes.ts'
import { size } from './bar-steps.ts'

const leg = (letter: 'B' | 'C' | 'D' | 'E') =>
  length({
    says: `dimension ${letter}, outside the bar`,
    symbol: `l_${letter}`,
    unit: size,
    least: '0 mm',
    most: '12 m',
    default: '0 mm',
    when: { choice: 'shape', is: shapesWith(letter) },
  })

const stock: Input = length({
  says: 'longest bar that is stocked',
  symbol: 'L_st',
  unit: { SI: 'm', US: 'ft' },
  above: '0 m',
  default: '12 m',
  source: cite('practice'),
})

/** Cutting lengths and masses of bars by their shapes and dimensions, BS 8666. */
export const barSchedule = defineModule({
  id: 'bar-schedule',
  version: '1.0.1',
  title: 'Bar schedule by BS 8666',
  asks: 'How long are these bars cut, and what do they weigh?',
  inputs: {
    bars: list('bars', {
      least: 1,
      most: 60,
      fields: {
        mark: label({ says: 'mark and place of the bar' }),
        bar_size: length({
          says: 'diameter of the bar',
          note: 'Bent bars: a metric size of 8, 10, 12, 16, 20, 25, 32 or 40 mm',
          symbol: 'phi',
          unit: size,
          least: '5 mm',
          most: '60 mm',
        }),
        shape: choice({ says: 'shape code', words: shapeWords }),
        count: ratio({ says: 'number of bars', symbol: 'n_b', least: '1', most: '10000' }),
        a: length({ says: 'dimension A, outside the bar', symbol: 'l_A', unit: size, above: '0 mm', most: '20 m' }),
        b: leg('B'),
        c: leg('C'),
        d: leg('D'),
        e: leg('E'),
      },
    }),
    stock_length: stock,
  },
  steps: [
    each('bars', barScheduleSteps),
    step('m_t', 'sum(bars.m_n)', { says: 'mass in all', unit: { SI: 'kg', US: 'lb' } }),
    check('stock', 'max(bars.L_c) <= stock_length', {
      says: 'longest bar against the length stocked',
      aspect: 'geometry',
      source: cite('practice'),
    }),
  ],
  results: ['m_t'],
  covers: ['quantities'],
  schedule: {
    title: 'Bar schedule',
    list: 'bars',
    columns: ['mark', 'bar_size', 'shape', 'count', 'a', 'b', 'c', 'd', 'e', 'L_c', 'm_n'],
  },
  limits: [
    limit('min(bars.L_cut) > 0 mm', {
      says: 'every bar has a length',
      otherwise: 'refuse',
      on: 'bars',
      source: cite('bs-8666'),
    }),
  ],
  cautions: [
    'Dimensions are over the outside of the bar; the last leg takes up what cutting and bending are off.',
    'Lengths are along the centre line with the least radius. Larger radii, and slopes above 45 degrees in a crank, need a dimensioned sketch.',
    'Take the dimensions of a closed link from the member less cover on both sides, and less 10 mm or so for bending and placing.',
    'Laps are in the dimensions, not added here.',
    'Metric bars of 7850 kg/m³ on their nominal area. US shapes and hooks have tables of their own.',
  ],
  published: barScheduleCases,
  example: {
    bars: [
      {
        mark: '01 raft, bottom',
        bar_size: '12 mm',
        shape: 'shape 21',
        count: '44',
        a: '300 mm',
        b: '4500 mm',
        c: '300 mm',
      },
      { mark: '02 starters', bar_size: '12 mm', shape: 'shape 11', count: '136', a: '900 mm', b: '400 mm' },
      { mark: '03 wall, upright', bar_size: '12 mm', shape: 'shape 00', count: '136', a: '2700 mm' },
      {
        mark: '04 chairs',
        bar_size: '10 mm',
        shape: 'shape 41',
        count: '30',
        a: '150 mm',
        b: '250 mm',
        c: '200 mm',
        d: '250 mm',
        e: '150 mm',
      },
    ],
  },
})
