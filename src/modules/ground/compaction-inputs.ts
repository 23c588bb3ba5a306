import type { Input } from '../module.ts'
import { choice, label, length, list, quantity, ratio } from '../words.ts'
import { lengthUnit } from './ground-units.ts'

export const massUnit = { SI: 'kg', US: 'lb' } as const
export const densityUnit = { SI: 'kg/m^3', US: 'lb/ft^3' } as const
const percent = { SI: 'percent', US: 'percent' } as const

const mass = (says: string, symbol: string, note?: string) =>
  quantity('mass', { says, symbol, unit: massUnit, above: '0 kg', ...(note ? { note } : {}) })
const density = (says: string, symbol: string, usual: readonly [string, string], note?: string) =>
  quantity('density', { says, symbol, unit: densityUnit, above: '0 kg/m^3', usual, ...(note ? { note } : {}) })

/** What `compaction` asks for: the laboratory, the sand, the field tests, the fill. */
export const compactionInputs = {
  proctor: choice({
    says: 'laboratory compaction that the maximum is from',
    note: 'The required share belongs to it: 95 % of one is not 95 % of the other',
    words: {
      'standard Proctor': 'ASTM D698: 600 kN m/m³ (12 400 ft lbf/ft³)',
      'modified Proctor': 'ASTM D1557: 2700 kN m/m³ (56 000 ft lbf/ft³)',
    },
  }),
  rho_max: density('greatest dry density in the laboratory, of this soil', 'rho_d_max', ['1400 kg/m^3', '2350 kg/m^3']),
  R_req: ratio({
    says: 'required relative compaction',
    symbol: 'R_req',
    unit: percent,
    least: '0.8',
    most: '1.05',
    usual: ['0.9', '1'],
  }),
  G_s: ratio({
    says: 'specific gravity of the grains',
    symbol: 'G_s',
    least: '2',
    most: '3.5',
    usual: ['2.6', '2.8'],
  }),
  rho_sand: density('density of the test sand as it pours', 'rho_sand', ['1300 kg/m^3', '1700 kg/m^3']),
  cone_sand: mass('sand that fills the cone', 'm_cone'),
  tests: list('field tests', {
    least: 1,
    most: 40,
    fields: {
      test: label({ says: 'where and in which lift', optional: true }),
      jar_before: mass('jar, cone and sand before', 'm_before'),
      jar_after: mass('jar, cone and sand after', 'm_after'),
      m_wet: mass('moist soil from the hole', 'm_wet'),
      w: ratio({
        says: 'water content, of the dry mass',
        symbol: 'w',
        unit: percent,
        least: '0',
        most: '1',
        usual: ['0.02', '0.35'],
      }),
    },
  }),
  fill: length({ says: 'height of the fill', symbol: 'h_fill', unit: lengthUnit, above: '0 m' }),
  lift: length({
    says: 'thickness of a lift, compacted',
    note: 'What the plant and the soil allow: a plate or rammer beside a wall takes little',
    symbol: 'h_lift',
    unit: lengthUnit,
    above: '0 m',
    usual: ['0.1 m', '0.3 m'],
  }),
  tests_a_lift: ratio({ says: 'tests for each lift', symbol: 'n_t', least: '0', most: '50' }),
  rho_w: quantity('density', {
    says: 'density of water',
    symbol: 'rho_w',
    unit: densityUnit,
    least: '990 kg/m^3',
    most: '1030 kg/m^3',
    default: '1000 kg/m^3',
  }),
} satisfies Readonly<Record<string, Input>>
