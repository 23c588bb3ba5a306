import type { Input } from '../module.ts'
import { angle, choice, length, pressure, ratio } from '../words.ts'
import { moistWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, pressureUnit } from './ground-units.ts'
import { slopeCrest, slopeWater } from './slope-circle-site.ts'

const drained = { when: { choice: 'strength', is: ['drained'] } } as const
const undrained = { when: { choice: 'strength', is: ['undrained'] } } as const
const shape = {
  place: choice({
    says: 'what the slope is',
    note: 'It says which line of the coverage ledger is answered',
    words: {
      pit: 'a side of the pit, dug and left open',
      ground: 'sloping ground that stays: a bank, a fill or a hillside',
    },
  }),
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

/** What a slip on a circle is reckoned from. */
export const slopeCircleInputs = {
  ...shape,
  ...ground,
  ...slopeWater,
  ...slopeCrest,
  factor: ratio({
    says: 'required factor of the slope',
    note: 'By the code or the owner. In the trade 1.3 for a cut that stands some weeks and 1.5 for one that stays; by EN 1997-1 1.25 on drained strength and 1.4 on undrained',
    symbol: 'F_req',
    least: '1',
    usual: ['1.2', '2'],
  }),
} satisfies Readonly<Record<string, Input>>
