import { defineModule, type Limit } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { fuelStoreCases } from './fuel-store-cases.ts'
import { fuelStoreInputs } from './fuel-store-inputs.ts'
import { drawFuelStore } from './fuel-store-sketch.ts'
import { fuelStoreSteps } from './fuel-store-steps.ts'

const propane = { choice: 'fuel', is: ['propane'] }
const end = { otherwise: 'refuse', on: 'basis', source: cite('power-balance') } as const
/** The figure is given where it is the basis, and nowhere else. */
const goWith = (basis: string, input: string, figure: string): readonly Limit[] => [
  {
    holds: { given: input },
    when: { choice: 'basis', is: [basis] },
    says: `${figure} is given where it is the basis`,
    ...end,
  },
  choiceLimit('basis', [basis], { when: { given: input }, says: `${figure} is given nowhere else`, ...end }),
]

/** Fuel of a generator for days of running, and the air it draws. */
export const fuelStore = defineModule({
  id: 'fuel-store',
  version: '1.0.1',
  title: 'Fuel for a generator',
  asks: 'What fuel must be in store for these days, do the tanks hold it, and what air does the engine draw?',
  inputs: fuelStoreInputs,
  covers: ['fuel'],
  drawing: ['tank'],
  steps: fuelStoreSteps,
  results: ['V_f', 'q_f', 't_lasts', 'm_f', 'V_other', 'eta_all', 'Q_a', 'E_g', 'V_use'],
  limits: [
    limit('load <= rated_power', {
      says: 'the load is within the rated power of the set',
      otherwise: 'refuse',
      on: 'load',
      source: cite('power-balance'),
    }),
    choiceLimit('fuel', ['diesel'], {
      when: { choice: 'basis', is: ['chart'] },
      says: 'the chart is used for diesel',
      otherwise: 'refuse',
      on: 'basis',
      source: cite('diesel-chart'),
    }),
    ...goWith('maker', 'maker_use', "the maker's use"),
    ...goWith('efficiency', 'set_efficiency', 'the efficiency'),
    limit('x_l >= 0.3', {
      when: { choice: 'fuel', is: ['diesel'] },
      says: 'the set carries at least 0.3 of its power',
      advice: 'A diesel that idles soots up: take a smaller set, or load it with the charger for fewer hours',
      otherwise: 'warn',
      on: 'load',
      source: cite('practice'),
    }),
    limit('eta_all <= 0.45', {
      says: 'no set makes more than 0.45 of the heat into current',
      advice: 'The use is too small for this load, or of another fuel',
      otherwise: 'refuse',
      on: 'basis',
      source: cite('power-balance'),
    }),
    limit('tank_share <= 0.8', {
      when: propane,
      says: 'tanks of propane are filled to 0.8 at most',
      otherwise: 'refuse',
      on: 'tank_share',
      source: cite('lp-gas', 'from memory'),
    }),
    choiceLimit('place', ['in the open', 'room above ground'], {
      when: propane,
      says: 'propane stands above ground',
      advice: 'It sinks and gathers below: many codes forbid it in basements and pits',
      otherwise: 'warn',
      on: 'place',
      source: cite('lp-gas'),
    }),
  ],
  cautions: [
    'Carbon monoxide kills: no engine in the rooms where people live, ever. Exhaust is gas-tight to the open air, downwind of the intake and far from it, and an alarm hangs where people sleep.',
    'An engine wants far more air for cooling than for burning: size its openings by the heat that the maker states. Its air is not the air of the people.',
    'Engine and batteries are ventilated apart.',
    'An engine is fed by air, tank and starting battery from outside: any of them may fail first.',
    {
      says: 'Diesel: a tray that holds 110 percent of the tank, vent and filling point outside, a valve that closes in a fire, water drained off, biocide against growth. Winter grade where it freezes.',
      when: { choice: 'fuel', is: ['diesel'] },
    },
    {
      says: 'The chart is an estimate, read evenly between its sizes and loads: a load test of the set takes its place.',
      when: { choice: 'basis', is: ['chart'] },
    },
    {
      says: 'Propane sinks and gathers below ground: cylinders and appliances stay out of buried rooms unless the code in force allows them, and then with a detector at floor level.',
      when: propane,
    },
    {
      says: 'A cylinder of propane gives less vapour the colder and emptier it is: the engine may starve before the tank is empty. Check the rate of vapour with the maker.',
      when: propane,
    },
  ],
  sketch: drawFuelStore,
  published: fuelStoreCases,
  example: {
    fuel: 'diesel',
    basis: 'chart',
    rated_power: '8 kW',
    load: '5 kW',
    daily_running: '3 hr',
    days: '14 day',
    reserve: '0.25',
    tank: '150 L',
    tank_share: '0.9',
    turnover: '150 day',
    excess_air: '2',
    place: 'room above ground',
    air_supply: '400 m^3/hr',
  },
})
