import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, check, each, solve, step, take, when } from '../words.ts'
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
const baseFixed = { choice: 'base', is: ['fixed'] }

/** Steps that only a strip with a fixed top needs. */
const forFixedTop = (steps: readonly Step[]): readonly Step[] => [
  when(topFixed, { says: 'the top is fixed: the second moment is needed', yes: steps }),
]

/** The load between neighbouring points of the diagram, and its moments about the top of the strip. */
export const loadSteps: readonly Step[] = [
  each('diagram', [
    step('q', 'load_factor * p', { says: 'factored pressure at this point', symbol: 'q', unit: pressure }),
    carried('z_a', { first: 'z', next: 'z', says: 'depth of the point above', symbol: 'z_a', unit: depth }),
    carried('q_a', { first: 'q', next: 'q', says: 'factored pressure there', symbol: 'q_a', unit: pressure }),
    step('h_s', 'abs(z - z_a)', { says: 'height between the two points', unit: depth }),
    step('F_s', 'h_s * (q_a + q) / 2', { says: 'load between them (trapezium)', unit: force, source: statics }),
    step('s_first', 'h_s / 6 * (q_a * (2 * z_a + z) + q * (z_a + 2 * z))', {
      says: 'its first moment about the top: integral of p z',
      symbol: 's_1',
      unit: moment,
      source: statics,
    }),
    ...forFixedTop([
      step('s_second', 'h_s / 12 * (q_a * (3 * z_a^2 + 2 * z_a * z + z^2) + q * (z_a^2 + 2 * z_a * z + 3 * z^2))', {
        says: 'its second moment about the top: integral of p z^2',
        symbol: 's_2',
        unit: second,
        source: statics,
      }),
    ]),
    step(
      's_third',
      'h_s / 20 * (q_a * (4 * z_a^3 + 3 * z_a^2 * z + 2 * z_a * z^2 + z^3) + q * (z_a^3 + 2 * z_a^2 * z + 3 * z_a * z^2 + 4 * z^3))',
      { says: 'its third moment about the top: integral of p z^3', symbol: 's_3', unit: third, source: statics },
    ),
  ]),
  take('z_first', { list: 'diagram', of: 'z', from: 'first', says: 'first depth of the diagram', unit: depth }),
  take('z_last', { list: 'diagram', of: 'z', from: 'last', says: 'last depth of the diagram', unit: depth }),
  step('h_sum', 'sum(diagram.h_s)', { says: 'heights between the points together', unit: depth }),
  step('P_q', 'sum(diagram.F_s)', { says: 'load on the strip', symbol: 'P', unit: force, source: statics }),
  step('S_first', 'sum(diagram.s_first)', { says: 'first moment about the top', symbol: 'S_1', unit: moment }),
  ...forFixedTop([
    step('S_second', 'sum(diagram.s_second)', { says: 'second moment about the top', symbol: 'S_2', unit: second }),
  ]),
  step('S_third', 'sum(diagram.s_third)', { says: 'third moment about the top', symbol: 'S_3', unit: third }),
]

const noMoment = (name: string, says: string): Step => step(name, '0 * S_first', { says, unit: moment })

const fixedBoth: readonly Step[] = [
  step('M_base', '-(S_second / height - S_third / height^2)', {
    says: 'moment at the base, fixed at both ends: integral of -p z^2 (H - z)/H^2',
    unit: moment,
    source: fixedEnd,
  }),
  step('M_top', '-(S_first - 2 * S_second / height + S_third / height^2)', {
    says: 'moment at the top, fixed at both ends: integral of -p z (H - z)^2/H^2',
    unit: moment,
    source: fixedEnd,
  }),
]

const propped: readonly Step[] = [
  step('M_base', '-(S_first / 2 - S_third / (2 * height^2))', {
    says: 'moment at the base, pinned at the top: integral of -p z (H^2 - z^2)/(2 H^2)',
    unit: moment,
    source: fixedEnd,
  }),
  noMoment('M_top', 'the top is pinned: no moment'),
]

const cantilever: readonly Step[] = [
  step('M_base', '-(P_q * height - S_first)', {
    says: 'moment at the base of a cantilever: integral of -p (H - z)',
    unit: moment,
    source: statics,
  }),
  noMoment('M_top', 'the top is free: no moment'),
]

const pinnedBaseFixedTop: readonly Step[] = [
  noMoment('M_base', 'the base is pinned: no moment'),
  step('M_top', '-(S_first - 3 * S_second / (2 * height) + S_third / (2 * height^2))', {
    says: 'moment at the top, pinned at the base: integral of -p z (H - z) (2 H - z)/(2 H^2)',
    unit: moment,
    source: fixedEnd,
  }),
]

const pinnedBoth: readonly Step[] = [
  noMoment('M_base', 'the base is pinned: no moment'),
  noMoment('M_top', 'the top is pinned: no moment'),
]

/** What the words of the supports hold, counted: a strip that stands has two or more. */
export const supportSteps: readonly Step[] = [
  when(baseFixed, {
    says: 'the base is fixed',
    yes: [step('n_base', '2', { says: 'movements held at the base: sliding and turning' })],
    no: [step('n_base', '1', { says: 'movements held at the base: sliding' })],
  }),
  when(topFixed, {
    says: 'the top is fixed',
    yes: [step('n_top', '2', { says: 'movements held at the top: sliding and turning' })],
    no: [
      when(topPinned, {
        says: 'the top is pinned',
        yes: [step('n_top', '1', { says: 'movements held at the top: sliding' })],
        no: [step('n_top', '0', { says: 'movements held at the top: none' })],
      }),
    ],
  }),
  step('n_held', 'n_base + n_top', { says: 'movements held in all; a strip needs two to stand' }),
]

/** Moments at the ends by the supports chosen, and the two reactions. Hogging (tension on the loaded face) is negative. */
export const endSteps: readonly Step[] = [
  when(baseFixed, {
    says: 'the base is fixed',
    yes: [
      when(topFixed, {
        says: 'so is the top',
        yes: fixedBoth,
        no: [when(topPinned, { says: 'the top is pinned: a propped strip', yes: propped, no: cantilever })],
      }),
    ],
    no: [when(topFixed, { says: 'the base is pinned, the top fixed', yes: pinnedBaseFixedTop, no: pinnedBoth })],
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
    says: 'where the load above equals the reaction at the top, the moment is largest',
    source: statics,
  }),
  each('diagram', [
    step('z_e', 'min(max(z_m, z_a), z)', { says: 'the part above ends here', symbol: 'z_e', unit: depth }),
    step('q_e', 'q_a + (q - q_a) * (z_e - z_a) / max(h_s, 0.000001 * height)', {
      says: 'pressure there, on the straight line between the points',
      symbol: 'q_e',
      unit: pressure,
    }),
    step('F_e', '(z_e - z_a) * (q_a + q_e) / 2', { says: 'load of the part above', symbol: 'F_e', unit: force }),
    step('s_e', '(z_e - z_a) / 6 * (q_a * (2 * z_a + z_e) + q_e * (z_a + 2 * z_e))', {
      says: 'its first moment about the top',
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
    says: 'largest moment in the span: the load above that depth and the reaction make a couple, which is the first moment of the load',
    unit: moment,
    source: statics,
  }),
]

/** The largest moment between the ends, where the shear is nil. */
export const spanSteps: readonly Step[] = [
  when(
    { choice: 'top', is: ['free'] },
    {
      says: 'the top is free: the moment grows from the top to the base',
      yes: [
        step('z_m', '0 * height', { says: 'the shear is nil at the free top only', unit: depth }),
        noMoment('M_span', 'no sagging moment in a cantilever'),
      ],
      no: above,
    },
  ),
]

/** What the wall carries down, from the least that the roof puts on it. */
export const thrustSteps: readonly Step[] = [
  step('N_top', 'roof_reaction', { says: 'thrust at the top', unit: force }),
  step('N_base', 'roof_reaction + wall_weight * thickness * height', {
    says: 'thrust at the base: roof and the wall itself, without a load factor',
    unit: force,
    source: statics,
  }),
]
