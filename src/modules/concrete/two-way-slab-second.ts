import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'
import { continuous } from './panel-edges.ts'
import { type Direction, directions, plateSteps, stripTotal } from './two-way-slab-plate-steps.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const span = { SI: 'm', US: 'ft' }
const areaLoad = { SI: 'kN/m^2', US: 'psf' }
const johansen = cite('johansen', 'rectangular slabs, uniform load')

/** (sqrt(m + i_1) + sqrt(m + i_2))^2 of one direction, i being the hogging moment at each end. */
const yieldStrength = ({ kind, axis, span: along }: Direction): Step => {
  const says = `strength of the strips along the ${along}, sagging and hogging`
  const line = (formula: string) => step(`S_${axis}`, formula, { says, unit: moment, source: johansen })
  const [m, i] = [`M_${axis}_mid`, `M_${axis}_sup`]
  return when(continuous(kind, [2]), {
    yes: [line(`4 * (${m} + ${i})`)],
    no: [
      when(continuous(kind, [1]), {
        yes: [line(`(sqrt(${m} + ${i}) + sqrt(${m}))^2`)],
        no: [line(`4 * ${m}`)],
      }),
    ],
  })
}

const yieldLines: readonly Step[] = [
  ...directions.map(yieldStrength),
  step('t_s', 'S_x * long_span^2 / (S_y * short_span^2)', {
    says: 'ratio of strengths; from 1 up the ridge runs the long way',
    symbol: 'mu_s',
    source: johansen,
  }),
  when(
    { formula: 't_s >= 1' },
    {
      says: 'the ridge lies along the long span',
      yes: [
        step('e_r', 'long_span / t_s * (sqrt(1 + 3 * t_s) - 1)', {
          says: 'reach of both triangles together along the long span',
          unit: span,
          source: johansen,
        }),
        step('w_c', '6 * 3/4 * S_y / e_r^2', {
          says: 'load at which the middle strips (3/4 of the width) fail',
          unit: areaLoad,
          source: johansen,
        }),
      ],
      no: [
        step('e_r', 'short_span * t_s * (sqrt(1 + 3 / t_s) - 1)', {
          says: 'reach of both triangles together along the short span',
          unit: span,
          source: johansen,
        }),
        step('w_c', '6 * 3/4 * S_x / e_r^2', {
          says: 'load at which the middle strips (3/4 of the width) fail',
          unit: areaLoad,
          source: johansen,
        }),
      ],
    },
  ),
]

/** Yield lines for the four moments as a set, and the elastic plate for what they leave open. */
export const twoWaySlabSecond: Second = {
  title: 'Yield lines, and the elastic plate',
  says: 'The table comes from yield lines and redistributes elastic moments, so two questions are asked apart: do the four moments together carry the load (yield lines over the middle strips), and how far are they from the elastic plate with the true edges?',
  when: {
    condition: { choice: 'corners', is: ['held down'] },
    otherwise: 'corners are free to lift: the closed form of Table 27 stands beside the table in the working',
  },
  steps: [...yieldLines, ...plateSteps, ...directions.map(stripTotal)],
  compare: [
    {
      first: 'load',
      second: 'w_c',
      band: 0.1,
      says: 'yield lines give 0.91 to 1.03 of the load over the whole of Table 26',
    },
    {
      first: 'M_x_strip',
      second: 'M_x_strip_el',
      band: 0.2,
      says: 'redistribution moves moment along a strip, not its sum; the share of the two spans differs',
      when: continuous('long', [1, 2]),
    },
    {
      first: 'M_x_strip',
      second: 'M_x_strip_el',
      band: 0.55,
      says: 'no long edge is continuous: the table gives the short span up to 54 % more, on the safe side',
      when: continuous('long', [0]),
    },
    {
      first: 'V_max',
      second: 'V_el',
      band: 0.5,
      says: 'lines at 45 degrees leave out continuity: an elastic reaction is up to 46 % larger',
    },
  ],
}
