import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, quantity, ratio } from '../words.ts'
import { densities, duration, forces, heads, litres, people, thermometer, thin } from './living-units.ts'

const head = (says: string, symbol: string, most: string) => length({ says, symbol, unit: heads, least: '0 m', most })

/** What `hand-pump` asks for. */
export const handPumpInputs = {
  cylinder: choice({
    says: 'where the cylinder is',
    words: {
      'above the water': 'a suction pump: the cylinder stands above the water',
      'in the water': 'a lift pump: the cylinder hangs below the lowest water',
    },
  }),
  altitude: length({
    says: 'height of the place above the sea',
    symbol: 'z_0',
    unit: heads,
    least: '-400 m',
    most: '5000 m',
  }),
  water_temperature: quantity('temperature', {
    says: 'temperature of the water',
    symbol: 'theta_v',
    unit: thermometer,
    least: '0.1 degC',
    most: '50 degC',
  }),
  suction: head('height of the cylinder above the lowest water in use; 0 in it', 'h_s', '20 m'),
  suction_loss: head('head lost in foot valve and suction pipe', 'h_l', '10 m'),
  margin: length({
    says: 'head kept for leaks and for setting the water in motion',
    note: 'With it 6 to 7 m can be sucked up at the level of the sea, 7.5 m at best',
    symbol: 'h_m',
    unit: heads,
    least: '1 m',
    most: '8 m',
    default: '3.5 m',
    source: cite('practice'),
  }),
  head: length({
    says: 'whole head from the lowest water to the outlet, losses included',
    symbol: 'H',
    unit: heads,
    least: '0.5 m',
    most: '100 m',
  }),
  bore: length({ says: 'bore of the cylinder', symbol: 'D', unit: thin, least: '20 mm', most: '200 mm' }),
  stroke: length({ says: 'stroke of the piston', symbol: 's_p', unit: thin, least: '20 mm', most: '500 mm' }),
  rate: ratio({
    says: 'strokes in a minute',
    symbol: 'n_s',
    above: '0',
    most: '120',
    usual: ['20', '60'],
  }),
  slip: ratio({
    says: 'part of the stroke that is delivered',
    symbol: 'eta_v',
    least: '0.3',
    most: '1',
    usual: ['0.7', '1'],
  }),
  lever: ratio({ says: 'lever ratio: handle over rod', symbol: 'k_l', least: '1', most: '20' }),
  efficiency: ratio({
    says: 'efficiency of handle, rod and seals',
    symbol: 'eta_h',
    above: '0',
    most: '1',
    usual: ['0.5', '1'],
  }),
  rod_weight: quantity('force', {
    says: 'weight of the rods in water',
    symbol: 'G_r',
    unit: forces,
    least: '0 N',
    most: '2 kN',
  }),
  force_limit: quantity('force', {
    says: 'greatest force on the handle that people keep up',
    note: '150 to 250 N by common practice',
    symbol: 'F_lim',
    unit: forces,
    above: '0 N',
    most: '500 N',
  }),
  pumpers: quantity('persons', {
    says: 'people who pump at once',
    symbol: 'N_c',
    unit: people,
    least: '1 person',
    most: '4 person',
  }),
  person_power: quantity('power_per_person', {
    says: 'power that one person keeps up in turns',
    note: '50 W in turns; 75 W over a shift is a fit labourer with good gear',
    symbol: 'P_c',
    unit: { SI: 'W/person', US: 'W/person' },
    above: '0 W/person',
    most: '150 W/person',
    usual: ['20 W/person', '75 W/person'],
    default: '50 W/person',
    source: cite('practice'),
  }),
  daily_water: quantity('volume', {
    says: 'water wanted in a day',
    symbol: 'V_d',
    unit: litres,
    above: '0 L',
    most: '1000 m^3',
  }),
  daily_time: quantity('time', {
    says: 'time in a day in which people pump',
    symbol: 't_d',
    unit: duration,
    above: '0 hr',
    most: '24 hr',
  }),
  density: quantity('density', {
    says: 'density of the water',
    symbol: 'rho',
    unit: densities,
    least: '980 kg/m^3',
    most: '1100 kg/m^3',
    default: '999.65 kg/m^3',
    source: cite('iapws', '10 °C'),
  }),
} satisfies Readonly<Record<string, Input>>
