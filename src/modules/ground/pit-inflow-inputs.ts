import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, quantity, ratio } from '../words.ts'
import { dryMargin, waterWeight } from './ground-inputs.ts'
import { lengthUnit, permeabilityUnit, pumpUnit } from './ground-units.ts'

const depthOf = { unit: lengthUnit, above: '0 m' } as const
const permeability = (says: string, symbol: string): Input =>
  quantity('permeability', {
    says,
    symbol,
    unit: permeabilityUnit,
    above: '0 m/s',
    most: '1 m/s',
    usual: ['1e-7 m/s', '1e-2 m/s'],
  })

/** What the flow to a pumped pit is reckoned from. */
export const pitInflowInputs = {
  aquifer: choice({
    says: 'how the water stands in the ground',
    words: {
      unconfined: 'a water table in the soil that is dug (Dupuit and Thiem)',
      confined: 'under pressure below a tight layer, and kept there when lowered (Thiem)',
    },
  }),
  k: permeability('permeability of the aquifer, best estimate', 'k'),
  k_high: permeability('the highest credible permeability: the pumps are sized for it', 'k_max'),
  ring_length: length({
    says: 'length of the ring of wells or of the drained pit',
    symbol: 'a',
    ...depthOf,
  }),
  ring_width: length({ says: 'its width', symbol: 'b_r', ...depthOf }),
  equivalent: choice({
    says: 'circle that stands for the ring',
    words: {
      'equal area': 'the same area: a compact pit',
      'equal perimeter': 'the same perimeter: a larger circle and a little more flow',
    },
  }),
  depth: length({ says: 'depth of formation', symbol: 'd', ...depthOf, usual: ['1.5 m', '12 m'] }),
  margin: dryMargin,
  water_depth: length({
    says: 'depth of the groundwater before pumping, its highest while digging',
    symbol: 'z_w',
    unit: lengthUnit,
    usual: ['0 m', '10 m'],
  }),
  aquifer_base: length({ says: 'depth of the tight ground under the aquifer', symbol: 'z_a', ...depthOf }),
  aquifer_top: length({
    says: 'depth of the tight layer over a confined aquifer, its underside',
    symbol: 'z_c',
    ...depthOf,
    optional: true,
  }),
  reach: length({
    says: 'distance to the water that is not lowered, from the centre',
    note: 'By a pumping test, or a river or the sea nearby; left out, it is estimated by the formula of Sichardt',
    symbol: 'R_g',
    ...depthOf,
    optional: true,
  }),
  storage_factor: ratio({
    says: 'flow of the first days against the steady flow',
    note: 'Until the ground round the pit has given up its water',
    symbol: 'f_0',
    least: '1',
    most: '3',
    default: '1.3',
    source: cite('tm-5-818-5', '4-1'),
  }),
  outlet_head: length({
    says: 'height of the outlet above the ground, with the loss of the pipes',
    symbol: 'h_outlet',
    unit: lengthUnit,
    least: '0 m',
    usual: ['0.5 m', '20 m'],
  }),
  efficiency: ratio({
    says: 'efficiency of pump and motor together',
    symbol: 'eta',
    above: '0',
    most: '1',
    usual: ['0.3', '0.8'],
  }),
  pump_capacity: quantity('flow', {
    says: 'what the pumps bring at that head, the largest one standing by',
    note: 'Checked where given',
    symbol: 'Q_c',
    unit: pumpUnit,
    above: '0 L/s',
    optional: true,
  }),
  gamma_w: waterWeight,
} satisfies Readonly<Record<string, Input>>
