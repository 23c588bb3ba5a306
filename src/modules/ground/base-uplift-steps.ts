import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step } from '../words.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'

const along = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('statics') })

/** Weight of what is left under the pit against the water pressure from below. */
const balance: readonly Step[] = [
  along('plug', 'aquifer_top - depth', { says: 'tight ground left between formation and aquifer', symbol: 't' }),
  along('h_w', 'aquifer_top - water_depth', { says: 'head of the water at the top of the aquifer', symbol: 'h_a' }),
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
    symbol: 'i_crit',
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

/** Balance of weight and uplift, what would help, and the gradient. */
export const baseUpliftSteps: readonly Step[] = [...balance, ...remedies, ...piping]
