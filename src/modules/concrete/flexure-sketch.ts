import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

/** Names of a code for the steel provided and the depth of the neutral axis. */
export interface FlexureNames {
  readonly steel: string
  readonly axis: string
}

/** Cross-section of the strip: bars at the face in tension at their spacing, depth of the neutral axis from the other face. */
export const flexureSketch =
  (names: FlexureNames) =>
  (view: SketchView): Drawing =>
    drawn(view, sectionOf(view, names))

function drawn(view: SketchView, section: Section): Drawing {
  const { steel, axis } = section.names
  const { b, thickness } = section
  const outline: Shape = {
    kind: 'polygon',
    points: [
      [0, 0],
      [b, 0],
      [b, thickness],
      [0, thickness],
    ],
    fill: 'concrete',
  }
  return {
    says: `Section ${view.shown('thickness')} thick with bars ${view.shown('bar_size')} at ${view.shown('spacing')} near the ${view.word('face')} face, cover ${view.shown('cover')}, effective depth ${view.shown('d')}; steel ${view.shown(steel)} on ${view.shown('width')}, neutral axis at ${view.shown(axis)}, capacity ${view.shown('M_R')}.`,
    toScale: true,
    shapes: [
      outline,
      ...compressed(view, section),
      ...outerBars(view, section),
      ...bars(view, section),
      ...sizes(view, section),
    ],
  }
}

interface Section {
  readonly names: FlexureNames
  readonly b: number
  readonly thickness: number
  /** Height of a point so far from the face in tension. */
  readonly at: (fromTension: number) => number
  /** Height of the bars. */
  readonly level: number
}

function sectionOf(view: SketchView, names: FlexureNames): Section {
  const [b, thickness] = [view.number('width'), view.number('thickness')]
  const above = ['top', 'outer'].includes(view.word('face'))
  const at = (fromTension: number): number => (above ? thickness - fromTension : fromTension)
  return { names, b, thickness, at, level: at(thickness - view.number('d')) }
}

function compressed(view: SketchView, { names, b, thickness, at }: Section): readonly Shape[] {
  const depth = view.number(names.axis)
  const axis = at(thickness - depth)
  return [
    {
      kind: 'line',
      points: [
        [0, axis],
        [b, axis],
      ],
      weight: 'thin',
      dashed: true,
    },
    { kind: 'label', at: [0.02 * b, at(0.92 * thickness - depth)], label: view.label(names.axis), anchor: 'start' },
  ]
}

/** The bars between these and the face run across the strip, and are seen along their length. */
function outerBars(view: SketchView, { b, at }: Section): readonly Shape[] {
  const size = view.number('outer_bar')
  if (!(size > 0)) return []
  const [low, high] = [at(view.number('cover')), at(view.number('cover') + size)]
  return [
    {
      kind: 'polygon',
      points: [
        [0, low],
        [b, low],
        [b, high],
        [0, high],
      ],
      fill: 'void',
    },
  ]
}

function bars(view: SketchView, { b, level }: Section): readonly Shape[] {
  const [size, spacing] = [view.number('bar_size'), view.number('spacing')]
  const count = Math.min(60, Math.max(1, Math.floor((b - size) / spacing) + 1))
  const first = (b - (count - 1) * spacing) / 2
  const round = (x: number): Shape => ({
    kind: 'polygon',
    points: Array.from({ length: 12 }, (_, i): Point => {
      const turn = (i * Math.PI) / 6
      return [x + (size / 2) * Math.cos(turn), level + (size / 2) * Math.sin(turn)]
    }),
    fill: 'void',
  })
  return Array.from({ length: count }, (_, i) => round(first + i * spacing))
}

/** Depth and cover stand in one line beside the section, each from its own face; the steel stands by the bars, clear of the axis. */
function sizes(view: SketchView, { names, b, thickness, at, level }: Section): readonly Shape[] {
  const beside = at(thickness - 0.68 * view.number('d'))
  return [
    upright([b, at(thickness)], [b, level], { off: 8, label: view.label('d') }),
    upright([b, at(view.number('cover'))], [b, at(0)], { off: 8, label: view.label('cover') }),
    { kind: 'dimension', from: [0, 0], to: [0, thickness], off: 8, label: view.label('thickness') },
    { kind: 'dimension', from: [0, 0], to: [b, 0], off: -8, label: view.label('width') },
    { kind: 'label', at: [0.98 * b, beside], label: view.label(names.steel), anchor: 'end' },
  ]
}

type Sized = Pick<Extract<Shape, { kind: 'dimension' }>, 'off' | 'label'>

/** A dimension read from top to bottom, so that it is set off to the right of the section whichever face it is from. */
function upright(a: Point, b: Point, { off, label }: Sized): Shape {
  const [from, to] = a[1] >= b[1] ? [a, b] : [b, a]
  return { kind: 'dimension', from, to, off, label }
}
