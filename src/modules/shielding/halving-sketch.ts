import type { Drawing, Fill, Point, Shape, SketchView } from '../sketch.ts'

interface Slice {
  readonly from: number
  readonly to: number
  readonly top: number
  readonly bottom: number
  readonly view: SketchView
}

const fills: Readonly<Record<string, Fill>> = {
  'packed earth': 'soil',
  concrete: 'concrete',
  brick: 'concrete',
  steel: 'lining',
  lead: 'lining',
  wood: 'lining',
  water: 'water',
}
const superscript = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹']
const decades = (share: number): number => Math.log10(share)
const powerOfTen = (k: number): string =>
  k === 0 ? '1' : `10⁻${[...String(k)].map(digit => superscript[Number(digit)]).join('')}`

function slicesOf(view: SketchView): readonly Slice[] {
  let depth = 0
  return view.rows('layers').map(row => {
    const from = depth
    depth += row.number('thickness')
    return { from, to: depth, top: decades(row.number('T_before')), bottom: decades(row.number('T_after')), view: row }
  })
}

/** Beside a line, not on it: a share of the width. */
const gap = 0.015
/** The share of the width that a label with its value takes. */
const words = 0.45

/** What is left behind a layer, written at its height: in the next layer where that has room for it, else right of the stack. */
function leftBehind(slice: Slice, about: { width: number; next: number }): Shape {
  const { width, next } = about
  const face = next < words * width ? width : slice.to
  return { kind: 'label', at: [face + gap * width, slice.bottom], label: slice.view.label('T_after'), anchor: 'start' }
}

const thicknessOf = (slice: Slice | undefined): number => (slice ? slice.to - slice.from : 0)

const band = (slice: Slice, about: { floor: number; width: number; next: number }): readonly Shape[] => [
  {
    kind: 'polygon',
    points: [
      [slice.from, about.floor],
      [slice.to, about.floor],
      [slice.to, 0],
      [slice.from, 0],
    ],
    fill: fills[slice.view.word('material')] ?? 'none',
  },
  {
    kind: 'label',
    at: [(slice.from + slice.to) / 2, about.floor],
    label: { text: slice.view.word('material') },
    anchor: 'middle',
  },
  leftBehind(slice, about),
]

const decadeLine = (k: number, width: number): readonly Shape[] => [
  {
    kind: 'line',
    points: [
      [0, -k],
      [width, -k],
    ],
    weight: 'thin',
    dashed: true,
  },
  { kind: 'label', at: [-gap * width, -k], label: { text: powerOfTen(k) }, anchor: 'end' },
]

/** A chart: share of the radiation (log scale, down) against depth through the stack (m, from the source inwards). */
export function drawHalvingLayers(view: SketchView): Drawing {
  const slices = slicesOf(view)
  const width = slices.at(-1)?.to ?? 0
  const floor = Math.floor((slices.at(-1)?.bottom ?? 0) - 0.25)
  const ticks = Math.ceil(-floor / 12)
  const marks = Array.from({ length: Math.floor(-floor / ticks) + 1 }, (_, i) => i * ticks)
  const curve: readonly Point[] = [[0, 0], ...slices.map(slice => [slice.to, slice.bottom] as const)]
  return {
    says: `Share of the radiation that is left, on a scale of powers of ten, falling through ${slices.length} layers from 1 to ${view.shown('T')}: protection factor ${view.shown('P')}.`,
    toScale: false,
    shapes: [
      ...slices.flatMap((slice, index) => band(slice, { floor, width, next: thicknessOf(slices[index + 1]) })),
      ...marks.flatMap(k => decadeLine(k, width)),
      { kind: 'line', points: curve, weight: 'thick' },
    ],
  }
}
