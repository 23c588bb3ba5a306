import { defineModule, type Input } from '../module.ts'
import { cite } from '../sources.ts'
import { length, limit, quantity, ratio } from '../words.ts'
import { quantitiesCases } from './quantities-cases.ts'
import { quantitiesSteps } from './quantities-steps.ts'

const metre = { SI: 'm', US: 'ft' }
const side = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: metre, above: '0 m', most: '40 m', usual: ['1.8 m', '20 m'] })
const thick = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: metre, above: '0 m', most: '3 m', usual: ['0.1 m', '1 m'] })
const layer = (says: string, symbol: string): Input => length({ says, symbol, unit: metre, least: '0 m', most: '3 m' })
const allowance = (says: string, symbol: string, note: string): Input =>
  ratio({
    says,
    note,
    symbol,
    unit: { SI: 'percent', US: 'percent' },
    least: '0',
    most: '0.5',
    source: cite('practice'),
  })

/** Quantities of a rectangular box with raft, walls and roof, of its wraps and forms, and of its pit. */
export const quantities = defineModule({
  id: 'quantities',
  version: '1.1.0',
  title: 'Quantities of the box and its pit',
  asks: 'How much concrete, steel, formwork, wrapping and earth does the box take?',
  inputs: {
    length: side('clear length inside', 'L_i'),
    width: side('clear width inside', 'W_i'),
    height: side('height from raft to roof slab', 'H_i'),
    wall: thick('thickness of the walls', 't_w'),
    roof: thick('thickness of the roof', 't_roof'),
    raft: thick('thickness of the raft', 't_r'),
    toe: layer('how far the raft reaches beyond the walls', 'e_t'),
    blinding: layer('thickness of the blinding under the raft', 't_bl'),
    working_layer: length({
      says: 'thickness of the working layer under the blinding',
      note: 'Nil where the blinding lies on the ground',
      symbol: 't_wl',
      unit: metre,
      least: '0 m',
      most: '3 m',
      default: '0 m',
    }),
    screed: layer('thickness of the screed inside', 't_sc'),
    cover: layer('earth over the roof, to ground level', 'h_cover'),
    working_space: layer('space to work in, from the raft to the foot of the pit side', 'a_w'),
    batter: ratio({
      says: 'slope of the pit sides, level to upright',
      note: '0 for a braced pit',
      symbol: 'm_b',
      least: '0',
      most: '3',
    }),
    steel_rate: quantity('density', {
      says: 'mass of steel in a volume of concrete',
      note: 'From the bar schedule over the volume; 80 to 150 kg/m³ is usual in small boxes',
      symbol: 'r_s',
      unit: { SI: 'kg/m^3', US: 'lb/ft^3' },
      least: '0 kg/m^3',
      usual: ['60 kg/m^3', '250 kg/m^3'],
    }),
    waste_concrete: allowance(
      'allowance on concrete',
      'k_conc',
      'Spill, uneven ground and what stays in the pump: often 3 to 5 %',
    ),
    waste_steel: allowance(
      'allowance on steel',
      'k_steel',
      'Offcuts, chairs and laps that no schedule has: often 3 to 10 %',
    ),
    waste_sheet: allowance('allowance on membrane and board', 'k_sheet', 'Laps, turns and cuts: often 10 to 15 %'),
  },
  steps: quantitiesSteps,
  results: ['V_c', 'm_s', 'A_in', 'A_out', 'A_so', 'V_bl', 'V_wl', 'V_sc', 'A_m', 'A_p', 'V_ex', 'V_fill'],
  covers: ['quantities'],
  schedule: {
    title: 'Quantities',
    lines: ['V_c', 'm_s', 'A_in', 'A_out', 'A_so', 'V_bl', 'V_wl', 'V_sc', 'A_m', 'A_p', 'V_ex', 'V_fill'],
  },
  limits: [
    limit('min(length, width) >= 2 * wall', {
      says: 'the room is at least as wide as two walls are thick',
      otherwise: 'warn',
      on: 'wall',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'A plain box: entrance, upstands, inner walls, sumps and openings are not in it. Openings are not taken off.',
    'The working layer is counted under the raft; where it goes on under the space to work in, that part comes on top and takes the place of fill.',
    'Earth is in place: dug soil takes more room on the lorry, and fill is asked for compacted.',
    'The pit is that of a rectangle with straight sides; ramps and benches come on top.',
    'Allowances are assumptions: compare them with the delivery notes of the first pour.',
    'The steel is a rate on the volume. Order from the bar schedule, not from this.',
  ],
  published: quantitiesCases,
  example: {
    length: '5.4 m',
    width: '3.6 m',
    height: '2.4 m',
    wall: '0.3 m',
    roof: '0.4 m',
    raft: '0.4 m',
    toe: '0.2 m',
    blinding: '0.075 m',
    screed: '0.05 m',
    cover: '0.9 m',
    working_space: '0.8 m',
    batter: '1.0',
    steel_rate: '110 kg/m^3',
    waste_concrete: '4 percent',
    waste_steel: '5 percent',
    waste_sheet: '12 percent',
  },
})
