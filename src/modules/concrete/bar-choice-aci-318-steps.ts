import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { look, step, when } from '../words.ts'
import { checkMost, mostSpacing } from './bar-choice-parts.ts'
import { steelPerWidth } from './bar-steps.ts'
import { aciCrackSpacing } from './crack-spacing-aci-318.ts'
import { isWall, wallRatio, wallSteel } from './wall-bars.ts'

const source = cite('aci-318', 'Table 11.6.1')
const light = wallSteel(
  source,
  'Least steel of walls, Grade 60 to No. 5, part of the gross section',
  '0.0012 \n 0.0020',
)
const heavy = wallSteel(source, 'Least steel of walls, other bars, part of the gross section', '0.0015 \n 0.0025')

/** Least steel `A_min`, per width and face. */
export const leastAci318: readonly Step[] = [
  when(isWall, {
    yes: [
      when(
        { formula: 'f_y >= 60000 psi and phi <= 0.625 in' },
        {
          says: 'the bars are of Grade 60 or more and no larger than No. 5',
          yes: [look('rho_min', light, wallRatio)],
          no: [look('rho_min', heavy, wallRatio)],
        },
      ),
      step('A_min', 'rho_min * thickness / 2', {
        says: 'least steel at each face',
        symbol: 'a_min',
        unit: steelPerWidth,
        source: cite('aci-318', '11.6.1'),
      }),
    ],
    no: [
      step('A_min', '0.0018 * thickness', {
        says: 'least steel',
        symbol: 'a_min',
        unit: steelPerWidth,
        source: cite('aci-318', '7.6.1.1, 24.4.3.2'),
      }),
    ],
  }),
]

const crackSpacing: readonly Step[] = [
  ...aciCrackSpacing('cover'),
  mostSpacing('min(3 * thickness, 18 in, s_crack)', cite('aci-318', '7.7.2.2, 7.7.2.3')),
]

/** Largest spacing `s_most`, crack control in it, and its check. */
export const mostAci318: readonly Step[] = [
  when(
    { choice: 'member', is: ['slab, main'] },
    {
      yes: crackSpacing,
      no: [
        when(
          { choice: 'member', is: ['slab, secondary'] },
          {
            yes: [mostSpacing('min(5 * thickness, 18 in)', cite('aci-318', '7.7.6.2.1'))],
            no: [mostSpacing('min(3 * thickness, 18 in)', cite('aci-318', '11.7.2.1, 11.7.3.1'))],
          },
        ),
      ],
    },
  ),
  checkMost(cite('aci-318', '7.7.2, 7.7.6.2.1, 11.7.2.1, 11.7.3.1')),
]
