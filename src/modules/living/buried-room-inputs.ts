import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, length, list, quantity } from '../words.ts'
import { days, hourlyFlow, lengths, people, thermometer, watts } from './living-units.ts'
import { activities } from './metabolic-tables.ts'
import { wallFilm } from './wall-film.ts'

const conduction = { SI: 'W/(m*K)', US: 'Btu/(hr*ft*delta_degF)' }
const size = (says: string, symbol: string) => length({ says, symbol, unit: lengths, least: '0.2 m', most: '100 m' })
const conducts = (says: string, symbol: string, more: { note?: string; default?: string }) =>
  quantity('conductivity', {
    says,
    symbol,
    unit: conduction,
    least: '0.1 W/(m*K)',
    most: '5 W/(m*K)',
    source: cite('iso-10456'),
    ...more,
  })

/** A temperature on a scale. */
export const warmth = (says: string, symbol: string, range: { least: string; most: string; note?: string }) =>
  quantity('temperature', { says, symbol, unit: thermometer, ...range })
/** A day of the year. */
export const dayOfYear = (says: string, symbol: string) =>
  quantity('time', { says, symbol, unit: days, least: '0 day', most: '366 day' })

/** People and devices that warm a room, and its fresh air. */
export const warmingInputs = {
  groups: list('people by what they do', {
    least: 1,
    most: 12,
    fields: {
      group: label({ says: 'who they are', optional: true }),
      count: quantity('persons', {
        says: 'how many',
        symbol: 'N_p',
        unit: people,
        least: '1 person',
        most: '5000 person',
      }),
      activity: choice({ says: 'what they do', words: activities }),
    },
  }),
  equipment: quantity('power', {
    says: 'heat of lamps, blower and equipment',
    symbol: 'P_q',
    unit: watts,
    least: '0 W',
    most: '100 kW',
  }),
  supply: quantity('flow', { says: 'fresh air', symbol: 'Q_s', unit: hourlyFlow, above: '0 m^3/hr' }),
} satisfies Readonly<Record<string, Input>>

/** The box that the room is, outside, and what it and the soil conduct. */
export const buriedBoxInputs = {
  width: size('width of the box', 'b_w'),
  height: size('height of the box', 'h_b'),
  box_length: size('length of the box', 'l_b'),
  cover: size('soil over its top', 'z_c'),
  wall: length({
    says: 'thickness of walls, roof and floor',
    symbol: 'd_w',
    unit: lengths,
    least: '0.05 m',
    most: '5 m',
  }),
  concrete_conductivity: conducts('conductivity of the concrete', 'lambda_c', { default: '2.0 W/(m*K)' }),
  soil_conductivity: conducts('conductivity of the soil', 'lambda_g', {
    note: '1.5 clay and silt, 2.0 sand and gravel; dry soil only 0.3 to 0.8',
  }),
  film: wallFilm,
} satisfies Readonly<Record<string, Input>>

/** The ground through the year. */
export const groundYearInputs = {
  ground_mean: warmth('mean temperature of the ground over the year', 'theta_m', {
    least: '-10 degC',
    most: '35 degC',
  }),
  ground_swing: quantity('temperature', {
    says: 'half the yearly range at its surface',
    symbol: 'A_g',
    unit: { SI: 'K', US: 'delta_degF' },
    least: '0 K',
    most: '30 K',
  }),
} satisfies Readonly<Record<string, Input>>

/** How fast warmth spreads in the soil. */
export const soilDiffusivity = quantity('flow_per_length', {
  says: 'thermal diffusivity of the soil',
  note: 'Per day: `0.05 m^2/day` for moist soil',
  symbol: 'a_g',
  unit: { SI: 'm^2/day', US: 'ft^2/day' },
  least: '0.01 m^2/day',
  most: '0.2 m^2/day',
})
