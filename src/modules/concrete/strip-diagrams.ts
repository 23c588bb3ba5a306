import type { Label, Point, Shape } from '../sketch.ts'

/** A diagram under the strip: moments drawn on the side of the tension, shears as they are. */
export interface StripDiagram {
  /** Height of its base line. */
  readonly at: number
  readonly line: readonly Point[]
  readonly from: number
  readonly to: number
}

/** Base line and curve of a diagram whose ordinates are shares of its largest value; `tall` is the height of a share of 1. */
export function diagramShapes({ at, line, from, to }: StripDiagram, tall: number): readonly Shape[] {
  return [
    {
      kind: 'line',
      points: [
        [from, at],
        [to, at],
      ],
      weight: 'thin',
    },
    { kind: 'line', points: line.map(([x, share]): Point => [x, at + tall * share]), weight: 'medium' },
  ]
}

/** A label at a place of a diagram. */
export const diagramLabel = (at: Point, label: Label, anchor: 'start' | 'middle' | 'end' = 'middle'): Shape => ({
  kind: 'label',
  at,
  label,
  anchor,
})

/** A support that turns freely: a triangle under the strip. */
export const turningSupport = (x: number, size: number): Shape => ({
  kind: 'polygon',
  points: [
    [x, 0],
    [x - 0.7 * size, -size],
    [x + 0.7 * size, -size],
  ],
  fill: 'none',
})

/** A support that holds the strip against turning: a block at its end, on the left (`-1`) or right (`1`). */
export const fixedSupport = (x: number, size: number, side: -1 | 1): Shape => ({
  kind: 'polygon',
  points: [
    [x, -size],
    [x, size],
    [x + side * size, size],
    [x + side * size, -size],
  ],
  fill: 'concrete',
})
