import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { pressure, quantity, ratio } from '../words.ts'
import { ducts } from './duct-inputs.ts'
import { airPressure, densities, flowRate, viscosities } from './living-units.ts'

const efficiency = (says: string, symbol: string, usual: readonly [string, string]) =>
  ratio({ says, symbol, above: '0', most: '1', usual })

/** What `duct-loss` asks for. */
export const ductLossInputs = {
  ducts,
  flow: quantity('flow', {
    says: 'air through all of them, as it is at the blower',
    symbol: 'Q_s',
    unit: flowRate,
    above: '0 m^3/s',
  }),
  filter_loss: pressure({
    says: 'loss of all filters when they are due for change',
    note: 'Dusty, not clean: particle filters are changed at about twice their clean loss',
    symbol: 'Delta_p_r',
    unit: airPressure,
    least: '0 Pa',
    most: '5 kPa',
  }),
  filter_flow: quantity('flow', {
    says: 'flow at which that loss is stated',
    symbol: 'Q_r',
    unit: flowRate,
    above: '0 m^3/s',
  }),
  filter_exponent: ratio({
    says: 'power of the flow with which the filter loss grows',
    note: '1 for fibrous and gas filters, about 1.5 for coarse prefilters',
    symbol: 'n_f',
    least: '1',
    most: '2',
    default: '1',
    source: cite('practice'),
  }),
  valve: pressure({
    says: 'pressure that the exhaust valve holds across itself',
    note: '0 where there is none',
    symbol: 'Delta_p_x',
    unit: airPressure,
    least: '0 Pa',
    most: '1 kPa',
  }),
  overpressure: pressure({
    says: 'least overpressure wanted in the room',
    note: '60 to 250 Pa in Swiss shelters; 0 where none is wanted',
    symbol: 'p_min',
    unit: airPressure,
    least: '0 Pa',
    most: '1 kPa',
  }),
  blower_pressure: pressure({
    says: 'pressure of the blower at this flow, from its curve',
    note: 'The lower of motor and hand drive; left out, nothing says that the blower can do it',
    symbol: 'p_b',
    unit: airPressure,
    above: '0 Pa',
    optional: true,
  }),
  blower_efficiency: efficiency('efficiency of the blower', 'eta_b', ['0.2', '0.8']),
  motor_efficiency: efficiency('efficiency of motor and drive', 'eta_m', ['0.4', '0.95']),
  voltage: quantity('voltage', {
    says: 'voltage of the battery, the least at which the motor runs',
    symbol: 'U_b',
    unit: { SI: 'V', US: 'V' },
    above: '0 V',
    most: '400 V',
  }),
  crank_efficiency: efficiency('efficiency of crank and gear', 'eta_c', ['0.6', '0.95']),
  crankers: quantity('persons', {
    says: 'people who crank at once',
    symbol: 'N_c',
    unit: { SI: 'person', US: 'person' },
    least: '1 person',
    most: '4 person',
  }),
  crank_power: quantity('power_per_person', {
    says: 'power that one person keeps up in turns',
    note: '30 W to 50 W by the arms in turns; 75 W over a shift is a fit labourer with good gear',
    symbol: 'P_c',
    unit: { SI: 'W/person', US: 'W/person' },
    above: '0 W/person',
    most: '150 W/person',
    usual: ['20 W/person', '75 W/person'],
    default: '50 W/person',
    source: cite('practice'),
  }),
  density: quantity('density', {
    says: 'density of the air',
    note: '1.2 at 20 °C and sea level, more in the cold, less at height',
    symbol: 'rho',
    unit: densities,
    least: '0.6 kg/m^3',
    most: '1.6 kg/m^3',
    default: '1.204 kg/m^3',
    source: cite('cengel-fluid', 'air at 20 °C, from memory'),
  }),
  viscosity: quantity('flow_per_length', {
    says: 'kinematic viscosity of the air',
    symbol: 'nu',
    unit: viscosities,
    least: '1e-5 m^2/s',
    most: '3e-5 m^2/s',
    default: '1.51e-5 m^2/s',
    source: cite('cengel-fluid', 'air at 20 °C, from memory'),
  }),
} satisfies Readonly<Record<string, Input>>
