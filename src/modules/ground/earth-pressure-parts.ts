import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, step, when } from '../words.ts'
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
    symbol: `sigma_${name.replace('sv_', 'v')}`,
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
  depth('h_on_wall', 'z_lower - z_upper', 'height of the layer on the wall'),
  ...(wet ? [depth('z_water', 'min(max(water_depth, z_upper), z_lower)', 'water level within that height')] : []),
]

const stressesOf = (wet: boolean): readonly Step[] => [
  carried('sv_upper', {
    first: wet ? `surcharge + ${moistAbove}` : 'surcharge + gamma * wall_top',
    next: 'sv_lower',
    says: wet ? 'effective vertical stress where it begins' : 'vertical stress where it begins',
    symbol: 'sigma_vupper',
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
    : [stress('sv_lower', 'sv_upper + gamma * h_on_wall', 'vertical stress where it ceases')]),
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
    says: `pressure ${placeWords[at] ?? at}${wet ? ', water once and in full' : ''}`,
    symbol: `p_${at}`,
    unit: pressureUnit,
  })

/** Force and moment of one part: a trapezium, or where the least pressure bites a rectangle over a trapezium. */
function resultantOf(part: Part, needs: Needs): readonly Step[] {
  if (!floored(needs)) return trapezium(part, part.top)
  return [
    when(
      { formula: `${straight(part.stress, needs)} < ${floor(needs)}` },
      {
        says: needs.rolled
          ? `at the top of the part ${part.where} the straight line is below the least pressure`
          : `at the top of the part ${part.where} cohesion holds the soil back`,
        yes: [...kink(part, needs), ...rectangleAndTrapezium(part)],
        no: trapezium(part, part.top),
      },
    ),
  ]
}

const kink = ({ tag, top, foot, stress: sv, above, weight }: Part, needs: Needs): readonly Step[] => [
  depth(
    `z_kink_${tag}`,
    `min(${top} + (${floor(needs)} - (${straight(sv, needs)})) / (K_h * ${weight}), ${foot})`,
    'depth from which the straight line governs',
  ),
  step(`p_kink_${tag}`, tag === 'below' ? `${above} + gamma_w * max(z_kink_below - water_depth, 0 m)` : above, {
    says: 'pressure there',
    unit: pressureUnit,
  }),
]

function trapezium({ tag, where, foot, above, below }: Part, top: string): readonly Step[] {
  const height = `(${foot} - ${top})`
  return [
    step(`F_${tag}`, `(${above} + ${below}) / 2 * ${height}`, {
      says: `earth force ${where}`,
      unit: lineLoadUnit,
      source: cite('statics'),
    }),
    step(`M_${tag}`, `F_${tag} * (wall_base - ${foot}) + ${height}^2 * (2 * ${above} + ${below}) / 6`, {
      says: 'its moment about the base of the wall',
      unit: lineMomentUnit,
      source: cite('statics'),
    }),
  ]
}

function rectangleAndTrapezium({ tag, where, top, foot, above, below }: Part): readonly Step[] {
  const from = `z_kink_${tag}`
  const statics = cite('statics')
  return [
    step(`R_${tag}`, `${above} * (${from} - ${top})`, {
      says: 'earth force over that depth',
      unit: lineLoadUnit,
      source: statics,
    }),
    step(`T_${tag}`, `(${above} + ${below}) / 2 * (${foot} - ${from})`, {
      says: 'earth force under it',
      unit: lineLoadUnit,
      source: statics,
    }),
    step(`F_${tag}`, `R_${tag} + T_${tag}`, { says: `earth force ${where}`, unit: lineLoadUnit, source: statics }),
    step(`M_R_${tag}`, `R_${tag} * (wall_base - (${top} + ${from}) / 2)`, {
      says: 'moment of the upper of the two about the base of the wall',
      unit: lineMomentUnit,
      source: statics,
    }),
    step(`M_T_${tag}`, `T_${tag} * (wall_base - ${foot}) + (${foot} - ${from})^2 * (2 * ${above} + ${below}) / 6`, {
      says: 'moment of the lower of the two',
      unit: lineMomentUnit,
      source: statics,
    }),
    step(`M_${tag}`, `M_R_${tag} + M_T_${tag}`, {
      says: 'moment of both about the base of the wall',
      unit: lineMomentUnit,
      source: statics,
    }),
  ]
}
