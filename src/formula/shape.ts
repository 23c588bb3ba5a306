import type { Compiled } from './types.ts'

/**
 * Makes one function of a few operations. Each call of a function within a function costs more than the arithmetic, so the usual shapes
 * have none inside but for their `x`. A shape is given as many numbers and functions as its name has.
 */
export type Shape = (
  numbers: readonly [a: number, b: number, c: number, d: number],
  inner: readonly [x: Compiled, y: Compiled],
) => Compiled
