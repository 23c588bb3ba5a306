import type { Input } from '../module.ts'
import { choice, label, length, list, ratio } from '../words.ts'
import { energyAtBend } from './albedo-table.ts'
import { shieldMaterials, sourceSpectra } from './halving-tables.ts'
import { thin } from './slab-inputs.ts'

export const far = { SI: 'm', US: 'ft' }

/** What a passage is asked. */
export const passageBendsInputs: Readonly<Record<string, Input>> = {
  rule: choice({
    says: 'rule for legs and bends',
    words: {
      'solid angle': 'civil-defence rule: solid angle of each leg, 0.1 for the first bend and 0.5 for each further one',
      albedo: 'wall scatter: albedo and area of each corner over the square of the leg after it',
      'flat factor': 'one tenth for each bend, the legs not counted',
    },
  }),
  mouth: ratio({
    says: 'dose rate at the mouth over that in the open',
    note: '1 where the mouth is open to the field all round; up to 2 where contaminated ground lies level with the first leg and shines along it; more where fallout gathers at the mouth',
    symbol: 'k_m',
    above: '0',
    most: '10',
    usual: ['0.5', '2'],
  }),
  first_width: length({ says: 'width of the first leg', symbol: 'w_0', unit: far, above: '0 m', most: '10 m' }),
  first_height: length({ says: 'height of the first leg', symbol: 'h_0', unit: far, above: '0 m', most: '10 m' }),
  first_length: length({
    says: 'first leg, from the mouth to the centre of the first bend',
    note: '0 m where the passage turns right behind the mouth',
    symbol: 'l_0',
    unit: far,
    least: '0 m',
    most: '100 m',
  }),
  legs: list('legs after the bends, each square to the one before', {
    least: 1,
    most: 8,
    fields: {
      leg: label({ says: 'what the leg is', optional: true }),
      turn: choice({
        says: 'the way it turns, for the sketch: shafts too are drawn flat',
        words: { left: 'to the left of one who goes in', right: 'to the right of one who goes in' },
      }),
      width: length({ says: 'width', symbol: 'w', unit: far, above: '0 m', most: '10 m' }),
      height: length({ says: 'height', symbol: 'h', unit: far, above: '0 m', most: '10 m' }),
      length: length({
        says: 'length from its bend, centre to centre, or to the person',
        symbol: 'l',
        unit: far,
        above: '0 m',
        most: '100 m',
      }),
    },
  }),
  doors: list('layers of all doors in the way; one of no thickness where none', {
    least: 1,
    most: 12,
    fields: {
      door: label({ says: 'what the layer is', optional: true }),
      material: choice({ says: 'material', words: shieldMaterials }),
      thickness: length({ says: 'thickness', symbol: 't', unit: thin, least: '0 mm', most: '2 m' }),
    },
  }),
  spectrum: choice({
    says: 'source spectrum of the halving thicknesses of doors',
    note: 'That of the radiation outside: behind a bend it is softer, so that this is on the safe side',
    words: sourceSpectra,
  }),
  energy: energyAtBend,
  albedo: ratio({
    says: 'dose albedo for each steradian at the first bend, where known',
    symbol: 'alpha_g',
    above: '0',
    most: '0.1',
    optional: true,
  }),
  required_factor: ratio({ says: 'required protection factor of this path', symbol: 'P_req', least: '1' }),
}
