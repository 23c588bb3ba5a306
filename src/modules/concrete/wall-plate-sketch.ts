import type { EdgeKind } from '../numerics/plate-axis.ts'
import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'
import { hatching, type Side } from './edge-shapes.ts'
import { type WallWord, wallEdges } from './wall-plate-edges.ts'

/** Elevation of the wall: fixed edges hatched, a free edge dashed, moments where they act, the pressure beside it. */
export function wallPlateSketch(view: SketchView): Drawing {
  const [a, b] = [view.number('height'), view.number('width')]
  const word = view.word('edges') as WallWord
  return {
    says: `Elevation of a wall ${view.shown('height')} high and ${view.shown('width')} wide (${word}; fixed edges hatched, a free edge dashed), pressure ${view.shown('q_t')} at the top and ${view.shown('q_b')} at the base. Hogging moments ${fixedAt(view, word).join(', ')}; sagging moments ${view.shown('M_vert')} vertically and ${view.shown('M_hor')} horizontally.`,
    toScale: true,
    shapes: [...edges(word, a, b), ...moments(view, a, b), ...pressure(view, a, b), ...sizes(view, a, b)],
  }
}

const fixedAt = (view: SketchView, word: WallWord): readonly string[] => {
  const { top, sides, base } = wallEdges[word]
  return [
    ...(base === 'fixed' ? [`${view.shown('M_base')} at the base`] : []),
    ...(sides === 'fixed' ? [`${view.shown('M_side')} at the sides`] : []),
    ...(top === 'fixed' ? [`${view.shown('M_top')} at the top`] : []),
  ]
}

function edges(word: WallWord, a: number, b: number): readonly Shape[] {
  const { top, sides, base } = wallEdges[word]
  const all: readonly (Side & { readonly kind: EdgeKind })[] = [
    { from: [0, a], to: [b, a], out: [0, 1], kind: top },
    { from: [0, 0], to: [b, 0], out: [0, -1], kind: base },
    { from: [0, 0], to: [0, a], out: [-1, 0], kind: sides },
    { from: [b, 0], to: [b, a], out: [1, 0], kind: sides },
  ]
  return all.flatMap(side => [
    {
      kind: 'line',
      points: [side.from, side.to],
      weight: side.kind === 'fixed' ? 'thick' : 'medium',
      ...(side.kind === 'free' ? { dashed: true } : {}),
    } as const,
    ...(side.kind === 'fixed' ? hatching(side, 0.05 * Math.min(a, b)) : []),
  ])
}

function moments(view: SketchView, a: number, b: number): readonly Shape[] {
  const { top, sides, base } = wallEdges[view.word('edges') as WallWord]
  const at = (name: string, place: Point, anchor: 'start' | 'middle' = 'middle'): Shape => ({
    kind: 'label',
    at: place,
    label: view.label(name),
    anchor,
  })
  return [
    ...(base === 'fixed' ? [at('M_base', [b / 2, 0.07 * a])] : []),
    ...(top === 'fixed' ? [at('M_top', [b / 2, 0.95 * a])] : []),
    ...(sides === 'fixed' ? [at('M_side', [0.03 * b, 0.2 * a], 'start')] : []),
    at('M_vert', [b / 2, 0.36 * a]),
    at('M_hor', [b / 2, 0.66 * a]),
  ]
}

// The pressure stands to the right of the wall, largest at the base.
function pressure(view: SketchView, a: number, b: number): readonly Shape[] {
  const [left, wide] = [b + 0.2 * a, 0.25 * a]
  const share = view.number('q_t') / view.number('q_b')
  return [
    { kind: 'load', from: [left + wide, a], to: [left + wide, 0], start: share * wide, end: wide, towards: [1, 0] },
    { kind: 'label', at: [left + wide, 1.06 * a], label: view.label('q_t'), anchor: 'middle' },
    { kind: 'label', at: [left + wide, -0.12 * a], label: view.label('q_b'), anchor: 'middle' },
  ]
}

function sizes(view: SketchView, a: number, b: number): readonly Shape[] {
  const clear = 0.08 * Math.min(a, b)
  return [
    { kind: 'dimension', from: [0, -clear], to: [b, -clear], off: -6, label: view.label('width') },
    { kind: 'dimension', from: [-clear, 0], to: [-clear, a], off: 6, label: view.label('height') },
  ]
}
