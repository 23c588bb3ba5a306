import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, solve, step, when } from '../words.ts'
import { bishopFactor } from './bishop-factor.ts'
import { angleUnit, lengthUnit, lineLoadUnit, lineMomentUnit, weightUnit } from './ground-units.ts'
import { search } from './slope-circle-search.ts'
import { dividedSteps, sliceCount, sliceSteps } from './slope-circle-slices.ts'

const statics = cite('statics')
const bishop = cite('bishop-1955')
type More = { readonly says: string; readonly symbol: string; readonly source?: typeof statics }
const long = (name: string, formula: string, more: More): Step =>
  step(name, formula, { source: statics, ...more, unit: lengthUnit })
const force = (name: string, formula: string, more: More): Step =>
  step(name, formula, { source: statics, ...more, unit: lineLoadUnit })

const cracked = (yes: readonly Step[], no: readonly Step[] = []): Step =>
  when({ choice: 'crack', is: ['dry', 'full'] }, { yes, no })
const full = (yes: readonly Step[], no: readonly Step[] = []): Step =>
  when({ choice: 'crack', is: ['full'] }, { yes, no })
const drained = (yes: readonly Step[], no: readonly Step[] = []): Step =>
  when({ choice: 'strength', is: ['drained'] }, { yes, no })

const crackDepth = (formula: string, says: string): Step =>
  long('z_cr', formula, { says, symbol: 'z_cr', source: cite('terzaghi-1943', 'tension cracks') })

const places: readonly Step[] = [
  long('x_crest', 'slope_height / tan(slope)', { says: 'edge of the crest, behind the foot', symbol: 'x_e' }),
  when(
    { choice: 'water', is: ['level'] },
    {
      yes: [
        long('y_w', 'slope_height - water_depth', { says: 'water level above the foot', symbol: 'y_w' }),
        step('gamma_more', 'gamma_sat - gamma', {
          says: 'what water adds to the unit weight',
          symbol: 'Delta_gamma',
          unit: weightUnit,
          source: statics,
        }),
      ],
    },
  ),
  when(
    { choice: 'crest', is: ['loaded'] },
    { yes: [long('x_q', 'x_crest + set_back', { says: 'where the load begins, behind the foot', symbol: 'x_q' })] },
  ),
  cracked([
    when(
      { given: 'crack_depth' },
      {
        yes: [long('z_cr', 'crack_depth', { says: 'depth of the crack', symbol: 'z_cr' })],
        no: [
          drained(
            [
              crackDepth(
                'min(2 * c / (gamma * tan(45 deg - phi / 2)), slope_height / 2)',
                'depth of the crack: where the ground is pulled, at most half',
              ),
            ],
            [
              crackDepth(
                'min(2 * c_u / gamma, slope_height / 2)',
                'depth of the crack: where the ground is pulled, at most half',
              ),
            ],
          ),
        ],
      },
    ),
  ]),
  full([long('z_cw', 'z_cr', { says: 'water in the crack', symbol: 'z_cw' })]),
]

const arc = (name: string, of: string, says: string): Step =>
  step(name, `asin((${of} - x_0) / R)`, { says, symbol: name, unit: angleUnit, source: statics })
const angles: readonly Step[] = [
  arc('alpha_out', 'x_out', 'slope of the arc where it leaves the ground'),
  arc('alpha_in', 'x_in', 'slope of the arc where it enters'),
  step('alpha_step', `(alpha_in - alpha_out) / ${sliceCount}`, {
    says: 'share of each slice',
    symbol: 'Delta_alpha',
    unit: angleUnit,
    source: statics,
  }),
  long('chord', '2 * R * sin(alpha_step / 2)', { says: 'length of the base of each slice', symbol: 'l_n' }),
]

/** All that drives along the arc; water in a crack with its lever over the radius. */
const driving: readonly Step[] = [
  full(
    [
      force('P_cr', 'gamma_w * z_cw^2 / 2', { says: 'force of the water in the crack', symbol: 'P_cr' }),
      step('M_cr', 'P_cr * (y_0 - slope_height + z_cr - z_cw / 3)', {
        says: 'its moment about the centre',
        symbol: 'M_cr',
        unit: lineMomentUnit,
        source: statics,
      }),
      force('T_sum', 'sum(slices.T) + M_cr / R', { says: 'what drives along the arc, in all', symbol: 'T_Sigma' }),
    ],
    [force('T_sum', 'sum(slices.T)', { says: 'what drives along the arc, in all', symbol: 'T_Sigma' })],
  ),
]

const byFriction: readonly Step[] = [
  solve(bishopFactor, {
    says: 'factor that both sides agree on',
    source: bishop,
    takes: { slope: { list: 'slices.alpha' }, strength: { list: 'slices.Q' }, phi: 'phi', shear: 'T_sum' },
    gives: { factor: { dimension: 'ratio', name: 'F_1', says: 'factor that divides the friction', symbol: 'F_1' } },
  }),
  step('k_F', 'tan(phi) / F_1', { says: 'friction that is used', symbol: 'k_F', source: bishop }),
  dividedSteps,
  force('S_sum', 'sum(slices.S)', { says: 'what the arc resists, in all', symbol: 'S_Sigma' }),
]

const byCohesion: readonly Step[] = [
  force('S_sum', 'c_u * R * (alpha_in - alpha_out)', {
    says: 'what the arc resists: strength by its length',
    symbol: 'S_Sigma',
    source: cite('taylor-1948'),
  }),
]

const factor = step('F_c', 'S_sum / T_sum', {
  says: 'factor against a slip on this circle',
  symbol: 'F_c',
  source: bishop,
})

/** From the shape of the slope to the factor of its worst circle. */
export const slopeCircleSteps: readonly Step[] = [
  ...places,
  search,
  ...angles,
  ...sliceSteps,
  ...driving,
  drained(byFriction, byCohesion),
  factor,
  drained(
    [],
    [
      step('N_T', 'c_u / (gamma * slope_height * F_c)', {
        says: "stability number, to hold against Taylor's chart",
        symbol: 'N_T',
        source: cite('taylor-1948'),
      }),
    ],
  ),
  check('slope_stands', 'F_c >= factor', { says: 'the slope does not slip on a circle', source: bishop }),
]
