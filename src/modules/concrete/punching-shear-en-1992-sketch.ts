import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

interface Plan {
  /** Half sides of the loaded area, and twice the depth. */
  readonly half: Point
  readonly reach: number
  /** Where the slab ends on the left and below; undefined where the perimeter closes round that side. */
  readonly left: number | undefined
  readonly below: number | undefined
}

/** Plan to scale: loaded area, control perimeter, and the free edges that cut it. */
export function drawPunching(view: SketchView): Drawing {
  const plan = planOf(view)
  const { half, reach, left, below } = plan
  const right = half[0] + reach
  return {
    says: `Plan of a loaded area of ${view.shown('side_1')} by ${view.shown('side_2')} with the control perimeter of ${view.shown('u_1')}, twice the depth of ${view.shown('d')} away; ${view.shown('load')} where it carries ${view.shown('F_Rd')}.`,
    toScale: true,
    shapes: [
      { kind: 'polygon', points: slabOf(plan), fill: 'none', dashed: true },
      ...(left === undefined ? [] : [edge([left, 1.25 * (half[1] + reach)], [left, bottomOf(plan)])]),
      ...(below === undefined ? [] : [edge([leftOf(plan), below], [1.25 * right, below])]),
      { kind: 'polygon', points: loadedArea(half), fill: 'lining' },
      { kind: 'line', points: perimeter(plan), weight: 'medium' },
      {
        kind: 'dimension',
        from: [half[0], bottomOf(plan)],
        to: [-half[0], bottomOf(plan)],
        off: 6,
        label: view.label('side_1'),
      },
      {
        kind: 'dimension',
        from: [1.25 * right, half[1]],
        to: [1.25 * right, -half[1]],
        off: 6,
        label: view.label('side_2'),
      },
      { kind: 'label', at: [0, half[1] + 0.55 * reach], label: view.label('load'), anchor: 'middle' },
      { kind: 'label', at: [0.4 * right, half[1] + 1.18 * reach], label: view.label('u_1'), anchor: 'middle' },
    ],
  }
}

function planOf(view: SketchView): Plan {
  const [one, two, d] = [view.number('side_1'), view.number('side_2'), view.number('d')]
  const [left, below] = [one / 2 + view.number('edge_1'), two / 2 + view.number('edge_2')]
  const tails = (across: number, along: number) => 2 * across + along + 2 * Math.PI * d
  const whole = 2 * (one + two) + 4 * Math.PI * d
  const lengths = {
    none: whole,
    left: tails(one / 2 + left, two),
    below: tails(two / 2 + below, one),
    both: one / 2 + left + two / 2 + below + Math.PI * d,
  }
  const open = { inside: ['none'], edge: ['none', 'left'], corner: ['none', 'left', 'below', 'both'] } as const
  const place = view.word('place')
  const [shortest] = open[place === 'edge' || place === 'corner' ? place : 'inside'].toSorted(
    (a, b) => lengths[a] - lengths[b],
  )
  return {
    half: [one / 2, two / 2],
    reach: 2 * d,
    left: shortest === 'left' || shortest === 'both' ? -left : undefined,
    below: shortest === 'below' || shortest === 'both' ? -below : undefined,
  }
}

const leftOf = ({ half, reach, left }: Plan): number => left ?? -1.25 * (half[0] + reach)
const bottomOf = ({ half, reach, below }: Plan): number => below ?? -1.25 * (half[1] + reach)

function slabOf(plan: Plan): readonly Point[] {
  const [right, top] = [1.25 * (plan.half[0] + plan.reach), 1.25 * (plan.half[1] + plan.reach)]
  return [
    [leftOf(plan), bottomOf(plan)],
    [right, bottomOf(plan)],
    [right, top],
    [leftOf(plan), top],
  ]
}

const loadedArea = ([x, y]: Point): readonly Point[] => [
  [-x, -y],
  [x, -y],
  [x, y],
  [-x, y],
]

const edge = (from: Point, to: Point): Shape => ({ kind: 'line', points: [from, to], weight: 'thick' })

/** A quarter turn of the perimeter round a corner of the loaded area, from `start` quarters on, clockwise. */
function arc([x, y]: Point, reach: number, start: number): readonly Point[] {
  return Array.from({ length: 9 }, (_, i): Point => {
    const turn = ((start - i / 8) * Math.PI) / 2
    return [x + reach * Math.cos(turn), y + reach * Math.sin(turn)]
  })
}

/** The perimeter clockwise from its upper left, closed, or ending square on the edges that cut it. */
function perimeter({ half: [x, y], reach, left, below }: Plan): readonly Point[] {
  const upperRight = arc([x, y], reach, 1)
  const lowerRight = arc([x, -y], reach, 0)
  const lowerLeft = arc([-x, -y], reach, -1)
  const upperLeft = arc([-x, y], reach, -2)
  if (left !== undefined && below !== undefined) return [[left, y + reach], ...upperRight, [x + reach, below]]
  if (left !== undefined) return [[left, y + reach], ...upperRight, ...lowerRight, [left, -y - reach]]
  if (below !== undefined) return [[-x - reach, below], ...upperLeft, ...upperRight, [x + reach, below]]
  return [...upperRight, ...lowerRight, ...lowerLeft, ...upperLeft, [x, y + reach]]
}
