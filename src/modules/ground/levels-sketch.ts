import type { Drawing, Fill, Label, Shape, SketchView } from '../sketch.ts'

interface Band {
  readonly from: number
  readonly to: number
  readonly fill: Fill
  readonly label: Label
}

/** A strip through the box from ground to formation, depths to scale; its width says nothing. */
export function levelsSketch(view: SketchView): Drawing {
  const formation = view.number('z_formation')
  const width = formation * 0.45
  const bands = bandsOf(view)
  return {
    says:
      `Vertical strip through the structure, depths to scale: ${view.shown('cover')} of earth cover, formation at ` +
      `${view.shown('z_formation')}, underside of the raft at ${view.shown('z_raft')}, highest water at ` +
      `${view.shown('water_depth')} below ground. The width of the strip has no meaning.`,
    toScale: true,
    shapes: [
      ...bands.map(band => bandShape(band, width)),
      ...cutEdges(formation, width),
      {
        kind: 'ground',
        points: [
          [-0.3 * width, 0],
          [1.3 * width, 0],
        ],
      },
      ...thicknesses(bands),
      ...levelMarks(view, width),
      ...waterMark(view, width),
    ],
  }
}

function bandsOf(view: SketchView): readonly Band[] {
  const at = (name: string): number => view.number(name)
  const band = (from: number, to: number, more: Pick<Band, 'fill' | 'label'>): Band => ({ from, to, ...more })
  return [
    band(0, at('cover'), { fill: 'soil', label: view.label('cover') }),
    band(at('cover'), at('z_roof'), { fill: 'lining', label: view.label('topping') }),
    band(at('z_roof'), at('z_ceiling'), { fill: 'concrete', label: view.label('roof') }),
    band(at('z_ceiling'), at('z_floor'), { fill: 'void', label: view.label('clear') }),
    band(at('z_floor'), at('z_raft_top'), { fill: 'lining', label: view.label('finish') }),
    band(at('z_raft_top'), at('z_raft'), { fill: 'concrete', label: view.label('raft') }),
    band(at('z_raft'), at('z_blinding'), { fill: 'concrete', label: view.label('blinding') }),
    band(at('z_blinding'), at('z_formation'), { fill: 'soil', label: view.label('working_layer') }),
  ]
}

const bandShape = ({ from, to, fill }: Band, width: number): Shape => ({
  kind: 'polygon',
  fill,
  points: [
    [0, -from],
    [width, -from],
    [width, -to],
    [0, -to],
  ],
})

/** Broken edges: the strip goes on to both sides. */
const cutEdges = (formation: number, width: number): readonly Shape[] =>
  [0, width].map(x => ({
    kind: 'line',
    weight: 'thin',
    dashed: true,
    points: [
      [x, 0],
      [x, -formation],
    ],
  }))

/** Every layer that is there as a dimension; the drawing kit sets the labels of thin ones apart. */
const thicknesses = (bands: readonly Band[]): readonly Shape[] =>
  bands.filter(band => band.to > band.from).map(thicknessOf)

const thicknessOf = ({ from, to, label }: Band): Shape => ({
  kind: 'dimension',
  from: [0, -to],
  to: [0, -from],
  off: 14,
  label,
})

const levelMarks = (view: SketchView, width: number): readonly Shape[] =>
  ['z_roof', 'z_ceiling', 'z_floor', 'z_raft', 'z_formation'].map(name => ({
    kind: 'level',
    at: [1.05 * width, -view.number(name)],
    label: view.label(name),
    side: 'right',
  }))

/** The water level, where it stands within the drawing or a little above or below it. */
function waterMark(view: SketchView, width: number): readonly Shape[] {
  const depth = view.number('water_depth')
  const formation = view.number('z_formation')
  if (depth > 1.3 * formation || depth < -0.3 * formation) return []
  return [
    {
      kind: 'line',
      weight: 'medium',
      dashed: true,
      points: [
        [-0.3 * width, -depth],
        [width, -depth],
      ],
    },
    { kind: 'level', at: [1.05 * width, -depth], label: view.label('water_depth'), side: 'right', water: true },
  ]
}
