import type { Drawing, Shape, SketchView } from '../sketch.ts'

/** Cross-section of the strip, tension face at the bottom: bars at their spacing, depth of the neutral axis. */
export function flexureIs456Sketch(view: SketchView): Drawing {
  const [b, thickness, d] = [view.number('width'), view.number('thickness'), view.number('d')]
  const level = thickness - d
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
    says: `Section ${view.shown('thickness')} thick with bars ${view.shown('bar_size')} at ${view.shown('spacing')}, effective depth ${view.shown('d')}; steel ${view.shown('A_st')} on ${view.shown('width')}, neutral axis at ${view.shown('x_u')}, capacity ${view.shown('M_R')}.`,
    toScale: true,
    shapes: [outline, ...compressed(view, b, thickness), ...bars(view, b, level), ...sizes(view, b, level)],
  }
}

function compressed(view: SketchView, b: number, thickness: number): readonly Shape[] {
  const axis = thickness - view.number('x_u')
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
    { kind: 'label', at: [0.02 * b, axis - 0.08 * thickness], label: view.label('x_u'), anchor: 'start' },
  ]
}

function bars(view: SketchView, b: number, level: number): readonly Shape[] {
  const [size, spacing] = [view.number('bar_size'), view.number('spacing')]
  const count = Math.min(60, Math.max(1, Math.floor((b - size) / spacing) + 1))
  const first = (b - (count - 1) * spacing) / 2
  const round = (x: number): Shape => ({
    kind: 'polygon',
    points: Array.from({ length: 12 }, (_, i) => {
      const turn = (i * Math.PI) / 6
      return [x + (size / 2) * Math.cos(turn), level + (size / 2) * Math.sin(turn)] as const
    }),
    fill: 'void',
  })
  return Array.from({ length: count }, (_, i) => round(first + i * spacing))
}

const sizes = (view: SketchView, b: number, level: number): readonly Shape[] => [
  {
    kind: 'dimension',
    from: [b, view.number('thickness')],
    to: [b, level],
    off: 8,
    label: view.label('d'),
  },
  { kind: 'dimension', from: [0, 0], to: [0, view.number('thickness')], off: 8, label: view.label('thickness') },
  { kind: 'dimension', from: [0, 0], to: [b, 0], off: -8, label: view.label('width') },
  { kind: 'label', at: [b / 2, level + 0.14 * view.number('thickness')], label: view.label('A_st'), anchor: 'middle' },
]
