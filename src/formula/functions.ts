import type { FunctionName } from './types.ts'

/** How many arguments each function takes, least and most. */
const arities: Readonly<Record<FunctionName, readonly [least: number, most: number]>> = {
  sqrt: [1, 1],
  cbrt: [1, 1],
  abs: [1, 1],
  min: [1, 30],
  max: [1, 30],
  exp: [1, 1],
  log: [1, 1],
  log10: [1, 1],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
  asin: [1, 1],
  acos: [1, 1],
  atan: [1, 1],
  atan2: [2, 2],
  floor: [1, 1],
  ceil: [1, 1],
  round: [1, 1],
  sum: [1, 1],
  interpolate: [2, 2],
}

/** Every function of the language. */
export const functionNames = Object.keys(arities) as readonly FunctionName[]

export const isFunctionName = (name: string): name is FunctionName => Object.hasOwn(arities, name)

/** What is wrong with so many arguments, or undefined. */
export function arityFault(fn: FunctionName, count: number): string | undefined {
  const [least, most] = arities[fn]
  if (count >= least && count <= most) return undefined
  const wants = least === most ? (least === 1 ? 'one argument' : 'two arguments') : `${least} to ${most} arguments`
  return `\`${fn}\` takes ${wants}, got ${count}`
}

const habits: ReadonlyMap<string, string> = new Map([
  ['ln', 'The natural logarithm is `log`'],
  ['lg', 'The logarithm to base 10 is `log10`'],
  ['log2', 'Write `log(x) / log(2)`'],
  ['pow', 'Write a power as `x ^ n`'],
  ['sqr', 'Write a square as `x ^ 2`'],
  ['root', 'The square root is `sqrt`'],
  ['arcsin', 'The inverse sine is `asin`'],
  ['arccos', 'The inverse cosine is `acos`'],
  ['arctan', 'The inverse tangent is `atan`'],
  ['arctan2', 'Write `atan2`'],
  ['cot', 'Write `1 / tan(x)`'],
  ['sec', 'Write `1 / cos(x)`'],
  ['ceiling', 'Write `ceil`'],
  ['trunc', 'Write `floor` or `round`'],
  ['int', 'Write `floor` or `round`'],
  ['mod', 'Write `x - n * floor(x / n)`'],
  ['sinh', 'Write `(exp(x) - exp(-x)) / 2`'],
  ['cosh', 'Write `(exp(x) + exp(-x)) / 2`'],
  ['tanh', 'Write `(exp(2 * x) - 1) / (exp(2 * x) + 1)`'],
])

/** What to write for a function that other notations have, or undefined. */
export const functionHint = (name: string): string | undefined => habits.get(name)
