import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'
import { hatching, type Side } from './edge-shapes.ts'
import type { PanelWord } from './is456-table-26.ts'
import { panelEdges } from './panel-edges.ts'

/** Plan of the panel, long span across the page: continuous edges hatched, moments where they act. */
export function twoWaySlabSketch(view: SketchView): Drawing {
  const [lx, ly] = [view.number('short_span'), view.number('long_span')]
  const edges = view.word('edges')
  return {
    says: `Plan of a panel ${view.shown('short_span')} by ${view.shown('long_span')} (${edges}; continuous edges hatched). Sagging moments ${view.shown('M_x_mid')} along the short span and ${view.shown('M_y_mid')} along the long span; hogging moments ${view.shown('M_x_sup')} at long edges and ${view.shown('M_y_sup')} at short edges.`,
    toScale: true,
    shapes: [
      ...outline(lx, ly, edges as PanelWord),
      ...moments(view, lx, ly, edges as PanelWord),
      ...sizes(view, lx, ly),
    ],
  }
}

type PanelSide = Side & { readonly runsOn: boolean }

function sides(lx: number, ly: number, word: PanelWord): readonly PanelSide[] {
  const { long, short } = panelEdges[word]
  return [
    { from: [0, 0], to: [ly, 0], runsOn: long[0], out: [0, -1] },
    { from: [0, lx], to: [ly, lx], runsOn: long[1], out: [0, 1] },
    { from: [0, 0], to: [0, lx], runsOn: short[0], out: [-1, 0] },
    { from: [ly, 0], to: [ly, lx], runsOn: short[1], out: [1, 0] },
  ]
}

function outline(lx: number, ly: number, word: PanelWord): readonly Shape[] {
  const panel: Point[] = [
    [0, 0],
    [ly, 0],
    [ly, lx],
    [0, lx],
  ]
  const hatched = sides(lx, ly, word).filter(side => side.runsOn)
  const border = sides(lx, ly, word).map(
    (side): Shape => ({ kind: 'line', points: [side.from, side.to], weight: side.runsOn ? 'thick' : 'medium' }),
  )
  return [
    { kind: 'polygon', points: panel, fill: 'none' },
    ...border,
    ...hatched.flatMap(side => hatching(side, 0.06 * lx)),
  ]
}

/** Each arrow with its moment, clear of the other: the short span's at the left, the long span's below the middle. */
function moments(view: SketchView, lx: number, ly: number, word: PanelWord): readonly Shape[] {
  const { long, short } = panelEdges[word]
  const label = (name: string, at: Point, anchor: 'start' | 'middle' | 'end' = 'middle'): Shape => ({
    kind: 'label',
    at,
    label: view.label(name),
    anchor,
  })
  return [
    { kind: 'arrow', from: [0.12 * ly, 0.4 * lx], to: [0.12 * ly, 0.86 * lx] },
    label('M_x_mid', [0.16 * ly, 0.76 * lx], 'start'),
    { kind: 'arrow', from: [0.25 * ly, 0.4 * lx], to: [0.85 * ly, 0.4 * lx] },
    label('M_y_mid', [0.55 * ly, 0.5 * lx]),
    ...(long[0] ? [label('M_x_sup', [ly / 2, 0.08 * lx])] : []),
    ...(short[0] ? [label('M_y_sup', [0.02 * ly, 0.25 * lx], 'start')] : []),
  ]
}

// Dimension lines stand clear of the hatching.
function sizes(view: SketchView, lx: number, ly: number): readonly Shape[] {
  const clear = 0.08 * lx
  return [
    { kind: 'dimension', from: [0, -clear], to: [ly, -clear], off: -6, label: view.label('long_span') },
    { kind: 'dimension', from: [ly + clear, 0], to: [ly + clear, lx], off: -6, label: view.label('short_span') },
  ]
}
