import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, length, pressure, ratio, unitWeight } from '../words.ts'
import { waterWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'
import { groundInFront } from './retaining-front.ts'

const thickness = { unit: lengthUnit, above: '0 m', usual: ['0.2 m', '1.5 m'] } as const
const required = (says: string, symbol: string, value: string) =>
  ratio({ says, symbol, least: '1', default: value, source: cite('das-foundation', 'usual factor, from memory') })

/** What `retaining-stability` asks for: the wall, the fill behind it, the ground below it. */
export const retainingInputs = {
  stem: length({
    says: 'height of the stem, from the top of the base to the fill behind',
    symbol: 'h_s',
    unit: lengthUnit,
    above: '0 m',
    usual: ['1 m', '7 m'],
  }),
  stem_top: length({ says: 'thickness of the stem at its top', symbol: 't_1', ...thickness }),
  stem_foot: length({
    says: 'thickness of the stem at its foot',
    note: 'It grows towards the toe; the back is upright',
    symbol: 't_2',
    ...thickness,
  }),
  base: length({ says: 'thickness of the base', symbol: 't_b', ...thickness }),
  toe: length({ says: 'base in front of the stem', symbol: 'b_1', unit: lengthUnit, least: '0 m' }),
  heel: length({ says: 'base behind the stem, under the fill', symbol: 'b_2', unit: lengthUnit, above: '0 m' }),
  gamma_c: unitWeight({
    says: 'unit weight of the concrete',
    symbol: 'gamma_c',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['22.5 kN/m^3', '25 kN/m^3'],
  }),
  gamma: unitWeight({
    says: 'unit weight of the fill above the water, moist',
    symbol: 'gamma',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['14 kN/m^3', '22 kN/m^3'],
  }),
  gamma_sat: unitWeight({
    says: 'unit weight of the fill below the water, saturated',
    symbol: 'gamma_sat',
    unit: weightUnit,
    least: '11 kN/m^3',
    usual: ['17 kN/m^3', '23 kN/m^3'],
  }),
  phi: angle({
    says: 'effective angle of friction of the fill; no cohesion is counted',
    symbol: "phi'",
    unit: angleUnit,
    least: '20 deg',
    most: '45 deg',
    usual: ['26 deg', '40 deg'],
  }),
  alpha: angle({
    says: 'slope of the fill, rising from the wall',
    symbol: 'alpha',
    unit: angleUnit,
    least: '0 deg',
    most: '40 deg',
    default: '0 deg',
  }),
  K_given: ratio({
    says: 'coefficient of the earth pressure, where it is not the active one',
    note: 'At rest where the wall is tied to the box and cannot yield: see `earth-pressure`',
    symbol: 'K_given',
    above: '0',
    most: '1',
    optional: true,
  }),
  surcharge: pressure({
    says: 'load on the fill behind the wall',
    note: '0 kPa where there is surely none; its own weight on the heel is not counted as a help',
    symbol: 'q',
    unit: pressureUnit,
    least: '0 kPa',
    usual: ['5 kPa', '30 kPa'],
  }),
  water: length({
    says: 'height of the water behind the wall above the underside of the base',
    note: '0 m only where drains will work for the whole life of the wall',
    symbol: 'h_w',
    unit: lengthUnit,
    least: '0 m',
  }),
  delta_b: angle({
    says: 'angle of friction between base and ground',
    note: 'Often two thirds of that of the ground',
    symbol: 'delta_b',
    unit: angleUnit,
    above: '0 deg',
    most: '40 deg',
    usual: ['10 deg', '30 deg'],
  }),
  c_a: pressure({
    says: 'adhesion between base and ground',
    symbol: 'c_a',
    unit: pressureUnit,
    least: '0 kPa',
    default: '0 kPa',
  }),
  ...groundInFront,
  overall: choice({
    says: 'overall failure, of the ground with the wall in it',
    note: 'No part of this block: it turns about a circle under the wall',
    words: {
      'checked apart': 'by a block or a report of its own, for the slope with the wall in it',
      'level firm ground':
        'level behind the wall and before it, and nowhere weaker below: the check of bearing stands for it',
      'not checked': 'nobody has looked at it yet',
    },
  }),
  q_ult: pressure({
    says: 'gross bearing resistance under this load, not factored',
    note: 'For the eccentric and slanting load: see `bearing-meyerhof`',
    symbol: 'q_g',
    unit: pressureUnit,
    above: '0 kPa',
  }),
  F_over: required('required factor against overturning', 'F_or', '2'),
  F_slide: required('required factor against sliding', 'F_sr', '1.5'),
  F_bear: required('required factor on the bearing resistance', 'F_br', '3'),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>
