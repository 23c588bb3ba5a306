import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'
import { diagramLabel, diagramShapes, fixedSupport, turningSupport } from './strip-diagrams.ts'

const [moments, shears, tall, size] = [-0.52, -1.16, 0.22, 0.05]

/** Chart: the strip with its ends and load, moments on the side of the tension, shears. All along a span of one unit. */
export function oneWaySlabSketch(view: SketchView): Drawing {
  const ends = view.word('ends')
  return {
    says: `Strip of ${view.shown('span')} under ${view.shown('load')}, ends ${ends}. Hogging moment ${view.shown('M_sup')}, largest sagging moment ${view.shown('M_span')}; shears ${view.shown('V_left')} at the left end and ${view.shown('V_right')} at the right.`,
    toScale: false,
    shapes: [
      { kind: 'load', from: [0, 0.03], to: [1, 0.03], start: 0.12, end: 0.12, towards: [0, -1] },
      {
        kind: 'line',
        points: [
          [0, 0],
          [1, 0],
        ],
        weight: 'thick',
      },
      ends === 'simple' ? turningSupport(0, size) : fixedSupport(0, size, -1),
      ...rightEnd(ends),
      { kind: 'label', at: [0.5, 0.17], label: view.label('load'), anchor: 'middle' },
      { kind: 'dimension', from: [0, -0.08], to: [1, -0.08], off: -6, label: view.label('span') },
      ...momentShapes(view, ends),
      ...shearShapes(view),
    ],
  }
}

function rightEnd(ends: string): readonly Shape[] {
  if (ends === 'cantilever') return []
  return [ends === 'fixed' ? fixedSupport(1, size, 1) : turningSupport(1, size)]
}

// Sagging is drawn downwards: M(x) = M_sup + V_left x - w x^2 / 2, in units of the largest moment.
function momentShapes(view: SketchView, ends: string): readonly Shape[] {
  const [span, load] = [view.number('span'), view.number('load')]
  const most = Math.max(Math.abs(view.number('M_sup')), view.number('M_span'))
  const at = (x: number) => view.number('M_sup') + view.number('V_left') * x - (load * x * x) / 2
  const line = Array.from({ length: 33 }, (_, i): Point => [i / 32, -at((i / 32) * span) / most])
  const sagging =
    ends === 'cantilever' ? [] : [diagramLabel([view.number('x_m') / span, moments + 0.03], view.label('M_span'))]
  const hogging = ends === 'simple' ? [] : [diagramLabel([0.02, moments + tall + 0.02], view.label('M_sup'), 'start')]
  return [...diagramShapes({ at: moments, line, from: 0, to: 1 }, tall), ...sagging, ...hogging]
}

function shearShapes(view: SketchView): readonly Shape[] {
  const [left, right] = [view.number('V_left'), view.number('V_right')]
  const most = Math.max(left, right)
  const line: readonly Point[] = [
    [0, 0],
    [0, left / most],
    [1, -right / most],
    [1, 0],
  ]
  return [
    ...diagramShapes({ at: shears, line, from: 0, to: 1 }, tall),
    diagramLabel([0.02, shears + tall + 0.02], view.label('V_left'), 'start'),
    diagramLabel([0.98, shears - tall - 0.09], view.label('V_right'), 'end'),
  ]
}
