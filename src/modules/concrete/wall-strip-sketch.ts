import { type Drawing, rectangle, type Shape, type SketchView } from '../sketch.ts'

/** Section of the strip: wall, ends, pressure from the left, moments and reactions where they act. */
export function wallStripSketch(view: SketchView): Drawing {
  const height = view.number('height')
  const span =
    view.word('top') === 'free' ? '' : `, ${view.shown('M_span')} in the span at ${view.shown('z_m')} from the top`
  return {
    says: `Vertical strip ${view.shown('height')} high, base ${view.word('base')}, top ${view.word('top')}. Moments ${view.shown('M_base')} at the base, ${view.shown('M_top')} at the top${span}; reactions ${view.shown('R_base')} at the base and ${view.shown('R_top')} at the top.`,
    toScale: true,
    shapes: [...wall(view, height), ...pressures(view, height), ...values(view, height)],
  }
}

function wall(view: SketchView, height: number): readonly Shape[] {
  const width = view.number('thickness')
  return [
    rectangle('concrete', [0, width], [0, height]),
    ...end(view.word('base'), { at: 0, out: -1, width, height }),
    ...end(view.word('top'), { at: height, out: 1, width, height }),
    { kind: 'dimension', from: [width, height], to: [width, 0], off: 6, label: {} },
  ]
}

type End = { readonly at: number; readonly out: -1 | 1; readonly width: number; readonly height: number }

function end(word: string, { at, out, width, height }: End): readonly Shape[] {
  const reach = 0.06 * height
  if (word === 'free') return []
  if (word === 'pinned') {
    const [middle, foot] = [width / 2, at + out * reach]
    return [
      {
        kind: 'polygon',
        points: [
          [middle, at],
          [middle - reach * 0.7, foot],
          [middle + reach * 0.7, foot],
        ],
        fill: 'none',
      },
    ]
  }
  const [left, right, far] = [-width, 2 * width, at + out * reach]
  return [
    {
      kind: 'polygon',
      points: [
        [left, at],
        [right, at],
        [right, far],
        [left, far],
      ],
      fill: 'concrete',
    },
  ]
}

function pressures(view: SketchView, height: number): readonly Shape[] {
  const rows = view.rows('diagram')
  const most = Math.max(...rows.map(row => row.number('q')))
  const scale = (0.35 * height) / (most > 0 ? most : 1)
  const loads = rows.slice(1).map((row, above): Shape => {
    const [from, to] = [rows[above]?.number('z') ?? 0, row.number('z')]
    return {
      kind: 'load',
      from: [0, height - from],
      to: [0, height - to],
      start: (rows[above]?.number('q') ?? 0) * scale,
      end: row.number('q') * scale,
      towards: [1, 0],
    }
  })
  const labels = rows
    .filter((row, index) => !isSame(row, rows[index - 1]))
    .map(
      (row): Shape => ({
        kind: 'label',
        at: [-row.number('q') * scale - 0.02 * height, height - row.number('z')],
        label: row.label('q'),
        anchor: 'end',
      }),
    )
  return [...loads, ...labels]
}

/** Two points that only part the layers at one depth have one label. */
function isSame(row: SketchView, before: SketchView | undefined): boolean {
  return row.number('z') === before?.number('z') && row.number('q') === before.number('q')
}

/** In one column beside the wall, each at its place as near as the others let it. */
function values(view: SketchView, height: number): readonly Shape[] {
  const x = view.number('thickness') + 0.2 * height
  const at = (name: string, share: number): Shape => ({
    kind: 'label',
    at: [x, share * height],
    label: view.label(name),
    anchor: 'start',
  })
  const base = [at('M_base', 0.01), at('R_base', 0.13)]
  if (view.word('top') === 'free') return [...base, at('height', 0.5)]
  const span = height - view.number('z_m')
  const share = Math.min(0.75, Math.max(0.26, span / height))
  return [
    ...base,
    at('M_top', 1),
    at('R_top', 0.88),
    ...spanLine(view.number('thickness'), span),
    at('M_span', share),
    at('height', share >= 0.5 ? share - 0.14 : share + 0.14),
  ]
}

/** Where the largest moment is: dashed through the wall. */
const spanLine = (width: number, span: number): readonly Shape[] => [
  {
    kind: 'line',
    points: [
      [0, span],
      [width, span],
    ],
    weight: 'thin',
    dashed: true,
  },
]
