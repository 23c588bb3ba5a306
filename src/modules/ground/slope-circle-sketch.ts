import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'
import { stroke } from '../sketch.ts'
import { sliceCount } from './slope-circle-slices.ts'

interface Section {
  readonly view: SketchView
  readonly height: number
  readonly crest: number
  readonly x: number
  readonly y: number
  readonly R: number
  readonly out: number
  readonly into: number
  readonly left: number
  readonly right: number
}

const ground = ({ height, crest }: Section, x: number): number => Math.min(Math.max((x / crest) * height, 0), height)
const base = ({ x, y, R }: Section, at: number): number => y - Math.sqrt(Math.max(R ** 2 - (at - x) ** 2, 0))

/** Section through the slope with its worst circle, the slices, water, crack and load, to scale. */
export function slopeCircleSketch(view: SketchView): Drawing {
  const section = sectionOf(view)
  const { height, crest, left, right } = section
  return {
    says:
      `Section, to scale: slope ${view.shown('slope_height')} high at ${view.shown('slope')}, with the worst circle, radius ${view.shown('R')}, ` +
      `centre ${view.shown('x_0')} behind and ${view.shown('y_0')} above the foot, in ${sliceCount} slices. Factor ${view.shown('F_c')}.`,
    toScale: true,
    shapes: [
      ...mass(section),
      {
        kind: 'ground',
        points: [
          [left, 0],
          [0, 0],
          [crest, height],
          [right, height],
        ],
      },
      ...waterLine(section),
      ...load(section),
      ...crack(section),
      ...centre(section),
      {
        kind: 'dimension',
        from: [left, 0],
        to: [left, height],
        off: 14,
        label: view.label('slope_height'),
      },
      { kind: 'label', at: [0.55 * crest, 0.72 * height], anchor: 'end', label: view.label('slope') },
    ],
  }
}

function sectionOf(view: SketchView): Section {
  const number = view.number
  const [height, crest, out, into] = [number('slope_height'), number('x_crest'), number('x_out'), number('x_in')]
  const beside = 0.35 * Math.max(height, into - out)
  return {
    view,
    height,
    crest,
    x: number('x_0'),
    y: number('y_0'),
    R: number('R'),
    out,
    into,
    left: Math.min(out, 0) - beside,
    right: Math.max(into, crest) + beside,
  }
}

/** Ends of the slices along the arc, which stand at equal angles. */
function ends({ x, R, out, into }: Section): readonly number[] {
  const [from, to] = [Math.asin((out - x) / R), Math.asin((into - x) / R)]
  return Array.from({ length: sliceCount + 1 }, (_, i) => x + R * Math.sin(from + ((to - from) * i) / sliceCount))
}

function mass(section: Section): readonly Shape[] {
  const { out, into, crest } = section
  const arc = Array.from({ length: 61 }, (_, i): Point => {
    const at = out + ((into - out) * i) / 60
    return [at, base(section, at)]
  })
  const top = [into, crest, 0, out].filter(at => at <= into && at >= out)
  return [
    { kind: 'polygon', fill: 'soil', points: [...arc, ...top.map((at): Point => [at, ground(section, at)])] },
    stroke('thick', arc),
    ...ends(section).map(at =>
      stroke('thin', [
        [at, base(section, at)],
        [at, ground(section, at)],
      ]),
    ),
  ]
}

function waterLine(section: Section): readonly Shape[] {
  const { view, height, crest, left, right } = section
  const level = view.number('y_w')
  if (!(level > -0.5 * height)) return []
  const surface: readonly Point[] =
    level <= 0
      ? [
          [left, level],
          [right, level],
        ]
      : [
          [0, 0],
          [(level / height) * crest, level],
          [right, level],
        ]
  return [
    stroke('medium', surface, { dashed: true }),
    { kind: 'level', at: [right, level], label: view.label('water_depth'), side: 'right', water: true },
  ]
}

function load({ view, height, right }: Section): readonly Shape[] {
  const [from, q] = [view.number('x_q'), view.number('surcharge')]
  if (!(q > 0 && from < right)) return []
  const high = 0.12 * height
  return [
    {
      kind: 'load',
      from: [from, height],
      to: [right, height],
      start: high,
      end: high,
      towards: [0, -1],
      label: view.label('surcharge'),
    },
  ]
}

function crack(section: Section): readonly Shape[] {
  const { view, into } = section
  if (!(view.number('z_cr') > 0)) return []
  const [from, to]: readonly [Point, Point] = [
    [into, base(section, into)],
    [into, ground(section, into)],
  ]
  return [stroke('thick', [from, to]), { kind: 'dimension', from, to, off: -10, label: view.label('z_cr') }]
}

/** The centre with two radii, where it stands near enough to be drawn. */
function centre(section: Section): readonly Shape[] {
  const { view, x, y, out, into, left, right, height } = section
  if (y > 3 * height || x < left || x > right) return []
  const middle: Point = [x, y]
  return [
    stroke('thin', [[out, base(section, out)], middle, [into, base(section, into)]], { dashed: true }),
    { kind: 'label', at: [x, y + 0.05 * height], anchor: 'middle', label: view.label('R') },
  ]
}
