import type { Drawing, Fill, Point, Shape, SketchView } from '../sketch.ts'

/** How each material of a stack is drawn. */
export const materialFill: Readonly<Record<string, Fill>> = {
  'packed earth': 'soil',
  concrete: 'concrete',
  brick: 'concrete',
  steel: 'lining',
  lead: 'lining',
  wood: 'lining',
  water: 'water',
}

function bands(view: SketchView, width: number): readonly Shape[] {
  let depth = 0
  return view.rows('layers').flatMap((row): readonly Shape[] => {
    const [top, base] = [-depth, -depth - row.number('thickness')]
    depth += row.number('thickness')
    if (top === base) return []
    const points: readonly Point[] = [
      [0, top],
      [width, top],
      [width, base],
      [0, base],
    ]
    return [
      { kind: 'polygon', points, fill: materialFill[row.word('material')] ?? 'none' },
      { kind: 'dimension', from: [width, top], to: [width, base], off: 14, label: row.label('thickness') },
    ]
  })
}

const rays = (view: SketchView, at: { person: Point; reach: number; middle: number }): readonly Shape[] => {
  const { person, reach, middle } = at
  const starts = view.word('source') === 'plane' ? [middle - reach, middle, middle + reach] : [middle]
  return starts.map(x => ({ kind: 'arrow', from: [x, 0], to: person }))
}

/** Section through the stack, to scale in depth and width: source on top, person below. */
export function drawGammaSlab(view: SketchView): Drawing {
  const depth = view.number('t_all')
  const width = 1.6 * depth
  const middle = width / 2
  const person: Point = [middle, -1.3 * depth]
  const plane = view.word('source') === 'plane'
  return {
    says: `Section through the stack, to scale: ${view.rows('layers').length} layers, ${view.shown('t_all')} thick in all, ${view.shown('b')} mean free paths; ${plane ? 'emitters all over the top face' : 'the source above'}, the person below. Share left: ${view.shown('T')}, protection factor ${view.shown('P')}.`,
    toScale: true,
    shapes: [
      ...bands(view, width),
      ...(plane
        ? [
            {
              kind: 'line' as const,
              points: [
                [0, 0],
                [width, 0],
              ] as const,
              weight: 'thick' as const,
            },
          ]
        : []),
      ...rays(view, { person, reach: 0.4 * width, middle }),
      { kind: 'label', at: [0, 0.08 * depth], label: { text: 'source' }, anchor: 'start' },
      { kind: 'label', at: [middle, -1.45 * depth], label: view.label('P'), anchor: 'middle' },
    ],
  }
}
