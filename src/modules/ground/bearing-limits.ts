import type { Limit } from '../module.ts'
import { limit } from '../words.ts'

/** The strength that was chosen must be given. */
export const strengthLimits: readonly Limit[] = (
  [
    ['drained', 'phi', 'the angle of friction is given'],
    ['undrained', 'c_u', 'the undrained shear strength is given'],
  ] as const
).map(([word, name, says]) => ({
  holds: { given: name },
  when: { choice: 'strength', is: [word] },
  says,
  advice: `Give \`${name}\``,
  otherwise: 'refuse',
  on: 'strength',
}))

/** A rectangular base with its load: it must not float, and the load must stand well inside. */
export const eccentricityLimits: readonly Limit[] = [
  limit('V_eff > 0 kN', {
    says: 'the load is more than the uplift of the water',
    advice: 'The base floats: see `flotation`',
    otherwise: 'refuse',
    on: 'load',
  }),
  limit('length >= width', {
    says: 'the length is not less than the width',
    advice: 'Swap the two',
    otherwise: 'refuse',
    on: 'length',
  }),
  limit('B_e > 0 m', { says: 'the load stands on the base, along its width', otherwise: 'refuse', on: 'M_B' }),
  limit('L_e > 0 m', { says: 'the load stands on the base, along its length', otherwise: 'refuse', on: 'M_L' }),
  limit('B_e <= L_e', {
    says: 'the effective width is not more than the effective length',
    advice: 'The moment along the length is the larger: take a longer base',
    otherwise: 'refuse',
    on: 'M_L',
  }),
]
