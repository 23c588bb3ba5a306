import type { Point } from '../modules/sketch.ts'
import type { Spot } from './sketch-wish.ts'

/** A label that stands beside a mark: its place, and where a leader to it would begin. */
export interface Beside {
  readonly spot: Spot
  readonly mark: Point
}

/** A place in a column, with the leader that leads to it where it stands off its mark. */
export interface Columned {
  readonly spot: Spot
  readonly leader?: readonly [Point, Point]
}

/** Height of a line of lettering in a column, and how far a column with leaders stands off its marks; in points. */
export const pitch = 9.2
const fan = 9
/** Less than this a label may stand off its mark without a leader. */
const near = 2.5

/** Whether labels of one column would run into each other where they wish to stand. */
export function isCrowded(labels: readonly Beside[]): boolean {
  const heights = labels.map(({ spot }) => spot.y).sort((a, b) => a - b)
  return heights.some((y, index) => index > 0 && y - (heights[index - 1] ?? 0) < pitch - 0.7)
}

/** What stands in one column: the same edge, flush on the same side. */
export const columnOf = ({ spot }: Beside): string => `${spot.anchor} ${Math.round(spot.x)}`

/**
 * Labels of one column in the order of their marks, a line apart, as near to where they wish to stand as that lets them; with
 * leaders from the marks, for which the whole column moves out.
 */
export function column(labels: readonly Beside[]): readonly Columned[] {
  const order = labels.map((_, index) => index).sort((a, b) => heightOf(labels, a) - heightOf(labels, b) || a - b)
  const settled = apart(order.map(index => heightOf(labels, index)))
  return labels.map((label, index) => placed(label, settled[order.indexOf(index)] ?? label.spot.y))
}

const heightOf = (labels: readonly Beside[], index: number): number => labels[index]?.spot.y ?? 0

function placed({ spot, mark }: Beside, y: number): Columned {
  const out = spot.anchor === 'end' ? -1 : 1
  const at: Spot = { ...spot, x: spot.x + out * fan, y }
  const middle = y - spot.y + mark[1]
  const straight = Math.abs(y - spot.y) < near
  return { spot: at, leader: [mark, [at.x - out * 1.5, straight ? mark[1] : middle]] }
}

/**
 * Rising heights moved apart to at least one pitch, the sum of the squares of their moves the least: neighbours that collide are
 * pooled, and the pool stands about the mean of where its members wish to be.
 */
function apart(heights: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = []
  for (const [index, y] of heights.entries()) {
    let pool = { sum: y - index * pitch, count: 1 }
    for (let before = pools.at(-1); before && mean(before) >= mean(pool); before = pools.at(-1)) {
      pool = { sum: before.sum + pool.sum, count: before.count + pool.count }
      pools.pop()
    }
    pools.push(pool)
  }
  return pools.flatMap(pool => Array.from({ length: pool.count }, () => mean(pool))).map((y, i) => y + i * pitch)
}

const mean = ({ sum, count }: { readonly sum: number; readonly count: number }): number => sum / count
