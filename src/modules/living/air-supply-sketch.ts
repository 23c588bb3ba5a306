import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

const outline: readonly Point[] = [
  [0, 0],
  [8, 0],
  [8, 3],
  [0, 3],
]

const people = (view: SketchView): string => `${view.number('N_all')} people`

function flows(view: SketchView): readonly Shape[] {
  return [
    { kind: 'arrow', from: [-3, 2.4], to: [0.6, 2.4], label: view.label('supply') },
    { kind: 'label', at: [-3, 1.9], label: view.label('outdoor_co2'), anchor: 'start' },
    { kind: 'arrow', from: [7.4, 0.6], to: [11, 0.6], label: view.label('c_s') },
  ]
}

function inside(view: SketchView): readonly Shape[] {
  return [
    { kind: 'label', at: [4, 2.2], label: { text: people(view) }, anchor: 'middle' },
    { kind: 'label', at: [4, 1.6], label: view.label('G'), anchor: 'middle' },
    { kind: 'label', at: [4, 1], label: view.label('q_s'), anchor: 'middle' },
  ]
}

/** A scheme, not to scale: fresh air in, people in the room, stale air out. */
export function drawAirSupply(view: SketchView): Drawing {
  return {
    says: `Fresh air of ${view.shown('supply')} enters a room with ${people(view)}, who give off ${view.shown('G')} of carbon dioxide; it leaves with ${view.shown('c_s')} of carbon dioxide. Needed: ${view.shown('Q_req')}.`,
    toScale: false,
    scheme: true,
    shapes: [{ kind: 'polygon', points: outline, fill: 'void' }, ...inside(view), ...flows(view)],
  }
}
