import type { Step } from '../module.ts'
import { check, pairs, solve, step, when } from '../words.ts'
import { wallStripZeroShear } from './wall-strip-beams.ts'
import { depth, force, moment, noMoment, statics, topFree } from './wall-strip-words.ts'

const above: readonly Step[] = [
  solve(wallStripZeroShear, {
    takes: { z: { list: 'diagram.z' }, q: { list: 'diagram.q' }, height: 'height' },
    words: { base: { choice: 'base' }, top: { choice: 'top' } },
    gives: {
      z_zero: { dimension: 'length', name: 'z_m', says: 'depth at which the shear is nil', symbol: 'z_m', unit: depth },
    },
    says: 'largest moment: where the load above equals the top reaction',
    source: statics,
  }),
  pairs('diagram', [
    step('r_e', 'max(min(z_m, z) - prev_z, 0 m) / max(h_s, 0.000001 * height)', {
      says: 'share of this height that lies above it',
      symbol: 'r_e',
    }),
    step('F_e', 'r_e * h_s * (prev_q + r_e * (q - prev_q) / 2)', {
      says: 'load on that share (trapezium)',
      symbol: 'F_e',
      unit: force,
    }),
    step('s_e', 'prev_z * F_e + (r_e * h_s)^2 * (prev_q / 2 + r_e * (q - prev_q) / 3)', {
      says: 'its first moment about the top of the strip',
      symbol: 's_e',
      unit: moment,
    }),
  ]),
  step('F_above', 'sum(diagram.F_e)', { says: 'load above that depth', unit: force }),
  check('shear_vanishes', 'F_above == R_top', {
    says: 'put back: the load above equals the reaction at the top',
    source: statics,
  }),
  step('M_span', 'M_top + sum(diagram.s_e)', {
    says: 'largest moment: top moment, and load and reaction as a couple',
    unit: moment,
    source: statics,
  }),
]

/** The largest moment between the ends, where the shear is nil. */
export const spanSteps: readonly Step[] = [
  when(topFree, {
    yes: [
      step('z_m', '0 m', { says: 'the shear is nil at the free top only', unit: depth }),
      noMoment('M_span', 'no sagging moment in a cantilever'),
    ],
    no: above,
  }),
]

/** What the wall carries down at its base, from the least that the roof puts on it. */
export const thrustSteps: readonly Step[] = [
  step('N_base', 'roof_reaction + wall_weight * thickness * height', {
    says: 'thrust at the base, roof and wall, without a load factor',
    unit: force,
    source: statics,
  }),
]
