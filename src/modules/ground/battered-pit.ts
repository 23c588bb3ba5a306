import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, quantity, ratio } from '../words.ts'
import { batteredPitCases } from './battered-pit-cases.ts'
import { batteredPitSketch } from './battered-pit-sketch.ts'
import { batteredPitSecond, batteredPitSteps } from './battered-pit-steps.ts'
import { lengthUnit, volumeUnit } from './ground-units.ts'
import { pitSoils } from './osha-slopes.ts'

/** Plan, volume and spoil of a pit with plane sides sloped by 29 CFR 1926 Subpart P, Appendix B. */
export const batteredPit = defineModule({
  id: 'battered-pit',
  version: '1.0.0',
  title: 'Pit with sloped sides',
  asks: 'How far do the sides of the pit lie back, how much is dug, and how much goes back?',
  inputs: {
    soil: choice({
      says: 'soil or rock type, by a competent person on site',
      note: 'The lowest type of the layers governs the whole side',
      words: pitSoils,
    }),
    depth: length({
      says: 'depth of the pit below the lowest ground at its edge',
      symbol: 'd',
      unit: lengthUnit,
      above: '0 m',
      usual: ['1.5 m', '6 m'],
    }),
    plan_length: length({
      says: 'outside length of the raft or its blinding',
      symbol: 'l_p',
      unit: lengthUnit,
      above: '0 m',
    }),
    plan_width: length({
      says: 'outside width of the raft or its blinding',
      symbol: 'b_p',
      unit: lengthUnit,
      above: '0 m',
    }),
    water_depth: length({
      says: 'depth of the groundwater beside the pit, before pumping',
      note: 'The highest while the pit is open; the drawn-down depth only where wells outside the pit lower it before the dig',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
      optional: true,
    }),
    water_held: length({
      says: 'depth at which the pumps hold the water while the pit is open',
      note: 'Where the formation lies below the groundwater',
      symbol: 'z_held',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
      optional: true,
    }),
    working_space: length({
      says: 'room to work at formation, on each side of the structure',
      symbol: 'c_w',
      unit: lengthUnit,
      least: '0 m',
      usual: ['0.6 m', '2 m'],
    }),
    slope_chosen: ratio({
      says: 'slope chosen for the sides, horizontal for one vertical',
      note: 'Where a flatter one than the steepest is chosen',
      symbol: 's_sel',
      least: '0',
      most: '5',
      optional: true,
    }),
    swell: ratio({
      says: 'growth of the soil to loose spoil, part of its volume in place',
      symbol: 'f_s',
      least: '0',
      most: '1',
      usual: ['0.1', '0.5'],
    }),
    shrinkage: ratio({
      says: 'loss of the soil to compacted fill, part of its volume in place',
      symbol: 'f_c',
      least: '0',
      below: '0.5',
      usual: ['0', '0.2'],
    }),
    structure_volume: quantity('volume', {
      says: 'outside volume of all that stays in the pit',
      note: 'Box, blinding and working layer; without it no backfill is reckoned',
      symbol: 'V_str',
      unit: volumeUnit,
      above: '0 m^3',
      optional: true,
    }),
    site_length: length({
      says: 'room on site along the structure, less set-backs',
      note: 'Checked where given',
      symbol: 'l_site',
      unit: lengthUnit,
      above: '0 m',
      optional: true,
    }),
    site_width: length({
      says: 'room on site across the structure, less set-backs',
      note: 'Checked where given',
      symbol: 'b_site',
      unit: lengthUnit,
      above: '0 m',
      optional: true,
    }),
  },
  steps: batteredPitSteps,
  results: ['slope', 'batter_angle', 'top_length', 'top_width', 'V_dig', 'V_spoil', 'V_fill', 'V_keep', 'V_away'],
  covers: ['pit-sides'],
  drawing: ['batter_angle', 'top_length', 'top_width'],
  limits: [
    limit('depth < 20 ft', {
      says: 'the pit is less than 20 ft (6.096 m) deep',
      advice: 'A deeper pit is designed by a registered professional engineer',
      otherwise: 'refuse',
      on: 'depth',
      source: cite('osha-1926-p', 'App. B, Table B-1'),
    }),
    limit('depth <= depth_most', {
      says: 'the pit is no deeper than the slope of its ground serves',
      advice: 'Choose a soil type whose slope serves deeper',
      otherwise: 'refuse',
      on: 'depth',
      source: cite('osha-1926-p', 'App. B, Table B-1, note 2'),
    }),
    {
      holds: { given: 'water_depth' },
      says: 'the groundwater is given, so that the pit is not taken as dry',
      advice: 'Give `water_depth`, also where it lies below the pit',
      otherwise: 'warn',
      on: 'water_depth',
      source: cite('practice'),
    },
    limit('head_formation <= 0 m', {
      says: 'the formation lies above the groundwater',
      advice: 'Say with `water_held` how deep the pumps hold it',
      otherwise: 'warn',
      on: 'water_depth',
      source: cite('osha-1926-p', '1926.651(h), from memory'),
    }),
    limit('wet_side <= 0 m', {
      says: 'no side that stands in the groundwater is classed better than type C',
      advice: 'Choose `type C`: submerged soil, and soil from which water seeps freely, is of that type',
      otherwise: 'warn',
      on: 'soil',
      source: cite('osha-1926-p', 'App. A, definition of type C, from memory'),
    }),
  ],
  cautions: [
    'The slopes are those of a regulation of the United States; elsewhere the local rules govern.',
    'Seeping water, vibration, fissures, layers that dip into the pit and loads at the edge lower the soil type; a competent person classes it on site and looks at the sides daily and after rain.',
    {
      says: 'The water is held by pumps: sides that stand in it run with the seepage, pumping from inside the pit draws soil in, and the slopes of the table do not allow for either.',
      when: { given: 'water_held' },
    },
    'Spoil, plant and stores stay at least 0.6 m (2 ft) back from the edge, and loads that push on the sides further.',
    'Nobody stands in the pit without a safe way out within 7.5 m (25 ft).',
    {
      says: 'The table knows one slope for the whole side. Where a weaker layer lies under a stronger one, the whole side takes the slope of the weaker.',
      when: { choice: 'soil', is: ['type A', 'type A short term', 'type B'] },
    },
  ],
  second: batteredPitSecond,
  sketch: batteredPitSketch,
  published: batteredPitCases,
  example: {
    soil: 'type B',
    depth: '4.7 m',
    water_depth: '6 m',
    plan_length: '8.6 m',
    plan_width: '5.2 m',
    working_space: '0.8 m',
    swell: '0.25',
    shrinkage: '0.1',
    structure_volume: '145 m^3',
  },
})
