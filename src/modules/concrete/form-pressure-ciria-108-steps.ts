import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { look, step, when } from '../words.ts'
import { depthUnit, envelopeSteps, liquidStep, pressureUnit } from './form-pressure-parts.ts'

const ciria = (at: string) => cite('ciria-108', at)
const status = 'from memory of the report'
const words = (says: string, keys: readonly string[]): Axis => ({ kind: 'words', says, keys })

/** Cements and admixtures as the report groups them. */
export const ciriaMixes = {
  portland: 'Portland cements without retarder',
  'portland with retarder': 'Portland cements with retarder',
  blend: 'blends with less than 70 % slag or 40 % ash, without retarder',
  'blend with retarder': 'those with retarder',
  'rich blend': 'blends with 70 % slag or 40 % ash and more',
} as const

const sizeFactor = table(
  {
    title: 'Coefficient of size and shape',
    source: ciria('Eq. 1, key'),
    status: 'looked up in a published sheet',
    unit: '',
    row: words('what is cast', ['wall', 'column']),
  },
  '1.0 \n 1.5',
)
const mixFactor = table(
  {
    title: 'Coefficient of the constituents',
    source: ciria('Eq. 1, key'),
    status,
    unit: '',
    row: words('mix', Object.keys(ciriaMixes)),
  },
  '0.30 \n 0.45 \n 0.45 \n 0.60 \n 0.60',
)
const greatest = (formula: string, source = ciria('Eq. 1')): Step =>
  step('p_max', formula, { says: 'greatest pressure', unit: pressureUnit, source })

/** From liquid pressure to the envelope by the formula of the report. */
export const ciria108Steps: readonly Step[] = [
  liquidStep,
  when(
    { choice: 'placing', is: ['fluid'] },
    {
      yes: [greatest('p_0', cite('statics', 'as a liquid'))],
      no: [
        look('C_1', sizeFactor, { row: 'member', says: 'coefficient of size and shape' }),
        look('C_2', mixFactor, { row: 'mix', says: 'coefficient of the constituents' }),
        step('K_T', '(36 / (temperature / degC + 16))^2', {
          says: 'coefficient of temperature',
          source: ciria('Eq. 1, key'),
        }),
        step('h_R', 'C_1 * sqrt(pour_rate / (1 m/hr)) * (1 m)', {
          says: 'depth due to the rate of rise',
          unit: depthUnit,
          source: ciria('Eq. 1'),
        }),
        when(
          { formula: 'h_R <= form_height' },
          {
            says: 'that depth lies within the form',
            yes: [
              step('h_P', 'h_R + C_2 * K_T * sqrt((form_height - h_R) / (1 m)) * (1 m)', {
                says: 'depth of a liquid that presses as hard',
                unit: depthUnit,
                source: ciria('Eq. 1'),
              }),
              greatest('min(unit_weight * h_P, p_0)'),
            ],
            no: [greatest('p_0')],
          },
        ),
      ],
    },
  ),
  ...envelopeSteps,
]
