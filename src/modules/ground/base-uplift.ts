import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, length, limit, ratio, step, unitWeight } from '../words.ts'
import { baseUpliftCases } from './base-uplift-cases.ts'
import { waterWeight } from './ground-inputs.ts'
import { lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'

const along = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('statics') })

/** Weight of what is left under the pit against the water pressure from below. */
const balance: readonly Step[] = [
  along('plug', 'aquifer_top - depth', { says: 'tight ground left between formation and aquifer', symbol: 't' }),
  along('h_w', 'aquifer_top - water_depth', { says: 'head of the water at the top of the aquifer', symbol: 'h_w' }),
  step('sigma_a', 'gamma_sat * plug + gamma_w * water_in_pit', {
    says: 'total stress there: ground left, and water in the pit',
    symbol: 'sigma_v_a',
    unit: pressureUnit,
    source: cite('statics'),
  }),
  step('u_a', 'gamma_w * h_w', {
    says: 'water pressure there',
    symbol: 'u_a',
    unit: pressureUnit,
    source: cite('statics', 'hydrostatic'),
  }),
  step('F_u', 'sigma_a / u_a', { says: 'factor against uplift of the pit bottom', source: cite('statics') }),
  check('stays_down', 'F_u >= factor', { says: 'the ground left under the pit is heavier than the uplift' }),
]

/** What would help, each by itself: a shallower pit, a lowered head, water in the pit. */
const remedies: readonly Step[] = [
  along('depth_most', 'max(aquifer_top - max(factor * u_a - gamma_w * water_in_pit, 0 kPa) / gamma_sat, 0 m)', {
    says: 'greatest depth of pit that keeps the required factor',
    symbol: 'd_max',
  }),
  along('relief', 'max(h_w - sigma_a / (factor * gamma_w), 0 m)', {
    says: 'lowering of the head by relief wells that keeps it at this depth',
    symbol: 's_r',
  }),
  along('flood', 'max(factor * u_a - gamma_sat * plug, 0 kPa) / gamma_w', {
    says: 'water in the pit that keeps it without wells',
    symbol: 'h_f',
  }),
]

const piping: readonly Step[] = [
  step('i_c', '(gamma_sat - gamma_w) / gamma_w', {
    says: 'gradient at which the soil has no weight left',
    source: cite('terzaghi-1943', 'critical gradient'),
  }),
  step('i', 'max(h_w - plug - water_in_pit, 0 m) / plug', {
    says: 'mean upward gradient through the ground left',
    source: cite('statics'),
  }),
  check('no_piping', 'i * factor_gradient <= i_c', {
    says: 'water that seeps up does not carry the soil with it',
    source: cite('terzaghi-1943', 'critical gradient'),
  }),
]

/** Uplift and piping of a pit bottom in tight ground over water under pressure. */
export const baseUplift = defineModule({
  id: 'base-uplift',
  version: '1.0.0',
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
      symbol: 'h_p',
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
  steps: [...balance, ...remedies, ...piping],
  results: ['F_u', 'i', 'i_c', 'depth_most', 'relief', 'flood', 'plug'],
  covers: ['pit-uplift'],
  drawing: ['depth_most'],
  limits: [
    limit('plug > 0 m', {
      says: 'tight ground is left between formation and aquifer',
      advice: 'A pit dug into the aquifer takes its water in: see `pit-inflow`',
      otherwise: 'refuse',
      on: 'depth',
      source: cite('statics'),
    }),
    limit('h_w > 0 m', {
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
