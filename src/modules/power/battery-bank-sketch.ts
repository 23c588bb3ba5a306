import type { Drawing, Shape, SketchView } from '../sketch.ts'

const day = 86400
/** Height of a full bank in the chart's own units, in which a day is one unit of width. */
const full = 1

const level = (at: number, width: number): Shape => ({
  kind: 'line',
  weight: 'thin',
  dashed: true,
  points: [
    [0, at],
    [width, at],
  ],
})

/** A chart: state of charge against days without charging, with the lowest allowed state and the days wanted. */
export function drawBatteryBank(view: SketchView): Drawing {
  const wanted = view.number('autonomy') / day
  const lasts = view.number('t_hold') / day
  const floor = full - view.number('D_use')
  const end = full - view.number('D_end')
  const width = 1.1 * Math.max(wanted, lasts)
  return {
    says: `State of charge falling from full over the days without charging: after ${view.shown('autonomy')} the depth of discharge is ${view.shown('D_end')}, and the allowed depth of ${view.shown('D_use')} is reached after ${view.shown('t_hold')}.`,
    toScale: false,
    shapes: [
      {
        kind: 'line',
        weight: 'medium',
        points: [
          [0, full],
          [0, 0],
          [width, 0],
        ],
      },
      level(floor, width),
      {
        kind: 'line',
        weight: 'thick',
        points: [
          [0, full],
          [lasts, floor],
        ],
      },
      {
        kind: 'line',
        weight: 'thin',
        points: [
          [wanted, 0],
          [wanted, Math.max(end, 0)],
        ],
      },
      { kind: 'label', at: [0, full], label: { text: 'full' }, anchor: 'end' },
      { kind: 'label', at: [0, 0], label: { text: 'empty' }, anchor: 'end' },
      { kind: 'label', at: [width * 0.02, floor], label: view.label('D_use'), anchor: 'start' },
      { kind: 'label', at: [wanted, end], label: view.label('D_end'), anchor: 'start' },
      { kind: 'label', at: [wanted, 0], label: view.label('autonomy'), anchor: 'middle' },
      { kind: 'label', at: [lasts, floor], label: view.label('t_hold'), anchor: 'end' },
    ],
  }
}
