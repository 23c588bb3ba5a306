import type { EdgeKind } from '../../../src/modules/numerics/plate-axis.ts'

/** A square or oblong under a uniform load: sides x = 0 and x = 1 simple, bottom and top held as given. */
export type LevyPanel = {
  readonly ratio: number
  readonly nu: number
  readonly bottom: EdgeKind
  readonly top: EdgeKind
}

/** Deflection and moments at one place by 60 terms of Levy's series (Timoshenko and Woinowsky-Krieger, art. 29). */
export function levyPlate(panel: LevyPanel, x: number, y: number): { w: number; mx: number; my: number } {
  const sum = { w: 0, mx: 0, my: 0 }
  for (let m = 1; m < 120; m += 2) {
    const alpha = m * Math.PI
    const [value = Number.NaN, , second = Number.NaN] = strip(panel, alpha, y)
    const [across, wave] = [-(alpha ** 2) * value, Math.sin(alpha * x)]
    sum.w += value * wave
    sum.mx -= (across + panel.nu * second) * wave
    sum.my -= (second + panel.nu * across) * wave
  }
  return sum
}

// Y = q (1 + A e + B t e + C f + D s f)/alpha^4 with e = exp(-t), t = alpha y, f = exp(-s), s = alpha (b - y).
function strip(panel: LevyPanel, alpha: number, y: number): readonly number[] {
  const load = 4 / alpha ** 5
  const [low, high] = [shapes(panel, alpha, 0), shapes(panel, alpha, panel.ratio)]
  const rows = [...conditions(panel.bottom, low, [alpha, panel.nu]), ...conditions(panel.top, high, [alpha, panel.nu])]
  const constants = solve(rows.map(([one, ...rest]) => [...rest, -one!]))
  return shapes(panel, alpha, y).map(
    ([one, ...rest]) => load * (one! + rest.reduce((s, v, i) => s + v * constants[i]!, 0)),
  )
}

/** The constant 1 and the four functions, each with three derivatives by y: `[order][function]`. */
function shapes({ ratio }: LevyPanel, alpha: number, y: number): readonly (readonly number[])[] {
  const [t, s] = [alpha * y, alpha * (ratio - y)]
  const [e, f] = [Math.exp(-t), Math.exp(-s)]
  return [0, 1, 2, 3].map(order => {
    const [down, up] = [(-alpha) ** order, alpha ** order]
    return [order === 0 ? 1 : 0, down * e, down * (t - order) * e, up * f, up * (s - order) * f]
  })
}

function conditions(kind: EdgeKind, at: readonly (readonly number[])[], [alpha, nu]: readonly [number, number]) {
  const [value, first, second, third] = at as [number[], number[], number[], number[]]
  if (kind === 'fixed') return [value, first]
  const moment = second.map((v, i) => v - nu * alpha ** 2 * value[i]!)
  if (kind === 'simple') return [value, moment]
  return [moment, third.map((v, i) => v - (2 - nu) * alpha ** 2 * first[i]!)]
}

/** Gauss-Jordan with the largest pivot of each column; every row ends in its right-hand side. */
function solve(given: readonly number[][]): readonly number[] {
  const rows = given.map(row => [...row])
  for (let i = 0; i < rows.length; i++) {
    const below = rows.slice(i).map(row => Math.abs(row[i]!))
    const pivot = i + below.indexOf(Math.max(...below))
    ;[rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!]
    for (let k = 0; k < rows.length; k++) {
      if (k === i) continue
      const factor = rows[k]![i]! / rows[i]![i]!
      rows[k] = rows[k]!.map((value, j) => value - factor * rows[i]![j]!)
    }
  }
  return rows.map((row, i) => row.at(-1)! / row[i]!)
}
