import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, length, pressure, ratio } from '../words.ts'
import { groundLoad, moistWeight, saturatedWeight, waterWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, pressureUnit } from './ground-units.ts'

const drained = { when: { choice: 'strength', is: ['drained'] } } as const
const undrained = { when: { choice: 'strength', is: ['undrained'] } } as const
const atLevel = { when: { choice: 'water', is: ['level'] } } as const
const asRatio = { when: { choice: 'water', is: ['ratio'] } } as const
const loaded = { when: { choice: 'crest', is: ['loaded'] } } as const

const shape = {
  slope_height: length({
    says: 'height of the slope, foot to crest',
    note: 'With what may be dug too deep at the foot',
    symbol: 'H_s',
    unit: lengthUnit,
    above: '0 m',
    usual: ['1 m', '20 m'],
  }),
  slope: angle({
    says: 'slope of the ground',
    symbol: 'beta',
    unit: angleUnit,
    least: '5 deg',
    most: '85 deg',
    usual: ['10 deg', '65 deg'],
  }),
  hard_depth: length({
    says: 'depth of hard ground below the foot',
    note: 'No circle goes deeper. Rock, or ground that is surely stronger; where it is not known, three times the height',
    symbol: 'd_h',
    unit: lengthUnit,
    least: '0 m',
    usual: ['0 m', '60 m'],
  }),
} satisfies Readonly<Record<string, Input>>

const ground = {
  strength: choice({
    says: 'strength of the ground that is counted on',
    note: 'Clay wants both: undrained for the weeks after it was dug, drained for the years after',
    words: {
      drained: 'effective stress, with friction and cohesion',
      undrained: 'total stress, with the undrained shear strength of clay',
    },
  }),
  phi: angle({
    says: 'effective angle of friction',
    symbol: "phi'",
    unit: angleUnit,
    least: '5 deg',
    most: '45 deg',
    usual: ['15 deg', '40 deg'],
    ...drained,
  }),
  c: pressure({
    says: 'effective cohesion',
    note: 'Without any, the worst slip is a skin along the face: that is `infinite-slope`',
    symbol: "c'",
    unit: pressureUnit,
    above: '0 kPa',
    usual: ['0.5 kPa', '20 kPa'],
    ...drained,
  }),
  c_u: pressure({
    says: 'undrained shear strength',
    note: 'The mean along the arc, down to the hard ground; fissures and softening counted',
    symbol: 'c_u',
    unit: pressureUnit,
    above: '0 kPa',
    usual: ['10 kPa', '200 kPa'],
    ...undrained,
  }),
  gamma: moistWeight,
} satisfies Readonly<Record<string, Input>>

const water = {
  water: choice({
    says: 'water in the ground that can slip, at its worst',
    words: {
      none: 'surely none above the hard ground, after long rain either',
      level: 'stands at a level behind the slope, and at the face where that is lower',
      ratio: 'pore pressure as a part of the weight above it',
    },
  }),
  water_depth: length({
    says: 'depth of the groundwater below the crest, at its highest',
    symbol: 'z_w',
    unit: lengthUnit,
    least: '0 m',
    ...atLevel,
  }),
  gamma_sat: { ...saturatedWeight, ...atLevel },
  r_u: ratio({
    says: 'pore pressure over the weight above it',
    symbol: 'r_u',
    least: '0',
    most: '0.7',
    usual: ['0', '0.5'],
    ...asRatio,
  }),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>

const crest = {
  crest: choice({
    says: 'the crest',
    words: {
      bare: 'no plant, stacks or spoil, and none can come',
      loaded: 'plant, stacks or spoil stand on it, or may',
    },
  }),
  surcharge: { ...groundLoad('uniform load on the crest'), ...loaded },
  set_back: length({
    says: 'how far from the edge the load is kept',
    symbol: 'e_q',
    unit: lengthUnit,
    least: '0 m',
    default: '0 m',
    source: cite('practice', 'a load that nothing holds back'),
    ...loaded,
  }),
  crack: choice({
    says: 'crack behind the crest',
    note: 'Ground with cohesion cracks where it would be pulled; after rain the crack is full',
    words: {
      none: 'none: the ground hangs together to the top',
      dry: 'a crack in which no water can stand',
      full: 'a crack full of water',
    },
  }),
  crack_depth: length({
    says: 'depth of the crack, where it is known',
    note: 'Left out, the depth to which the ground would be pulled, but no more than half the height',
    symbol: 'd_cr',
    unit: lengthUnit,
    above: '0 m',
    optional: true,
    when: { choice: 'crack', is: ['dry', 'full'] },
  }),
} satisfies Readonly<Record<string, Input>>

/** What a slip on a circle is reckoned from. */
export const slopeCircleInputs = {
  ...shape,
  ...ground,
  ...water,
  ...crest,
  factor: ratio({
    says: 'required factor of the slope',
    note: 'By the code or the owner. In the trade 1.3 for a cut that stands some weeks and 1.5 for one that stays; by EN 1997-1 1.25 on drained strength and 1.4 on undrained',
    symbol: 'F_req',
    least: '1',
    usual: ['1.2', '2'],
  }),
} satisfies Readonly<Record<string, Input>>
