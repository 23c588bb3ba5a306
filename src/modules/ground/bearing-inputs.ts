import type { Input } from '../module.ts'
import { angle, choice, length, pressure, quantity, unitWeight } from '../words.ts'
import { waterWeight } from './ground-inputs.ts'
import { angleUnit, forceUnit, lengthUnit, momentUnit, pressureUnit, weightUnit } from './ground-units.ts'

/** How deep the base stands. */
export const baseDepth = length({
  says: 'depth of the base below the ground beside it',
  note: 'The lowest ground that can ever be there: what is dug away later does not hold',
  symbol: 'D',
  unit: lengthUnit,
  least: '0 m',
  usual: ['0.3 m', '8 m'],
})

/** A rectangular base. */
export const rectangularBase = {
  width: length({
    says: 'width of the base, the shorter side',
    symbol: 'B',
    unit: lengthUnit,
    above: '0 m',
    usual: ['0.4 m', '20 m'],
  }),
  length: length({ says: 'length of the base', symbol: 'L', unit: lengthUnit, above: '0 m' }),
  depth: baseDepth,
} satisfies Readonly<Record<string, Input>>

const moment = (says: string, symbol: string) =>
  quantity('moment', { says, symbol, unit: momentUnit, least: '0 kN*m', default: '0 kN*m' })

/** Moments and horizontal load beside the vertical load. */
export const otherLoads = {
  M_B: moment('moment at the base along its width', 'M_B'),
  M_L: moment('moment at the base along its length', 'M_L'),
  H: quantity('force', {
    says: 'horizontal load on the base',
    note: 'In either direction; taken along the width, which is never less safe',
    symbol: 'H',
    unit: forceUnit,
    above: '0 kN',
    optional: true,
  }),
} satisfies Readonly<Record<string, Input>>

/** Strength, weight and water of the ground. */
export const bearingGround = {
  strength: choice({
    says: 'strength of the ground that is counted on',
    note: 'Clay wants both: undrained for the short term, drained for the long',
    words: {
      drained: 'effective stress, with friction and cohesion',
      undrained: 'total stress, with the undrained shear strength of clay',
    },
  }),
  phi: angle({
    says: 'effective angle of friction',
    note: 'For `drained`',
    symbol: "phi'",
    unit: angleUnit,
    least: '10 deg',
    most: '45 deg',
    usual: ['18 deg', '40 deg'],
    optional: true,
  }),
  c: pressure({
    says: 'effective cohesion',
    symbol: "c'",
    unit: pressureUnit,
    least: '0 kPa',
    usual: ['0 kPa', '20 kPa'],
    default: '0 kPa',
    when: { choice: 'strength', is: ['drained'] },
  }),
  c_u: pressure({
    says: 'undrained shear strength',
    note: 'For `undrained`; the mean to about the width of the base below it',
    symbol: 'c_u',
    unit: pressureUnit,
    above: '0 kPa',
    usual: ['20 kPa', '300 kPa'],
    optional: true,
  }),
  gamma: unitWeight({
    says: 'unit weight of the ground above the water, moist',
    symbol: 'gamma',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['14 kN/m^3', '22 kN/m^3'],
  }),
  gamma_sat: unitWeight({
    says: 'unit weight of the ground below the water, saturated',
    symbol: 'gamma_sat',
    unit: weightUnit,
    least: '11 kN/m^3',
    usual: ['17 kN/m^3', '23 kN/m^3'],
  }),
  water_depth: length({
    says: 'depth of the highest credible groundwater',
    note: 'Floods included; where there is none, the depth to which it is surely absent',
    symbol: 'z_w',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
  }),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>
