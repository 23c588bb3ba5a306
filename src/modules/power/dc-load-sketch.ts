import type { Drawing, Label, Shape, SketchView } from '../sketch.ts'

interface Bar {
  readonly energy: number
  readonly name: string
  readonly label: Label
}

/** Length of the longest bar in the chart's own units; a bar takes one unit of height. */
const longest = 10

function barsOf(view: SketchView): readonly Bar[] {
  const rows = view.rows('loads').map((row, index) => ({
    energy: row.number('E_l'),
    name: row.word('load') || `load ${index + 1}`,
    label: row.label('E_l'),
  }))
  return [...rows, { energy: view.number('E_0'), name: 'standing', label: view.label('E_0') }]
}

function drawBar(
  { energy, name, label }: Bar,
  at: { readonly level: number; readonly scale: number },
): readonly Shape[] {
  const { level, scale } = at
  const end = energy * scale
  return [
    {
      kind: 'polygon',
      fill: 'pressure',
      points: [
        [0, level + 0.2],
        [end, level + 0.2],
        [end, level + 0.8],
        [0, level + 0.8],
      ],
    },
    { kind: 'label', at: [-0.2, level + 0.4], label: { text: name }, anchor: 'end' },
    { kind: 'label', at: [end + 0.2, level + 0.4], label, anchor: 'start' },
  ]
}

/** A chart: one bar for the daily energy of each load, the standing draw last. */
export function drawDcLoad(view: SketchView): Drawing {
  const bars = barsOf(view)
  const scale = longest / Math.max(...bars.map(({ energy }) => energy), 1)
  const largest = bars.reduce((most, bar) => (bar.energy > most.energy ? bar : most))
  return {
    says: `Daily energy by load, ${bars.length} bars that add up to ${view.shown('E_day')}; the longest is ${largest.name}.`,
    toScale: false,
    shapes: [
      ...bars.flatMap((bar, index) => drawBar(bar, { level: -index, scale })),
      {
        kind: 'line',
        weight: 'medium',
        points: [
          [0, 1],
          [0, 1 - bars.length],
        ],
      },
    ],
  }
}
