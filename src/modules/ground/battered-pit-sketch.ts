import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

/** Section across the pit, to scale; the structure's own height is not known here and is drawn broken off. */
export function batteredPitSketch(view: SketchView): Drawing {
  const half = view.number('base_width') / 2
  const edge = view.number('top_width') / 2
  const depth = view.number('depth')
  const bank = edge + 0.25 * half
  return {
    says:
      `Section across the pit, to scale: ${view.shown('depth')} deep, ${view.shown('base_width')} wide at formation and ` +
      `${view.shown('top_width')} wide at ground level, sides at ${view.shown('batter_angle')} above the horizontal.`,
    toScale: true,
    shapes: [
      {
        kind: 'ground',
        points: [
          [-bank, 0],
          [-edge, 0],
          [-half, -depth],
          [half, -depth],
          [edge, 0],
          [bank, 0],
        ],
      },
      ...structure(view, depth),
      measure(view, 'top_width', { from: [-edge, 0], to: [edge, 0], off: 16 }),
      measure(view, 'base_width', { from: [-half, -depth], to: [half, -depth], off: -18 }),
      measure(view, 'depth', { from: [bank, -depth], to: [bank, 0], off: -14 }),
      ...waterLevel(view, { bank, depth }),
      {
        kind: 'label',
        at: [half + 0.6 * (edge - half) - 0.06 * half, -0.4 * depth],
        anchor: 'end',
        label: view.label('batter_angle'),
      },
    ],
  }
}

/** The groundwater beside the pit, where it stands within the drawing. */
function waterLevel(view: SketchView, of: { bank: number; depth: number }): readonly Shape[] {
  const level = view.number('water_depth')
  if (!(level < 1.2 * of.depth) || level < -0.3 * of.depth) return []
  return [{ kind: 'level', at: [-of.bank, -level], label: view.label('water_depth'), side: 'left', water: true }]
}

const measure = (view: SketchView, name: string, at: { from: Point; to: Point; off: number }): Shape => ({
  kind: 'dimension',
  ...at,
  label: view.label(name),
})

function structure(view: SketchView, depth: number): readonly Shape[] {
  const half = view.number('plan_width') / 2
  const points: readonly Point[] = [
    [-half, -depth],
    [-half, -0.7 * depth],
    [half, -0.7 * depth],
    [half, -depth],
  ]
  return [
    { kind: 'line', weight: 'thin', dashed: true, points },
    measure(view, 'plan_width', { from: [-half, -0.7 * depth], to: [half, -0.7 * depth], off: 6 }),
  ]
}
