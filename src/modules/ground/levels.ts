import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, length, limit, step, when } from '../words.ts'
import { dryMargin, waterWeight } from './ground-inputs.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'
import { levelsSketch } from './levels-sketch.ts'

const deep = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('statics') })

/** Every level of the stack, top down, as a depth below ground. */
const stack: readonly Step[] = [
  deep('z_roof', 'cover + topping', { says: 'top of the roof slab', symbol: 'z_roof' }),
  deep('z_ceiling', 'z_roof + roof', { says: 'ceiling: underside of the roof slab', symbol: 'z_ceil' }),
  deep('z_floor', 'z_ceiling + clear', { says: 'finished floor', symbol: 'z_floor' }),
  deep('z_raft_top', 'z_floor + finish', { says: 'top of the raft', symbol: 'z_rt' }),
  deep('z_raft', 'z_raft_top + raft', { says: 'underside of the raft', symbol: 'z_raft' }),
  deep('z_blinding', 'z_raft + blinding', { says: 'underside of the blinding', symbol: 'z_bl' }),
  deep('z_formation', 'z_blinding + working_layer', { says: 'formation: bottom of the pit', symbol: 'z_form' }),
]

/** What the wall, the roof and the raft are designed between. */
const heights: readonly Step[] = [
  deep('box_height', 'z_raft - z_roof', { says: 'outside height of the box', symbol: 'h_box' }),
  deep('z_roof_mid', 'z_roof + roof / 2', { says: 'centre line of the roof slab', symbol: 'z_rc' }),
  deep('z_raft_mid', 'z_raft_top + raft / 2', { says: 'centre line of the raft', symbol: 'z_fc' }),
  deep('wall_height', 'z_raft_mid - z_roof_mid', { says: 'height of the wall between centre lines', symbol: 'h_wall' }),
]

const head = (of: string, at: string, says: string): Step =>
  step(`head_${of}`, `max(0 m, ${at} - water_depth)`, {
    says,
    symbol: `h_w_${of === 'formation' ? 'form' : of}`,
    unit: lengthUnit,
    source: cite('statics'),
  })

const water: readonly Step[] = [
  head('roof', 'z_roof', 'head of water on the top of the roof slab'),
  head('floor', 'z_floor', 'head of water against the finished floor'),
  head('raft', 'z_raft', 'head of water under the raft'),
  step('u_raft', 'gamma_w * head_raft', {
    says: 'water pressure under the raft',
    unit: pressureUnit,
    source: cite('statics', 'hydrostatic'),
  }),
  head('formation', 'z_formation', 'head of water above formation before pumping'),
  step('drawdown', 'max(0 m, z_formation + margin - water_depth)', {
    says: 'lowering that a dry formation needs, with the margin',
    symbol: 's_w',
    unit: lengthUnit,
    source: cite('practice'),
  }),
]

const reduced = (name: string, from: string, says: string): Step =>
  step(name, `ground_level - ${from}`, { says, unit: lengthUnit, source: cite('statics') })

const datum: Step = when(
  { given: 'ground_level' },
  {
    yes: [
      reduced('RL_roof', 'z_roof', 'level of the top of the roof slab'),
      reduced('RL_ceiling', 'z_ceiling', 'level of the ceiling'),
      reduced('RL_floor', 'z_floor', 'level of the finished floor'),
      reduced('RL_raft', 'z_raft', 'level of the underside of the raft'),
      reduced('RL_formation', 'z_formation', 'level of formation'),
      reduced('RL_water', 'water_depth', 'level of the highest water'),
    ],
  },
)

const checks: readonly Step[] = [
  check('cover_enough', 'cover >= cover_required', {
    says: 'earth cover is not less than the cover required',
    aspect: 'geometry',
    source: cite('practice'),
  }),
  when(
    { given: 'drawdown_planned' },
    {
      yes: [
        check('drawdown_enough', 'drawdown_planned >= drawdown', {
          says: 'the planned drawdown leaves the margin below formation',
          aspect: 'geometry',
          source: cite('practice'),
        }),
      ],
    },
  ),
]

const thickness = { unit: lengthUnit, above: '0 m' } as const
const layer = { unit: lengthUnit, least: '0 m', usual: ['0 m', '0.5 m'] } as const

/** Depths of every level of a buried box from the layers it is stacked of, and the water against each. */
export const levels = defineModule({
  id: 'levels',
  version: '1.0.0',
  title: 'Levels of the structure and the pit',
  asks: 'How deep is everything, and how does the groundwater stand against each level?',
  inputs: {
    cover: length({
      says: 'earth cover above the roof slab and its topping',
      symbol: 'h_cover',
      unit: lengthUnit,
      least: '0 m',
      usual: ['0.6 m', '4 m'],
    }),
    cover_required: length({
      says: 'least earth cover that the design needs',
      note: 'By whatever governs: protection, frost, planting',
      symbol: 'h_req',
      unit: lengthUnit,
      least: '0 m',
    }),
    topping: length({
      says: 'screed and membrane on the roof, not earth cover',
      note: 'Screed to falls, membrane and its protection',
      symbol: 'h_top',
      ...layer,
      default: '0 m',
    }),
    roof: length({ says: 'thickness of the roof slab', symbol: 'h_roof', ...thickness, usual: ['0.15 m', '1.5 m'] }),
    clear: length({
      says: 'clear height from the finished floor to the ceiling',
      symbol: 'h_clear',
      ...thickness,
      usual: ['1.9 m', '4.5 m'],
    }),
    finish: length({ says: 'floor finish above the raft', symbol: 'h_fin', ...layer, default: '0 m' }),
    raft: length({ says: 'thickness of the raft', symbol: 'h_raft', ...thickness, usual: ['0.15 m', '1.5 m'] }),
    blinding: length({ says: 'blinding under the raft', symbol: 'h_bl', ...layer, default: '50 mm' }),
    working_layer: length({
      says: 'working or drainage layer under the blinding',
      symbol: 'h_wl',
      ...layer,
      default: '0 m',
    }),
    water_depth: length({
      says: 'depth of the highest credible groundwater',
      note: 'Below ground, floods included; negative for water above ground',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
    }),
    margin: dryMargin,
    drawdown_planned: length({
      says: 'lowering of the water that the pumping is planned for',
      note: 'Checked where given',
      symbol: 's_plan',
      unit: lengthUnit,
      least: '0 m',
      optional: true,
    }),
    ground_level: length({
      says: "level of the ground on the site's datum",
      note: 'Where it is given, levels are given on that datum as well',
      symbol: 'RL_0',
      unit: lengthUnit,
      optional: true,
    }),
    gamma_w: waterWeight,
  },
  steps: [...stack, ...heights, ...water, datum, ...checks],
  results: [
    'z_roof',
    'z_ceiling',
    'z_floor',
    'z_raft',
    'z_formation',
    'box_height',
    'wall_height',
    'head_raft',
    'u_raft',
    'drawdown',
  ],
  covers: ['levels'],
  drawing: ['cover', 'topping', 'roof', 'clear', 'finish', 'raft', 'blinding', 'working_layer', 'z_formation'],
  limits: [
    limit('cover >= 0.6 m', {
      says: 'the earth cover is at least 0.6 m (2 ft)',
      otherwise: 'warn',
      on: 'cover',
      source: cite('practice'),
    }),
    limit('z_formation < 20 ft', {
      says: 'formation is less than 20 ft (6.096 m) deep',
      otherwise: 'warn',
      source: cite('osha-1926-p', 'App. B'),
    }),
  ],
  cautions: [
    'Use the highest credible water, flood included, not the level found in a borehole on one day.',
    'Depths are taken from one ground level. On sloping ground take the lowest ground for cover and the highest for earth pressure.',
    {
      says: 'Under so little cover a wheel acts on the roof as a patch and not as a spread load.',
      when: { formula: 'cover < 0.6 m' },
    },
    {
      says: 'Open slopes by table end at a depth of 20 ft: this pit is designed by an engineer.',
      when: { formula: 'z_formation >= 20 ft' },
    },
    {
      says: 'The raft stands below the water: check flotation at every stage, also before the fill is placed.',
      when: { formula: 'head_raft > 0 m' },
    },
    {
      says: 'Pumping must not stop before the box is heavy enough to stay down, and it settles the ground round about.',
      when: { formula: 'drawdown > 0 m' },
    },
  ],
  sketch: levelsSketch,
  published: [
    {
      id: 'lev-1',
      source: 'Sum of the layers, worked by hand',
      status: 'computed',
      says: 'depths of a stack of six layers',
      inputs: {
        cover: '1.0 m',
        cover_required: '1.0 m',
        roof: '0.4 m',
        clear: '2.4 m',
        raft: '0.4 m',
        blinding: '0.05 m',
        working_layer: '0.15 m',
        water_depth: '6 m',
      },
      answers: { z_formation: '4.40 m', z_raft: '4.20 m', drawdown: '0 m' },
      tolerance: { relative: 1e-9 },
    },
    {
      id: 'lev-2',
      source: 'Sum of the layers, worked by hand',
      status: 'computed',
      says: 'the same stack with water at 2.0 m and a margin of 0.5 m',
      inputs: {
        cover: '1.0 m',
        cover_required: '1.0 m',
        roof: '0.4 m',
        clear: '2.4 m',
        raft: '0.4 m',
        blinding: '0.05 m',
        working_layer: '0.15 m',
        water_depth: '2.0 m',
        margin: '0.5 m',
      },
      answers: { head_raft: '2.20 m', drawdown: '2.90 m' },
      tolerance: { relative: 1e-9 },
    },
    {
      id: 'lev-3',
      source: 'A. Bond and A. Harris, Decoding Eurocode 7, two-storey basement (web reprint)',
      status: 'looked up',
      says: 'underside 7.5 m deep, water to the surface',
      inputs: {
        cover: '1.0 m',
        cover_required: '1.0 m',
        roof: '0.4 m',
        clear: '5.7 m',
        raft: '0.4 m',
        blinding: '0.05 m',
        water_depth: '0 m',
      },
      answers: { u_raft: '73.6 kPa' },
    },
  ],
  example: {
    cover: '1.2 m',
    cover_required: '1.0 m',
    roof: '350 mm',
    clear: '2.4 m',
    raft: '350 mm',
    blinding: '75 mm',
    working_layer: '150 mm',
    water_depth: '2.8 m',
  },
})
