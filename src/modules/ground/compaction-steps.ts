import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, each, step } from '../words.ts'
import { densityUnit, massUnit } from './compaction-inputs.ts'
import { volumeUnit, weightUnit } from './ground-units.ts'

const cone = cite('astm-d1556', 'sand cone; as in Das')
const density = (name: string, formula: string, more: { says: string; symbol: string; source?: Citation }): Step =>
  step(name, formula, { source: cone, ...more, unit: densityUnit })

const rows: readonly Step[] = [
  step('m_hole', 'jar_before - jar_after - cone_sand', {
    says: 'sand in the hole: less what fills the cone',
    unit: massUnit,
    source: cone,
  }),
  step('V_hole', 'm_hole / rho_sand', { says: 'volume of the hole', unit: volumeUnit, source: cone }),
  density('rho', 'm_wet / V_hole', { says: 'density of the moist soil', symbol: 'rho' }),
  density('rho_dry', 'rho / (1 + w)', { says: 'dry density', symbol: 'rho_d' }),
  step('R', 'rho_dry / rho_max', {
    says: 'relative compaction',
    symbol: 'R_c',
    unit: { SI: 'percent', US: 'percent' },
    source: cite('das-geotechnical', 'from memory'),
  }),
  density('rho_zero', 'G_s * rho_w / (1 + w * G_s)', {
    says: 'dry density if the pores held no air at all',
    symbol: 'rho_zav',
    source: cite('das-geotechnical', 'from memory'),
  }),
  step('r_zero', 'rho_dry / rho_zero', { says: 'dry density over this bound', symbol: 'r_zav' }),
  step('gamma', 'rho * 9.81 m/s^2', {
    says: 'unit weight of the moist soil, for the other calculations',
    unit: weightUnit,
    source: cite('statics'),
  }),
]

/** Density of each field test, its relative compaction, and the lifts of the fill. */
export const compactionSteps: readonly Step[] = [
  each('tests', rows),
  step('R_least', 'min(tests.R)', {
    says: 'least relative compaction of the tests',
    symbol: 'R_min',
    unit: { SI: 'percent', US: 'percent' },
  }),
  check('compacted', 'R_least >= R_req', { says: 'every test reaches the required compaction' }),
  step('n_lift', 'ceil(fill / lift)', { says: 'lifts of this thickness to the height of the fill', symbol: 'n_l' }),
  step('n_due', 'n_lift * tests_a_lift', { says: 'tests that the whole fill wants', symbol: 'n_due' }),
]
