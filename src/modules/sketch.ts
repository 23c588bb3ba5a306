/** A point in metres (or in the sketch's own world unit), y upwards. */
export type Point = readonly [x: number, y: number]

/** What is written at a place: a symbol (typeset as in the working), a value as shown there, or plain words. */
export interface Label {
  readonly symbol?: string
  readonly value?: string
  readonly text?: string
}

export type Fill = 'none' | 'concrete' | 'soil' | 'water' | 'lining' | 'void' | 'pressure'

/** Shapes in world coordinates; the typesetting room draws them to scale, weights and gaps in paper units. */
export type Shape =
  | { readonly kind: 'polygon'; readonly points: readonly Point[]; readonly fill: Fill; readonly dashed?: true }
  | {
      readonly kind: 'line'
      readonly points: readonly Point[]
      readonly weight: 'thin' | 'medium' | 'thick'
      readonly dashed?: true
    }
  /** An arrow with its head at `to`. */
  | { readonly kind: 'arrow'; readonly from: Point; readonly to: Point; readonly label?: Label }
  /** A dimension line between two points, set off to the left of from->to by `off` paper units (may be negative). */
  | {
      readonly kind: 'dimension'
      readonly from: Point
      readonly to: Point
      readonly off: number
      readonly label: Label
    }
  | { readonly kind: 'label'; readonly at: Point; readonly label: Label; readonly anchor: 'start' | 'middle' | 'end' }
  /** A level mark (triangle on a short line); `water` doubles the line. */
  | {
      readonly kind: 'level'
      readonly at: Point
      readonly label: Label
      readonly side: 'left' | 'right'
      readonly water?: true
    }
  /** Ground surface: a line with ground hatching below it. */
  | { readonly kind: 'ground'; readonly points: readonly Point[] }
  /** A distributed load on the line from-to; intensities are lengths in world units, arrows point along `towards`. */
  | {
      readonly kind: 'load'
      readonly from: Point
      readonly to: Point
      readonly start: number
      readonly end: number
      readonly towards: Point
      readonly label?: Label
    }

export interface Drawing {
  /** The text alternative: one or two full sentences with the main values. */
  readonly says: string
  /** `true`: x and y have one scale. `false`: a chart, axes scaled apart. */
  readonly toScale: boolean
  /** Not to scale and no chart either: a scheme, whose lengths mean nothing. */
  readonly scheme?: true
  readonly shapes: readonly Shape[]
}

/** What a sketch may ask of the evaluated block. */
export interface SketchView {
  /** SI number; NaN where it was not evaluated. */
  readonly number: (name: string) => number
  /** Symbol and shown value together, for a label. */
  readonly label: (name: string) => Label
  /** The shown value with its unit, as text for `says`. */
  readonly shown: (name: string) => string
  /** The unit in which it is shown, and the SI value of one of it; for the marks of an axis. */
  readonly unit: (name: string) => { readonly text: string; readonly si: number }
  readonly word: (choice: string) => string
  readonly rows: (list: string) => readonly SketchView[]
}

/** A line of a sketch or chart. */
export const stroke = (
  weight: 'thin' | 'medium' | 'thick',
  points: readonly Point[],
  more: { readonly dashed?: true } = {},
): Shape => ({ kind: 'line', weight, points, ...more })

/** A rectangle with its sides along the axes. */
export const rectangle = (fill: Fill, x: readonly [number, number], y: readonly [number, number]): Shape => ({
  kind: 'polygon',
  fill,
  points: [
    [x[0], y[0]],
    [x[1], y[0]],
    [x[1], y[1]],
    [x[0], y[1]],
  ],
})
