import type { AxisIntegrals } from './axis-integrals.ts'
import type { PlatePanel } from './plate-panel.ts'
import { type SymmetricBand, symmetricBand } from './symmetric-band.ts'

/** Integrals of both axes and the lengths they stand for, in sides a. */
export type PlateGrid = {
  readonly x: AxisIntegrals
  readonly y: AxisIntegrals
  readonly lengths: readonly [number, number]
}

/**
 * Stiffness of the products of x and y shapes (x shape by x shape), for D = 1.
 * Source: bending energy w_xx^2 + w_yy^2 + 2 nu w_xx w_yy + 2 (1 - nu) w_xy^2 of the thin plate (Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 80; memory).
 */
export function plateStiffness(grid: PlateGrid, nu: number): SymmetricBand {
  const { x, y } = grid
  const matrix = symmetricBand(x.count * y.count, x.reach * y.count + y.count - 1)
  for (let i = 0; i < x.count; i++) {
    for (let k = Math.max(0, i - x.reach); k <= i; k++) addPair(matrix, grid, { i, k, nu })
  }
  return matrix
}

type Pair = { readonly i: number; readonly k: number; readonly nu: number }

function addPair({ band, rows }: SymmetricBand, grid: PlateGrid, pair: Pair): void {
  const { x, y } = grid
  const { i, k } = pair
  // Two x shapes without an element in common leave their block empty.
  if (x.d22[i * x.count + k] === 0 && x.d00[i * x.count + k] === 0) return
  const factors = pairFactors(grid, pair)
  for (let j = 0; j < y.count; j++) {
    const row = i * y.count + j
    const base = row * (band + 1) + band - row + k * y.count
    for (let l = 0; l <= (i === k ? j : y.count - 1); l++) rows[base + l] = pairStiffness(factors, y, { j, l })
  }
}

type Factors = {
  readonly xx: number
  readonly yy: number
  readonly xy: number
  readonly across: readonly [number, number]
}

function pairFactors({ x, lengths: [a, b] }: PlateGrid, { i, k, nu }: Pair): Factors {
  const [at, turned] = [i * x.count + k, k * x.count + i]
  return {
    xx: (pick(x.d22, at) * b) / a ** 3,
    yy: (pick(x.d00, at) * a) / b ** 3,
    xy: (2 * (1 - nu) * pick(x.d11, at)) / (a * b),
    across: [(nu * pick(x.d20, at)) / (a * b), (nu * pick(x.d20, turned)) / (a * b)],
  }
}

function pairStiffness(f: Factors, y: AxisIntegrals, { j, l }: { readonly j: number; readonly l: number }): number {
  const [at, turned] = [j * y.count + l, l * y.count + j]
  const plain = f.xx * pick(y.d00, at) + f.yy * pick(y.d22, at) + f.xy * pick(y.d11, at)
  return plain + f.across[0] * pick(y.d20, turned) + f.across[1] * pick(y.d20, at)
}

// These run a hundred thousand times a plate, over indices the loops above keep inside.
const pick = (list: Float64Array, at: number): number => list[at] as number

/** Work of the load of a panel through each product of shapes. */
export function plateLoad({ x, y, lengths: [a, b] }: PlateGrid, load: PlatePanel['load']): Float64Array {
  const { uniform, varying = 0, along = 'x' } = load
  const work = new Float64Array(x.count * y.count)
  const [rx, ry] = along === 'x' ? [x.rising, y.even] : [x.even, y.rising]
  for (let i = 0; i < x.count; i++) {
    for (let j = 0; j < y.count; j++) {
      const even = uniform * pick(x.even, i) * pick(y.even, j)
      work[i * y.count + j] = a * b * (even + varying * pick(rx, i) * pick(ry, j))
    }
  }
  return work
}
