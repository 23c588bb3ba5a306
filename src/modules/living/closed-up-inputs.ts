import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { length, quantity, ratio } from '../words.ts'
import { areas, duration, hourlyFlow, percent, thermometer, volumes, watts } from './living-units.ts'
import { wallFilm } from './wall-film.ts'

const share = (says: string, symbol: string, more: Omit<Parameters<typeof ratio>[0], 'says' | 'symbol' | 'unit'>) =>
  ratio({ says, symbol, unit: percent, ...more })

/** What `closed-up-time` asks for. */
export const closedUpInputs = {
  volume: quantity('volume', {
    says: 'free air of the room',
    note: 'Not the gross volume: people take about `0.07 m^3` each, besides bunks and stores',
    symbol: 'V_a',
    unit: volumes,
    above: '0 m^3',
  }),
  generation: quantity('flow', {
    says: 'carbon dioxide that all give off, at room conditions',
    note: 'From `air-supply`, of people at rest; more while they work',
    symbol: 'G',
    unit: hourlyFlow,
    above: '0 m^3/hr',
  }),
  leakage: quantity('flow', {
    says: 'fresh air that still comes in',
    note: '0 for a sealed room: a leak that is not measured is not counted',
    symbol: 'Q_l',
    unit: hourlyFlow,
    least: '0 m^3/hr',
  }),
  wanted: quantity('time', {
    says: 'time for which the room is to be closed up',
    symbol: 't_w',
    unit: duration,
    above: '0 hr',
    most: '240 hr',
  }),
  co2_start: share('carbon dioxide when it is closed', 'c_0', {
    note: 'What the room settles at before, from `air-supply`',
    least: '0',
    most: '3 percent',
  }),
  co2_limit: share('carbon dioxide not to be exceeded', 'c_lim', {
    note: '0.5 % for long, 3 % for 15 minutes and at most; 4 % is an immediate danger',
    above: '0',
    most: '4 percent',
    usual: ['0.5 percent', '3 percent'],
  }),
  co2_outdoor: share('carbon dioxide of the air that comes in', 'c_out', {
    least: '0',
    most: '1 percent',
    default: '0.04 percent',
    source: cite('practice'),
  }),
  oxygen_outdoor: share('oxygen of the air that comes in', 'o_out', {
    note: 'What the room holds when it is closed follows from its carbon dioxide then',
    least: '19.5 percent',
    most: '21 percent',
    default: '20.95 percent',
    source: cite('practice', 'dry outdoor air'),
  }),
  oxygen_limit: share('oxygen not to fall below', 'o_lim', {
    note: '19.5 % by rule; at 17 % and less judgement suffers',
    least: '16 percent',
    most: '20.9 percent',
    usual: ['17 percent', '19.5 percent'],
  }),
  quotient: ratio({
    says: 'carbon dioxide given off for oxygen taken up',
    symbol: 'k_q',
    least: '0.7',
    most: '1',
    default: '0.85',
    source: cite('persily-2017', 'respiratory quotient'),
  }),
  gain: quantity('power', {
    says: 'heat of people, lamps and equipment together',
    note: 'People at rest give about 117 W each, the moist part included: closed up it condenses on the walls',
    symbol: 'P_g',
    unit: watts,
    above: '0 W',
  }),
  area: quantity('area', {
    says: 'inner faces of concrete that take up the heat',
    note: 'Bare walls, floor and roof; what is lined does not count',
    symbol: 'A_w',
    unit: areas,
    above: '0 m^2',
  }),
  start_temperature: quantity('temperature', {
    says: 'temperature of walls and air when it is closed',
    symbol: 'theta_0',
    unit: thermometer,
    least: '-10 degC',
    most: '40 degC',
  }),
  temperature_limit: quantity('temperature', {
    says: 'temperature of the air not to be exceeded',
    note: 'In damp air 29 °C is the usual end of what crowded people bear for days',
    symbol: 'theta_lim',
    unit: thermometer,
    least: '0 degC',
    most: '45 degC',
    usual: ['24 degC', '32 degC'],
  }),
  conductivity: quantity('conductivity', {
    says: 'conductivity of the concrete',
    symbol: 'lambda_c',
    unit: { SI: 'W/(m*K)', US: 'Btu/(hr*ft*delta_degF)' },
    least: '0.1 W/(m*K)',
    most: '4 W/(m*K)',
    default: '2.0 W/(m*K)',
    source: cite('iso-10456', 'concrete of 2400 kg/m³'),
  }),
  diffusivity: quantity('flow_per_length', {
    says: 'its thermal diffusivity',
    note: 'Conductivity over density and specific heat: 2.0 over 2400 and 1000',
    symbol: 'a_c',
    unit: { SI: 'm^2/hr', US: 'ft^2/hr' },
    least: '1e-4 m^2/hr',
    most: '0.02 m^2/hr',
    default: '0.003 m^2/hr',
    source: cite('iso-10456', 'concrete of 2400 kg/m³'),
  }),
  film: wallFilm,
  thickness: length({
    says: 'thickness of the concrete',
    symbol: 'd_w',
    unit: { SI: 'm', US: 'ft' },
    least: '0.05 m',
    most: '5 m',
  }),
} satisfies Readonly<Record<string, Input>>
