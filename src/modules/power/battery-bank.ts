import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { batteryBankCases } from './battery-bank-cases.ts'
import { batteryBankInputs } from './battery-bank-inputs.ts'
import { batteryBankSecond } from './battery-bank-second.ts'
import { drawBatteryBank } from './battery-bank-sketch.ts'
import { batteryBankSteps } from './battery-bank-steps.ts'

const lithium = { choice: 'chemistry', is: ['lithium iron phosphate'] }

/** Ampere-hours of a bank for days without charging, and what the chosen one holds. */
export const batteryBank = defineModule({
  id: 'battery-bank',
  version: '1.0.0',
  title: 'Battery bank for days without charging',
  asks: 'What capacity carries this load through the days without charging, and does the chosen bank have it?',
  inputs: batteryBankInputs,
  steps: batteryBankSteps,
  results: ['C_req', 'C_bank', 'n_req', 't_hold', 'D_end', 'E_bank', 'Q_in', 'E_req', 'k_T'],
  covers: ['storage'],
  drawing: ['strings', 'n_s', 'unit_voltage', 'unit_capacity'],
  limits: [
    {
      holds: { given: 'cold_factor' },
      when: lithium,
      says: 'the factor for cold of a lithium bank is given',
      advice: 'The table of factors is of lead-acid: give `cold_factor` from the maker',
      otherwise: 'refuse',
      on: 'chemistry',
      source: cite('pv-worksheet'),
    },
    limit('abs(voltage / unit_voltage - n_s) <= 0.01', {
      says: 'whole batteries in a string make up the voltage',
      otherwise: 'refuse',
      on: 'unit_voltage',
      source: cite('power-balance'),
    }),
    limit('discharge_most <= 0.8', {
      when: { choice: 'chemistry', is: ['lead-acid'] },
      says: 'lead-acid is discharged to 0.8 at most',
      otherwise: 'warn',
      on: 'discharge_most',
      source: cite('pv-worksheet'),
    }),
    limit('cell_temperature >= 0 degC', {
      when: lithium,
      says: 'lithium cells are charged above freezing',
      advice: 'Warm the cells, or block the charger below 0 °C: charging cold cells ruins them',
      otherwise: 'warn',
      on: 'cell_temperature',
      source: cite('practice'),
    }),
    limit('running_current <= I_rated', {
      says: 'the running current is no more than the rated one',
      advice: 'Use the capacity that the maker states at a shorter time of discharge',
      otherwise: 'warn',
      on: 'running_current',
      source: cite('ieee-1013', 'check of the hour rate'),
    }),
    limit('strings <= 4', {
      says: 'no more than four strings stand side by side',
      advice: 'Take larger cells: strings in parallel share the current badly',
      otherwise: 'warn',
      on: 'strings',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Lead-acid gives off hydrogen while it charges: vent the battery space high, keep hydrogen below 1 % by volume, no spark, and never in the sleeping room.',
    'A fuse stands at the terminal of the bank, and every conductor beyond it is sized for that fuse.',
    'A bank of 12 V welds a spanner: cover the terminals, and insulate the tools.',
    'Acid is kept in a tray that holds all of it. An eye wash is at hand.',
    'The loss of charging sizes the charger, not the bank: it is in the charge to put back, not in the capacity.',
    {
      says: 'A discharged lead-acid cell freezes near -7 °C to -15 °C and bursts; a full one does not.',
      when: { choice: 'chemistry', is: ['lead-acid'] },
    },
    {
      says: 'The worksheet counts nothing for age: a bank is replaced at 0.8 of its capacity, so that the days are no longer held in its last years unless the margin pays for them.',
      when: { choice: 'method', is: ['worksheet'] },
    },
    {
      says: 'The rules of IEEE 1013 are from memory of their order: compare them with the standard. They are for lead-acid on stand-alone photovoltaic systems.',
      when: { choice: 'method', is: ['IEEE 1013'] },
    },
    {
      says: 'The rules of IEEE 485 are from memory: compare them with the standard. They are for stationary standby, discharged seldom, and never for daily cycles; an uneven load is sized there section by section.',
      when: { choice: 'method', is: ['IEEE 485'] },
    },
  ],
  second: batteryBankSecond,
  sketch: drawBatteryBank,
  published: batteryBankCases,
  example: {
    method: 'IEEE 1013',
    chemistry: 'lead-acid',
    daily_charge: '60 Ah',
    running_current: '12 A',
    autonomy: '3 day',
    voltage: '12 V',
    discharge_most: '0.5',
    daily_most: '0.2',
    margin: '1.10',
    cell_temperature: '8 degC',
    unit_capacity: '250 Ah',
    unit_voltage: '6 V',
    strings: '2',
    rated_time: '20 hr',
    charge_efficiency: '0.9',
  },
})
