import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { areaUnit, forceUnit, lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'

const statics = cite('statics')
const effectiveStress = cite('statics', 'effective stress')

/** Stress and water pressure at the level of the base, before it was dug for. */
export const overburden: readonly Step[] = [
  step('h_moist', 'min(max(water_depth, 0 m), depth)', {
    says: 'ground beside the base above the water',
    unit: lengthUnit,
    source: statics,
  }),
  step('q_eff', 'gamma * h_moist + (gamma_sat - gamma_w) * (depth - h_moist)', {
    says: 'effective overburden at the level of the base',
    symbol: "q'",
    unit: pressureUnit,
    source: effectiveStress,
  }),
  step('u', 'gamma_w * max(depth - water_depth, 0 m)', {
    says: 'water pressure under the base',
    unit: pressureUnit,
    source: statics,
  }),
]

/** Overburden in total stress, for undrained strength. */
export const totalOverburden: Step = step('q_tot', 'q_eff + u', {
  says: 'total overburden at the level of the base',
  unit: pressureUnit,
  source: effectiveStress,
})

/** Unit weight that counts below a base of this width: submerged, moist, or between where the water is less than the width below. */
export const weightBelow = (width: string): Step =>
  step(
    'gamma_below',
    `gamma_sat - gamma_w + (gamma - (gamma_sat - gamma_w)) * min(max((water_depth - depth) / ${width}, 0), 1)`,
    {
      says: 'unit weight that counts below the base, by the depth of the water',
      symbol: "gamma'",
      unit: weightUnit,
      source: cite('das-foundation', 'water table below the base, from memory'),
    },
  )

/** Vertical load less the uplift on the whole base. */
export const loadLessUplift: Step = step('V_eff', 'load - u * width * length', {
  says: 'load that the soil bears: less the uplift of the water',
  symbol: "V'",
  unit: forceUnit,
  source: statics,
})

const side = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('meyerhof-1953', 'effective area') })

/** Effective area: the part of the base that stands centrally under the load. */
export const effectiveArea = (load: 'V_eff' | 'load'): readonly Step[] => [
  step('e_B', `M_B / ${load}`, { says: 'eccentricity along the width', unit: lengthUnit, source: statics }),
  step('e_L', `M_L / ${load}`, { says: 'eccentricity along the length', unit: lengthUnit, source: statics }),
  side('B_e', 'width - 2 * e_B', { says: 'effective width', symbol: "B'" }),
  side('L_e', 'length - 2 * e_L', { says: 'effective length', symbol: "L'" }),
  step('A_e', 'B_e * L_e', { says: 'effective area', symbol: "A'", unit: areaUnit, source: statics }),
]

const prandtl = cite('prandtl')

/** The factors of Prandtl and Reissner, for the friction named. */
export const prandtlFactors = (phi: string): readonly Step[] => [
  step('N_q', `exp(pi * tan(${phi})) * tan(45 deg + ${phi} / 2)^2`, {
    says: 'factor of the overburden',
    source: prandtl,
  }),
  step('N_c', `(N_q - 1) / tan(${phi})`, { says: 'factor of the cohesion', source: prandtl }),
]

/** Drained or undrained steps, each only where its strength is given. */
export const byStrength = (drained: readonly Step[], undrained: readonly Step[]): Step =>
  when(
    { choice: 'strength', is: ['drained'] },
    {
      yes: [when({ given: 'phi' }, { yes: drained })],
      no: [when({ given: 'c_u' }, { yes: undrained })],
    },
  )
