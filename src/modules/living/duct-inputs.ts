import { choice, label, length, list, ratio } from '../words.ts'
import { bendWords, entranceWords, outletWords } from './duct-fittings.ts'
import { bores, lengths } from './living-units.ts'

/** The ducts on the way of the air, each with its ends, bends and other fittings. */
export const ducts = list('ducts that the air passes one after the other', {
  least: 1,
  most: 12,
  fields: {
    duct: label({ says: 'which duct', optional: true }),
    side: choice({
      says: 'before or behind the room',
      words: { intake: 'it brings air into the room', exhaust: 'it leads air out of the room' },
    }),
    bore: length({
      says: 'bore',
      note: 'A square duct by its side',
      symbol: 'D',
      unit: bores,
      least: '20 mm',
      most: '2 m',
    }),
    run: length({ says: 'length', symbol: 'l_d', unit: lengths, least: '0 m', most: '500 m' }),
    roughness: length({
      says: 'roughness of the wall',
      note: '0.15 mm galvanised steel, 0.046 mm commercial steel, 0 to 0.0015 mm smooth plastic, 0.3 to 3 mm concrete, 1 to 5 mm flexible duct',
      symbol: 'epsilon',
      unit: bores,
      least: '0 mm',
      most: '10 mm',
      usual: ['0 mm', '5 mm'],
    }),
    entrance: choice({ says: 'how it begins', words: entranceWords }),
    bend: choice({ says: 'kind of its bends', words: bendWords }),
    bends: ratio({ says: 'number of its bends', symbol: 'n_b', least: '0', most: '40', usual: ['0', '6'] }),
    outlet: choice({ says: 'how it ends', words: outletWords }),
    other: ratio({
      says: 'other loss coefficients',
      note: 'Of dampers, valves and grilles together. Damper 1.8, gate valve 0.2, tee through 0.2, tee branch 1.0, swing check 2',
      symbol: 'zeta_x',
      least: '0',
      most: '200',
    }),
  },
})
