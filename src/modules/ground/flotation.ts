import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, quantity, ratio, unitWeight } from '../words.ts'
import { loadConditions } from './em-flotation-factor.ts'
import { flotationCases } from './flotation-cases.ts'
import { flotationSecond } from './flotation-second.ts'
import { flotationSketch } from './flotation-sketch.ts'
import { flotationSteps } from './flotation-steps.ts'
import { forceUnit, lengthUnit, weightUnit } from './ground-units.ts'

const thickness = { unit: lengthUnit, above: '0 m', usual: ['0.15 m', '1.5 m'] } as const

/** Weight of the box and its fill against the uplift of the water, finished and while building. */
export const flotation = defineModule({
  id: 'flotation',
  version: '1.0.0',
  title: 'Flotation of the box',
  asks: 'Will the box float, finished and empty or while it is being built?',
  inputs: {
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
      says: 'how far the raft stands out beyond the walls, on every side',
      symbol: 'c_t',
      unit: lengthUnit,
      least: '0 m',
      usual: ['0 m', '1.5 m'],
      default: '0 m',
    }),
    cover: length({
      says: 'least depth of soil over the roof that will surely stay',
      symbol: 'h_cover',
      unit: lengthUnit,
      least: '0 m',
      usual: ['0 m', '4 m'],
    }),
    roof: length({ says: 'thickness of the roof slab', symbol: 'h_roof', ...thickness }),
    clear: length({
      says: 'height from the top of the raft to the underside of the roof',
      symbol: 'h_clear',
      unit: lengthUnit,
      above: '0 m',
      usual: ['1.9 m', '4.5 m'],
    }),
    raft: length({ says: 'thickness of the raft', symbol: 'h_raft', ...thickness }),
    wall: length({ says: 'thickness of the outer walls', symbol: 't_w', ...thickness }),
    gamma_c: unitWeight({
      says: 'unit weight of the concrete, a low value: it holds the box down',
      symbol: 'gamma_c',
      unit: weightUnit,
      above: '0 kN/m^3',
      usual: ['22.5 kN/m^3', '25 kN/m^3'],
    }),
    box_weight: quantity('force', {
      says: 'weight of the box where it is known better than from these dimensions',
      symbol: 'W_given',
      unit: forceUnit,
      above: '0 kN',
      optional: true,
    }),
    fixed_weight: quantity('force', {
      says: 'inner walls, screeds and equipment that will surely stay; no people, stores or water',
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
      says: 'depth of the highest credible groundwater below ground, floods included; negative for water above ground',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
    }),
    water_building: length({
      says: 'depth of the water that may stand round the box before it is covered: the highest there would be if the pumps stopped',
      symbol: 'z_wb',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
    }),
    gamma_dst: ratio({
      says: 'partial factor on permanent uplift; the national annex may raise it (1.1 in the United Kingdom)',
      symbol: 'gamma_Gdst',
      least: '1',
      most: '1.5',
      default: '1.0',
      source: cite('en-1997-1', 'Table A.15'),
    }),
    gamma_stb: ratio({
      says: 'partial factor on permanent weight',
      symbol: 'gamma_Gstb',
      least: '0.5',
      most: '1',
      default: '0.9',
      source: cite('en-1997-1', 'Table A.15'),
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
      says: 'required factor, for the method `chosen factor`',
      symbol: 'F_sel',
      least: '1',
      usual: ['1.05', '1.5'],
      optional: true,
    }),
    side_friction: quantity('force', {
      says: 'friction of the backfill on the walls that may be counted, a design value; left out unless proved',
      symbol: 'R_f',
      unit: forceUnit,
      least: '0 kN',
      optional: true,
    }),
    gamma_w: unitWeight({
      says: 'unit weight of water',
      symbol: 'gamma_w',
      unit: weightUnit,
      least: '9.7 kN/m^3',
      most: '10.3 kN/m^3',
      default: '9.81 kN/m^3',
    }),
  },
  steps: flotationSteps,
  results: ['F_fin', 'F_build', 'W_box', 'U_fin', 'U_net_fin', 'hold_fin', 'z_safe', 'z_open'],
  limits: [
    limit('2 * wall < min(plan_length, plan_width)', {
      says: 'the walls leave a room between them',
      otherwise: 'refuse',
      on: 'wall',
      source: cite('statics'),
    }),
    limit('F_req_fin >= 1', {
      says: 'a required factor of 1 or more; give `factor` with the method `chosen factor`',
      otherwise: 'refuse',
      on: 'factor',
    }),
  ],
  cautions: [
    'The finished box is taken empty, with the least cover that will surely stay; live load, people and stores hold nothing down.',
    'While building, the pumps must run until the fill is placed, with a second source of power, or the raft must have openings that let the water in.',
    'Water that fills a backfilled pit in clay stands at the rim of the pit, whatever the groundwater round about.',
    'Global flotation only: the raft also has to bear the uplift between the walls.',
    {
      says: 'Friction on the walls is counted: it needs movement, may be lost by digging beside the box, and must be a design value.',
      when: { given: 'side_friction' },
    },
  ],
  second: flotationSecond,
  sketch: flotationSketch,
  published: flotationCases,
  example: {
    method: 'EN 1997-1 UPL',
    plan_length: '8.6 m',
    plan_width: '5.2 m',
    toe: '0.3 m',
    cover: '1.2 m',
    roof: '350 mm',
    clear: '2.4 m',
    raft: '350 mm',
    wall: '300 mm',
    gamma_c: '24 kN/m^3',
    gamma: '17 kN/m^3',
    gamma_sat: '19.5 kN/m^3',
    water_depth: '1.0 m',
    water_building: '3.0 m',
  },
})
