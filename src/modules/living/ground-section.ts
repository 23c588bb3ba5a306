import { solveBand } from '../numerics/banded-cholesky.ts'
import { symmetricBand } from '../numerics/symmetric-band.ts'

/** A long box in the ground: width, height and the cover over its top, in m. */
export interface BuriedBox {
  readonly width: number
  readonly height: number
  readonly cover: number
}

interface Grid {
  readonly xs: readonly number[]
  readonly zs: readonly number[]
  readonly inBox: (i: number, j: number) => boolean
}

/** Places from 0 to 1, close at the end (`end`) or at both ends (`both`). */
const close = (count: number, where: 'end' | 'both'): number[] =>
  Array.from({ length: count + 1 }, (_, i) =>
    where === 'end' ? Math.sin(((Math.PI / 2) * i) / count) : (1 - Math.cos((Math.PI * i) / count)) / 2,
  )

/** Places from 0 to 1 whose steps grow from the first one on. */
const growing = (count: number, growth: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => (growth ** i - 1) / (growth ** count - 1))

/** The half section right of the middle of the box, fine at its corners, ending twenty times the size of the box away. */
function gridOf({ width, height, cover }: BuriedBox, n: number): Grid {
  const far = 20 * (width + height + cover)
  const beyond = growing(2 * n, 1 + 5 / n).slice(1)
  const xs = [...close(n, 'end').map(s => (s * width) / 2), ...beyond.map(s => width / 2 + s * far)]
  const zs = [
    ...close(n, 'both').map(s => s * cover),
    ...close(n, 'both')
      .slice(1)
      .map(s => cover + s * height),
    ...beyond.map(s => cover + height + s * far),
  ]
  return { xs, zs, inBox: (i, j) => i <= n && j >= n && j <= 2 * n }
}

/** Half the way to the neighbours on both sides: what of the section belongs to a place. */
const shareOf = (places: readonly number[], i: number): number =>
  ((places[i + 1] ?? places[i] ?? 0) - (places[i - 1] ?? places[i] ?? 0)) / 2

type At = readonly [i: number, j: number]
interface Link {
  readonly ends: readonly [At, At]
  readonly flows: number
}

/** Every two neighbouring places and what flows between them for each degree. */
function linksOf({ xs, zs }: Grid): readonly Link[] {
  const links: Link[] = []
  for (let j = 0; j < zs.length; j += 1)
    for (let i = 0; i < xs.length; i += 1) {
      const [x = 0, z = 0, right, below] = [xs[i], zs[j], xs[i + 1], zs[j + 1]]
      if (right !== undefined)
        links.push({
          ends: [
            [i, j],
            [i + 1, j],
          ],
          flows: shareOf(zs, j) / (right - x),
        })
      if (below !== undefined)
        links.push({
          ends: [
            [i, j],
            [i, j + 1],
          ],
          flows: shareOf(xs, i) / (below - z),
        })
    }
  return links
}

/**
 * Conduction shape factor of a long box for each metre of its length, from its faces to the surface of the ground: the warmth of a
 * fine grid of the section is solved at once and the flow out of the box added up. `n` is the number of steps along half the box.
 */
export function shapeBySection(box: BuriedBox, n: number): number {
  const grid = gridOf(box, n)
  const wide = grid.xs.length
  const links = linksOf(grid)
  const matrix = symmetricBand(wide * grid.zs.length, wide)
  const load = new Float64Array(matrix.size)
  const rowOf = ([i, j]: At): number => j * wide + i
  const isFree = ([i, j]: At): boolean => j > 0 && !grid.inBox(i, j)
  const warm = ([i, j]: At): number => (grid.inBox(i, j) ? 1 : 0)
  const add = (row: number, column: number, value: number): void => {
    const place = row * (wide + 1) + wide - (row - column)
    matrix.rows[place] = (matrix.rows[place] ?? 0) + value
  }
  for (const { ends, flows } of links) {
    const [a, b] = ends
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const row = rowOf(one)
      if (!isFree(one)) continue
      add(row, row, flows)
      if (!isFree(other)) load[row] = (load[row] ?? 0) + flows * warm(other)
    }
    if (isFree(a) && isFree(b)) add(rowOf(b), rowOf(a), -flows)
  }
  for (let row = 0; row < matrix.size; row += 1) {
    const at: At = [row % wide, Math.floor(row / wide)]
    if (isFree(at)) continue
    add(row, row, 1)
    load[row] = warm(at)
  }
  const warmth = solveBand(matrix, load)
  return (
    2 *
    links.reduce((sum, { ends: [a, b], flows }) => {
      if (warm(a) === warm(b)) return sum
      return sum + flows * Math.abs((warmth[rowOf(a)] ?? Number.NaN) - (warmth[rowOf(b)] ?? Number.NaN))
    }, 0)
  )
}
