import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, each, pairs, solve, step, take, when } from '../words.ts'
import { wallStripZeroShear } from './wall-strip-beams.ts'

const depth = { SI: 'm', US: 'ft' }
const pressure = { SI: 'kPa', US: 'psf' }
const force = { SI: 'kN/m', US: 'plf' }
const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const second = { SI: 'kN*m^2/m', US: 'lbf*ft^2/ft' }
const third = { SI: 'kN*m^3/m', US: 'lbf*ft^3/ft' }
const statics = cite('statics')
const fixedEnd = cite('statics', 'fixed-end moments of a prismatic beam')

const topFixed = { choice: 'top', is: ['fixed'] }
const topPinned = { choice: 'top', is: ['pinned'] }
const topFree = { choice: 'top', is: ['free'] }
const baseFixed = { choice: 'base', is: ['fixed'] }

/** Steps that only a strip with a fixed top needs: the second moment of the load. */
const forFixedTop = (steps: readonly Step[]): readonly Step[] => [when(topFixed, { yes: steps })]

/** The load between neighbouring points of the diagram, and its moments about the top of the strip. */
export const loadSteps: readonly Step[] = [
  each('diagram', [
    step('q', 'load_factor * p', { says: 'factored pressure at this point', symbol: 'q', unit: pressure }),
  ]),
  pairs('diagram', [
    step('h_s', 'abs(z - prev_z)', { says: 'height from the point above to this one', unit: depth }),
    step('F_s', 'h_s * (prev_q + q) / 2', { says: 'load on that height (trapezium)', unit: force, source: statics }),
    step('s_first', 'prev_z * F_s + h_s^2 * (prev_q + 2 * q) / 6', {
      says: 'its first moment about the top: load times depth',
      symbol: 's_1',
      unit: moment,
      source: statics,
    }),
    ...forFixedTop([
      step(
        's_second',
        'h_s / 12 * (prev_q * (3 * prev_z^2 + 2 * prev_z * z + z^2) + q * (prev_z^2 + 2 * prev_z * z + 3 * z^2))',
        {
          says: 'its second moment: load times depth squared',
          symbol: 's_2',
          unit: second,
          source: statics,
        },
      ),
    ]),
    step(
      's_third',
      'h_s / 20 * (prev_q * (4 * prev_z^3 + 3 * prev_z^2 * z + 2 * prev_z * z^2 + z^3) + q * (prev_z^3 + 2 * prev_z^2 * z + 3 * prev_z * z^2 + 4 * z^3))',
      { says: 'its third moment: load times depth cubed', symbol: 's_3', unit: third, source: statics },
    ),
  ]),
  take('z_first', { list: 'diagram', of: 'z', from: 'first', says: 'first depth of the diagram', unit: depth }),
  take('z_last', { list: 'diagram', of: 'z', from: 'last', says: 'last depth of the diagram', unit: depth }),
  step('P_q', 'sum(diagram.F_s)', { says: 'load on the strip', unit: force, source: statics }),
  step('S_first', 'sum(diagram.s_first)', { says: 'first moment about the top', symbol: 'S_1', unit: moment }),
  ...forFixedTop([
    step('S_second', 'sum(diagram.s_second)', { says: 'second moment about the top', symbol: 'S_2', unit: second }),
  ]),
  step('S_third', 'sum(diagram.s_third)', { says: 'third moment about the top', symbol: 'S_3', unit: third }),
]

const noMoment = (name: string, says: string): Step => step(name, '0 kN*m/m', { says, unit: moment })

const fixedBoth: readonly Step[] = [
  step('M_base', '-(S_second / height - S_third / height^2)', {
    says: 'moment at the base',
    unit: moment,
    source: fixedEnd,
  }),
  step('M_top', '-(S_first - 2 * S_second / height + S_third / height^2)', {
    says: 'moment at the top',
    unit: moment,
    source: fixedEnd,
  }),
]

const propped: readonly Step[] = [
  step('M_base', '-(S_first / 2 - S_third / (2 * height^2))', {
    says: 'moment at the base',
    unit: moment,
    source: fixedEnd,
  }),
  noMoment('M_top', 'moment at the top: it is pinned'),
]

const cantilever: readonly Step[] = [
  step('M_base', '-(P_q * height - S_first)', { says: 'moment at the base', unit: moment, source: statics }),
  noMoment('M_top', 'moment at the top: it is free'),
]

const pinnedBaseFixedTop: readonly Step[] = [
  noMoment('M_base', 'moment at the base: it is pinned'),
  step('M_top', '-(S_first - 3 * S_second / (2 * height) + S_third / (2 * height^2))', {
    says: 'moment at the top',
    unit: moment,
    source: fixedEnd,
  }),
]

const pinnedBoth: readonly Step[] = [
  noMoment('M_base', 'moment at the base: it is pinned'),
  noMoment('M_top', 'moment at the top: it is pinned'),
]

/** A strip that cannot stand: a limit refuses it before these lines. */
const falls: readonly Step[] = [
  noMoment('M_base', 'moment at the base: it is pinned'),
  noMoment('M_top', 'moment at the top: it is free'),
]

/** Moments at the ends by the supports chosen, and the two reactions. Hogging (tension on the loaded face) is negative. */
export const endSteps: readonly Step[] = [
  when(baseFixed, {
    yes: [
      when(topFixed, {
        says: 'base and top are fixed',
        yes: fixedBoth,
        no: [
          when(topPinned, {
            says: 'the base is fixed and the top pinned: a propped strip',
            yes: propped,
            no: [when(topFree, { says: 'the base is fixed and the top free: a cantilever', yes: cantilever })],
          }),
        ],
      }),
    ],
    no: [
      when(topFixed, {
        says: 'the base is pinned and the top fixed',
        yes: pinnedBaseFixedTop,
        no: [
          when(topPinned, {
            says: 'base and top are pinned',
            yes: pinnedBoth,
            no: [when(topFree, { says: 'the base is pinned and the top free: it cannot stand', yes: falls })],
          }),
        ],
      }),
    ],
  }),
  step('R_base', '(S_first - M_base + M_top) / height', {
    says: 'reaction and shear at the base: moments about the top',
    unit: force,
    source: statics,
  }),
  step('R_top', 'P_q - R_base', { says: 'reaction and shear at the top', unit: force, source: statics }),
]

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
