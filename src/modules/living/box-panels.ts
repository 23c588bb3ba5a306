import { solveBand } from '../numerics/banded-cholesky.ts'
import { symmetricBand } from '../numerics/symmetric-band.ts'

/** A box in the ground, in m: its three sides outside and the soil over its top. */
export interface WholeBox {
  readonly width: number
  readonly long: number
  readonly height: number
  readonly cover: number
}

interface Panel {
  readonly at: readonly [x: number, y: number, z: number]
  readonly sides: readonly [number, number]
}

interface Strip {
  readonly middle: number
  readonly side: number
}

/** Half a side from its middle to its edge in even strips. */
const halfInStrips = (side: number, count: number): readonly Strip[] =>
  Array.from({ length: count }, (_, i) => ({
    middle: (side / 2) * ((i + 0.5) / count),
    side: side / 2 / count,
  }))

/** The panels of a quarter of the box, nearly square: `fine` of them over half its three sides laid in a row. */
function panelsOf({ width, long, height, cover }: WholeBox, fine: number): readonly Panel[] {
  const strips = (side: number): readonly Strip[] =>
    halfInStrips(side, Math.max(2, Math.round((fine * side) / (width + long + height))))
  const [xs, ys, half] = [strips(width), strips(long), strips(height)]
  const zs = [-1, 1].flatMap(way =>
    half.map(({ middle, side }) => ({ middle: cover + height / 2 + way * middle, side })),
  )
  return [
    ...[cover, cover + height].flatMap(z =>
      xs.flatMap(x => ys.map((y): Panel => ({ at: [x.middle, y.middle, z], sides: [x.side, y.side] }))),
    ),
    ...zs.flatMap(z => [
      ...ys.map((y): Panel => ({ at: [width / 2, y.middle, z.middle], sides: [z.side, y.side] })),
      ...xs.map((x): Panel => ({ at: [x.middle, long / 2, z.middle], sides: [z.side, x.side] })),
    ]),
  ]
}

/** Middles and half sides of panels in lists of their own: half a million distances run over them. */
interface PanelLists {
  readonly x: Float64Array
  readonly y: Float64Array
  readonly z: Float64Array
  readonly areas: Float64Array
}

const listsOf = (panels: readonly Panel[]): PanelLists => ({
  x: Float64Array.from(panels, ({ at: [x] }) => x),
  y: Float64Array.from(panels, ({ at: [, y] }) => y),
  z: Float64Array.from(panels, ({ at: [, , z] }) => z),
  areas: Float64Array.from(panels, ({ sides: [a, b] }) => a * b),
})

/** Warmth that a panel of unit flow for each area gives at its own middle, times 4 pi. */
const warmthOfItself = ([a, b]: Panel['sides']): number => 2 * (a * Math.asinh(b / a) + b * Math.asinh(a / b))

/**
 * Warmth that a panel gives at the middle of another for each of its area, times 4 pi, with its mirror images in the other quarters;
 * those above the ground are cold, so that its surface stays as it is. Of itself it counts the images alone.
 */
function warmthAt({ x, y, z }: PanelLists, at: number, from: number): number {
  const near = ((x[at] as number) - (x[from] as number)) ** 2
  const far = ((x[at] as number) + (x[from] as number)) ** 2
  const level = ((y[at] as number) - (y[from] as number)) ** 2
  const across = ((y[at] as number) + (y[from] as number)) ** 2
  const below = ((z[at] as number) - (z[from] as number)) ** 2
  const above = ((z[at] as number) + (z[from] as number)) ** 2
  return (
    (at === from ? 0 : 1 / Math.sqrt(near + level + below)) +
    1 / Math.sqrt(near + across + below) +
    1 / Math.sqrt(far + level + below) +
    1 / Math.sqrt(far + across + below) -
    1 / Math.sqrt(near + level + above) -
    1 / Math.sqrt(near + across + above) -
    1 / Math.sqrt(far + level + above) -
    1 / Math.sqrt(far + across + above)
  )
}

/**
 * Conduction shape factor in m of a whole box under the surface of the ground, both of even temperature: its faces are panels of even
 * flow, so strong that every one has the warmth of the box. Refuses (throws `NumericRefusal`) panels too coarse to be solved.
 */
export function shapeByPanels(box: WholeBox, fine: number): number {
  const panels = panelsOf(box, fine)
  const size = panels.length
  const lists = listsOf(panels)
  const { areas } = lists
  const matrix = symmetricBand(size, size - 1)
  for (let i = 0; i < size; i += 1) {
    const row = i * size + size - 1 - i
    const area = areas[i] as number
    for (let j = 0; j <= i; j += 1) matrix.rows[row + j] = area * (areas[j] as number) * warmthAt(lists, i, j)
  }
  for (const [i, { sides }] of panels.entries()) {
    const own = i * size + size - 1
    matrix.rows[own] = (matrix.rows[own] as number) + (areas[i] as number) * warmthOfItself(sides)
  }
  const flows = solveBand(
    matrix,
    areas.map(area => 4 * Math.PI * area),
  )
  return 4 * areas.reduce((sum, area, i) => sum + area * (flows[i] ?? Number.NaN), 0)
}
