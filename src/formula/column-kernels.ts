import { larger, quotient, raised, smaller } from './guarded.ts'
import type { OneName, TwoName } from './operation.ts'

export type Column = Float64Array

/** One operation on the first `n` numbers of a column, put into `o`, which may be the column itself. */
export type OneKernel = (o: Column, x: Column, n: number) => void
export type TwoKernel = (o: Column, a: Column, b: Column, n: number) => void

// Each is a loop of its own, with the operation in place: a loop that is handed its operation takes several times as long.
// biome-ignore format: a table, one kernel a line
export const oneKernels: Readonly<Record<Exclude<OneName, 'other'>, OneKernel>> = {
  negative: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = -(x[i] as number) },
  sqrt: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = Math.sqrt(x[i] as number) },
  cbrt: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = Math.cbrt(x[i] as number) },
  abs: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = Math.abs(x[i] as number) },
  square: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = (x[i] as number) * (x[i] as number) },
  cube: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = (x[i] as number) * (x[i] as number) * (x[i] as number) },
  fourth: (o, x, n) => { for (let i = 0; i < n; i += 1) { const q = (x[i] as number) * (x[i] as number); o[i] = q * q } },
  inverse: (o, x, n) => { for (let i = 0; i < n; i += 1) o[i] = quotient(1, x[i] as number) },
}

// biome-ignore format: a table, one kernel a line
export const twoKernels: Readonly<Record<Exclude<TwoName, 'other'>, TwoKernel>> = {
  '+': (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = (a[i] as number) + (b[i] as number) },
  '-': (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = (a[i] as number) - (b[i] as number) },
  '*': (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = (a[i] as number) * (b[i] as number) },
  '/': (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = quotient(a[i] as number, b[i] as number) },
  '^': (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = raised(a[i] as number, b[i] as number) },
  min: (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = smaller(a[i] as number, b[i] as number) },
  max: (o, a, b, n) => { for (let i = 0; i < n; i += 1) o[i] = larger(a[i] as number, b[i] as number) },
}

/** Any other operation. */
export const oneBy =
  (apply: (x: number) => number): OneKernel =>
  (o, x, n) => {
    for (let i = 0; i < n; i += 1) o[i] = apply(x[i] as number)
  }

export const twoBy =
  (apply: (a: number, b: number) => number): TwoKernel =>
  (o, a, b, n) => {
    for (let i = 0; i < n; i += 1) o[i] = apply(a[i] as number, b[i] as number)
  }
