import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { length, limit, ratio, unitWeight } from '../words.ts'
import { baseUpliftCases } from './base-uplift-cases.ts'
import { baseUpliftSketch } from './base-uplift-sketch.ts'
import { baseUpliftSteps } from './base-uplift-steps.ts'
import { waterWeight } from './ground-inputs.ts'
import { lengthUnit, weightUnit } from './ground-units.ts'

/** Uplift and piping of a pit bottom in tight ground over water under pressure. */
export const baseUplift = defineModule({
  id: 'base-uplift',
  version: '1.0.1',
  title: 'Uplift and piping of the pit bottom',
  asks: 'Does water under pressure below the pit lift its bottom, or carry the soil up into it?',
  inputs: {
    depth: length({
      says: 'depth of formation, with what may be dug too deep',
      symbol: 'd',
      unit: lengthUnit,
      above: '0 m',
      usual: ['1.5 m', '12 m'],
    }),
    aquifer_top: length({
      says: 'depth of the water-bearing ground under the tight layer',
      note: 'The highest that the borings allow, sand seams within the clay included',
      symbol: 'z_c',
      unit: lengthUnit,
      above: '0 m',
    }),
    water_depth: length({
      says: 'depth to which its water rises in a standpipe, the highest',
      note: 'Negative where it rises above the ground',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['-3 m', '12 m'],
    }),
    gamma_sat: unitWeight({
      says: 'saturated unit weight of the ground left, a low mean value',
      symbol: 'gamma_sat',
      unit: weightUnit,
      least: '11 kN/m^3',
      usual: ['17 kN/m^3', '22 kN/m^3'],
    }),
    water_in_pit: length({
      says: 'water that stands in the pit',
      symbol: 'h_pit',
      unit: lengthUnit,
      least: '0 m',
      default: '0 m',
    }),
    factor: ratio({
      says: 'required factor of weight over uplift',
      symbol: 'F_req',
      least: '1',
      usual: ['1.1', '1.5'],
    }),
    factor_gradient: ratio({
      says: 'required factor on the gradient',
      symbol: 'F_i',
      least: '1',
      usual: ['1.5', '4'],
    }),
    gamma_w: waterWeight,
  },
  steps: baseUpliftSteps,
  results: ['F_u', 'i', 'i_c', 'depth_most', 'relief', 'flood', 'plug'],
  covers: ['pit-uplift'],
  drawing: ['depth_most'],
  limits: [
    limit('aquifer_top > depth', {
      says: 'tight ground is left between formation and aquifer',
      advice: 'A pit dug into the aquifer takes its water in: see `pit-inflow`',
      otherwise: 'refuse',
      on: 'depth',
      source: cite('statics'),
    }),
    limit('aquifer_top > water_depth', {
      says: 'the water rises above the top of the aquifer',
      advice: 'Without pressure there is no uplift: leave the block out',
      otherwise: 'refuse',
      on: 'water_depth',
      source: cite('statics'),
    }),
  ],
  cautions: [
    'Shear on the sides of the plug and its own strength are left out: they may be counted only where they are proved.',
    'A sand seam in the clay nearer to the pit governs: the borings must reach well below formation, and boreholes and piles must be sealed.',
    'The mean gradient is for one tight layer: where a tighter band lies in it, the gradient gathers there. A pit in sand inside sheeting has another flow and is not covered.',
    {
      says: 'Water in the pit counts only while it stands there: it may be pumped out when the raft is heavy enough or the head is lowered.',
      when: { formula: 'water_in_pit > 0 m' },
    },
    {
      says: 'Relief wells must not stop: standby pumps with their own power, and a standpipe that is read while the pit is open.',
      when: { formula: 'relief > 0 m' },
    },
  ],
  sketch: baseUpliftSketch,
  published: baseUpliftCases,
  example: {
    depth: '4.7 m',
    aquifer_top: '8.2 m',
    water_depth: '2.8 m',
    gamma_sat: '19 kN/m^3',
    factor: '1.2',
    factor_gradient: '1.5',
  },
})
