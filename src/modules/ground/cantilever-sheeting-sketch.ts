import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

/** Depths of the diagram below ground, and its net pressures: behind the wall to the right, before it to the left. */
interface Diagram {
  readonly pushing: readonly Point[]
  readonly resisting: readonly Point[]
  readonly toe: readonly Point[]
}

/** The wall with its net pressure: towards the pit above, resistance before it below formation, turned at the toe. */
export function cantileverSheetingSketch(view: SketchView): Drawing {
  const depth = view.number('depth')
  const foot = depth + view.number('D_0')
  const { pushing, resisting, toe } = diagram(view, { depth, foot })
  return {
    says:
      `Sheet wall that retains ${view.shown('depth')}, with its net pressure: embedment ${view.shown('D_0')} in balance, ` +
      `${view.shown('D_d')} to drive; the largest moment is ${view.shown('M_max')}.`,
    toScale: true,
    shapes: [
      {
        kind: 'ground',
        points: [
          [-0.9 * foot, -depth],
          [0, -depth],
          [0, 0],
          [0.9 * foot, 0],
        ],
      },
      ...[pushing, resisting, toe].map((points): Shape => ({ kind: 'polygon', fill: 'pressure', points })),
      ...[pushing, resisting, toe].map((points): Shape => ({ kind: 'line', weight: 'thin', points })),
      {
        kind: 'line',
        weight: 'thick',
        points: [
          [0, 0.04 * foot],
          [0, -foot],
        ],
      },
      measure(view, 'depth', { from: -depth, to: 0, at: -0.9 * foot }),
      measure(view, 'D_0', { from: -foot, to: -depth, at: -0.9 * foot }),
      {
        kind: 'label',
        at: [Math.max(...pushing.map(([x]) => x)) + 0.04 * foot, -depth],
        anchor: 'start',
        label: view.label('sigma_2'),
      },
      ...waterLevel(view, { depth, foot }),
    ],
  }
}

const measure = (view: SketchView, name: string, of: { from: number; to: number; at: number }): Shape => ({
  kind: 'dimension',
  from: [of.at, of.from],
  to: [of.at, of.to],
  off: 8,
  label: view.label(name),
})

function diagram(view: SketchView, of: { depth: number; foot: number }): Diagram {
  const { depth, foot } = of
  const number = view.number
  const clay = view.word('below') === 'clay'
  const turn = foot - number('L_5')
  const formed = clay ? number('sigma_6') : 0
  const atTurn = clay ? formed : number('n') * (turn - depth - number('L_3'))
  const atToe = clay ? number('sigma_7') : number('sigma_4')
  const nil = clay ? depth : depth + number('L_3')
  // Between turn and toe the net pressure runs straight from one side to the other.
  const cross = turn + (number('L_5') * atTurn) / (atTurn + atToe)
  const scale = (0.75 * foot) / Math.max(atToe, atTurn, 1)
  const place = (pressure: number, z: number): Point => [pressure * scale, -z]
  return {
    pushing: [
      place(0, 0),
      place(number('sigma_q'), 0),
      ...(number('L_2') > 0 ? [place(number('sigma_1'), number('L_1'))] : []),
      place(number('sigma_2'), depth),
      place(0, nil),
    ].filter((point, i, all) => i === 0 || point[0] !== all[i - 1]?.[0] || point[1] !== all[i - 1]?.[1]),
    resisting: [place(0, nil), place(-formed, nil), place(-atTurn, turn), place(0, cross)],
    toe: [place(0, cross), place(atToe, foot), place(0, foot)],
  }
}

function waterLevel(view: SketchView, { depth, foot }: { depth: number; foot: number }): readonly Shape[] {
  if (view.word('water') !== 'level on both sides') return []
  const level = Math.min(Math.max(view.number('water_depth'), 0), depth)
  return [{ kind: 'level', at: [0.9 * foot, -level], label: view.label('water_depth'), side: 'right', water: true }]
}
