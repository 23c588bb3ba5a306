import type { Method, Solved } from '../method.ts'
import { integrateCells } from '../numerics/integrate-cells.ts'
import { percentAbove } from '../percent-above.ts'

interface Patch {
  readonly load: number
  readonly long: number
  readonly wide: number
  readonly x: number
  readonly y: number
}

const cellsAlong = 64

/** Stress at a depth under patches on the ground: each patch as a raster of small point loads, by Simpson's rule both ways. */
export const boussinesqCells: Method = {
  id: 'boussinesq-cells',
  title: 'Point loads added up over the patches',
  says: `Every patch is cut into ${cellsAlong} by ${cellsAlong} cells; Boussinesq's stress of a point load is integrated over them by Simpson's rule.`,
  takes: { load: 'force', long: 'length', wide: 'length', x: 'length', y: 'length', depth: 'length' },
  run: numbers => {
    const list = (name: string): readonly number[] => {
      const value = numbers[name]
      return typeof value === 'object' ? value : []
    }
    const at = (name: string, index: number): number => list(name)[index] ?? Number.NaN
    const patches = list('load').map((load, i) => ({
      load,
      long: at('long', i),
      wide: at('wide', i),
      x: at('x', i),
      y: at('y', i),
    }))
    return solved(patches, Number(numbers.depth))
  },
}

function solved(patches: readonly Patch[], depth: number): Solved {
  const [coarse, fine] = [cellsAlong / 2, cellsAlong].map(cells =>
    patches.reduce((sum, patch) => sum + under(patch, { depth, cells }), 0),
  ) as [number, number]
  const change = Math.abs(fine - coarse) / Math.abs(fine)
  if (!(change < 1e-3))
    return { ok: false, says: 'the cells do not settle on one stress: the patch is wide for its depth' }
  return {
    ok: true,
    values: { stress: fine },
    verified: `a quarter of the cells gives the same stress within ${percentAbove(change, 5)} %`,
  }
}

function under({ load, long, wide, x, y }: Patch, by: { depth: number; cells: number }): number {
  const { depth, cells } = by
  const point = (u: number, v: number): number =>
    (3 * depth ** 3) / (2 * Math.PI * (u * u + v * v + depth * depth) ** 2.5)
  const line = (u: number): number =>
    integrateCells(v => point(u, v), { from: y - wide / 2, to: y + wide / 2, cells, rule: 'simpson' }).value
  const over = integrateCells(line, { from: x - long / 2, to: x + long / 2, cells, rule: 'simpson' }).value
  return (load / (long * wide)) * over
}
