import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

interface Section {
  readonly foot: number
  readonly back: number
  readonly width: number
  readonly base: number
  readonly top: number
  readonly plane: number
}

/** Section through the wall, to scale: fill, water, the force on it and the pressure under it. */
export function retainingSketch(view: SketchView): Drawing {
  const at = (name: string): number => view.number(name)
  const section: Section = {
    foot: at('toe'),
    back: at('toe') + at('stem_foot'),
    width: at('B'),
    base: at('base'),
    top: at('base') + at('stem'),
    plane: at('h_p'),
  }
  return {
    says: `Section through the wall, to scale: base ${view.shown('B')} wide, stem ${view.shown('stem')} high; horizontal force ${view.shown('P_h')}, load on the ground ${view.shown('V_b')}; factors ${view.shown('F_o')} against overturning and ${view.shown('F_s')} against sliding.`,
    toScale: true,
    shapes: [...wall(view, section), ...ground(view, section), ...forces(view, section), ...sizes(view, section)],
  }
}

function wall(view: SketchView, { foot, back, width, base, top, plane }: Section): readonly Shape[] {
  const rectangle: readonly Point[] = [
    [0, 0],
    [width, 0],
    [width, base],
    [0, base],
  ]
  return [
    {
      kind: 'polygon',
      fill: 'soil',
      points: [
        [back, base],
        [width, base],
        [width, plane],
        [back, top],
      ],
    },
    { kind: 'polygon', fill: 'concrete', points: rectangle },
    {
      kind: 'polygon',
      fill: 'concrete',
      points: [
        [foot, base],
        [back, base],
        [back, top],
        [back - view.number('stem_top'), top],
      ],
    },
  ]
}

/** The ground before the toe, where it is counted. */
function before(view: SketchView, width: number): readonly Shape[] {
  if (view.word('front') !== 'reckoned') return []
  const [depth, reach] = [view.number('front_depth'), -0.4 * width]
  const points: readonly Point[] = [
    [reach, 0],
    [0, 0],
    [0, depth],
    [reach, depth],
  ]
  return [
    { kind: 'polygon', fill: 'soil', points },
    {
      kind: 'ground',
      points: [
        [reach, depth],
        [0, depth],
      ],
    },
    { kind: 'dimension', from: [reach, 0], to: [reach, depth], off: 8, label: view.label('front_depth') },
  ]
}

function ground(view: SketchView, { back, width, top, plane }: Section): readonly Shape[] {
  const beyond = 0.35 * width
  const slope = Math.tan(view.number('alpha'))
  const water = view.number('water')
  return [
    ...before(view, width),
    {
      kind: 'ground',
      points: [
        [back, top],
        [width + beyond, plane + beyond * slope],
      ],
    },
    {
      kind: 'line',
      points: [
        [width, 0],
        [width, plane],
      ],
      weight: 'thin',
      dashed: true,
    },
    ...(water > 0
      ? [
          {
            kind: 'level' as const,
            at: [width + 0.2, water] as const,
            label: view.label('water'),
            side: 'right' as const,
            water: true as const,
          },
        ]
      : []),
  ]
}

function forces(view: SketchView, { width, base, plane }: Section): readonly Shape[] {
  const stand = view.number('x_V')
  const reach = 0.3 * width
  const whole = view.number('e') <= width / 6
  const most = 0.2 * width
  const least = whole ? (most * view.number('q_min')) / view.number('q_max') : 0
  const pressed = whole ? width : 3 * Math.min(stand, width - stand)
  const atToe = stand <= width / 2
  const load: Shape = {
    kind: 'load',
    from: [atToe ? 0 : width - pressed, 0],
    to: [atToe ? pressed : width, 0],
    start: atToe ? most : least,
    end: atToe ? least : most,
    towards: [0, 1],
    label: view.label('q_max'),
  }
  return [
    { kind: 'arrow', from: [width + reach, plane / 3], to: [width, plane / 3], label: view.label('P_h') },
    { kind: 'arrow', from: [stand, base + reach], to: [stand, 0], label: view.label('V_b') },
    load,
  ]
}

const sizes = (view: SketchView, { foot, width, base, top }: Section): readonly Shape[] => [
  { kind: 'dimension', from: [0, -0.35 * width], to: [width, -0.35 * width], off: -14, label: view.label('B') },
  {
    kind: 'dimension',
    from: [foot - 0.15 * width, base],
    to: [foot - 0.15 * width, top],
    off: 14,
    label: view.label('stem'),
  },
]
