import type { QuantityInput } from '../module.ts'
import { cite } from '../sources.ts'
import { quantity } from '../words.ts'

/** Heat transfer between the air of a room and its walls. */
export const wallFilm: QuantityInput = quantity('heat_transfer', {
  says: 'heat transfer from the air to the wall',
  symbol: 'h_i',
  unit: { SI: 'W/(m^2*K)', US: 'Btu/(hr*ft^2*delta_degF)' },
  least: '2 W/(m^2*K)',
  most: '25 W/(m^2*K)',
  default: '8 W/(m^2*K)',
  source: cite('practice'),
})
