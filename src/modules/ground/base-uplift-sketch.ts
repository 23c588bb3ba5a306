import { type Drawing, type Point, rectangle, type Shape, type SketchView, stroke } from '../sketch.ts'

interface Section {
  readonly depth: number
  readonly top: number
  /** Half the width of the pit as it is drawn, and half that of the drawing: no input has either. */
  readonly half: number
  readonly edge: number
  /** How far the water-bearing ground is drawn below its top. */
  readonly under: number
}

/** Section through the pit, depths to scale: the plug left under it, the water-bearing ground and a standpipe in it. */
export function baseUpliftSketch(view: SketchView): Drawing {
  const [depth, top] = [view.number('depth'), view.number('aquifer_top')]
  const section: Section = { depth, top, half: 0.55 * top, edge: 1.2 * top, under: 0.32 * top }
  return {
    says:
      `Section through the pit, depths to scale, widths without meaning: formation at ${view.shown('depth')}, ${view.shown('plug')} of tight ground left over ` +
      `water-bearing ground at ${view.shown('aquifer_top')}; its water rises to ${view.shown('water_depth')} below ground and presses with ${view.shown('u_a')} against ${view.shown('sigma_a')}.`,
    toScale: true,
    shapes: [
      { kind: 'polygon', fill: 'soil', points: tightGround(section) },
      rectangle('water', [-section.edge, section.edge], [-top, -top - section.under]),
      { kind: 'ground', points: surface(section) },
      ...pondedWater(view, section),
      ...standpipe(view, section),
      ...balance(view, section),
      ...depths(view, section),
    ],
  }
}

const surface = ({ depth, half, edge }: Section): readonly Point[] => [
  [-edge, 0],
  [-half, 0],
  [-half, -depth],
  [half, -depth],
  [half, 0],
  [edge, 0],
]

const tightGround = (section: Section): readonly Point[] => [
  ...surface(section),
  [section.edge, -section.top],
  [-section.edge, -section.top],
]

function pondedWater(view: SketchView, { depth, half }: Section): readonly Shape[] {
  const height = view.number('water_in_pit')
  if (!(height > 0)) return []
  return [
    rectangle('water', [-half, half], [height - depth, -depth]),
    {
      kind: 'dimension',
      from: [0.7 * half, -depth],
      to: [0.7 * half, height - depth],
      off: 0,
      label: view.label('water_in_pit'),
    },
  ]
}

/** A tube from the water-bearing ground to above its water and the ground, and the level in it. */
function standpipe(view: SketchView, { top, half, edge }: Section): readonly Shape[] {
  const water = -view.number('water_depth')
  const [x, wide] = [-(half + edge) / 2, 0.015 * top]
  const [foot, head] = [-1.1 * top, Math.max(0, water) + 0.06 * top]
  return [
    rectangle('void', [x - wide, x + wide], [head, foot]),
    rectangle('water', [x - wide, x + wide], [water, foot]),
    ...[x - wide, x + wide].map(side =>
      stroke('medium', [
        [side, head],
        [side, foot],
      ]),
    ),
    { kind: 'level', at: [x - wide, water], label: view.label('water_depth'), side: 'left', water: true },
  ]
}

/** What the plug weighs down with and what the water presses up with, at the top of the water-bearing ground. */
const balance = (view: SketchView, { depth, top, half, under }: Section): readonly Shape[] => [
  { kind: 'arrow', from: [-0.5 * half, -depth], to: [-0.5 * half, -top], label: view.label('sigma_a') },
  { kind: 'arrow', from: [-0.5 * half, -top - 0.9 * under], to: [-0.5 * half, -top], label: view.label('u_a') },
]

const depths = (view: SketchView, { depth, top, edge, under }: Section): readonly Shape[] => [
  { kind: 'dimension', from: [edge, -depth], to: [edge, 0], off: -8, label: view.label('depth') },
  { kind: 'dimension', from: [edge, -top], to: [edge, -depth], off: -8, label: view.label('plug') },
  { kind: 'level', at: [-edge, -top], label: view.label('aquifer_top'), side: 'left' },
  { kind: 'label', at: [edge, -top - 0.5 * under], anchor: 'end', label: { text: 'water-bearing ground' } },
]
