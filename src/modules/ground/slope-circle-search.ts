import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import type { Given, Taken } from '../step.ts'
import { solve, when } from '../words.ts'
import { criticalCircle } from './critical-circle.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'

const bishop = cite('bishop-1955')

/** What both searches take of the slope. */
export const slopeTaken: Readonly<Record<string, Taken>> = {
  height: 'slope_height',
  slope: 'slope',
  hard: 'hard_depth',
  c: { ifGiven: 'c' },
  c_u: { ifGiven: 'c_u' },
  phi: { ifGiven: 'phi' },
  gamma: 'gamma',
  gamma_sat: { ifGiven: 'gamma_sat' },
  gamma_w: 'gamma_w',
  water: { ifGiven: 'y_w' },
  ratio: { ifGiven: 'r_u' },
  load: { ifGiven: 'surcharge' },
  load_from: { ifGiven: 'x_q' },
  crack: { ifGiven: 'z_cr' },
  crack_water: { ifGiven: 'z_cw' },
}

const length = { dimension: 'length', unit: lengthUnit } as const
const circle = {
  x: { ...length, name: 'x_0', says: 'centre of the circle, behind the foot', symbol: 'x_0' },
  y: { ...length, name: 'y_0', says: 'centre of the circle, above the foot', symbol: 'y_0' },
  radius: { ...length, name: 'R', says: 'radius of the circle', symbol: 'R_arc' },
  out: { ...length, name: 'x_out', says: 'where it leaves the ground, behind the foot', symbol: 'x_out' },
  into: { ...length, name: 'x_in', says: 'where it enters the ground or the crack', symbol: 'x_in' },
} as const
const counted = {
  dimension: 'pressure',
  unit: pressureUnit,
  name: 'q_n',
  says: 'load on the crest that counts: none where it steadies',
  symbol: 'q_crest',
} as const

const searched = (gives: Readonly<Record<string, Given>>): Step =>
  solve(criticalCircle, { says: 'worst circle', source: bishop, takes: slopeTaken, gives })
/** The worst circle; where the crest is loaded, with the load that counts. */
export const search = when(
  { choice: 'crest', is: ['loaded'] },
  { yes: [searched({ ...circle, load: counted })], no: [searched(circle)] },
)
