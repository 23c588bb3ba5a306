import type { Unit } from './types.ts'

/** A number in coherent SI, as a number in `unit`. Temperature points are moved to the unit's own zero. */
export const inUnit = (si: number, unit: Unit): number => (si - (unit.offset ?? 0)) / unit.factor

/** A number in `unit`, as a number in coherent SI. */
export const fromUnit = (value: number, unit: Unit): number => value * unit.factor + (unit.offset ?? 0)
