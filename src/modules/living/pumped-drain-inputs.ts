import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { length, quantity, ratio } from '../words.ts'
import { bores, densities, duration, heads, lengths, viscosities, volumes, waterFlow } from './living-units.ts'

const flow = (says: string, symbol: string) =>
  quantity('flow', { says, symbol, unit: waterFlow, above: '0 m^3/s', most: '1 m^3/s' })
const efficiency = (says: string, symbol: string) =>
  ratio({ says, symbol, above: '0', most: '1', usual: ['0.2', '0.95'] })

/** What `pumped-drain` asks for. */
export const pumpedDrainInputs = {
  inflow: flow('water that runs to the sump at most', 'Q_i'),
  pump_flow: flow('flow of one pump at its working point', 'Q_p'),
  pump_head: length({
    says: 'head of that pump at this flow, from its curve',
    symbol: 'H_p',
    unit: heads,
    above: '0 m',
    most: '500 m',
  }),
  working_volume: quantity('volume', {
    says: 'volume of the sump between the levels that start and stop the pump',
    symbol: 'V_o',
    unit: volumes,
    above: '0 m^3',
  }),
  cycle: quantity('time', {
    says: 'least time from start to start that the motor bears',
    note: '6 to 10 minutes for small pumps: ask the maker',
    symbol: 't_y',
    unit: { SI: 'min', US: 'min' },
    above: '0 s',
    most: '4 hr',
  }),
  spare_volume: quantity('volume', {
    says: 'volume of the sump above the start level, up to the floor',
    symbol: 'V_s',
    unit: volumes,
    least: '0 m^3',
  }),
  outage: quantity('time', {
    says: 'time in which a pump that has failed is replaced or worked by hand',
    symbol: 't_r',
    unit: duration,
    least: '0 s',
    most: '72 hr',
  }),
  static_head: length({
    says: 'lift from the stop level to the outlet of the rising main',
    symbol: 'H_0',
    unit: heads,
    least: '0 m',
    most: '300 m',
  }),
  run: length({ says: 'length of the rising main', symbol: 'l_d', unit: lengths, least: '0 m', most: '5 km' }),
  bore: length({ says: 'bore of the rising main', symbol: 'D', unit: bores, least: '15 mm', most: '1 m' }),
  roughness: length({
    says: 'roughness of its wall',
    note: '0 to 0.0015 mm smooth plastic, 0.046 mm commercial steel, 0.15 mm galvanised steel, 0.26 mm cast iron',
    symbol: 'epsilon',
    unit: bores,
    least: '0 mm',
    most: '5 mm',
  }),
  fittings: ratio({
    says: 'loss coefficients of its valves, bends and outlet together',
    note: 'Swing check 2, gate valve 0.2, smooth bend 0.3, threaded elbow 0.9, outlet 1.0',
    symbol: 'zeta',
    least: '0',
    most: '200',
  }),
  hazen: ratio({
    says: 'Hazen-Williams coefficient of the pipe, for the second method',
    note: '150 plastic, 120 to 140 new steel, 80 to 100 old cast iron',
    symbol: 'C_h',
    least: '60',
    most: '160',
  }),
  pump_efficiency: efficiency('efficiency of the pump', 'eta_p'),
  motor_efficiency: efficiency('efficiency of its motor', 'eta_m'),
  density: quantity('density', {
    says: 'density of the water',
    symbol: 'rho',
    unit: densities,
    least: '880 kg/m^3',
    most: '1100 kg/m^3',
    default: '999 kg/m^3',
    source: cite('iapws', '15 °C'),
  }),
  viscosity: quantity('flow_per_length', {
    says: 'its kinematic viscosity',
    symbol: 'nu',
    unit: viscosities,
    least: '2e-7 m^2/s',
    most: '2e-5 m^2/s',
    default: '1.139e-6 m^2/s',
    source: cite('iapws', '15 °C'),
  }),
} satisfies Readonly<Record<string, Input>>
