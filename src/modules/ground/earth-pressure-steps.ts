import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { each, step, take, when } from '../words.ts'
import { coefficients, compaction } from './earth-pressure-coefficients.ts'
import { layerSteps } from './earth-pressure-parts.ts'
import { lengthUnit, lineLoadUnit, lineMomentUnit, pressureUnit } from './ground-units.ts'

const depth = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lengthUnit, source: cite('statics') })

const waterAt = (end: 'top' | 'base', says: string): Step =>
  step(`u_${end}`, `gamma_w * max(wall_${end} - water_depth, 0 m)`, {
    says,
    unit: pressureUnit,
    source: cite('statics', 'hydrostatic'),
  })

const waterOnWall: readonly Step[] = [
  depth('h_moist', 'min(max(water_depth, 0 m), wall_top)', 'soil above both the wall and the water'),
  depth('z_u', 'min(max(water_depth, wall_top), wall_base)', 'depth where water begins to press on the wall'),
  depth('d_water', 'z_u - wall_top', "the same below the wall's top"),
  waterAt('top', "water pressure at the wall's top"),
  waterAt('base', "water pressure at the wall's base"),
  step('P_water', '(u_top + u_base) / 2 * (wall_base - z_u)', {
    says: 'water force on the wall',
    symbol: 'P_w',
    unit: lineLoadUnit,
    source: cite('statics'),
  }),
  step('M_water', '(wall_base - z_u)^2 * (2 * u_top + u_base) / 6', {
    says: 'its moment about the base of the wall',
    symbol: 'M_w',
    unit: lineMomentUnit,
    source: cite('statics'),
  }),
]

/** The layers' lines by what they need; the choice is made once, before the first layer. */
function layers(wet: boolean): Step {
  const rows = (cohesive: boolean, rolled: boolean): readonly Step[] => [
    each('layers', layerSteps({ wet, cohesive, rolled })),
  ]
  const byRoller = (cohesive: boolean): Step =>
    when({ given: 'roller' }, { yes: rows(cohesive, true), no: rows(cohesive, false) })
  return when({ choice: 'state', is: ['active', 'passive'] }, { yes: [byRoller(true)], no: [byRoller(false)] })
}

const sums = (name: string, parts: readonly string[], says: string): Step =>
  step(name, parts.map(part => `sum(layers.${part})`).join(' + '), {
    says,
    symbol: name === 'P_soil' ? 'P_e' : 'M_e',
    unit: name === 'P_soil' ? lineLoadUnit : lineMomentUnit,
    source: cite('statics'),
  })

const total = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: name === 'P' ? lineLoadUnit : lineMomentUnit, source: cite('statics') })

const wetWall: readonly Step[] = [
  ...waterOnWall,
  layers(true),
  sums('P_soil', ['F_above', 'F_below'], 'earth force on the wall'),
  sums('M_soil', ['M_above', 'M_below'], 'its moment about the base of the wall'),
  total('P', 'P_soil + P_water', 'force on the wall, earth and water'),
  total('M_toe', 'M_soil + M_water', 'its moment about the base of the wall'),
]

const dryWall: readonly Step[] = [
  layers(false),
  sums('P_soil', ['F_above'], 'earth force on the wall'),
  total('P', 'P_soil', 'force on the wall: no water'),
  total('M_toe', 'sum(layers.M_above)', 'its moment about the base of the wall'),
]

const resultantAt = depth('y_P', 'M_toe / P', 'height of the resultant above the base of the wall')

/** Cohesion can hold the soil off the wall altogether; in every other state there is a force. */
const resultant = when(
  { choice: 'state', is: ['active'] },
  {
    yes: [when({ formula: 'P > 0 kN/m' }, { says: 'there is a force on the wall', yes: [resultantAt] })],
    no: [resultantAt],
  },
)

/** Everything from the coefficients to the resultant. */
export const earthPressureSteps: readonly Step[] = [
  depth('h_wall', 'wall_base - wall_top', 'height of the wall'),
  coefficients,
  compaction,
  when(
    { choice: 'groundwater', is: ['below the wall'] },
    { yes: dryWall, no: [when({ given: 'water_depth' }, { yes: wetWall, no: dryWall })] },
  ),
  take('p_top', {
    list: 'layers',
    of: 'p_upper',
    from: 'first',
    says: "pressure at the wall's top",
    symbol: 'p_top',
    unit: pressureUnit,
  }),
  take('p_base', {
    list: 'layers',
    of: 'p_lower',
    from: 'last',
    says: "pressure at the wall's base",
    symbol: 'p_base',
    unit: pressureUnit,
  }),
  take('z_last', {
    list: 'layers',
    of: 'z_over',
    from: 'last',
    says: 'depth of the top of the lowest layer',
    symbol: 'z_last',
    unit: lengthUnit,
  }),
  resultant,
]
