import type { Label, Shape } from './sketch.ts'

/** One bar of a chart: how long it is, what stands before it and what behind. */
export interface Bar {
  readonly value: number
  readonly name: string
  readonly label: Label
}

/** Length of the longest bar in the chart's own units; a bar takes one unit of height. */
const longest = 10

function drawBar(
  { value, name, label }: Bar,
  at: { readonly level: number; readonly scale: number },
): readonly Shape[] {
  const { level, scale } = at
  const end = value * scale
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

/** Bars below each other, the longest across the chart, from one upright line. */
export function drawBars(bars: readonly Bar[]): readonly Shape[] {
  const scale = longest / Math.max(...bars.map(({ value }) => value), Number.MIN_VALUE)
  return [
    ...bars.flatMap((bar, index) => drawBar(bar, { level: -index, scale })),
    {
      kind: 'line',
      weight: 'medium',
      points: [
        [0, 1],
        [0, 1 - bars.length],
      ],
    },
  ]
}
