import type { Point, Shape } from '../sketch.ts'

/** An edge of a panel or wall: `out` points away from the panel. */
export interface Side {
  readonly from: Point
  readonly to: Point
  readonly out: Point
}

/** Hatching outside an edge that holds against turning, `depth` wide. */
export function hatching({ from, to, out }: Side, depth: number): readonly Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const count = Math.max(4, Math.round(length / depth))
  const along: Point = [(to[0] - from[0]) / count, (to[1] - from[1]) / count]
  return Array.from({ length: count }, (_, i): Shape => {
    const at = (n: number): Point => [from[0] + along[0] * n, from[1] + along[1] * n]
    const [x, y] = at(i + 1)
    return { kind: 'line', points: [at(i), [x + out[0] * depth, y + out[1] * depth]], weight: 'thin' }
  })
}
