import { type Drawing, type Point, rectangle, type Shape, type SketchView } from '../sketch.ts'

/** One bar cut across, as a ring of twelve corners. */
export function barDot([x, y]: Point, diameter: number): Shape {
  const points = Array.from({ length: 12 }, (_, i): Point => {
    const turn = (i * Math.PI) / 6
    return [x + (diameter / 2) * Math.cos(turn), y + (diameter / 2) * Math.sin(turn)]
  })
  return { kind: 'polygon', points, fill: 'void' }
}

/** Places of a row of bars, centred on a width. */
export function barPlaces(width: number, spacing: number, most = 30): readonly number[] {
  const count = Math.min(most, Math.max(2, Math.floor(width / spacing)))
  return Array.from({ length: count }, (_, i) => width / 2 + (i - (count - 1) / 2) * spacing)
}

/** Section across a row of bars, to scale: bars at their spacing over the cover. */
export function drawBarChoice(view: SketchView): Drawing {
  const [thickness, spacing, phi] = [view.number('thickness'), view.number('spacing'), view.number('phi')]
  const width = Math.max(2.4 * thickness, 3 * spacing)
  const level = view.number('cover') + phi / 2
  const places = barPlaces(width, spacing)
  const [first = 0, second = 0] = places
  return {
    says: `Section ${view.shown('thickness')} thick with bars of ${view.shown('phi')} at ${view.shown('spacing')}, cover ${view.shown('cover')}: ${view.shown('A_s')} provided, ${view.shown('A_need')} needed.`,
    toScale: true,
    shapes: [
      rectangle('concrete', [0, width], [0, thickness]),
      ...places.map(x => barDot([x, level], phi)),
      { kind: 'dimension', from: [0, 0], to: [0, thickness], off: 8, label: view.label('thickness') },
      { kind: 'dimension', from: [width, level - phi / 2], to: [width, 0], off: 8, label: view.label('cover') },
      { kind: 'dimension', from: [second, 0], to: [first, 0], off: 8, label: view.label('spacing') },
      { kind: 'label', at: [width / 2, 0.6 * thickness], label: view.label('A_s'), anchor: 'middle' },
    ],
  }
}
