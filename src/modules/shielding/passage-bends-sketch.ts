import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

interface Leg {
  readonly from: Point
  readonly to: Point
  /** The way it runs, one of four. */
  readonly way: Point
  readonly width: number
  readonly length: ReturnType<SketchView['label']>
}

/** Thickness the walls are drawn with, m: no input has it. */
const wall = 0.3

const move = ([x, y]: Point, [u, v]: Point, by: number): Point => [x + u * by, y + v * by]
/** A quarter turn to the left. */
const left = ([u, v]: Point): Point => [0 - v, u]
const right = ([u, v]: Point): Point => [v, 0 - u]

function legsOf(view: SketchView): readonly Leg[] {
  const long = view.number('first_length')
  const first = { from: [0, 0], to: [long, 0], way: [1, 0], width: view.number('first_width') } as const
  const legs: Leg[] = [{ ...first, length: view.label('first_length') }]
  for (const row of view.rows('legs')) {
    const before = legs.at(-1) ?? { to: [0, 0] as const, way: [1, 0] as const }
    const way = row.word('turn') === 'left' ? left(before.way) : right(before.way)
    const to = move(before.to, way, row.number('length'))
    legs.push({ from: before.to, to, way, width: row.number('width'), length: row.label('length') })
  }
  return legs
}

/** One side of the passage, set off `by` from its walls: where the lines of two legs meet at each bend. */
function side(legs: readonly Leg[], about: { hand: typeof left; by: number }): readonly Point[] {
  const out = (leg: Leg): Point => move([0, 0], about.hand(leg.way), leg.width / 2 + about.by)
  return legs.flatMap((leg, index): readonly Point[] => {
    const next = legs[index + 1]
    const [a, b] = [out(leg), next ? out(next) : move([0, 0], leg.way, about.by)]
    const start = index === 0 ? [move(leg.from, a, 1)] : []
    return [...start, move(move(leg.to, a, 1), b, 1)]
  })
}

const outline = (legs: readonly Leg[], by: number): readonly Point[] => [
  ...side(legs, { hand: left, by }),
  ...[...side(legs, { hand: right, by })].reverse(),
]

/** The length of a leg, beyond the wall on the side away from the turn that follows, or from the last one. */
function lengthOf(leg: Leg, other: Leg): readonly Shape[] {
  if (leg.from[0] === leg.to[0] && leg.from[1] === leg.to[1]) return []
  const followed = other.from === leg.to
  const turnsLeft = followed ? isLeftOf(other.way, leg.way) : isLeftOf(leg.way, other.way)
  const way = turnsLeft ? right(leg.way) : left(leg.way)
  const middle = move(leg.from, leg.way, Math.hypot(leg.to[0] - leg.from[0], leg.to[1] - leg.from[1]) / 2)
  const at = move(middle, way, leg.width / 2 + 2 * wall)
  const anchor = way[0] > 0 ? 'start' : way[0] < 0 ? 'end' : 'middle'
  return [
    { kind: 'line', points: [leg.from, leg.to], weight: 'thin', dashed: true },
    { kind: 'label', at, label: leg.length, anchor },
  ]
}

const isLeftOf = (way: Point, before: Point): boolean => left(before)[0] === way[0] && left(before)[1] === way[1]

/** The word beyond the end wall, where no line runs. */
const personAt = ({ to, way }: Leg): Shape => ({
  kind: 'label',
  at: move(to, way, 2 * wall),
  label: { text: 'person' },
  anchor: way[0] > 0 ? 'start' : way[0] < 0 ? 'end' : 'middle',
})

/** Plan of the passage, to scale: mouth, legs and bends, walls as thick as it pleases. */
export function drawPassageBends(view: SketchView): Drawing {
  const legs = legsOf(view)
  const last = legs.at(-1)
  const bends = view.rows('legs').length
  return {
    says: `Plan of the passage, to scale save for the thickness of its walls: the mouth, a first leg of ${view.shown('first_length')} and ${bends} more, each square to the one before, with the person at the end. Share of the open dose rate there: ${view.shown('K_p')}, protection factor ${view.shown('P')}.`,
    toScale: true,
    shapes: [
      { kind: 'polygon', points: outline(legs, wall), fill: 'concrete' },
      { kind: 'polygon', points: outline(legs, 0), fill: 'void' },
      { kind: 'arrow', from: [-1.2, 0], to: [0, 0], label: { text: 'mouth' } },
      ...legs.flatMap((leg, index) => lengthOf(leg, legs[index + 1] ?? legs[index - 1] ?? leg)),
      ...(last ? [personAt(last)] : []),
    ],
  }
}
