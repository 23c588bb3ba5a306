import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { choice, length, limit, look, step, when } from '../words.ts'
import {
  depthUnit,
  envelopeSteps,
  formPressureCautions,
  formPressureInputs,
  formPressureResults,
  liquidStep,
  pressureUnit,
} from './form-pressure-parts.ts'
import { drawFormPressure } from './form-pressure-sketch.ts'

const ciria = (at: string) => cite('ciria-108', at)
const status = 'from memory of the report'
const words = (says: string, keys: readonly string[]): Axis => ({ kind: 'words', says, keys })

const mixes = {
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
    row: words('mix', Object.keys(mixes)),
  },
  '0.30 \n 0.45 \n 0.45 \n 0.60 \n 0.60',
)
const greatest = (formula: string, source = ciria('Eq. 1')): Step =>
  step('p_max', formula, { says: 'greatest pressure', unit: pressureUnit, source })

const steps: readonly Step[] = [
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
          symbol: 'K',
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

const pour = { unit_weight: '25 kN/m^3', member: 'wall', placing: 'vibrated' }

/** Pressure of fresh concrete on forms by CIRIA Report 108. */
export const formPressureCiria108 = defineModule({
  id: 'form-pressure-ciria-108',
  version: '1.0.0',
  title: 'Pressure on forms by CIRIA 108',
  asks: 'How hard does the fresh concrete press on its form at this rate of rise, and do the forms carry it?',
  inputs: {
    ...formPressureInputs,
    mix: choice({ says: 'cement and admixture', words: mixes }),
    form_height: length({
      says: 'height of the form',
      note: 'At least that of the pour: a drop from a higher form presses harder',
      symbol: 'H',
      unit: depthUnit,
      above: '0 m',
      most: '15 m',
    }),
  },
  steps,
  results: formPressureResults,
  covers: ['temporary-works'],
  drawing: ['height', 'pour_rate', 'p_max'],
  limits: [
    limit('form_height >= height', {
      says: 'the form is at least as high as the pour',
      otherwise: 'refuse',
      on: 'form_height',
      source: ciria('Eq. 1, key'),
    }),
    limit('temperature >= 5 degC', {
      says: 'the concrete is placed at 5 °C or warmer',
      advice: 'Colder concrete sets so slowly that it is best taken as a liquid',
      otherwise: 'warn',
      on: 'temperature',
      source: ciria('tables of pressures begin at 5 °C'),
    }),
  ],
  cautions: formPressureCautions,
  sketch: drawFormPressure,
  published: [
    {
      id: 'form-6',
      source: 'CIRIA 108, Eq. 1, worked apart',
      status: 'computed',
      says: 'wall, Portland cement, 1 m/h at 10 °C, 3 m high',
      inputs: {
        ...pour,
        height: '3 m',
        form_height: '3 m',
        pour_rate: '1 m/hr',
        temperature: '10 degC',
        mix: 'portland',
      },
      answers: { K_T: '1.917', p_max: '45.3 kPa' },
    },
    {
      id: 'form-7',
      source: 'CIRIA 108, Eq. 1, worked apart',
      status: 'computed',
      says: 'wall, with retarder, 2 m/h at 15 °C, 4 m high',
      inputs: {
        ...pour,
        height: '4 m',
        form_height: '4 m',
        pour_rate: '2 m/hr',
        temperature: '15 degC',
        mix: 'portland with retarder',
      },
      answers: { K_T: '1.3486', p_max: '59.8 kPa' },
    },
    {
      id: 'form-8',
      source: 'Published calculation sheet after CIRIA 108: coefficient of temperature at 32 °C',
      status: 'looked up',
      says: 'printed as 0.56, 0.5625 before it was shortened',
      inputs: {
        ...pour,
        height: '3 m',
        form_height: '3 m',
        pour_rate: '1 m/hr',
        temperature: '32 degC',
        mix: 'portland',
      },
      answers: { K_T: '0.56' },
    },
  ],
  example: {
    ...pour,
    unit_weight: '24 kN/m^3',
    height: '2.6 m',
    pour_rate: '1 m/hr',
    temperature: '12 degC',
    form_capacity: '60 kPa',
    mix: 'blend',
    form_height: '2.8 m',
  },
})
