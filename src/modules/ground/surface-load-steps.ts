import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { each, step, when } from '../words.ts'
import { forceUnit, lengthUnit, pressureUnit } from './ground-units.ts'

const newmark = cite('newmark-1935', 'corner of a rectangle')
const twoToOne = cite('practice', 'spread of two to one')

const stress = (name: string, formula: string, more: { says: string; symbol: string; source: Citation }): Step =>
  step(name, formula, { ...more, unit: pressureUnit })

/** Where an edge of the patch lies, seen from the place asked about, as a part of the depth. */
const edge = (name: string, formula: string, says: string): Step =>
  step(name, `(${formula}) / depth`, { says, source: cite('statics') })

const edges: readonly Step[] = [
  edge('m_1', 'x - long / 2', 'first edge along, over the depth'),
  edge('m_2', 'x + long / 2', 'second edge along, over the depth'),
  edge('n_1', 'y - wide / 2', 'first edge across, over the depth'),
  edge('n_2', 'y + wide / 2', 'second edge across, over the depth'),
]

/** Influence of the rectangle from the place asked about to one corner of the patch, with the signs of its two sides. */
function corner(along: 1 | 2, across: 1 | 2): readonly Step[] {
  const [m, n, share] = [`m_${along}`, `n_${across}`, `s_${along}${across}`]
  return [
    step(share, `${m} * ${n} / sqrt(1 + ${m}^2 + ${n}^2)`, {
      says: 'sides of the rectangle up to one corner, over its slant',
      source: newmark,
    }),
    step(`I_${along}${across}`, `(atan(${share}) + ${share} / (1 + ${m}^2) + ${share} / (1 + ${n}^2)) / (2 * pi)`, {
      says: 'its influence',
      source: newmark,
    }),
  ]
}

/** The place lies under the load spread two to one, or beside it. */
const spread: Step = when(
  { formula: 'max(abs(x) - (long + depth) / 2, abs(y) - (wide + depth) / 2) <= 0 m' },
  {
    says: 'the place lies under the load spread two to one',
    yes: [
      stress('p_spread', 'P_d / ((long + depth) * (wide + depth))', {
        says: 'mean stress of the load spread two to one',
        symbol: 'sigma_s',
        source: twoToOne,
      }),
    ],
    no: [
      stress('p_spread', '0 kPa', { says: 'the spread load passes beside it', symbol: 'sigma_s', source: twoToOne }),
    ],
  },
)

const ofPatch: readonly Step[] = [
  step('P_d', 'impact * load', {
    says: 'load with its dynamic allowance',
    symbol: 'F_v,d',
    unit: forceUnit,
    source: cite('statics'),
  }),
  ...edges,
  ...corner(1, 1),
  ...corner(1, 2),
  ...corner(2, 1),
  ...corner(2, 2),
  stress('p_patch', 'P_d / (long * wide) * (I_22 - I_12 - I_21 + I_11)', {
    says: 'stress under the load as a patch',
    symbol: 'sigma_p',
    source: newmark,
  }),
  step('R_z', 'sqrt(x^2 + y^2 + depth^2)', {
    says: 'straight distance to the middle of the load',
    symbol: 'R',
    unit: lengthUnit,
    source: cite('statics'),
  }),
  stress('p_point', '3 * P_d * depth^3 / (2 * pi * R_z^5)', {
    says: 'stress under the load as a point',
    symbol: 'sigma_c',
    source: cite('boussinesq'),
  }),
  spread,
]

/** Stress of every load at the place asked about, by patch, point and spread, and their sums. */
export const surfaceLoadSteps: readonly Step[] = [
  each('loads', ofPatch),
  stress('sigma_z', 'sum(loads.p_patch)', {
    says: 'stress on the roof below all loads, as patches',
    symbol: 'sigma_z',
    source: newmark,
  }),
  stress('sigma_point', 'sum(loads.p_point)', {
    says: 'the same with every load as a point',
    symbol: 'sigma_z_c',
    source: cite('boussinesq'),
  }),
  stress('sigma_spread', 'sum(loads.p_spread)', {
    says: 'the same with every load spread two to one',
    symbol: 'sigma_z_s',
    source: twoToOne,
  }),
  stress('p_live', 'max(sigma_z, sigma_spread)', {
    says: 'pressure to design the roof for at this place: the larger',
    symbol: 'p_L',
    source: cite('practice'),
  }),
]
