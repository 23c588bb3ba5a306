import type { Input, Limit, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, limit, quantity, ratio, step } from '../words.ts'
import { fuseSteps } from './cable-fuse.ts'
import { amperes, percent, thermometer, volts, watts } from './power-units.ts'

export const lineResistance = { SI: 'ohm/km', US: 'mohm/ft' }
const metres = { SI: 'm', US: 'ft' }

/** What a cable is asked, whatever standard its conductor is of. */
export const cableDropInputs = {
  current: quantity('current', {
    says: 'greatest running current',
    symbol: 'I_b',
    unit: amperes,
    above: '0 A',
    most: '1000 A',
  }),
  run: length({
    says: 'length of the cable, one way',
    note: 'The way back is counted by the module: never enter the loop',
    symbol: 'l',
    unit: metres,
    above: '0 m',
    most: '2000 m',
    usual: ['0.2 m', '100 m'],
  }),
  voltage: quantity('voltage', {
    says: 'voltage at which the drop is judged',
    symbol: 'V_0',
    unit: volts,
    least: '5 V',
    most: '1500 V',
    usual: ['12 V', '48 V'],
  }),
  drop_limit: ratio({
    says: 'greatest drop, as a share of the voltage',
    note: '3 percent for what life hangs on and 10 percent for the rest, as in small craft; 5 percent in all in houses',
    symbol: 'd_lim',
    unit: percent,
    above: '0',
    most: '20 percent',
    usual: ['1 percent', '10 percent'],
  }),
  conductor_temperature: quantity('temperature', {
    says: 'temperature of the loaded conductor',
    symbol: 'theta_cond',
    unit: thermometer,
    least: '-20 degC',
    most: '100 degC',
    usual: ['20 degC', '75 degC'],
  }),
  fuse: quantity('current', {
    says: 'rated current of the fuse at the bank',
    symbol: 'I_n',
    unit: amperes,
    above: '0 A',
  }),
  ampacity: quantity('current', {
    says: 'current that the cable may carry as it is laid',
    note: 'From the wiring rules or the maker, with the factors for bundles and heat in it',
    symbol: 'I_z',
    unit: amperes,
    above: '0 A',
  }),
  charging_current: quantity('current', {
    says: 'charging current through the fuse, for hours',
    note: 'All that may charge the bank through this cable at once, no load taken off. Left out where nothing charges through it',
    symbol: 'I_ch',
    unit: amperes,
    above: '0 A',
    most: '1000 A',
    optional: true,
  }),
  device: choice({
    says: 'what protects the cable',
    words: {
      fuse: 'a fuse for general use (gG)',
      'circuit breaker': 'a circuit breaker that opens at 1.45 of its rated current',
    },
    default: 'fuse',
  }),
} as const satisfies Readonly<Record<string, Input>>

/** From `R_t`, the resistance per length of the warm conductor, to drop, loss and longest run. */
export const cableDropSteps: readonly Step[] = [
  step('R_loop', '2 * run * R_t', {
    says: 'resistance there and back',
    symbol: 'R_l',
    unit: { SI: 'mohm', US: 'mohm' },
    source: cite('power-balance', 'series circuit'),
  }),
  step('V_drop', 'current * R_loop', {
    says: 'drop of voltage',
    symbol: 'Delta',
    unit: volts,
    source: cite('power-balance', 'Ohm'),
  }),
  step('d_drop', 'V_drop / voltage', { says: 'drop as a share of the voltage', symbol: 'd', unit: percent }),
  step('V_end', 'voltage - V_drop', { says: 'voltage at the far end', symbol: 'V_e', unit: volts }),
  step('P_loss', 'current * V_drop', {
    says: 'power lost as heat in the cable',
    unit: watts,
    source: cite('power-balance', 'Joule'),
  }),
  step('l_most', 'drop_limit * voltage / (2 * current * R_t)', {
    says: 'longest run of this cable, one way',
    symbol: 'l_max',
    unit: metres,
  }),
  step('R_most', 'drop_limit * voltage / (2 * current * run)', {
    says: 'greatest resistance, warm, that keeps the drop',
    symbol: 'R_max',
    unit: lineResistance,
  }),
  check('drop', 'd_drop <= drop_limit', { says: 'the drop is within its limit' }),
  ...fuseSteps,
]

export const cableDropResults = ['V_drop', 'd_drop', 'V_end', 'P_loss', 'l_most', 'R_t', 'R_most'] as const

/** The drop must leave a voltage. */
export const cableDropLimits: readonly Limit[] = [
  limit('V_drop < voltage', {
    says: 'the cable leaves some of the voltage',
    advice: 'The load cannot draw this current through this cable',
    otherwise: 'refuse',
    on: 'current',
    source: cite('power-balance', 'Ohm'),
  }),
]

export const cableDropCautions: readonly string[] = [
  'The fuse stands within 0.2 m of the terminal of the bank: before it nothing protects the cable.',
  'What charges the bank through this fuse flows for hours: the block must be given it.',
  'Low voltage sets fire as well as any other: even at 12 V a loose joint glows.',
  'Bundles, conduits and heat lower the current that a cable may carry; it must be in the figure entered.',
  'Joints, fuses and switches drop voltage too: leave room for them under the limit.',
  'Terminals are crimped with the right tool, not soldered alone.',
  'A fuse for direct current must be rated for the voltage and for the short-circuit current of the bank.',
]
