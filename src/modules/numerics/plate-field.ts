import { axisIntegrals } from './axis-integrals.ts'
import { solverOf } from './banded-cholesky.ts'
import { type PlateAxes, type PlateMesh, plateAxes } from './plate-mesh.ts'
import { checkedPanel, type PlatePanel } from './plate-panel.ts'
import { type PlateGrid, plateLoad, plateStiffness } from './plate-stiffness.ts'

/** The deflected surface of a panel: coefficients of products of shapes, x shape by x shape. Plain data. */
export type PlateField = PlateAxes & { readonly panel: PlatePanel; readonly coefficients: Float64Array }

/**
 * Deflected surface by the Ritz method on a few elements of high degree. The natural conditions (no moment on a
 * simple edge, none and no Kirchhoff shear on a free one) are met in the limit.
 * Refuses what `checkedPanel` refuses. Source: least potential energy of the thin plate, Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 80 (memory).
 */
export function plateField(given: PlatePanel, mesh: PlateMesh): PlateField {
  const panel = checkedPanel(given)
  const { uniform, varying = 0 } = panel.load
  const { axes, even, rising } = unitSurfaces(panel, mesh)
  const coefficients = even.map((value, at) => uniform * value + (rising ? varying * (rising[at] as number) : 0))
  return { ...axes, panel, coefficients }
}

/** The surfaces under an even load of 1 and, where the load varies, under one that rises from 0 to 1: any load is made of the two. */
type UnitSurfaces = {
  readonly axes: PlateAxes
  readonly even: Float64Array
  readonly rising?: Float64Array
}

/** A study asks for one panel under hundreds of loads: as many panels as this are remembered. */
const mostRemembered = 12
const remembered = new Map<string, UnitSurfaces>()

function unitSurfaces(panel: PlatePanel, mesh: PlateMesh): UnitSurfaces {
  const { ratio, edges, nu, load } = panel
  const along = load.along ?? 'x'
  const varies = load.varying ? along : 'even'
  const key = JSON.stringify([ratio, edges.left, edges.right, edges.bottom, edges.top, nu, varies, mesh])
  const known = remembered.get(key)
  if (known) return known
  const found = solvedSurfaces(panel, mesh, along)
  const [oldest] = remembered.keys()
  if (remembered.size >= mostRemembered && oldest !== undefined) remembered.delete(oldest)
  remembered.set(key, found)
  return found
}

function solvedSurfaces(panel: PlatePanel, mesh: PlateMesh, along: 'x' | 'y'): UnitSurfaces {
  const axes = plateAxes(panel, mesh)
  const grid: PlateGrid = { x: axisIntegrals(axes.x), y: axisIntegrals(axes.y), lengths: axes.lengths }
  // The band is narrow when the axis with fewer shapes runs fastest.
  const turned = grid.y.count > grid.x.count
  const used = turned ? turnedGrid(grid) : grid
  const across = along === 'x' ? 'y' : 'x'
  const solve = solverOf(plateStiffness(used, panel.nu))
  const surface = (uniform: number, varying: number): Float64Array => {
    const solved = solve(plateLoad(used, { uniform, varying, along: turned ? across : along }))
    return turned ? transposed(solved, grid.y.count) : solved
  }
  return { axes, even: surface(1, 0), ...(panel.load.varying ? { rising: surface(0, 1) } : {}) }
}

function turnedGrid({ x, y, lengths }: PlateGrid): PlateGrid {
  return { x: y, y: x, lengths: [lengths[1], lengths[0]] }
}

function transposed(matrix: Float64Array, rows: number): Float64Array {
  const columns = matrix.length / rows
  return matrix.map((_, at) => matrix[(at % rows) * columns + Math.floor(at / rows)] as number)
}
