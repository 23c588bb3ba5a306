import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

const decadesOf = (view: SketchView, name: string): number => Math.log10(view.number(name) / 3600)

/** Hours in powers of ten between two decades. */
const hourMarks = (from: number, to: number, floor: number): readonly Shape[] =>
  Array.from({ length: Math.floor(to) - Math.ceil(from) + 1 }, (_, i) => Math.ceil(from) + i).flatMap(
    (decade): readonly Shape[] => [
      {
        kind: 'line',
        points: [
          [decade, floor],
          [decade, 0],
        ],
        weight: 'thin',
        dashed: true,
      },
      { kind: 'label', at: [decade, floor], label: { text: `${10 ** decade} h` }, anchor: 'middle' },
    ],
  )

/** A chart, both scales in powers of ten: rate outside over the stay, falling along a straight line. */
export function drawFalloutDecay(view: SketchView): Drawing {
  const [from, to] = [decadesOf(view, 'enter_at'), decadesOf(view, 'leave_at')]
  const fall = -Math.log10(view.number('k_fall'))
  const floor = 1.15 * fall
  const line: readonly Point[] = [
    [from, 0],
    [to, fall],
  ]
  return {
    says: `Dose rate outside against time after the detonation, both in powers of ten: from ${view.shown('R_a')} at ${view.shown('enter_at')} to ${view.shown('R_b')} at ${view.shown('leave_at')}. The dose over the stay is ${view.shown('D_out')} outside and ${view.shown('D_in')} inside.`,
    toScale: false,
    shapes: [
      { kind: 'polygon', points: [...line, [to, floor], [from, floor]], fill: 'pressure' },
      ...hourMarks(from, to, floor),
      { kind: 'line', points: line, weight: 'thick' },
      { kind: 'label', at: [from, 0], label: view.label('R_a'), anchor: 'start' },
      { kind: 'label', at: [to, fall], label: view.label('R_b'), anchor: 'end' },
      { kind: 'label', at: [(from + 2 * to) / 3, 0.3 * fall], label: view.label('D_out'), anchor: 'middle' },
      { kind: 'label', at: [(from + 2 * to) / 3, 0.15 * fall], label: view.label('D_in'), anchor: 'middle' },
    ],
  }
}
