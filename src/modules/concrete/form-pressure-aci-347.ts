import { defineModule, type PublishedCase, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { choice, limit, look, step, when } from '../words.ts'
import {
  envelopeSteps,
  formPressureCautions,
  formPressureInputs,
  formPressureResults,
  liquidStep,
  pressureUnit,
} from './form-pressure-parts.ts'
import { drawFormPressure } from './form-pressure-sketch.ts'

const aci = (at: string) => cite('aci-347', at)
const mixes = {
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
    row: { kind: 'words', says: 'cement and admixture', keys: Object.keys(mixes) },
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

const steps: readonly Step[] = [
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

const pour = {
  unit_weight: '150 pcf',
  height: '12 ft',
  member: 'wall',
  placing: 'vibrated',
  mix: 'portland',
}
const inFeet = (
  id: string,
  source: string,
  status: PublishedCase['status'],
  more: Record<string, string>,
  answers: Record<string, string>,
): PublishedCase => ({
  id,
  source,
  status,
  says: `wall, ${more.pour_rate} at ${more.temperature?.replace('degF', '°F')}`,
  inputs: { ...pour, ...more },
  answers,
})
const apart = 'ACI 347R, wall formulas in US units, worked apart'
const metric = (id: string, rise: string, temperature: string, height: string, printed: string): PublishedCase => ({
  id,
  source: 'ACI 347R, wall formulas in SI units, worked apart; the two forms agree within about 1 %',
  status: 'computed',
  says: `wall, ${rise.replace('m/hr', 'm/h')} at ${temperature.replace('degC', '°C')}`,
  inputs: { ...pour, height, pour_rate: rise, temperature },
  answers: { p_max: printed },
  tolerance: { relative: 0.001 },
})

/** Pressure of fresh concrete on forms by ACI 347R. */
export const formPressureAci347 = defineModule({
  id: 'form-pressure-aci-347',
  version: '1.0.0',
  title: 'Pressure on forms by ACI 347R',
  asks: 'How hard does the fresh concrete press on its form at this rate of rise, and do the forms carry it?',
  inputs: { ...formPressureInputs, mix: choice({ says: 'cement and admixture', words: mixes }) },
  steps,
  results: formPressureResults,
  covers: ['temporary-works'],
  drawing: ['height', 'pour_rate', 'p_max'],
  limits: [
    limit('temperature >= 40 degF', {
      says: 'the concrete is placed at 4 °C or warmer',
      advice: 'Colder concrete sets so slowly that it is best taken as a liquid',
      otherwise: 'warn',
      on: 'temperature',
      source: cite('practice'),
    }),
  ],
  cautions: [
    ...formPressureCautions,
    'The formulas are those in US units; the rounded ones in SI units differ by about 1 %.',
  ],
  sketch: drawFormPressure,
  published: [
    inFeet(
      'form-1',
      'ACI 347R, and the table of US Army FM 5-428 after it',
      'memory',
      { pour_rate: '5 ft/hr', temperature: '50 degF' },
      { p_max: '1050 psf' },
    ),
    inFeet(
      'form-2',
      apart,
      'computed',
      { pour_rate: '5 ft/hr', temperature: '60 degF' },
      { p_max: '900 psf', z_1: '6.0 ft' },
    ),
    inFeet(
      'form-3',
      apart,
      'computed',
      { pour_rate: '2 ft/hr', temperature: '70 degF' },
      { p_f: '407 psf', p_max: '600 psf' },
    ),
    metric('form-4', '3 m/hr', '20 degC', '4 m', '57.15 kPa'),
    metric('form-5', '1.5 m/hr', '15 degC', '4 m', '43.10 kPa'),
  ],
  example: {
    unit_weight: '24 kN/m^3',
    height: '2.6 m',
    pour_rate: '1 m/hr',
    temperature: '12 degC',
    member: 'wall',
    placing: 'vibrated',
    form_capacity: '60 kPa',
    mix: 'blend',
  },
})
