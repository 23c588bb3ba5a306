import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, solve, step, when } from '../words.ts'
import { angleUnit, areaUnit, lengthUnit, volumeUnit } from './ground-units.ts'
import { deepestSlope, steepestSlope } from './osha-slopes.ts'
import { pitSlices } from './pit-slices.ts'

const along = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('statics') })
const plan = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: areaUnit, source: cite('statics') })

const steepest = (name: 'slope' | 'slope_steepest'): Step =>
  look(name, steepestSlope, {
    row: 'soil',
    says: 'steepest slope of this ground, horizontal for one vertical',
    symbol: name === 'slope' ? 's_b' : 's_max',
  })

const slopes: readonly Step[] = [
  look('depth_most', deepestSlope, {
    row: 'soil',
    says: 'depth to which the slope of this ground serves',
    symbol: 'd_max',
    unit: lengthUnit,
  }),
  when(
    { given: 'slope_chosen' },
    {
      yes: [
        steepest('slope_steepest'),
        step('slope', 'slope_chosen', { says: 'slope of the sides, as chosen', symbol: 's_b' }),
        check('slope_flat_enough', 'slope >= slope_steepest', {
          says: 'the chosen slope is no steeper than the table allows',
          source: cite('osha-1926-p', '1926.652(b)(2)'),
        }),
      ],
      no: [steepest('slope')],
    },
  ),
  step('batter_angle', 'atan2(1, slope)', {
    says: 'angle of the sides above the horizontal',
    symbol: 'beta',
    unit: angleUnit,
    source: cite('statics'),
  }),
]

const plans: readonly Step[] = [
  along('base_length', 'plan_length + 2 * working_space', {
    says: 'pit at formation, along the structure',
    symbol: 'l_b',
  }),
  along('base_width', 'plan_width + 2 * working_space', {
    says: 'pit at formation, across the structure',
    symbol: 'b_b',
  }),
  along('batter_run', 'slope * depth', { says: 'how far each side goes back, toe to edge', symbol: 'r_b' }),
  along('top_length', 'base_length + 2 * batter_run', { says: 'pit at ground level, along', symbol: 'l_t' }),
  along('top_width', 'base_width + 2 * batter_run', { says: 'pit at ground level, across', symbol: 'b_t' }),
  along('mid_length', 'base_length + batter_run', { says: 'pit at mid depth, along', symbol: 'l_m' }),
  along('mid_width', 'base_width + batter_run', { says: 'pit at mid depth, across', symbol: 'b_m' }),
]

const volumes: readonly Step[] = [
  plan('A_base', 'base_length * base_width', 'plan at formation'),
  plan('A_mid', 'mid_length * mid_width', 'plan at mid depth'),
  plan('A_top', 'top_length * top_width', 'plan at ground level'),
  step('V_dig', 'depth * (A_base + 4 * A_mid + A_top) / 6', {
    says: 'volume to dig, in place (prismoidal rule)',
    unit: volumeUnit,
    source: cite('statics', 'prismoidal rule'),
  }),
  step('V_spoil', 'V_dig * (1 + swell)', { says: 'the same as loose spoil', unit: volumeUnit }),
]

const backfill: Step = when(
  { given: 'structure_volume' },
  {
    yes: [
      check('structure_fits', 'structure_volume <= V_dig', {
        says: 'the structure takes no more room than the pit has',
        aspect: 'geometry',
      }),
      step('V_fill', 'V_dig - structure_volume', {
        says: 'room to fill round and over the structure',
        unit: volumeUnit,
      }),
      step('V_bank', 'V_fill / (1 - shrinkage)', {
        says: 'soil in place that compacts into this room',
        unit: volumeUnit,
      }),
      step('V_keep', 'V_bank * (1 + swell)', { says: 'the same as loose spoil: what to keep', unit: volumeUnit }),
      step('V_away', 'V_spoil - V_keep', {
        says: 'loose spoil to take away; to bring where negative',
        unit: volumeUnit,
      }),
    ],
  },
)

/** Groundwater against the sides and the formation; ground that is not classed for water has a line of its own. */
const water: Step = when(
  { given: 'water_depth' },
  {
    yes: [
      along('side_below_water', 'max(depth - max(water_depth, 0 m), 0 m)', {
        says: 'height of the sides that stands in the groundwater',
        symbol: 'h_ws',
      }),
      when(
        { choice: 'soil', is: ['type A', 'type A short term', 'type B'] },
        {
          yes: [
            along('wet_side', 'side_below_water', {
              says: 'height of a side in the water that is classed as dry ground',
              symbol: 'h_cl',
            }),
          ],
        },
      ),
      when(
        { given: 'water_held' },
        {
          yes: [
            check('formation_dry', 'water_held >= depth', {
              says: 'while the pit is open, the water is held below formation',
              source: cite('osha-1926-p', '1926.651(h), from memory'),
            }),
          ],
          no: [
            along('head_formation', 'max(depth - water_depth, 0 m)', {
              says: 'head of water above formation, which nothing lowers',
              symbol: 'h_form',
            }),
          ],
        },
      ),
    ],
  },
)

const fits = (available: string, top: string, says: string): Step =>
  when(
    { given: available },
    {
      yes: [
        check(`fits_${says}`, `${top} <= ${available}`, {
          says: `the pit fits on the site, ${says}`,
          aspect: 'geometry',
        }),
      ],
    },
  )

/** Slope, plans, volume, spoil and backfill. */
export const batteredPitSteps: readonly Step[] = [
  ...slopes,
  water,
  ...plans,
  ...volumes,
  backfill,
  fits('site_length', 'top_length', 'along'),
  fits('site_width', 'top_width', 'across'),
]

/** The same volume by its parts and by slices. */
export const batteredPitSecond: Second = {
  title: 'The pit as parts, and as slices',
  says: 'The same volume as a core with four side wedges and four corner pyramids, and by adding up level slices.',
  steps: [
    step('V_core', 'base_length * base_width * depth', { says: 'core over the formation', unit: volumeUnit }),
    step('V_wedges', '(base_length + base_width) * slope * depth^2', {
      says: 'four wedges along the sides',
      unit: volumeUnit,
    }),
    step('V_corners', '4 / 3 * slope^2 * depth^3', { says: 'four pyramids at the corners', unit: volumeUnit }),
    step('V_parts', 'V_core + V_wedges + V_corners', { says: 'volume from the parts', unit: volumeUnit }),
    solve(pitSlices, {
      takes: { long: 'base_length', wide: 'base_width', depth: 'depth', slope: 'slope' },
      gives: {
        volume: { dimension: 'volume', name: 'V_slices', says: 'volume from the slices', unit: volumeUnit },
      },
      says: 'level slices added up',
    }),
  ],
  compare: [
    { first: 'V_dig', second: 'V_parts', band: 1e-9, says: 'both are exact for plane sides' },
    {
      first: 'V_dig',
      second: 'V_slices',
      band: 1e-4,
      says: 'slices leave out a little of the corners',
    },
  ],
}
