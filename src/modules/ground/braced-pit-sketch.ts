import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

/** Section of one side of the pit: wall, struts with their loads inwards, and the envelope outside. */
export function bracedPitSketch(view: SketchView): Drawing {
  const depth = view.number('depth')
  const levels = strutLevels(view)
  return {
    says:
      `One side of the pit, ${view.shown('depth')} deep, with its envelope of ${view.shown('p_e')} outside and ` +
      `${levels.length} levels of struts inside; the most loaded strut bears ${view.shown('N_max')}.`,
    toScale: true,
    shapes: [
      {
        kind: 'ground',
        points: [
          [-0.9 * depth, -depth],
          [0, -depth],
          [0, 0],
          [0.75 * depth, 0],
        ],
      },
      { kind: 'line', weight: 'thick', points: wall(depth) },
      { kind: 'polygon', fill: 'pressure', points: envelope(view, depth) },
      { kind: 'line', weight: 'thin', points: envelope(view, depth) },
      { kind: 'label', at: [0.44 * depth, -0.5 * depth], anchor: 'start', label: view.label('p_e') },
      ...levels.flatMap(({ z, shown }) => strut(z, shown, depth)),
      {
        kind: 'dimension',
        from: [-0.9 * depth, -depth],
        to: [-0.9 * depth, 0],
        off: 8,
        label: view.label('depth'),
      },
    ],
  }
}

const wall = (depth: number): readonly Point[] => [
  [0, 0],
  [0, -1.15 * depth],
]

interface Level {
  readonly z: number
  readonly shown: string
}

/** Every level with the load of its strut: a row holds what the strut above it is made for. */
function strutLevels(view: SketchView): readonly Level[] {
  const above = view.rows('struts').map(row => ({ z: row.number('z_up'), shown: row.shown('N_des') }))
  return [...above, { z: view.number('z_low'), shown: view.shown('N_des_low') }]
}

function envelope(view: SketchView, depth: number): readonly Point[] {
  const [width, ramp] = [0.4 * depth, view.number('ramp')]
  const ground = view.word('ground')
  const [top, foot] = [ground === 'sand' ? 0 : ramp, ground === 'stiff clay' ? ramp : 0]
  return [
    [0, 0],
    [width, -top],
    [width, foot - depth],
    [0, -depth],
  ]
}

const strut = (z: number, shown: string, depth: number): readonly Shape[] => [
  { kind: 'arrow', from: [-0.35 * depth, -z], to: [0, -z] },
  { kind: 'label', at: [-0.38 * depth, -z], anchor: 'end', label: { value: shown } },
]
