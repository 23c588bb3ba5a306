import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, ratio } from '../words.ts'
import { groundLoad, saturatedWeight, waterWeight } from './ground-inputs.ts'
import { lengthUnit } from './ground-units.ts'

const atLevel = { when: { choice: 'water', is: ['level'] } } as const
const asRatio = { when: { choice: 'water', is: ['ratio'] } } as const
const loaded = { when: { choice: 'crest', is: ['loaded'] } } as const

/** Water in the slope. */
export const slopeWater = {
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

/** What stands on the crest, and the crack behind it. */
export const slopeCrest = {
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
