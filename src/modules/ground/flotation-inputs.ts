import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, quantity, ratio, unitWeight } from '../words.ts'
import { loadConditions } from './em-flotation-factor.ts'
import { openBoxWords } from './flotation-open.ts'
import { waterWeight } from './ground-inputs.ts'
import { forceUnit, lengthUnit, weightUnit } from './ground-units.ts'

const thickness = { unit: lengthUnit, above: '0 m', usual: ['0.15 m', '1.5 m'] } as const

/** What `flotation` asks for. */
export const flotationInputs = {
  method: choice({
    says: 'how safety is measured',
    words: {
      'EN 1997-1 UPL': 'partial factors on uplift and on weight, limit state UPL',
      'EM 1110-2-2100': 'one factor by load condition',
      'chosen factor': 'one factor, given as `factor`',
    },
  }),
  plan_length: length({
    says: 'outside length of the box, wall to wall',
    symbol: 'l',
    unit: lengthUnit,
    above: '0 m',
  }),
  plan_width: length({ says: 'outside width of the box, wall to wall', symbol: 'b', unit: lengthUnit, above: '0 m' }),
  toe: length({
    says: 'how far the raft stands out beyond the walls',
    note: 'On every side alike',
    symbol: 'c_t',
    unit: lengthUnit,
    least: '0 m',
    usual: ['0 m', '1.5 m'],
    default: '0 m',
  }),
  cover: length({
    says: 'depth of soil over the roof that is counted as weight',
    note: 'The least that will surely stay, without the topping where that is given',
    symbol: 'h_cover',
    unit: lengthUnit,
    least: '0 m',
    usual: ['0 m', '4 m'],
  }),
  topping: length({
    says: 'screed and membrane between soil and roof slab',
    note: 'It sets the roof deeper; it holds the box down only where its weight is given',
    symbol: 'h_top',
    unit: lengthUnit,
    least: '0 m',
    usual: ['0 m', '0.5 m'],
    default: '0 m',
  }),
  topping_weight: unitWeight({
    says: 'unit weight of the topping, a low value',
    note: 'Left out, its weight is not counted: on the safe side',
    symbol: 'gamma_top',
    unit: weightUnit,
    least: '10.3 kN/m^3',
    usual: ['15 kN/m^3', '24 kN/m^3'],
    optional: true,
  }),
  roof: length({ says: 'thickness of the roof slab', symbol: 'h_roof', ...thickness }),
  clear: length({
    says: 'height from the top of the raft to the underside of the roof',
    symbol: 'h_i',
    unit: lengthUnit,
    above: '0 m',
    usual: ['1.9 m', '4.5 m'],
  }),
  raft: length({ says: 'thickness of the raft', symbol: 'h_raft', ...thickness }),
  wall: length({ says: 'thickness of the outer walls', symbol: 't_w', ...thickness }),
  gamma_c: unitWeight({
    says: 'unit weight of the concrete, a low value',
    symbol: 'gamma_c',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['22.5 kN/m^3', '25 kN/m^3'],
  }),
  box_weight: quantity('force', {
    says: 'weight of the box',
    note: 'Where it is known better than from the dimensions',
    symbol: 'W_given',
    unit: forceUnit,
    above: '0 kN',
    optional: true,
  }),
  fixed_weight: quantity('force', {
    says: 'fixed weight counted beside the box and the soil',
    note: 'Inner walls and equipment that will surely stay, less what may be lost; no people, stores or water',
    symbol: 'W_fix',
    unit: forceUnit,
    least: '0 kN',
    default: '0 kN',
  }),
  gamma: unitWeight({
    says: 'unit weight of the fill above the water, a low value',
    symbol: 'gamma',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['14 kN/m^3', '21 kN/m^3'],
  }),
  gamma_sat: unitWeight({
    says: 'unit weight of the fill below the water, saturated, a low value',
    symbol: 'gamma_sat',
    unit: weightUnit,
    least: '11 kN/m^3',
    usual: ['17 kN/m^3', '22 kN/m^3'],
  }),
  water_depth: length({
    says: 'depth of the highest credible groundwater',
    note: 'Below ground, floods included; negative for water above ground',
    symbol: 'z_w',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
  }),
  water_building: length({
    says: 'depth of the highest water before the box is covered',
    note: 'Where it would stand if the pumps stopped',
    symbol: 'z_wb',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
  }),
  open_box: choice({
    says: 'how the box without its roof is kept down when the pumps stop',
    words: openBoxWords,
    default: 'holds by weight',
  }),
  water_held: length({
    says: 'depth at which the pumps hold the water while building',
    note: 'Checked where given, until the roof is cast',
    symbol: 'z_held',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
    optional: true,
  }),
  gamma_dst: ratio({
    says: 'partial factor on permanent uplift',
    note: 'The recommended value; the national annex decides (1.1 in the United Kingdom)',
    symbol: 'gamma_G_dst',
    least: '1',
    most: '1.5',
    default: '1.0',
    when: { choice: 'method', is: ['EN 1997-1 UPL'] },
    source: cite('en-1997-1', 'Table A.15, recommended value'),
  }),
  gamma_stb: ratio({
    says: 'partial factor on permanent weight',
    note: 'The recommended value; the national annex decides',
    symbol: 'gamma_G_stb',
    least: '0.5',
    most: '1',
    default: '0.9',
    when: { choice: 'method', is: ['EN 1997-1 UPL'] },
    source: cite('en-1997-1', 'Table A.15, recommended value'),
  }),
  condition_finished: choice({
    says: 'load condition of the highest water, for EM 1110-2-2100',
    words: loadConditions,
    default: 'usual',
  }),
  condition_building: choice({
    says: 'load condition of the building stage, for EM 1110-2-2100',
    words: loadConditions,
    default: 'usual',
  }),
  factor: ratio({
    says: 'required factor',
    note: 'For the method `chosen factor`',
    symbol: 'F_sel',
    least: '1',
    usual: ['1.05', '1.5'],
    optional: true,
  }),
  side_friction: quantity('force', {
    says: 'friction of the backfill on the walls, a design value',
    note: 'Leave it out unless it is proved',
    symbol: 'R_side',
    unit: forceUnit,
    least: '0 kN',
    default: '0 kN',
  }),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>
