import type { Drawing, Point, Shape } from '../modules/sketch.ts'
import { digitsOf, plainNumber } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import { unitText } from '../quantity/unit.ts'
import type { Swing, Swings } from './swings.ts'

/** As many bars as are drawn. */
const most = 15

/** Swings as bars about the value as written, the widest on top: filled towards the high end of the assumption's range, open towards the low. */
export function swingsDrawing({ measure, base, swings }: Swings): Drawing {
  const shown = swings.slice(0, most)
  const at = (si: number): number => inUnit(si, measure.unit)
  const ends = shown.flatMap(({ atFrom, atTo }) => [atFrom, atTo]).filter(Number.isFinite)
  const [low, high] = [Math.min(base, ...ends), Math.max(base, ...ends)].map(at) as [number, number]
  const unit = unitText(measure.unit)
  const says = `${measure.name} is ${shownNumber(at(base))} ${unit} as written`.trim()
  const widest = shown[0] ? `; ${shown[0].variable.entity.key} moves it most over its range` : ''
  const line: Shape = {
    kind: 'line',
    points: [
      [at(base), 0.6],
      [at(base), -shown.length - 0.4],
    ],
    weight: 'medium',
  }
  return {
    says: `${says}${widest}`,
    toScale: false,
    shapes: [
      ...shown.flatMap((swing, row) => barShapes({ swing, row, base, at }, low - 0.03 * (high - low))),
      line,
      label([at(base), -shown.length - 1], `${measure.name} = ${shownNumber(at(base))} ${unit}`.trim(), 'middle'),
      ...[low, high].map(x => label([x, 1], shownNumber(x), 'middle')),
    ],
  }
}

const shownNumber = (value: number): string => plainNumber(digitsOf(value, 4))

const label = (at: Point, text: string, anchor: 'start' | 'middle' | 'end'): Shape => ({
  kind: 'label',
  at,
  label: { text },
  anchor,
})

interface Bar {
  readonly swing: Swing
  readonly row: number
  readonly base: number
  readonly at: (si: number) => number
}

function barShapes({ swing, row, base, at }: Bar, left: number): Shape[] {
  const bar = (end: number, fill: 'none' | 'lining'): Shape[] => {
    if (!Number.isFinite(end) || end === base) return []
    const [a, b] = [at(base), at(end)]
    return [
      {
        kind: 'polygon',
        fill,
        points: [
          [a, -row - 0.35],
          [b, -row - 0.35],
          [b, -row + 0.35],
          [a, -row + 0.35],
        ],
      },
    ]
  }
  const lost = [swing.atFrom, swing.atTo].some(end => !Number.isFinite(end)) ? ' (refused at an end)' : ''
  return [
    ...bar(swing.atFrom, 'none'),
    ...bar(swing.atTo, 'lining'),
    label([left, -row], `${swing.variable.entity.key}${lost} `, 'end'),
  ]
}
