import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { eachPart, step, when } from '../words.ts'
import { angleUnit, lengthUnit, lineLoadUnit } from './ground-units.ts'

/** Slices of the circle, as many as a reviewer recomputes. */
export const sliceCount = 10

const statics = cite('statics')
const bishop = cite('bishop-1955')
type More = { readonly says: string; readonly symbol: string }
const long = (name: string, formula: string, more: More): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: statics })
const force = (name: string, formula: string, more: More, source = statics): Step =>
  step(name, formula, { ...more, unit: lineLoadUnit, source })

const slices = (steps: readonly Step[]): Step => eachPart('slices', { count: sliceCount, number: 'i' }, steps)
const atLevel = (yes: readonly Step[], no: readonly Step[] = []): Step =>
  when({ choice: 'water', is: ['level'] }, { yes, no })

const shape: readonly Step[] = [
  step('alpha', 'alpha_out + (i - 0.5) * alpha_step', {
    says: 'slope of the base of the slice, at its middle',
    symbol: 'alpha_n',
    unit: angleUnit,
    source: statics,
  }),
  long('b', 'chord * cos(alpha)', { says: 'width of the slice', symbol: 'b_n' }),
  long('x_mid', 'x_0 + R * sin(alpha)', { says: 'its middle, behind the foot', symbol: 'x_n' }),
  long('y_base', 'y_0 - R * cos(alpha)', { says: 'its base, above the foot', symbol: 'y_n' }),
  long('h', 'min(max(x_mid * tan(slope), 0 m), slope_height) - y_base', {
    says: 'its height, ground to base',
    symbol: 'h_n',
  }),
  atLevel([
    long('h_u', 'max(min(h, y_w - y_base), 0 m)', { says: 'height of the water over its base', symbol: 'h_u' }),
  ]),
]

const own = (load: string, says: string): Step => {
  const weight = (formula: string): Step => force('W_n', formula + load, { says, symbol: 'W_n' })
  return atLevel([weight('(gamma * h + gamma_more * h_u) * b')], [weight('gamma * h * b')])
}

const bare: readonly Step[] = [slices([own('', 'its weight')])]
const laden: readonly Step[] = [
  slices([
    long('l_q', 'min(max(x_mid + 0.5 * b - x_q, 0 m), b)', { says: 'width of it that bears the load', symbol: 'l_q' }),
    own(' + q_n * l_q', 'its weight with the load on it'),
  ]),
]

const strength = (pore: string): Step =>
  force(
    'Q',
    `c * b + (W_n${pore}) * tan(phi)`,
    { says: 'what its base resists, before it is divided', symbol: 'Q_n' },
    bishop,
  )

const forces: readonly Step[] = [
  force('T', 'W_n * sin(alpha)', { says: 'what drives along its base', symbol: 'T_n' }),
  when(
    { choice: 'strength', is: ['drained'] },
    {
      yes: [
        when(
          { choice: 'water', is: ['ratio'] },
          {
            yes: [strength(' - r_u * gamma * h * b')],
            no: [atLevel([strength(' - gamma_w * h_u * b')], [strength('')])],
          },
        ),
      ],
    },
  ),
]

/** Place, weight and shear of each slice, and what friction and cohesion hold where they count. */
export const sliceSteps: readonly Step[] = [
  slices(shape),
  when(
    { choice: 'crest', is: ['loaded'] },
    {
      yes: [when({ formula: 'q_n > 0 kPa' }, { says: 'the load on the crest drives', yes: laden, no: bare })],
      no: bare,
    },
  ),
  slices(forces),
]

/** Each strength divided by what the factor makes of the slope of its base. */
export const dividedSteps: Step = slices([
  step('m_alpha', 'cos(alpha) + sin(alpha) * k_F', { says: 'divisor of the slice', symbol: 'm_alpha', source: bishop }),
  force('S', 'Q / m_alpha', { says: 'what its base resists', symbol: 'S_n' }, bishop),
])
