import { type Drawing, type Point, type Shape, type SketchView, stroke } from '../sketch.ts'

/** Section down the slope, to scale: ground, plane and water, and what drives and holds one slice. Its length is not known and is cut off. */
export function infiniteSlopeSketch(view: SketchView): Drawing {
  const cut = section(view)
  return {
    says:
      `Section down the slope, to scale, cut off at both ends: ground at ${view.shown('slope')}, plane ${view.shown('plane_depth')} below it, ` +
      `water ${view.shown('water_height')} above the plane; shear ${view.shown('tau_z')} against a strength of ${view.shown('tau_f')}.`,
    toScale: true,
    shapes: [
      { kind: 'polygon', fill: 'soil', points: [...cut.line(0), ...cut.line(-cut.z).reverse()] },
      { kind: 'ground', points: cut.line(0) },
      stroke('thick', cut.line(-cut.z)),
      ...slice(cut),
      ...water(view, cut),
      ...surcharge(view, cut),
      ...stresses(view, cut),
      { kind: 'dimension', from: cut.at(0, -cut.z), to: cut.at(0, 0), off: 10, label: view.label('plane_depth') },
      ...angle(view, cut),
    ],
  }
}

interface Section {
  readonly width: number
  /** Depth of the plane below the ground. */
  readonly z: number
  /** A place at `x` along the level, so high over the ground. */
  readonly at: (x: number, over: number) => Point
  /** A line parallel to the ground over the whole section. */
  readonly line: (over: number) => Point[]
  /** A step along the slope, uphill. */
  readonly uphill: (from: Point, by: number) => Point
}

function section(view: SketchView): Section {
  const [z, slope] = [view.number('plane_depth'), view.number('slope')]
  const width = z * (1 + 2.5 * Math.cos(slope))
  const at = (x: number, over: number): Point => [x, x * Math.tan(slope) + over]
  return {
    width,
    z,
    at,
    line: over => [at(0, over), at(width, over)],
    uphill: ([x, y], by) => [x + by * Math.cos(slope), y + by * Math.sin(slope)],
  }
}

const slice = ({ width, z, at }: Section): readonly Shape[] =>
  [0.36, 0.64].map(share => stroke('thin', [at(share * width, 0), at(share * width, -z)], { dashed: true }))

function water(view: SketchView, { width, z, at, line }: Section): readonly Shape[] {
  const height = view.number('water_height')
  if (!(height > 0)) return []
  const over = height - z
  return [
    stroke('medium', line(over), { dashed: true }),
    { kind: 'level', at: at(0.08 * width, over), label: {}, side: 'right', water: true },
    { kind: 'dimension', from: at(width, -z), to: at(width, over), off: -10, label: view.label('water_height') },
  ]
}

function surcharge(view: SketchView, { width, z, at }: Section): readonly Shape[] {
  if (!(view.number('surcharge') > 0)) return []
  const deep = 0.14 * z
  return [
    {
      kind: 'load',
      from: at(0, 0),
      to: at(width, 0),
      start: deep,
      end: deep,
      towards: [0, -1],
      label: view.label('surcharge'),
    },
  ]
}

/** On the slice: its weight, the shear that drives it, the strength that holds it and the water that lifts it. */
function stresses(view: SketchView, { width, z, at, uphill }: Section): readonly Shape[] {
  const middle = width / 2
  const pair = (over: number): readonly [Point, Point] => [
    uphill(at(middle, over), -0.12 * width),
    uphill(at(middle, over), 0.12 * width),
  ]
  const [[foot, head], [low, high]] = [pair(-0.88 * z), pair(-1.12 * z)]
  return [
    { kind: 'arrow', from: at(middle, -0.15 * z), to: at(middle, -0.6 * z) },
    { kind: 'label', at: at(middle - 0.02 * width, -0.3 * z), anchor: 'end', label: view.label('p_z') },
    { kind: 'arrow', from: head, to: foot },
    stroke('thin', [head, at(0.67 * width, -0.52 * z)]),
    { kind: 'label', at: at(0.67 * width, -0.45 * z), anchor: 'start', label: view.label('tau_z') },
    { kind: 'arrow', from: low, to: high },
    { kind: 'label', at: uphill(high, 0.02 * width), anchor: 'start', label: view.label('tau_f') },
    ...(view.number('u_z') > 0 ? lift(view, at(0.9 * width, -z), z) : []),
  ]
}

/** Across the plane, from below. */
function lift(view: SketchView, to: Point, z: number): readonly Shape[] {
  const slope = view.number('slope')
  const from: Point = [to[0] + 0.4 * z * Math.sin(slope), to[1] - 0.4 * z * Math.cos(slope)]
  return [
    { kind: 'arrow', from, to },
    { kind: 'label', at: [from[0] + 0.06 * z, from[1]], anchor: 'start', label: view.label('u_z') },
  ]
}

/** The slope against the level, at the low end of the plane. */
function angle(view: SketchView, { width, z, at }: Section): readonly Shape[] {
  const [corner, level]: readonly [Point, Point] = [at(0, -z), [0.3 * width, -z]]
  return [
    stroke('thin', [corner, level]),
    { kind: 'label', at: [0.31 * width, -z], anchor: 'start', label: view.label('slope') },
  ]
}
