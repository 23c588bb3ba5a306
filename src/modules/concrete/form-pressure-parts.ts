import type { Input, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, pressure, quantity, step, unitWeight, when } from '../words.ts'

export const pressureUnit = { SI: 'kPa', US: 'psf' }
export const depthUnit = { SI: 'm', US: 'ft' }

/** What both methods ask of the pour and the form. */
export const formPressureInputs = {
  unit_weight: unitWeight({
    says: 'unit weight of the fresh concrete',
    symbol: 'gamma_fresh',
    unit: { SI: 'kN/m^3', US: 'pcf' },
    least: '15 kN/m^3',
    most: '40 kN/m^3',
    usual: ['23 kN/m^3', '26 kN/m^3'],
  }),
  height: length({
    says: 'height of fresh concrete in one pour',
    symbol: 'h_pour',
    unit: depthUnit,
    above: '0 m',
    most: '15 m',
  }),
  pour_rate: quantity('velocity', {
    says: 'rate of rise of the concrete in the form',
    symbol: 'R',
    unit: { SI: 'm/hr', US: 'ft/hr' },
    above: '0 m/hr',
    usual: ['0.3 m/hr', '10 m/hr'],
  }),
  temperature: quantity('temperature', {
    says: 'temperature of the concrete when placed',
    symbol: 'T',
    unit: { SI: 'degC', US: 'degF' },
    least: '0 degC',
    most: '40 degC',
    usual: ['5 degC', '32 degC'],
  }),
  member: choice({
    says: 'what is cast',
    words: { wall: 'a wall, or a base with a side longer than 2 m', column: 'a column, no side longer than 2 m' },
  }),
  placing: choice({
    says: 'how it is placed',
    words: {
      vibrated: 'slump to 175 mm, placed from above in lifts, internal vibration no deeper than 1.2 m',
      fluid: 'all else: more slump, self-compacting, vibrated from outside, pumped in from below',
    },
  }),
  form_capacity: pressure({
    says: 'pressure that forms and ties are made for',
    symbol: 'p_form',
    unit: pressureUnit,
    above: '0 kPa',
    optional: true,
  }),
} satisfies Readonly<Record<string, Input>>

/** Pressure of the fresh concrete as a liquid over the whole height. */
export const liquidStep: Step = step('p_0', 'unit_weight * height', {
  says: 'pressure as of a liquid',
  unit: pressureUnit,
  source: cite('statics'),
})

/** From `p_max`: where the liquid part ends, the push on the form, and the form against it. */
export const envelopeSteps: readonly Step[] = [
  step('z_1', 'p_max / unit_weight', {
    says: 'depth to which it is that of a liquid; below it is level',
    unit: depthUnit,
    source: cite('statics'),
  }),
  step('F_h', 'p_max * (height - z_1 / 2)', {
    says: 'push on the form, per width',
    unit: { SI: 'kN/m', US: 'plf' },
    source: cite('statics'),
  }),
  when(
    { given: 'form_capacity' },
    {
      yes: [
        check('forms', 'p_max <= form_capacity', { says: 'greatest pressure against what the forms are made for' }),
      ],
    },
  ),
]

export const formPressureCautions = [
  'The rate of rise is a rule of the pour: somebody reads it on the form against the clock, and stops the pump.',
  'Cold concrete, retarder and a colder form raise the pressure: take the lowest temperature of the day.',
  'Forms on one side only, against the pit, have no ties through the wall: the whole push goes to the props behind.',
]

export const formPressureResults = ['p_max', 'z_1', 'F_h', 'p_0']
