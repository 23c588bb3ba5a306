import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

const rectangle = (half: Point): readonly Point[] => [
  [-half[0], -half[1]],
  [half[0], -half[1]],
  [half[0], half[1]],
  [-half[0], half[1]],
]

const circle = (radius: number): readonly Point[] =>
  Array.from(
    { length: 36 },
    (_, i): Point => [radius * Math.cos((i * Math.PI) / 18), radius * Math.sin((i * Math.PI) / 18)],
  )

const bar = (from: Point, to: Point): Shape => ({ kind: 'line', points: [from, to], weight: 'thick' })

/** Diagonal bars across the four corners of a rectangular opening. */
function diagonals([x, y]: Point, length: number): readonly Shape[] {
  const reach = length / 2 / Math.SQRT2
  return [
    [1, 1],
    [1, -1],
    [-1, 1],
    [-1, -1],
  ].map(([a = 1, b = 1]) => bar([a * (x + reach), b * (y - reach)], [a * (x - reach), b * (y + reach)]))
}

/** Elevation of the wall round the opening, to scale: one trimming bar drawn for each side. */
export function drawWallOpening(view: SketchView): Drawing {
  const [w, h, l_a] = [view.number('width') / 2, view.number('height') / 2, view.number('anchorage')]
  const gap = Math.max(0.05, 2 * view.number('phi'))
  const [x, y] = [w + gap, h + gap]
  const half: Point = [w + 1.25 * l_a, h + 1.25 * l_a]
  const isRound = view.word('shape') === 'round'
  return {
    says: `Elevation of the wall round an opening ${view.shown('width')} wide and ${view.shown('height')} high: at each side and face upright bars with ${view.shown('A_side_v')} or more, ${view.shown('L_v')} long, and above and below level bars with ${view.shown('A_side_h')} or more, ${view.shown('L_h')} long.`,
    toScale: true,
    shapes: [
      { kind: 'polygon', points: rectangle(half), fill: 'concrete' },
      { kind: 'polygon', points: isRound ? circle(w) : rectangle([w, h]), fill: 'void' },
      bar([-x, -h - l_a], [-x, h + l_a]),
      bar([x, -h - l_a], [x, h + l_a]),
      bar([-w - l_a, -y], [w + l_a, -y]),
      bar([-w - l_a, y], [w + l_a, y]),
      ...(isRound ? [] : diagonals([x, y], view.number('L_c'))),
      { kind: 'dimension', from: [-w, -half[1]], to: [w, -half[1]], off: -8, label: view.label('width') },
      { kind: 'dimension', from: [half[0], -h], to: [half[0], h], off: -8, label: view.label('height') },
      { kind: 'dimension', from: [-half[0], -h - l_a], to: [-half[0], h + l_a], off: 8, label: view.label('L_v') },
      { kind: 'dimension', from: [-w - l_a, half[1]], to: [w + l_a, half[1]], off: 8, label: view.label('L_h') },
    ],
  }
}
