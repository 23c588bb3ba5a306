import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit } from '../words.ts'
import { ciria108Steps, ciriaMixes } from './form-pressure-ciria-108-steps.ts'
import { depthUnit, formPressureCautions, formPressureInputs, formPressureResults } from './form-pressure-parts.ts'
import { drawFormPressure } from './form-pressure-sketch.ts'

const ciria = (at: string) => cite('ciria-108', at)

const pour = { unit_weight: '25 kN/m^3', member: 'wall', placing: 'vibrated' }

/** Pressure of fresh concrete on forms by CIRIA Report 108. */
export const formPressureCiria108 = defineModule({
  id: 'form-pressure-ciria-108',
  version: '1.0.1',
  title: 'Pressure on forms by CIRIA 108',
  asks: 'How hard does the fresh concrete press on its form at this rate of rise, and do the forms carry it?',
  inputs: {
    ...formPressureInputs,
    mix: choice({ says: 'cement and admixture', words: ciriaMixes }),
    form_height: length({
      says: 'height of the form',
      note: 'At least that of the pour: a drop from a higher form presses harder',
      symbol: 'H',
      unit: depthUnit,
      above: '0 m',
      most: '15 m',
    }),
  },
  steps: ciria108Steps,
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
