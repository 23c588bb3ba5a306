import { type Drawing, rectangle, type Shape, type SketchView, stroke } from '../sketch.ts'

/** A scheme, not to scale: the sump with its levels, the pump, the rising main with its check valve, and the outlet. */
export function drawPumpedDrain(view: SketchView): Drawing {
  return {
    says: `Scheme, not to scale: water of ${view.shown('inflow')} runs to the sump; a pump lifts ${view.shown('pump_flow')} through a rising main of ${view.shown('bore')} bore and ${view.shown('run')} length, ${view.shown('static_head')} up. The head is ${view.shown('H')}.`,
    toScale: false,
    scheme: true,
    shapes: [...sump, ...risingMain, ...values(view)],
  }
}

const sump: readonly Shape[] = [
  rectangle('void', [0, 4], [0, -3]),
  rectangle('water', [0, 4], [-1.4, -3]),
  stroke('thick', [
    [-2, 0],
    [0, 0],
    [0, -3],
    [4, -3],
    [4, 0],
    [9, 0],
  ]),
  stroke(
    'thin',
    [
      [0, -2.5],
      [4, -2.5],
    ],
    { dashed: true },
  ),
  { kind: 'label', at: [0.2, -1.35], label: { text: 'start' }, anchor: 'start' },
  { kind: 'label', at: [0.2, -2.45], label: { text: 'stop' }, anchor: 'start' },
]

/** The pump, its main and the check valve in it. */
const risingMain: readonly Shape[] = [
  rectangle('concrete', [2.7, 3.3], [-2.95, -2.6]),
  stroke('medium', [
    [3, -2.6],
    [3, 4],
    [8.4, 4],
  ]),
  stroke('medium', [
    [2.75, 1],
    [3.25, 1.4],
    [3.25, 1],
    [2.75, 1.4],
    [2.75, 1],
  ]),
  { kind: 'label', at: [3.5, 1.2], label: { text: 'check valve' }, anchor: 'start' },
]

const values = (view: SketchView): readonly Shape[] => [
  { kind: 'arrow', from: [8.4, 4], to: [9.4, 4], label: view.label('pump_flow') },
  { kind: 'arrow', from: [-2, 0.6], to: [0.4, 0.6], label: view.label('inflow') },
  { kind: 'dimension', from: [7, -2.5], to: [7, 4], off: -12, label: view.label('static_head') },
  { kind: 'label', at: [5.6, 4.3], label: view.label('bore'), anchor: 'middle' },
  { kind: 'label', at: [-0.2, -2], label: view.label('working_volume'), anchor: 'end' },
  { kind: 'label', at: [5.2, 2.6], label: view.label('H'), anchor: 'middle' },
]
