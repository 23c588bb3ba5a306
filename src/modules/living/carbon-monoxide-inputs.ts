import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, list, quantity, ratio } from '../words.ts'
import { monoxideLimits } from './carbon-monoxide-tables.ts'
import { duration, hourlyFlow, minutes, volumes } from './living-units.ts'

const parts = { SI: 'ppm', US: 'ppm' }

/** What `carbon-monoxide` asks for. */
export const carbonMonoxideInputs = {
  volume: quantity('volume', { says: 'free air of the room', symbol: 'V_a', unit: volumes, above: '0 m^3' }),
  supply: quantity('flow', {
    says: 'fresh air',
    note: 'What comes in while it burns, at the least: with the blower at rest the leakage that was measured',
    symbol: 'Q_s',
    unit: hourlyFlow,
    above: '0 m^3/hr',
  }),
  sources: list('what burns inside or leaks in', {
    least: 1,
    most: 12,
    fields: {
      source: label({ says: 'which', optional: true }),
      gas: quantity('flow', {
        says: 'combustion gas that enters the room, at room conditions',
        note: 'All of it where there is no flue; what leaks where there is one',
        symbol: 'Q_gas',
        unit: { SI: 'm^3/hr', US: 'ft^3/hr' },
        above: '0 m^3/hr',
        most: '5000 m^3/hr',
      }),
      monoxide: ratio({
        says: 'carbon monoxide in it, by volume',
        note: 'As the gas enters, of the maker or measured; a figure for gas free of excess air is too high. A tenth of a percent and less in a clean flame and from diesels, percents from petrol engines',
        symbol: 'chi_k',
        unit: parts,
        above: '0',
        most: '15 percent',
      }),
    },
  }),
  burning: quantity('time', {
    says: 'time for which it burns or leaks',
    symbol: 't_burn',
    unit: duration,
    above: '0 hr',
    most: '400 hr',
  }),
  outdoor: ratio({
    says: 'carbon monoxide in the air that comes in',
    symbol: 'chi_out',
    unit: parts,
    least: '0 ppm',
    most: '30 ppm',
    default: '0 ppm',
    source: cite('practice', 'open country; not beside an engine'),
  }),
  exposure: choice({
    says: 'limit for those who breathe it',
    note: 'Each is a mean over its time. The end of the burning, when there is most, is held against it',
    words: monoxideLimits,
  }),
  leave_level: ratio({
    says: 'carbon monoxide at which all must be out',
    symbol: 'chi_e',
    unit: parts,
    above: '100 ppm',
    most: '1200 ppm',
    default: '200 ppm',
    source: cite('niosh-co', 'ceiling'),
  }),
  leaving: quantity('time', {
    says: 'time to get all out, or the fire out and air in, from the alarm',
    note: 'It counts where the room would settle above the level at which all must be out',
    symbol: 't_out',
    unit: minutes,
    above: '0 min',
    most: '240 min',
  }),
} satisfies Readonly<Record<string, Input>>
