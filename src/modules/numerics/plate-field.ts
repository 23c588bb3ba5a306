import { axisIntegrals } from './axis-integrals.ts'
import { solveBand } from './banded-cholesky.ts'
import { type PlateAxes, type PlateMesh, plateAxes } from './plate-mesh.ts'
import { checkedPanel, type PlatePanel } from './plate-panel.ts'
import { type PlateGrid, plateLoad, plateStiffness } from './plate-stiffness.ts'

/** The deflected surface of a panel: coefficients of products of shapes, x shape by x shape. Plain data. */
export type PlateField = PlateAxes & { readonly panel: PlatePanel; readonly coefficients: readonly number[] }

/**
 * Deflected surface by the Ritz method on a few elements of high degree. The natural conditions (no moment on a
 * simple edge, none and no Kirchhoff shear on a free one) are met in the limit.
 * Refuses what `checkedPanel` refuses. Source: least potential energy of the thin plate, Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 80 (memory).
 */
export function plateField(given: PlatePanel, mesh: PlateMesh): PlateField {
  const panel = checkedPanel(given)
  const axes = plateAxes(panel, mesh)
  const grid: PlateGrid = { x: axisIntegrals(axes.x), y: axisIntegrals(axes.y), lengths: axes.lengths }
  // The band is narrow when the axis with fewer shapes runs fastest.
  const turned = grid.y.count > grid.x.count
  const solved = turned ? solvePlate(turnedGrid(grid), panel, turned) : solvePlate(grid, panel, turned)
  return { ...axes, panel, coefficients: turned ? transposed(solved, grid.y.count) : Array.from(solved) }
}

function solvePlate(grid: PlateGrid, { nu, load }: PlatePanel, turned: boolean): Float64Array {
  const along = (load.along ?? 'x') === 'x' ? 'y' : 'x'
  return solveBand(plateStiffness(grid, nu), plateLoad(grid, turned ? { ...load, along } : load))
}

function turnedGrid({ x, y, lengths }: PlateGrid): PlateGrid {
  return { x: y, y: x, lengths: [lengths[1], lengths[0]] }
}

function transposed(matrix: Float64Array, rows: number): readonly number[] {
  const columns = matrix.length / rows
  return Array.from(matrix, (_, at) => matrix[(at % rows) * columns + Math.floor(at / rows)] as number)
}
