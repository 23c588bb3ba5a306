import type { Input, Limit, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, length, limit, pressure, step } from '../words.ts'
import { bearingGround, rectangularBase } from './bearing-inputs.ts'
import { overburden, totalOverburden } from './bearing-steps.ts'
import { pressureUnit } from './ground-units.ts'

export const settlementUnit = { SI: 'mm', US: 'in' } as const

/** What the base presses on the ground, and what it may settle. */
export const pressingBase = {
  ...rectangularBase,
  pressure: pressure({
    says: 'mean pressure under the base that stays, not factored',
    note: 'Gross and total: raft, soil on it and water in it included',
    symbol: 'p',
    unit: pressureUnit,
    above: '0 kPa',
  }),
  s_allow: length({
    says: 'settlement that the structure and its pipes can take',
    symbol: 's_lim',
    unit: settlementUnit,
    above: '0 mm',
    usual: ['10 mm', '75 mm'],
  }),
  gamma: { ...bearingGround.gamma, says: 'unit weight of the ground dug out above the water, moist' },
  gamma_sat: { ...bearingGround.gamma_sat, says: 'unit weight of the ground dug out below the water' },
  water_depth: {
    ...bearingGround.water_depth,
    says: 'depth of the lowest usual groundwater',
    note: 'Lower water makes the ground that was dug out lighter, and the net pressure greater',
  },
  gamma_w: bearingGround.gamma_w,
} satisfies Readonly<Record<string, Input>>

/** What the ground at the level of the base bore before. */
export const beforeDigging: readonly Step[] = [...overburden, totalOverburden]

/** Overburden and the net pressure that settles the ground. */
export const netPressure: readonly Step[] = [
  ...beforeDigging,
  step('p_net', 'max(pressure - q_tot, 0 kPa)', {
    says: 'net pressure: more than the ground that was dug out',
    unit: pressureUnit,
    source: cite('statics'),
  }),
]

/** The check of a settlement of this name. */
export const settles = (name: string): Step =>
  check('settles_little', `${name} <= s_allow`, { says: 'the settlement is one that the structure can take' })

/** The shape of the base. */
export const baseShape: Limit = limit('length >= width', {
  says: 'the length is not less than the width',
  advice: 'Swap the two',
  otherwise: 'refuse',
  on: 'length',
})

/** That the base presses at all; where it does not, `advice` says what settles. */
export const pressesMore = (advice: string, more: Pick<Limit, 'when'> = {}): Limit =>
  limit('p_net > 0 kPa', {
    ...more,
    says: 'the base presses more than the ground that was dug out',
    advice,
    otherwise: 'warn',
    on: 'pressure',
    source: cite('practice'),
  })
