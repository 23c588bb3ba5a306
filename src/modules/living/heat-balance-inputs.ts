import type { Input } from '../module.ts'
import { quantity, ratio } from '../words.ts'
import {
  buriedBoxInputs,
  dayOfYear,
  groundYearInputs,
  soilDiffusivity,
  warmingInputs,
  warmth,
} from './buried-room-inputs.ts'
import { percent, thermometer } from './living-units.ts'

/** What `heat-balance` asks for. */
export const heatBalanceInputs = {
  ...warmingInputs,
  outdoor: warmth('temperature outdoors, of the hottest days', 'theta_e', { least: '-40 degC', most: '50 degC' }),
  humidity: ratio({ says: 'relative humidity outdoors then', symbol: 'phi_e', unit: percent, least: '0', most: '1' }),
  people_at: quantity('temperature', {
    says: 'room temperature at which the heat of people is read',
    note: 'Guess it, and set it to where the room settles: cooler people warm the air more and wet it less',
    symbol: 'theta_p',
    unit: thermometer,
    least: '20 degC',
    most: '26 degC',
  }),
  limit_temperature: warmth('temperature not to be exceeded inside', 'theta_lim', {
    least: '20 degC',
    most: '40 degC',
  }),
  ...buriedBoxInputs,
  ...groundYearInputs,
  coldest: dayOfYear('day of the year on which the surface is coldest', 'd_0'),
  date: dayOfYear('day of the year of the stay', 'd_s'),
  diffusivity: soilDiffusivity,
} satisfies Readonly<Record<string, Input>>
