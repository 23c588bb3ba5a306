import type { Drawing, Label, Point, Shape, SketchView } from '../sketch.ts'
import { diagramLabel, diagramShapes, turningSupport } from './strip-diagrams.ts'

const [moments, shears, tall, size] = [-0.8, -1.95, 0.28, 0.06]
/** How far the middle of a label stands off the largest ordinate. */
const clear = 0.15

/** Names of the values of a continuous strip; a value that a strip of so few spans does not have is not evaluated. */
export interface StripNames {
  readonly edge: string
  readonly end: string
  readonly first: string
  readonly middle: string
  readonly other: string
  readonly vEnd: string
  readonly vOuter: string
  readonly vInner: string
}

/**
 * Chart: the end of a continuous strip, an end span and the next, with the moments to design for on the side of the tension and the
 * shears. The ordinates are the largest of their place: between them the lines only lead the eye.
 */
export const continuousStripSketch =
  (names: StripNames) =>
  (view: SketchView): Drawing => {
    const goesOn = Number.isFinite(view.number(names.middle))
    return {
      says: says(view, names, goesOn),
      toScale: false,
      shapes: [...strip(view, goesOn), ...momentShapes(view, names, goesOn), ...shearShapes(view, names, goesOn)],
    }
  }

const says = (view: SketchView, names: StripNames, goesOn: boolean): string =>
  `End of a continuous strip, spans ${view.shown('span')}: sagging moment ${view.shown(names.end)} in the end span, hogging moment ${view.shown(names.first)} at the first interior support${goesOn ? `, sagging moment ${view.shown(names.middle)} in interior spans` : ''}; shears ${view.shown(names.vEnd)} at the end support, ${view.shown(names.vOuter)} and ${view.shown(names.vInner)} at the first interior support.`

function strip(view: SketchView, goesOn: boolean): readonly Shape[] {
  return [
    { kind: 'load', from: [0, 0.03], to: [2, 0.03], start: 0.2, end: 0.2, towards: [0, -1] },
    {
      kind: 'line',
      points: [
        [0, 0],
        [goesOn ? 2.15 : 2, 0],
      ],
      weight: 'thick',
    },
    ...[0, 1, 2].map(x => turningSupport(x, size)),
    { kind: 'dimension', from: [0, 0.26], to: [1, 0.26], off: 6, label: view.label('span') },
  ]
}

// Hogging (negative) is drawn upwards. Two straight lines a half span: the values stand at their places only.
function momentShapes(view: SketchView, names: StripNames, goesOn: boolean): readonly Shape[] {
  const far = goesOn ? names.other : names.edge
  const places = [names.edge, names.end, names.first, goesOn ? names.middle : names.end, far]
  const value = (name: string) => (Number.isFinite(view.number(name)) ? view.number(name) : view.number(names.first))
  const most = Math.max(...places.map(name => Math.abs(value(name))))
  const line = places.map((name, i): Point => [i / 2, -value(name) / most])
  const above = moments + tall + clear
  return [
    ...diagramShapes({ at: moments, line, from: 0, to: 2 }, tall),
    ...(view.number(names.edge) === 0 ? [] : [diagramLabel([0.03, above], symbolOf(view, names.edge), 'start')]),
    diagramLabel([0.5, moments - tall - clear], view.label(names.end)),
    diagramLabel([1, above], view.label(names.first)),
    ...(goesOn ? [diagramLabel([1.5, moments - tall - clear], view.label(names.middle))] : []),
    ...(Number.isFinite(view.number(names.other))
      ? [diagramLabel([1.97, above], symbolOf(view, names.other), 'end')]
      : []),
  ]
}

/** The symbol alone: its value stands in the working, and would crowd the others here. */
const symbolOf = (view: SketchView, name: string): Label => ({ symbol: view.label(name).symbol ?? name })

function shearShapes(view: SketchView, names: StripNames, goesOn: boolean): readonly Shape[] {
  const [end, outer, inner] = [names.vEnd, names.vOuter, names.vInner].map(name => view.number(name)) as [
    number,
    number,
    number,
  ]
  const most = Math.max(end, outer, inner)
  const far = goesOn ? inner : end
  const line: readonly Point[] = [
    [0, 0],
    [0, end / most],
    [1, -outer / most],
    [1, (goesOn ? inner : outer) / most],
    [2, -far / most],
    [2, 0],
  ]
  return [
    ...diagramShapes({ at: shears, line, from: 0, to: 2 }, tall),
    diagramLabel([0, shears + tall + clear], view.label(names.vEnd), 'start'),
    diagramLabel([0.97, shears - tall - clear], view.label(names.vOuter), 'end'),
    ...(goesOn ? [diagramLabel([1.03, shears + tall + clear], view.label(names.vInner), 'start')] : []),
  ]
}
