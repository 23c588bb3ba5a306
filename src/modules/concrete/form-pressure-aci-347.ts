import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit } from '../words.ts'
import { aci347Steps, aciMixes } from './form-pressure-aci-347-steps.ts'
import { formPressureCautions, formPressureInputs, formPressureResults } from './form-pressure-parts.ts'
import { drawFormPressure } from './form-pressure-sketch.ts'

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
  version: '1.0.1',
  title: 'Pressure on forms by ACI 347R',
  asks: 'How hard does the fresh concrete press on its form at this rate of rise, and do the forms carry it?',
  inputs: { ...formPressureInputs, mix: choice({ says: 'cement and admixture', words: aciMixes }) },
  steps: aci347Steps,
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
