import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

interface Section {
  readonly ring: number
  readonly reach: number
  readonly depth: number
  readonly water: number
  readonly base: number
}

/** Half a section from the centre of the pit outwards: the water before and while pumping, between pit and radius of influence. */
export function pitInflowSketch(view: SketchView): Drawing {
  const at: Section = {
    ring: view.number('r_e'),
    reach: view.number('R_0_high'),
    depth: view.number('depth'),
    water: view.number('water_depth'),
    base: view.number('aquifer_base'),
  }
  return {
    says:
      `Half a section from the centre of the pit outwards: water lowered by ${view.shown('drawdown')} at the ring, ` +
      `${view.shown('r_e')} from the centre, and not at all at ${view.shown('R_0_high')}.`,
    toScale: false,
    shapes: [
      ground(at),
      straight([0, -at.base], [at.reach, -at.base], 'thick'),
      ...tightLayer(view, at),
      straight([at.ring, -at.water], [at.reach, -at.water], 'thin', true),
      { kind: 'line', weight: 'medium', points: curve(view, at) },
      { kind: 'level', at: [at.reach, -at.water], label: view.label('water_depth'), side: 'right', water: true },
      ...measures(view, at),
    ],
  }
}

const ground = ({ ring, reach, depth }: Section): Shape => ({
  kind: 'ground',
  points: [
    [0, -depth],
    [ring, -depth],
    [ring, 0],
    [reach, 0],
  ],
})

const straight = (from: Point, to: Point, weight: 'thin' | 'thick', dashed?: true): Shape => ({
  kind: 'line',
  weight,
  points: [from, to],
  ...(dashed ? { dashed } : {}),
})

function tightLayer(view: SketchView, { reach }: Section): readonly Shape[] {
  const top = view.number('aquifer_top')
  return Number.isFinite(top) && view.word('aquifer') === 'confined'
    ? [straight([0, -top], [reach, -top], 'thick')]
    : []
}

/** The lowered water: heads by the square where there is a water table, straight over the logarithm where there is none. */
function curve(view: SketchView, { ring, reach, water, base }: Section): readonly Point[] {
  const [high, low] = [base - water, base - water - view.number('drawdown')]
  const power = view.word('aquifer') === 'confined' ? 1 : 2
  return Array.from({ length: 33 }, (_, i): Point => {
    const share = i / 32
    const head = (low ** power + (high ** power - low ** power) * share) ** (1 / power)
    return [ring * (reach / ring) ** share, head - base]
  })
}

const measures = (view: SketchView, { ring, reach, water, base }: Section): readonly Shape[] => [
  {
    kind: 'dimension',
    from: [0.02 * reach + ring, -water],
    to: [0.02 * reach + ring, -water - view.number('drawdown')],
    off: 0,
    label: view.label('drawdown'),
  },
  { kind: 'dimension', from: [0, -base], to: [ring, -base], off: -14, label: view.label('r_e') },
  { kind: 'dimension', from: [0, -base], to: [reach, -base], off: -30, label: view.label('R_0_high') },
]
