import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, label, length, list, pressure, quantity, ratio, unitWeight } from '../words.ts'
import { groundLoad } from './ground-inputs.ts'
import { angleUnit, forceUnit, lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'

const depthOf = { unit: lengthUnit, above: '0 m' } as const

/** What struts, walers and wall of a braced pit are reckoned from. */
export const bracedPitInputs = {
  ground: choice({
    says: 'ground beside the pit',
    words: {
      sand: 'sand, drained to below formation',
      'soft to medium clay': 'saturated clay with a stability number above 4',
      'stiff clay': 'stiff or fissured clay with a stability number up to 4',
    },
  }),
  depth: length({ says: 'depth of formation', symbol: 'd', ...depthOf, usual: ['3 m', '15 m'] }),
  gamma: unitWeight({
    says: 'unit weight of the ground beside the pit, a high mean value',
    symbol: 'gamma',
    unit: weightUnit,
    above: '0 kN/m^3',
    usual: ['15 kN/m^3', '22 kN/m^3'],
  }),
  phi: angle({
    says: 'effective angle of friction of the sand, a low value',
    symbol: "phi'",
    unit: angleUnit,
    least: '20 deg',
    most: '45 deg',
    optional: true,
  }),
  c: pressure({
    says: 'undrained strength of the clay beside the pit, a low mean value',
    symbol: 'c_s',
    unit: pressureUnit,
    above: '0 kPa',
    usual: ['10 kPa', '150 kPa'],
    optional: true,
  }),
  clay_factor: ratio({
    says: 'factor on the strength of soft to medium clay',
    note: '0.4 where deep soft clay lies below formation',
    symbol: 'm',
    least: '0.4',
    most: '1',
    default: '1',
    source: cite('peck-1969', '1.0; 0.4 over deep soft clay'),
    when: { choice: 'ground', is: ['soft to medium clay'] },
  }),
  stiff_share: ratio({
    says: 'part of the overburden that stiff clay presses with',
    symbol: 'k_c',
    least: '0.2',
    most: '0.4',
    default: '0.3',
    source: cite('peck-1969', '0.2 to 0.4'),
    when: { choice: 'ground', is: ['stiff clay'] },
  }),
  surcharge: groundLoad('uniform load on the ground beside the pit'),
  water_depth: length({
    says: 'depth at which the water beside the pit is held',
    symbol: 'z_w',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
  }),
  top_strut: length({ says: 'depth of the top strut', symbol: 'z_high', unit: lengthUnit, least: '0 m' }),
  struts: list('struts below the top one, downwards', {
    least: 1,
    most: 5,
    fields: {
      strut: label({ says: 'name of the strut level', optional: true }),
      z: length({ says: 'its depth', symbol: 'z', ...depthOf }),
    },
  }),
  spacing: length({
    says: 'distance of the struts along the wall',
    symbol: 's_h',
    ...depthOf,
    usual: ['1.5 m', '6 m'],
  }),
  strut_capacity: quantity('force', {
    says: 'what one strut bears in service, buckling included',
    note: 'Checked where given',
    symbol: 'N_R',
    unit: forceUnit,
    above: '0 kN',
    optional: true,
  }),
  pile_spacing: length({
    says: 'distance of the soldier piles',
    note: 'Left out for sheet piles',
    symbol: 's_p',
    ...depthOf,
    usual: ['1 m', '3 m'],
    optional: true,
  }),
  lagging_share: ratio({
    says: 'part of the pressure that the lagging bears, the ground arching',
    symbol: 'k_l',
    least: '0.25',
    most: '1',
    default: '0.5',
    source: cite('practice', 'half, between soldier piles'),
  }),
  lagging_stress: pressure({
    says: 'bending stress that the boards bear in service',
    symbol: 'f_l',
    unit: { SI: 'MPa', US: 'psi' },
    above: '0 MPa',
    usual: ['4 MPa', '20 MPa'],
    optional: true,
  }),
} satisfies Readonly<Record<string, Input>>
