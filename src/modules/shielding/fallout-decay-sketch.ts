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

/** The rate outside or inside over the stay: on these scales a straight line. */
const rateLine = (points: readonly Point[]): Shape => ({ kind: 'line', points, weight: 'thick' })

/** A chart, both scales in powers of ten: rate outside over the stay and, below it, the rate inside. */
export function drawFalloutDecay(view: SketchView): Drawing {
  const [from, to] = [decadesOf(view, 'enter_at'), decadesOf(view, 'leave_at')]
  const fall = -Math.log10(view.number('k_fall'))
  const inside = -Math.log10(view.number('protection_factor'))
  const floor = 1.1 * (fall + inside)
  const middle = (from + to) / 2
  const before = from - 0.02 * (to - from)
  return {
    says: `Dose rate against time after the detonation, both in powers of ten: outside from ${view.shown('R_a')} at ${view.shown('enter_at')} to ${view.shown('R_b')} at ${view.shown('leave_at')}, inside from ${view.shown('R_in')}. The dose over the stay is ${view.shown('D_out')} outside and ${view.shown('D_in')} inside.`,
    toScale: false,
    shapes: [
      {
        kind: 'line',
        weight: 'medium',
        points: [
          [from, 0],
          [from, floor],
          [to, floor],
        ],
      },
      ...hourMarks(from, to, floor),
      rateLine([
        [from, 0],
        [to, fall],
      ]),
      ...(inside < 0
        ? [
            rateLine([
              [from, inside],
              [to, fall + inside],
            ]),
          ]
        : []),
      { kind: 'label', at: [before, 0], label: view.label('R_a'), anchor: 'end' },
      { kind: 'label', at: [to + 0.02 * (to - from), fall], label: view.label('R_b'), anchor: 'start' },
      { kind: 'label', at: [before, inside], label: view.label('R_in'), anchor: 'end' },
      { kind: 'label', at: [middle, 0.35 * fall], label: view.label('D_out'), anchor: 'start' },
      {
        kind: 'label',
        at: [from + 0.03 * (to - from), inside + 0.75 * fall],
        label: view.label('D_in'),
        anchor: 'start',
      },
    ],
  }
}
