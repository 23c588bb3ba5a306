import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, length, limit, pressure, ratio, solve, step, unitWeight } from '../words.ts'
import { archingSlices } from './arching-slices.ts'
import { angleUnit, lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'
import { soilArchingCases } from './soil-arching-cases.ts'

const terzaghi = cite('terzaghi-1943', 'arching over a trapdoor, from memory')

/** Stress over a yielding roof with arching, beside the plain overburden that governs. */
export const soilArching = defineModule({
  id: 'soil-arching',
  version: '1.0.3',
  title: 'Arching of the soil over the roof, for information',
  asks: 'How much of the soil over the roof might hang on the ground beside it, if the roof yielded?',
  inputs: {
    span: length({
      says: 'width of the strip of soil that sinks, wall to wall',
      symbol: 'B_s',
      unit: lengthUnit,
      above: '0 m',
      usual: ['0.5 m', '10 m'],
    }),
    cover: length({ says: 'depth of soil over the roof', symbol: 'h_cover', unit: lengthUnit, above: '0 m' }),
    gamma: unitWeight({
      says: 'unit weight of the soil, moist',
      note: 'All of it above the water: no arching is counted on below it',
      symbol: 'gamma',
      unit: weightUnit,
      above: '0 kN/m^3',
      usual: ['14 kN/m^3', '22 kN/m^3'],
    }),
    phi: angle({
      says: 'effective angle of friction',
      symbol: "phi'",
      unit: angleUnit,
      above: '0 deg',
      most: '45 deg',
      usual: ['20 deg', '40 deg'],
    }),
    c: pressure({
      says: 'effective cohesion, for the life of the structure',
      symbol: "c'",
      unit: pressureUnit,
      least: '0 kPa',
      default: '0 kPa',
    }),
    K_s: ratio({
      says: 'horizontal over upright stress in the strip that sinks',
      above: '0',
      most: '3',
      usual: ['0.3', '1.5'],
      default: '1',
      source: cite('terzaghi-1943', 'from memory'),
    }),
    surcharge: pressure({
      says: 'load on the ground above',
      symbol: 'q',
      unit: pressureUnit,
      least: '0 kPa',
    }),
  },
  steps: [
    step('p_plain', 'gamma * cover + surcharge', {
      says: 'plain overburden: this governs the roof',
      symbol: 'p_cov',
      unit: pressureUnit,
      source: cite('statics'),
    }),
    step('f_s', 'K_s * tan(phi)', {
      says: 'friction on the sides, over the upright stress',
      symbol: 'mu_s',
      source: terzaghi,
    }),
    step('a_x', 'exp(-2 * f_s * cover / span)', {
      says: 'share of a load above that still comes down',
      source: terzaghi,
    }),
    step('p_arch', 'span * (gamma - 2 * c / span) / (2 * f_s) * (1 - a_x) + surcharge * a_x', {
      says: 'stress on the roof with full arching, for information',
      symbol: 'p_arch',
      unit: pressureUnit,
      source: terzaghi,
    }),
    step('r_arch', 'p_arch / p_plain', { says: 'what arching leaves of the plain overburden', symbol: 'r_a' }),
  ],
  results: ['p_plain', 'p_arch', 'r_arch'],
  limits: [
    limit('gamma > 2 * c / span', {
      says: 'the strip is heavy enough to sink against its cohesion',
      advice: 'By this method the soil would bridge the roof: do not believe it',
      otherwise: 'refuse',
      on: 'c',
      source: terzaghi,
    }),
  ],
  cautions: [
    'For information only: the roof is designed for the plain overburden.',
    'Arching needs a roof that sinks against the soil beside it. A stiff box in fill that settles draws more than the overburden, not less.',
    'Traffic, vibration, flooding and digging beside the box undo it, and so does time.',
  ],
  second: {
    title: 'The strip of soil, slice by slice',
    says: 'The same balance of weight and friction, marched down the strip in thin slices: no closed form.',
    steps: [
      solve(archingSlices, {
        takes: {
          width: 'span',
          depth: 'cover',
          gamma: 'gamma',
          c: 'c',
          friction: 'f_s',
          surcharge: 'surcharge',
        },
        gives: {
          stress: {
            dimension: 'pressure',
            name: 'p_slices',
            says: 'stress on the roof, by slices',
            symbol: 'p_sl',
            unit: pressureUnit,
          },
        },
        says: 'slices marched from the ground down',
      }),
    ],
    compare: [{ first: 'p_arch', second: 'p_slices', band: 0.001, says: 'one balance, closed and in slices' }],
  },
  published: soilArchingCases,
  example: {
    span: '5.2 m',
    cover: '1.4 m',
    gamma: '18 kN/m^3',
    phi: '32 deg',
    surcharge: '10 kPa',
  },
})
