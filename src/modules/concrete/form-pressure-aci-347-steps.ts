import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { look, step, when } from '../words.ts'
import { envelopeSteps, liquidStep, pressureUnit } from './form-pressure-parts.ts'

const aci = (at: string) => cite('aci-347', at)
/** Cements and admixtures as the guide groups them. */
export const aciMixes = {
  portland: 'types I, II and III without retarder',
  'portland with retarder': 'the same with a retarding admixture, a retarding plasticiser included',
  blend: 'other types, or blends with less than 70 % slag or 40 % ash, without retarder',
  'blend with retarder': 'those with retarder',
  'rich blend': 'blends with 70 % slag or 40 % ash and more',
} as const

const chemistry = table(
  {
    title: 'Chemistry coefficient',
    source: aci('Table 4.2.2.1a(b)'),
    status: 'from memory of the guide',
    unit: '',
    row: { kind: 'words', says: 'cement and admixture', keys: Object.keys(aciMixes) },
  },
  '1.0 \n 1.2 \n 1.2 \n 1.4 \n 1.4',
)

const weight = (formula: string): Step =>
  step('C_w', formula, { says: 'unit weight coefficient', source: aci('Table 4.2.2.1a(a)') })
const formula = (text: string, at: string): Step =>
  step('p_f', text, { says: 'pressure by the formula', unit: pressureUnit, source: aci(at) })

const perDegree = '(temperature / degF)'
const rate = '(pour_rate / (1 ft/hr))'
const slow = formula(`C_w * C_c * (150 + 9000 * ${rate} / ${perDegree}) * (1 psf)`, 'Eq. 4.2.2.1a(1)')
const fast = formula(
  `C_w * C_c * (150 + 43400 / ${perDegree} + 2800 * ${rate} / ${perDegree}) * (1 psf)`,
  'Eq. 4.2.2.1a(2)',
)

const weightSteps: readonly Step[] = [
  when(
    { formula: 'unit_weight < 140 pcf' },
    {
      says: 'the concrete is lighter than 140 pcf (22 kN/m³)',
      yes: [weight('max(0.5 * (1 + unit_weight / (145 pcf)), 0.80)')],
      no: [
        when(
          { formula: 'unit_weight <= 150 pcf' },
          {
            says: 'it is not heavier than 150 pcf (23.6 kN/m³)',
            yes: [weight('1.0')],
            no: [weight('unit_weight / (145 pcf)')],
          },
        ),
      ],
    },
  ),
  look('C_c', chemistry, { row: 'mix', says: 'chemistry coefficient' }),
]

const wallFormula: Step = when(
  { formula: 'pour_rate < 7 ft/hr and height <= 14 ft' },
  {
    says: 'the rise is below 7 ft (2.1 m) in an hour, the pour to 14 ft (4.2 m)',
    yes: [slow],
    no: [
      when(
        { formula: 'pour_rate <= 15 ft/hr' },
        {
          says: 'the rise is at most 15 ft (4.5 m) in an hour',
          yes: [fast],
          no: [formula('p_0', 'beyond 15 ft/h: as a liquid')],
        },
      ),
    ],
  },
)

/** From liquid pressure to the envelope by the wall and column formulas. */
export const aci347Steps: readonly Step[] = [
  liquidStep,
  when(
    { choice: 'placing', is: ['fluid'] },
    {
      yes: [
        step('p_max', 'p_0', {
          says: 'greatest pressure: as of a liquid',
          unit: pressureUnit,
          source: aci('Eq. 4.2.2.1'),
        }),
      ],
      no: [
        ...weightSteps,
        when({ choice: 'member', is: ['column'] }, { yes: [slow], no: [wallFormula] }),
        step('p_least', '600 * C_w * (1 psf)', {
          says: 'least design pressure',
          symbol: 'p_min',
          unit: pressureUnit,
          source: aci('4.2.2.1a'),
        }),
        step('p_max', 'min(max(p_f, p_least), p_0)', {
          says: 'greatest pressure',
          unit: pressureUnit,
          source: aci('4.2.2.1a'),
        }),
      ],
    },
  ),
  ...envelopeSteps,
]
