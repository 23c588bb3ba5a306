import type { CaseInput, PublishedCase } from '../module.ts'

const store: Readonly<Record<string, CaseInput>> = {
  fuel: 'diesel',
  daily_running: '24 hr',
  days: '1 day',
  reserve: '0',
  tank: '100 gal',
  tank_share: '0.9',
  turnover: '90 day',
  excess_air: '1',
  place: 'in the open',
}
const chart = 'Trade chart of approximate diesel use: '

/** The chart of diesel sets, and fuels compared by their heat. */
export const fuelStoreCases: readonly PublishedCase[] = [
  {
    id: 'FU3',
    source: `${chart}100 kW at full load 7.4 US gal an hour; the metric chart prints 28.0 L`,
    status: 'looked up',
    says: 'a large set at full load',
    inputs: { ...store, basis: 'chart', rated_power: '100 kW', load: '100 kW' },
    answers: { q_f: '7.4 gal/hr' },
    tolerance: { relative: 1e-9 },
  },
  {
    id: 'FU3m',
    source: `${chart}the metric chart, 100 kW at full load 28.0 L an hour`,
    status: 'looked up',
    says: 'the same in litres',
    inputs: { ...store, basis: 'chart', rated_power: '100 kW', load: '100 kW' },
    answers: { q_f: '28.0 L/hr' },
  },
  {
    id: 'FU4',
    source: `${chart}20 kW at half load 0.9 US gal an hour, for 24 h`,
    status: 'computed',
    says: 'a day of a small set',
    inputs: { ...store, basis: 'chart', rated_power: '20 kW', load: '10 kW' },
    answers: { V_run: '81.76 L' },
  },
  {
    id: 'FU8',
    source:
      'US Department of Energy, table of fuel properties: 128 450 Btu a gallon of diesel over 84 250 of propane (both looked up), worked by hand',
    status: 'computed',
    says: 'gallons of propane with the heat of 100 gallons of diesel',
    inputs: { ...store, basis: 'maker', maker_use: '100 gal/day', rated_power: '20 kW', load: '10 kW' },
    answers: { V_f: '100 gal', V_other: '152.5 gal' },
  },
  {
    id: 'FU9',
    source: 'Balance worked by hand: 10 kW at 0.30 on 35.80 MJ/L (looked up) are 36 MJ over 10.74 MJ/L',
    status: 'computed',
    says: 'use by the efficiency',
    inputs: { ...store, basis: 'efficiency', set_efficiency: '0.30', rated_power: '20 kW', load: '10 kW' },
    answers: { q_f: '3.352 L/hr' },
  },
]
