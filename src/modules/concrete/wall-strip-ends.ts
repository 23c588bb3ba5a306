import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { force, moment, noMoment, statics, topFixed, topFree, topPinned } from './wall-strip-words.ts'

const fixedEnd = cite('statics', 'fixed-end moments of a prismatic beam')
const baseFixed = { choice: 'base', is: ['fixed'] }

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
