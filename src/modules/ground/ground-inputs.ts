import type { QuantityInput } from '../module.ts'
import { cite } from '../sources.ts'
import { length, pressure, unitWeight } from '../words.ts'
import { lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'

/** Unit weight of water, as most modules of the ground take it. */
export const waterWeight: QuantityInput = unitWeight({
  says: 'unit weight of water',
  symbol: 'gamma_w',
  unit: weightUnit,
  least: '9.7 kN/m^3',
  most: '10.3 kN/m^3',
  default: '9.81 kN/m^3',
})

/** Unit weight of soil above the water. */
export const moistWeight: QuantityInput = unitWeight({
  says: 'unit weight above the water, moist',
  symbol: 'gamma',
  unit: weightUnit,
  above: '0 kN/m^3',
  usual: ['14 kN/m^3', '23 kN/m^3'],
})

/** Unit weight of soil below the water. */
export const saturatedWeight: QuantityInput = unitWeight({
  says: 'unit weight below the water, saturated',
  symbol: 'gamma_sat',
  unit: weightUnit,
  least: '11 kN/m^3',
  usual: ['17 kN/m^3', '23 kN/m^3'],
})

/** Uniform load on the ground, named so that nobody leaves it out unsaid. */
export const groundLoad = (says: string): QuantityInput =>
  pressure({
    says,
    note: '0 kPa where there is surely none',
    symbol: 'q',
    unit: pressureUnit,
    least: '0 kPa',
    usual: ['0 kPa', '50 kPa'],
  })

/** How far below the bottom of a pit the water is kept. */
export const dryMargin: QuantityInput = length({
  says: 'how far water is kept below formation while the pit is open',
  symbol: 'h_m',
  unit: lengthUnit,
  least: '0 m',
  usual: ['0.5 m', '1 m'],
  default: '0.5 m',
  source: cite('practice', '0.5 m to 1.0 m'),
})
