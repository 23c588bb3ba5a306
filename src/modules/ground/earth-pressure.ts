import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import {
  angle,
  choice,
  choiceLimit,
  label,
  length,
  limit,
  list,
  pressure,
  quantity,
  ratio,
  unitWeight,
} from '../words.ts'
import { earthPressureCases } from './earth-pressure-cases.ts'
import { earthPressureSecond } from './earth-pressure-second.ts'
import { earthPressureSketch } from './earth-pressure-sketch.ts'
import { earthPressureSteps } from './earth-pressure-steps.ts'
import { waterWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, lineLoadUnit, pressureUnit, weightUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

const soilLayers = list('soil beside the wall, from the ground down', {
  note: 'Down to the base of the wall or further; soil above the first layer belongs to the surcharge',
  least: 1,
  most: 8,
  fields: {
    layer: label({ says: 'what the layer is', optional: true }),
    thickness: length({ says: 'thickness', symbol: 'h', unit: lengthUnit, above: '0 m' }),
    gamma: unitWeight({
      says: 'unit weight above the water, moist',
      symbol: 'gamma',
      unit: weightUnit,
      above: '0 kN/m^3',
      usual: ['14 kN/m^3', '23 kN/m^3'],
    }),
    gamma_sat: unitWeight({
      says: 'unit weight below the water, saturated',
      note: 'Takes part only where water stands against the wall or above it',
      symbol: 'gamma_sat',
      unit: weightUnit,
      least: '11 kN/m^3',
      usual: ['17 kN/m^3', '23 kN/m^3'],
    }),
    phi: angle({
      says: 'effective angle of friction',
      symbol: "phi'",
      unit: angleUnit,
      above: '0 deg',
      most: '50 deg',
      usual: ['18 deg', '42 deg'],
    }),
    c: pressure({
      says: 'effective cohesion',
      note: 'Takes part in the Rankine states only',
      symbol: "c'",
      unit: pressureUnit,
      least: '0 kPa',
      usual: ['0 kPa', '15 kPa'],
      default: '0 kPa',
    }),
    OCR: ratio({
      says: 'overconsolidation ratio of natural soil',
      note: 'Takes part at rest only',
      least: '1',
      most: '30',
      optional: true,
    }),
  },
})

/** Earth and water pressure on a vertical wall between two depths, through layers and water. */
export const earthPressure = defineModule({
  id: 'earth-pressure',
  version: '1.0.0',
  title: 'Earth and water pressure on a wall',
  asks: 'How hard do soil, surcharge and water press on the wall, and where?',
  inputs: {
    state: choice({
      says: 'state of the soil beside the wall',
      words: {
        'at rest': 'the wall does not yield: any box held by its roof and raft (Jaky, or the overconsolidated form)',
        active: 'the wall yields by about a thousandth of its height or more (Rankine)',
        'active Coulomb': 'the same with friction on the wall (Coulomb)',
        passive: 'the wall is pushed against the soil (Rankine); a resistance, reached only after much movement',
      },
    }),
    layers: soilLayers,
    wall_top: length({
      says: 'depth of the top of the wall strip',
      note: 'For a box the centre line of the roof slab',
      symbol: 'z_t',
      unit: lengthUnit,
      least: '0 m',
      default: '0 m',
    }),
    wall_base: length({
      says: 'depth of its base',
      note: 'For a box the centre line of the raft',
      symbol: 'z_b',
      unit: lengthUnit,
      above: '0 m',
      usual: ['1 m', '12 m'],
    }),
    surcharge: pressure({
      says: 'uniform load on the ground beside the wall',
      note: '0 kPa where there is surely none',
      symbol: 'q',
      unit: pressureUnit,
      least: '0 kPa',
      usual: ['5 kPa', '50 kPa'],
    }),
    water_depth: length({
      says: 'depth of the highest credible groundwater',
      note: 'Floods included; negative for water above ground',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
      optional: true,
    }),
    groundwater: choice({
      says: 'where the groundwater stands',
      words: {
        'as given': 'at the depth of `water_depth`; without that the wall is taken as dry, with a warning',
        'below the wall': 'below the base of the wall in every season and flood: no water is taken',
      },
      default: 'as given',
    }),
    roller: quantity('force_per_length', {
      says: 'line load of the roller near the wall, with vibration',
      note: 'Weight and vibration together, of the heaviest plant that compacts the fill beside the wall',
      symbol: 'p_r',
      unit: lineLoadUnit,
      above: '0 kN/m',
      most: '200 kN/m',
      usual: ['10 kN/m', '80 kN/m'],
      optional: true,
    }),
    alpha: angle({
      says: 'slope of the ground, rising from the wall',
      note: 'Only for dry frictional soil without surcharge',
      symbol: 'alpha',
      unit: angleUnit,
      least: '0 deg',
      most: '45 deg',
      optional: true,
    }),
    delta: angle({
      says: 'angle of friction between soil and wall',
      note: 'For the Coulomb wedge only',
      symbol: 'delta',
      unit: angleUnit,
      least: '0 deg',
      most: '40 deg',
      optional: true,
    }),
    gamma_w: waterWeight,
  },
  steps: earthPressureSteps,
  results: ['p_top', 'p_base', 'P', 'y_P', 'P_soil', 'P_water', 'h_wall', 'd_water', 'K_h_1', 'p_water_1'],
  covers: ['lateral-pressure'],
  limits: [
    saturatedNoLighter({ each: 'layers' }),
    limit('wall_base > wall_top', {
      says: 'the base of the wall is below its top',
      otherwise: 'refuse',
      on: 'wall_base',
      source: cite('statics'),
    }),
    limit('sum(layers.z_lower) - sum(layers.z_upper) >= h_wall', {
      says: "the first layer reaches below the wall's top and the last its base",
      advice: 'Add what is missing below, and put a layer that ends above the wall into the surcharge',
      otherwise: 'refuse',
      on: 'layers',
    }),
    limit('z_last < wall_base', {
      says: "every layer begins above the wall's base",
      advice: 'Leave out the layers below',
      otherwise: 'refuse',
      on: 'layers',
    }),
    limit('sum(layers.excess) <= 0 deg', {
      says: 'slope and wall friction are no greater than the friction of any layer',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('coulomb'),
    }),
    limit('alpha <= 0 deg or (sum(layers.c) <= 0 kPa and surcharge <= 0 kPa)', {
      says: 'sloping ground has no cohesion and no surcharge',
      otherwise: 'refuse',
      on: 'alpha',
      source: cite('rankine', 'sloping ground'),
    }),
    limit('alpha <= 0 deg or u_base <= 0 kPa', {
      says: 'sloping ground has no water against the wall',
      otherwise: 'refuse',
      on: 'alpha',
      source: cite('rankine', 'sloping ground'),
    }),
    {
      holds: { given: 'water_depth' },
      when: { choice: 'groundwater', is: ['as given'] },
      says: 'the groundwater is given, so that the wall is not taken as dry',
      advice: 'Give `water_depth`; where no water reaches the wall, choose `below the wall` for `groundwater`',
      otherwise: 'warn',
      on: 'water_depth',
      source: cite('practice'),
    },
    limit('water_depth >= wall_base', {
      when: { choice: 'groundwater', is: ['below the wall'] },
      says: 'the depth given for the water lies below the base of the wall',
      advice: 'Choose `as given` for `groundwater`',
      otherwise: 'refuse',
      on: 'water_depth',
      source: cite('statics'),
    }),
    choiceLimit('state', ['active Coulomb'], {
      when: { given: 'delta' },
      says: 'wall friction goes with the Coulomb wedge',
      advice: 'Leave `delta` out, or choose `active Coulomb`',
      otherwise: 'refuse',
      on: 'delta',
    }),
    choiceLimit('state', ['at rest', 'active', 'active Coulomb'], {
      when: { given: 'roller' },
      says: 'no compaction pressure is counted as passive resistance',
      advice: 'Leave `roller` out',
      otherwise: 'refuse',
      on: 'roller',
    }),
  ],
  cautions: [
    'Drained soil with effective strengths. Undrained clay, swelling clay and frost push harder and are not covered.',
    {
      says: 'No water is taken against the wall: it must stay below its base in every season and flood, and no drain, pipe or pond may fill the backfill.',
      when: { choice: 'groundwater', is: ['below the wall'] },
    },
    'Water stands still at one level: perched water, artesian water and a blocked drain are cases of their own.',
    'Strip, line and wheel loads beside the wall are not in it; a uniform surcharge stands for light traffic only.',
    {
      says: 'A box held by its roof and raft does not yield: use pressure at rest unless the movement is shown.',
      when: { choice: 'state', is: ['active', 'active Coulomb'] },
    },
    {
      says: 'Cohesion is easily lost, and a tension crack may fill with rain: water in a crack above the groundwater is not reckoned with.',
      when: { formula: 'sum(layers.c) > 0 kPa' },
    },
    {
      says: 'Passive resistance needs movement of some per cent of the height, and is lost where the soil may be dug away.',
      when: { choice: 'state', is: ['passive'] },
    },
    {
      says: 'Compaction pressure after Ingold is for a wall that yields a little; against a stiff box it can be higher, so keep heavy plant away from the walls. It is counted from the ground down, on the safe side.',
      when: { given: 'roller' },
    },
  ],
  second: earthPressureSecond,
  sketch: earthPressureSketch,
  published: earthPressureCases,
  example: {
    state: 'at rest',
    layers: [
      { layer: 'sandy backfill', thickness: '6 m', gamma: '18.5 kN/m^3', gamma_sat: '20.5 kN/m^3', phi: '32 deg' },
    ],
    wall_top: '1.4 m',
    wall_base: '4.2 m',
    surcharge: '10 kPa',
    water_depth: '2.8 m',
  },
})
