import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { checkMost, mostSpacing } from './bar-choice-parts.ts'
import { steelPerWidth, strength } from './bar-steps.ts'
import { isWall } from './wall-bars.ts'

const en = (at: string) => cite('en-1992-1-1', at)
const leastAtFace = (formula: string, at: string): Step =>
  step('A_min', formula, { says: 'least steel at each face', symbol: 'a_min', unit: steelPerWidth, source: en(at) })

/** Least steel `A_min`, per width and face. */
export const leastEn1992: readonly Step[] = [
  when(
    { choice: 'member', is: ['wall, vertical'] },
    {
      yes: [leastAtFace('0.002 * thickness / 2', '9.6.2(1), (2)')],
      no: [
        when(
          { choice: 'member', is: ['wall, horizontal'] },
          {
            yes: [leastAtFace('0.001 * thickness / 2', '9.6.3(1)')],
            no: [
              step('f_ctm', '0.30 * (f_ck / (1 MPa))^(2 / 3) * (1 MPa)', {
                says: 'mean tensile strength of the concrete',
                unit: strength,
                source: en('Table 3.1'),
              }),
              step('rho_min', 'max(0.26 * f_ctm / f_yk, 0.0013)', {
                says: 'least steel over the effective section',
                unit: { SI: 'percent', US: 'percent' },
                source: en('Eq. 9.1N'),
              }),
              step('A_min', 'rho_min * d', {
                says: 'least steel',
                symbol: 'a_min',
                unit: steelPerWidth,
                source: en('9.3.1.1(1)'),
              }),
            ],
          },
        ),
      ],
    },
  ),
]

const spacingFor = (member: string, formula: string, at: string, no: readonly Step[]): Step =>
  when({ choice: 'member', is: [member] }, { yes: [mostSpacing(formula, en(at))], no })

/** Largest spacing `s_most`, its check, and the most steel. */
export const mostEn1992: readonly Step[] = [
  spacingFor('slab, main', 'min(3 * thickness, 400 mm)', '9.3.1.1(3)', [
    spacingFor('slab, main, at the largest moment', 'min(2 * thickness, 250 mm)', '9.3.1.1(3)', [
      spacingFor('slab, secondary', 'min(3.5 * thickness, 450 mm)', '9.3.1.1(3)', [
        spacingFor('wall, vertical', 'min(3 * thickness, 400 mm)', '9.6.2(3)', [mostSpacing('400 mm', en('9.6.3(2)'))]),
      ]),
    ]),
  ]),
  checkMost(en('9.3.1.1(3), 9.6.2(3), 9.6.3(2)')),
  when(isWall, {
    yes: [
      check('steel_most', 'A_s <= 0.04 * thickness / 2', {
        says: 'steel at a face against half the most that a wall may have',
        source: en('9.6.2(1)'),
      }),
    ],
    no: [
      check('steel_most', 'A_s <= 0.04 * thickness', {
        says: 'steel against the most that a slab may have',
        source: en('9.2.1.1(3)'),
      }),
    ],
  }),
]
