import type { Drawing, Shape, SketchView } from '../sketch.ts'

const bar = (row: SketchView, index: number): readonly Shape[] => {
  const [share, top] = [row.number('s_path'), -index]
  return [
    {
      kind: 'polygon',
      points: [
        [0, top],
        [share, top],
        [share, top - 0.6],
        [0, top - 0.6],
      ],
      fill: 'pressure',
    },
    { kind: 'label', at: [0, top - 0.3], label: { text: `path ${index + 1}` }, anchor: 'end' },
    { kind: 'label', at: [share, top - 0.3], label: row.label('s_path'), anchor: 'start' },
  ]
}

/** A chart: the share that each path has in the dose inside, one bar a path, in the order of the rows. */
export function drawProtectionSummary(view: SketchView): Drawing {
  const rows = view.rows('paths')
  return {
    says: `Share of each of ${rows.length} paths in the dose inside, in the order given; the largest is ${view.shown('s_max')}. All together: protection factor ${view.shown('P')}, dose ${view.shown('D_in')}.`,
    toScale: false,
    shapes: [
      ...rows.flatMap(bar),
      {
        kind: 'line',
        points: [
          [0, 0.2],
          [0, 0.4 - rows.length],
        ],
        weight: 'medium',
      },
    ],
  }
}
