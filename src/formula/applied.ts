import { ceilOf, floorOf, isAtMost, isBelow, isEqual, roundOf } from '../quantity/tolerance.ts'
import type { Comparison, FunctionName } from './types.ts'

/** A condition on two numbers: 1 or 0, and NaN where either is not a finite number. */
const condition =
  (holds: (a: number, b: number) => boolean) =>
  (a: number, b: number): number =>
    Number.isFinite(a) && Number.isFinite(b) ? (holds(a, b) ? 1 : 0) : Number.NaN

/** Comparisons, which hold within a relative 1e-9. */
export const comparisons: Readonly<Record<Comparison, (a: number, b: number) => number>> = {
  '<': condition(isBelow),
  '<=': condition(isAtMost),
  '>': condition((a, b) => isBelow(b, a)),
  '>=': condition((a, b) => isAtMost(b, a)),
  '==': condition(isEqual),
  '!=': condition((a, b) => !isEqual(a, b)),
}

export const both = (a: number, b: number): number => (Number.isNaN(a + b) ? Number.NaN : a !== 0 && b !== 0 ? 1 : 0)
export const either = (a: number, b: number): number => (Number.isNaN(a + b) ? Number.NaN : a !== 0 || b !== 0 ? 1 : 0)
export const opposite = (x: number): number => (Number.isNaN(x) ? x : x === 0 ? 1 : 0)

/** Infinities end here instead of becoming an ordinary number. */
const finite =
  (apply: (x: number) => number) =>
  (x: number): number =>
    Number.isFinite(x) ? apply(x) : Number.NaN

/** Functions of one number. */
export const singles: Readonly<Partial<Record<FunctionName, (x: number) => number>>> = {
  sqrt: Math.sqrt,
  cbrt: Math.cbrt,
  abs: Math.abs,
  exp: finite(Math.exp),
  log: Math.log,
  log10: Math.log10,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: finite(Math.atan),
  floor: floorOf,
  ceil: ceilOf,
  round: roundOf,
}

export const arctangent = (y: number, x: number): number => (Number.isFinite(x + y) ? Math.atan2(y, x) : Number.NaN)
