import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { lengthUnit, lineLoadUnit, lineMomentUnit, pressureUnit } from './ground-units.ts'

/** Shape of an envelope: whether pressure rises at its top and falls at its foot, over a quarter of the depth. */
export interface EnvelopeShape {
  readonly rises: boolean
  readonly falls: boolean
}

const peck = cite('peck-1969')
const pressure = (name: string, formula: string, more: { says: string; symbol: string; own?: true }): Step =>
  step(name, formula, {
    says: more.says,
    symbol: more.symbol,
    unit: pressureUnit,
    source: more.own ? cite('statics') : peck,
  })

const sand: Step = when(
  { given: 'phi' },
  {
    yes: [
      step('K_a', 'tan(45 deg - phi / 2)^2', { says: 'active coefficient', source: cite('rankine') }),
      pressure('p_env', '0.65 * K_a * gamma * depth', { says: 'envelope in sand', symbol: 'p_P' }),
      pressure('p_q', 'K_a * surcharge', { says: 'what the load beside the pit adds', symbol: 'p_q', own: true }),
    ],
    no: missing('the angle of friction is not given'),
  },
)

function missing(says: string): readonly Step[] {
  return [
    pressure('p_env', '0 kPa', { says, symbol: 'p_P', own: true }),
    pressure('p_q', '0 kPa', { says, symbol: 'p_q', own: true }),
  ]
}

const inClay = (envelope: readonly Step[]): Step =>
  when(
    { given: 'c' },
    {
      yes: [
        step('N_s', 'gamma * depth / c', { says: 'stability number', source: peck }),
        ...envelope,
        pressure('p_q', 'surcharge', {
          says: 'what the load beside the pit adds, undrained: all of it',
          symbol: 'p_q',
          own: true,
        }),
      ],
      no: missing('the undrained strength is not given'),
    },
  )

const soft = inClay([
  pressure('p_env', 'max(gamma * depth - 4 * clay_factor * c, 0.3 * gamma * depth)', {
    says: 'envelope in soft to medium clay, the larger of two',
    symbol: 'p_P',
  }),
])
const stiff = inClay([
  pressure('p_env', 'stiff_share * gamma * depth', { says: 'envelope in stiff clay', symbol: 'p_P' }),
])

/** The full pressure of the envelope with the load beside the pit. */
export const envelope: readonly Step[] = [
  when(
    { choice: 'ground', is: ['sand'] },
    { yes: [sand], no: [when({ choice: 'ground', is: ['soft to medium clay'] }, { yes: [soft], no: [stiff] })] },
  ),
  pressure('p_e', 'p_env + p_q', { says: 'full pressure to reckon with', symbol: 'p_e', own: true }),
  step('ramp', 'depth / 4', {
    says: 'height over which clay pressure rises or falls',
    symbol: 'd_r',
    unit: lengthUnit,
    source: peck,
  }),
]

/** Height over which pressure still rises below a level, and over which it already falls above it. */
interface Ramps {
  readonly top: string
  readonly foot: string
}

/** A strut's own ramps stand in lines of their own. */
export const strutRamps: Ramps = { top: 'a_z', foot: 'b_z' }
/** The ramps at another level, within its line. */
export const rampsAt = (z: string): Ramps => ({ top: `max(ramp - ${z}, 0 m)`, foot: `max(${z} - 3 * ramp, 0 m)` })

/** Load of the envelope down to a strut. */
export function loadTo(z: string, { rises, falls }: EnvelopeShape, ramps: Ramps): string {
  const top = rises ? ` - ramp / 2 + ${ramps.top}^2 / (2 * ramp)` : ''
  const foot = falls ? ` - ${ramps.foot}^2 / (2 * ramp)` : ''
  return rises || falls ? `p_e * (${z}${top}${foot})` : `p_e * ${z}`
}

/** Moment of the load down to a level about the same level. */
export function momentAt(z: string, { rises, falls }: EnvelopeShape, ramps: Ramps = rampsAt(z)): string {
  const top = rises ? ` - ramp * ${z} / 2 + ramp^2 / 6 - ${ramps.top}^3 / (6 * ramp)` : ''
  const foot = falls ? ` - ${ramps.foot}^3 / (6 * ramp)` : ''
  return rises || falls ? `p_e * (${z}^2 / 2${top}${foot})` : `p_e * ${z}^2 / 2`
}

/** Load of the whole envelope, and its moment about formation. */
export function wholeOf({ rises, falls }: EnvelopeShape): { readonly load: string; readonly moment: string } {
  if (falls) return { load: 'p_e * (depth - ramp)', moment: 'P_d * depth / 2' }
  if (rises) return { load: 'p_e * (depth - ramp / 2)', moment: 'p_e * (depth^2 / 2 - ramp * depth / 2 + ramp^2 / 6)' }
  return { load: 'p_e * depth', moment: 'P_d * depth / 2' }
}

export const load = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lineLoadUnit, source: cite('statics') })
export const moment = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lineMomentUnit, source: cite('statics') })
