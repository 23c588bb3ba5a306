import type { Drawing, Shape, SketchView } from '../sketch.ts'
import { type CivilDate, dayCount } from './civil-date.ts'

const day = 86400

const dateOf = (view: SketchView, mark: string): CivilDate => ({
  year: view.number(`${mark}year`),
  month: view.number(`${mark}month`),
  day: view.number(`${mark}day`),
})

const written = ({ year, month, day: date }: CivilDate): string =>
  `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`

/** A bar from today to the day it is due, or back from today where that day is past; its name before, its date behind. */
function rowOf(
  row: SketchView,
  index: number,
  span: { readonly from: number; readonly gap: number },
): readonly Shape[] {
  const left = row.number('t_left') / day
  const y = -index
  const at = (x: number, text: string, anchor: 'start' | 'end'): Shape => ({
    kind: 'label',
    at: [x, y - 0.1],
    label: { text },
    anchor,
  })
  return [
    {
      kind: 'polygon',
      fill: left < 0 ? 'concrete' : 'pressure',
      points: [
        [0, y - 0.3],
        [left, y - 0.3],
        [left, y + 0.3],
        [0, y + 0.3],
      ],
    },
    at(span.from - span.gap, nameOf(row, index), 'end'),
    at(Math.max(left, 0) + span.gap, written(dateOf(row, 'due_')), 'start'),
  ]
}

const nameOf = (row: SketchView, index: number): string => row.word('item') || `item ${index + 1}`

/** First days of the quarters between two counts of days from the register. */
function quarters(now: CivilDate, about: { from: number; to: number; low: number }): readonly Shape[] {
  const years = Math.ceil((about.to - about.from) / 365) + 2
  const every = years > 6 ? [1] : [1, 4, 7, 10]
  return Array.from({ length: years }, (_, i) => now.year - 1 + i)
    .flatMap(year => every.map(month => ({ year, month, day: 1 })))
    .map(date => ({ date, x: dayCount(date) - dayCount(now) }))
    .filter(({ x }) => x >= about.from && x <= about.to)
    .flatMap(({ date, x }): readonly Shape[] => [
      {
        kind: 'line',
        weight: 'thin',
        points: [
          [x, about.low - 0.4],
          [x, about.low],
        ],
      },
      {
        kind: 'label',
        at: [x, about.low - 1],
        label: { text: date.month === 1 ? `${date.year}` : `${date.month}` },
        anchor: 'middle',
      },
    ])
}

/** A calendar: each item as a bar from the day of the register to the day on which it is due. */
export function drawStoresRegister(view: SketchView): Drawing {
  const rows = view.rows('items')
  const now = dateOf(view, 'now_')
  const lefts = rows.map(row => row.number('t_left') / day)
  const [from, to] = [Math.min(...lefts, -10), Math.min(Math.max(...lefts, 90), 12 * 365)]
  const low = 0.4 - rows.length
  return {
    says: `Calendar from ${written(now)}: ${rows.map((row, i) => `${nameOf(row, i)} is due on ${written(dateOf(row, 'due_'))}`).join(', ')}.`,
    toScale: false,
    shapes: [
      ...quarters(now, { from, to, low }),
      ...rows.flatMap((row, index) => rowOf(row, index, { from, gap: (to - from) / 50 })),
      {
        kind: 'line',
        weight: 'thick',
        points: [
          [0, low],
          [0, 0.6],
        ],
      },
      { kind: 'label', at: [0, 0.75], label: { text: written(now) }, anchor: 'middle' },
    ],
  }
}
