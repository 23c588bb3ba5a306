import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, length, pressure, quantity, ratio } from '../words.ts'
import { groundLoad, moistWeight, saturatedWeight, waterWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, pressureUnit } from './ground-units.ts'

/** What embedment and section of a cantilever sheet wall are reckoned from. */
export const cantileverSheetingInputs = {
  below: choice({
    says: 'ground below formation',
    words: {
      sand: 'the same drained sand as behind the wall',
      clay: 'clay that stays undrained, under sand behind the wall',
    },
  }),
  water: choice({
    says: 'groundwater while the pit is open',
    words: {
      'below the toe': 'drained behind and before the wall to below its toe',
      'level on both sides': 'as high in the pit as behind the wall, or lowered on both sides to formation',
    },
  }),
  depth: length({
    says: 'height that the wall retains, with half a metre or so of over-dig',
    symbol: 'd',
    unit: lengthUnit,
    above: '0 m',
    usual: ['1 m', '6 m'],
  }),
  water_depth: length({
    says: 'depth of the groundwater',
    symbol: 'z_w',
    unit: lengthUnit,
    usual: ['0 m', '30 m'],
  }),
  surcharge: groundLoad('uniform load on the ground behind the wall'),
  gamma: moistWeight,
  gamma_sat: saturatedWeight,
  phi: angle({
    says: 'effective angle of friction of the sand, a low value',
    symbol: "phi'",
    unit: angleUnit,
    least: '20 deg',
    most: '45 deg',
    usual: ['26 deg', '40 deg'],
  }),
  c_below: pressure({
    says: 'undrained strength of the clay below formation, a low mean value',
    note: 'Softened as it may be when the load on it is dug away',
    symbol: 'c_b',
    unit: pressureUnit,
    above: '0 kPa',
    usual: ['20 kPa', '150 kPa'],
    optional: true,
  }),
  passive_factor: ratio({
    says: 'factor that divides passive resistance or strength of the clay',
    note: 'One where the embedment is lengthened instead; 1.5 to 2 where it is not',
    symbol: 'F_p',
    least: '1',
    most: '3',
    default: '1',
    source: cite('das-foundation', 'cantilever sheet piles'),
  }),
  longer: ratio({
    says: 'how much deeper than in balance the wall is driven, a part',
    symbol: 'f_D',
    least: '0',
    most: '1',
    usual: ['0.2', '0.5'],
    default: '0.3',
    source: cite('das-foundation', '20 to 30 per cent'),
  }),
  driven: length({
    says: 'embedment below formation that is planned',
    note: 'Checked where given',
    symbol: 'D_p',
    unit: lengthUnit,
    above: '0 m',
    optional: true,
  }),
  steel_stress: quantity('stress', {
    says: 'bending stress that the sheet piles bear in service',
    symbol: 'sigma_st',
    unit: { SI: 'MPa', US: 'psi' },
    above: '0 MPa',
    usual: ['100 MPa', '260 MPa'],
    optional: true,
  }),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>
