import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, step } from '../words.ts'
import { lengthUnit, lineLoadUnit, lineMomentUnit, pressureUnit } from './ground-units.ts'

/** Which lines the working needs: water on the wall, a part of cohesion, a least pressure from compaction. */
export interface Needs {
  readonly wet: boolean
  readonly cohesive: boolean
  readonly rolled: boolean
}

/** A stretch of one layer with one unit weight: between its two levels pressure is a straight line. */
interface Part {
  readonly tag: string
  readonly where: string
  readonly top: string
  readonly foot: string
  readonly stress: string
  readonly above: string
  readonly below: string
  readonly weight: string
}

const moist: Part = {
  tag: 'above',
  where: 'above the water',
  top: 'z_upper',
  foot: 'z_water',
  stress: 'sv_upper',
  above: 'e_upper',
  below: 'e_water',
  weight: 'gamma',
}
const submerged: Part = {
  tag: 'below',
  where: 'below the water',
  top: 'z_water',
  foot: 'z_lower',
  stress: 'sv_water',
  above: 'e_water',
  below: 'e_lower',
  weight: '(gamma_sat - gamma_w)',
}
const whole: Part = { ...moist, where: 'in this layer', foot: 'z_lower', below: 'e_lower' }

const depth = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lengthUnit, source: cite('statics') })
const stress = (name: string, formula: string, says: string): Step =>
  step(name, formula, {
    says,
    symbol: `sigma'_v_${name.replace('sv_', '')}`,
    unit: pressureUnit,
    source: cite('statics'),
  })

const moistAbove = 'gamma * h_moist + (gamma_sat - gamma_w) * (wall_top - h_moist)'

/** One layer's levels, stresses, pressures and resultants on the wall. */
export function layerSteps(needs: Needs): readonly Step[] {
  const { wet } = needs
  return [
    ...levelsOf(wet),
    ...stressesOf(wet),
    ...['upper', ...(wet ? ['water'] : []), 'lower'].map(at => earthAt(at, needs)),
    ...(wet ? [moist, submerged] : [whole]).flatMap(part => resultantOf(part, needs)),
    ...['upper', ...(wet ? ['water'] : []), 'lower'].map(at => totalAt(at, wet)),
  ]
}

const levelsOf = (wet: boolean): readonly Step[] => [
  carried('z_over', { first: '0 m', next: 'z_lower', says: 'depth of the top of the layer', unit: lengthUnit }),
  depth('z_upper', 'max(z_over, wall_top)', 'depth where the layer begins to press on the wall'),
  depth('z_lower', 'min(z_over + thickness, wall_base)', 'depth where it ceases'),
  ...(wet ? [depth('z_water', 'min(max(water_depth, z_upper), z_lower)', 'water level within that height')] : []),
]

const stressesOf = (wet: boolean): readonly Step[] => [
  carried('sv_upper', {
    first: wet ? `surcharge + ${moistAbove}` : 'surcharge + gamma * wall_top',
    next: 'sv_lower',
    says: wet ? 'effective vertical stress where it begins' : 'vertical stress where it begins',
    symbol: "sigma'_v_upper",
    unit: pressureUnit,
  }),
  ...(wet
    ? [
        stress('sv_water', 'sv_upper + gamma * (z_water - z_upper)', 'effective vertical stress at the water level'),
        stress(
          'sv_lower',
          'sv_water + (gamma_sat - gamma_w) * (z_lower - z_water)',
          'effective vertical stress where it ceases',
        ),
      ]
    : [stress('sv_lower', 'sv_upper + gamma * (z_lower - z_upper)', 'vertical stress where it ceases')]),
]

const floor = ({ rolled }: Needs): string => (rolled ? 'p_least' : '0 kPa')
const straight = (sv: string, { cohesive }: Needs): string => `K_h * ${sv}${cohesive ? ' + p_c' : ''}`
const floored = ({ cohesive, rolled }: Needs): boolean => cohesive || rolled

const placeWords: Readonly<Record<string, string>> = {
  upper: 'where the layer begins',
  water: 'at the water level',
  lower: 'where the layer ceases',
}

const earthAt = (at: string, needs: Needs): Step => {
  const pressure = straight(`sv_${at}`, needs)
  return step(`e_${at}`, floored(needs) ? `max(${pressure}, ${floor(needs)})` : pressure, {
    says: `earth pressure ${placeWords[at] ?? at}`,
    symbol: `e_${at}`,
    unit: pressureUnit,
  })
}

const totalAt = (at: string, wet: boolean): Step =>
  step(`p_${at}`, wet ? `e_${at} + gamma_w * max(z_${at} - water_depth, 0 m)` : `e_${at}`, {
    says: `${wet ? 'earth and water' : 'pressure'} ${placeWords[at] ?? at}`,
    symbol: `p_${at}`,
    unit: pressureUnit,
  })

/** Force and moment of one part: a trapezium, or where a least pressure can govern its top a rectangle over a trapezium. */
function resultantOf(part: Part, needs: Needs): readonly Step[] {
  if (!floored(needs)) return trapezium(part)
  return [...kink(part, needs), ...rectangleAndTrapezium(part)]
}

const kink = ({ tag, top, foot, stress: sv, above, weight }: Part, needs: Needs): readonly Step[] => {
  const short = needs.rolled ? `(${floor(needs)} - (${straight(sv, needs)}))` : `-(${straight(sv, needs)})`
  return [
    step(`z_kink_${tag}`, `min(max(${top} + ${short} / (K_h * ${weight}), ${top}), ${foot})`, {
      says: needs.rolled ? 'depth to which the least pressure governs' : 'depth to which cohesion holds the soil back',
      symbol: `z_k_${tag}`,
      unit: lengthUnit,
      source: cite('statics'),
    }),
    step(`p_kink_${tag}`, tag === 'below' ? `${above} + gamma_w * max(z_kink_below - water_depth, 0 m)` : above, {
      says: tag === 'below' ? 'earth and water there' : 'pressure there',
      symbol: `p_k_${tag}`,
      unit: pressureUnit,
    }),
  ]
}

const force = ({ tag, where }: Part, formula: string): Step =>
  step(`F_${tag}`, formula, { says: `earth force ${where}`, unit: lineLoadUnit, source: cite('statics') })
const momentOf = ({ tag }: Part, formula: string): Step =>
  step(`M_${tag}`, formula, {
    says: 'its moment about the base of the wall',
    unit: lineMomentUnit,
    source: cite('statics'),
  })

function trapezium(part: Part): readonly Step[] {
  const { tag, top, foot, above, below } = part
  const height = `(${foot} - ${top})`
  return [
    force(part, `(${above} + ${below}) / 2 * ${height}`),
    momentOf(part, `F_${tag} * (wall_base - ${foot}) + ${height}^2 * (2 * ${above} + ${below}) / 6`),
  ]
}

function rectangleAndTrapezium(part: Part): readonly Step[] {
  const { tag, top, foot, above, below } = part
  const from = `z_kink_${tag}`
  return [
    force(part, `${above} * (${from} - ${top}) + (${above} + ${below}) / 2 * (${foot} - ${from})`),
    momentOf(
      part,
      `F_${tag} * (wall_base - ${foot}) + ${above} * (${from} - ${top}) * (${foot} - (${top} + ${from}) / 2) + (${foot} - ${from})^2 * (2 * ${above} + ${below}) / 6`,
    ),
  ]
}
