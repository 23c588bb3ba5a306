import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { quantity, ratio } from '../words.ts'
import { buriedBoxInputs, groundYearInputs, soilDiffusivity, warmingInputs, warmth } from './buried-room-inputs.ts'
import { days, percent, thermometer, watts } from './living-units.ts'
import { stayInputs } from './stay-inputs.ts'

/** What `heating-load` asks for. */
export const heatingLoadInputs = {
  ...warmingInputs,
  outdoor: warmth('temperature outdoors, of the coldest days', 'theta_e', {
    note: 'The design temperature of the place for heating, as a mean of some days',
    least: '-50 degC',
    most: '20 degC',
  }),
  humidity: ratio({ says: 'relative humidity outdoors then', symbol: 'phi_e', unit: percent, least: '0', most: '1' }),
  least_temperature: quantity('temperature', {
    says: 'least temperature wanted inside',
    symbol: 'theta_min',
    unit: thermometer,
    least: '5 degC',
    most: '24 degC',
    usual: ['12 degC', '21 degC'],
  }),
  days: stayInputs.days,
  warm_up: quantity('time', {
    says: 'time in which the room is to be warm',
    note: 'From going in. Concrete and ground take up most of the heat of the first days: the shorter the more heating',
    symbol: 't_warm',
    unit: days,
    least: '1 day',
    most: '30 day',
  }),
  heater: quantity('power', {
    says: 'heat of the heaters provided',
    note: '0 where there are none',
    symbol: 'P_inst',
    unit: watts,
    least: '0 W',
    most: '100 kW',
  }),
  ...buriedBoxInputs,
  concrete_diffusivity: quantity('flow_per_length', {
    says: 'thermal diffusivity of the concrete',
    symbol: 'a_c',
    unit: { SI: 'm^2/day', US: 'ft^2/day' },
    least: '0.01 m^2/day',
    most: '0.2 m^2/day',
    default: '0.072 m^2/day',
    source: cite('iso-10456', 'concrete of 2400 kg/m³'),
  }),
  ...groundYearInputs,
  diffusivity: soilDiffusivity,
} satisfies Readonly<Record<string, Input>>
