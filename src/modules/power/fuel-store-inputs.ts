import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, quantity, ratio } from '../words.ts'
import { fuels } from './fuel-tables.ts'
import { days, hours } from './power-units.ts'

export const litres = { SI: 'L', US: 'gal' }
export const useUnit = { SI: 'L/hr', US: 'gal/hr' }
export const kilowatts = { SI: 'kW', US: 'kW' }
export const airFlow = { SI: 'm^3/hr', US: 'cfm' }

/** What a store of fuel is asked. */
export const fuelStoreInputs: Readonly<Record<string, Input>> = {
  fuel: choice({ says: 'fuel', words: fuels }),
  basis: choice({
    says: 'where the use of fuel comes from',
    words: {
      maker: "the maker's figure at this load",
      chart: 'the trade chart of diesel sets from 8 to 100 kW: an estimate',
      efficiency: 'the efficiency of the set on the lower heating value',
    },
  }),
  rated_power: quantity('power', {
    says: 'rated power of the set',
    symbol: 'P_g',
    unit: kilowatts,
    above: '0 kW',
    most: '500 kW',
  }),
  load: quantity('power', {
    says: 'mean load while it runs',
    symbol: 'P_run',
    unit: kilowatts,
    above: '0 kW',
    most: '500 kW',
  }),
  daily_running: quantity('time', {
    says: 'time that the engine runs in a day',
    symbol: 't_r',
    unit: hours,
    above: '0 hr',
    most: '24 hr',
  }),
  days: quantity('time', {
    says: 'days to be held',
    symbol: 't_d',
    unit: days,
    above: '0 day',
    most: '400 day',
    usual: ['3 day', '60 day'],
  }),
  reserve: ratio({
    says: 'reserve on top, as a share',
    note: 'Worn engines, cold starts, test runs every month',
    symbol: 'r_f',
    least: '0',
    most: '2',
    usual: ['0.1', '0.5'],
  }),
  maker_use: quantity('flow', {
    says: "the maker's use of fuel at this load",
    note: 'Counts only by the figure of the maker',
    symbol: 'q_m',
    unit: useUnit,
    above: '0 L/hr',
    most: '200 L/hr',
    optional: true,
  }),
  set_efficiency: ratio({
    says: 'electric energy over the lower heating value of the fuel',
    note: '0.15 to 0.25 for small sets on part load, 0.30 to 0.35 for larger ones near full load',
    symbol: 'eta_g',
    above: '0',
    most: '0.45',
    usual: ['0.12', '0.38'],
    optional: true,
  }),
  tank: quantity('volume', { says: 'volume of the tanks, full', symbol: 'V_t', unit: litres, above: '0 L' }),
  tank_share: ratio({
    says: 'share of them that can be filled and drawn',
    note: 'Propane is filled to 0.80; diesel leaves room to swell and a sump that is not drawn, 0.85 to 0.95',
    symbol: 'k_t',
    above: '0',
    most: '1',
    usual: ['0.7', '0.95'],
  }),
  turnover: quantity('time', {
    says: 'age that the fuel reaches before it is turned over',
    symbol: 't_o',
    unit: days,
    least: '0 day',
    most: '20 yr',
  }),
  shelf_life: quantity('time', {
    says: 'shelf life of the diesel',
    note: '6 to 12 months untreated; longer with treatment, cool, dry and in a full tank, then with the evidence of the maker. Propane keeps as long as its tank does',
    symbol: 't_k',
    unit: days,
    above: '0 day',
    most: '10 yr',
    default: '180 day',
    when: { choice: 'fuel', is: ['diesel'] },
    source: cite('practice', 'untreated, the lower figure'),
  }),
  excess_air: ratio({
    says: 'air drawn over air that just burns the fuel',
    note: 'Diesel runs lean: 1.5 near full load to 4 and more at low load. Gas engines: 1 to 1.6',
    symbol: 'lambda',
    least: '1',
    most: '10',
    usual: ['1', '5'],
  }),
  place: choice({
    says: 'where engine and fuel stand',
    words: {
      'in the open': 'in the open, or under a roof without walls',
      'room above ground': 'a room of their own above ground, parted gas-tight from the people',
      'buried room': 'a buried room of their own, parted gas-tight from the people',
    },
  }),
  air_supply: quantity('flow', {
    says: 'air that the room of the engine is given',
    symbol: 'Q_air',
    unit: airFlow,
    above: '0 m^3/hr',
    optional: true,
  }),
}
