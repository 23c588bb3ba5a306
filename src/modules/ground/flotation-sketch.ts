import { type Drawing, type Fill, type Label, type Point, rectangle, type Shape, type SketchView } from '../sketch.ts'

interface Section {
  readonly half: number
  readonly outer: number
  readonly inner: number
  readonly cover: number
  readonly roof: number
  readonly ceiling: number
  readonly floor: number
  readonly under: number
}

/** Section across the finished box, to scale, with the forces on it. */
export function flotationSketch(view: SketchView): Drawing {
  const half = view.number('plan_width') / 2
  const section: Section = {
    half,
    outer: half + view.number('toe'),
    inner: half - view.number('wall'),
    cover: view.number('cover'),
    roof: view.number('z_roof'),
    ceiling: view.number('z_roof') + view.number('roof'),
    floor: view.number('z_raft_top'),
    under: view.number('z_raft'),
  }
  return {
    says:
      `Section across the box, to scale: uplift ${view.shown('U_fin')} on the raft at ${view.shown('z_raft')} below ground with ` +
      `water at ${view.shown('water_depth')}; box ${view.shown('W_box')}, soil over the roof ${view.shown('W_cover')}.`,
    toScale: true,
    shapes: [...outlines(section), ...groundAndWater(view, section), ...forces(view, section)],
  }
}

/** Between two depths. */
const layer = (fill: Fill, x: readonly [number, number], z: readonly [number, number]): Shape =>
  rectangle(fill, x, [-z[0], -z[1]])

function outlines({ half, outer, inner, cover, roof, ceiling, floor, under }: Section): readonly Shape[] {
  return [
    layer('soil', [-half, half], [0, cover]),
    ...(roof > cover ? [layer('lining', [-half, half], [cover, roof])] : []),
    layer('concrete', [-half, half], [roof, ceiling]),
    layer('concrete', [-half, -inner], [ceiling, floor]),
    layer('concrete', [inner, half], [ceiling, floor]),
    layer('void', [-inner, inner], [ceiling, floor]),
    layer('concrete', [-outer, outer], [floor, under]),
  ]
}

function groundAndWater(view: SketchView, { outer, under }: Section): readonly Shape[] {
  const edge = 1.5 * outer
  const ground: readonly Point[] = [
    [-edge, 0],
    [edge, 0],
  ]
  const depth = view.number('water_depth')
  const level: readonly Shape[] =
    depth < 1.2 * under
      ? [{ kind: 'level', at: [1.15 * outer, -depth], label: view.label('water_depth'), side: 'right', water: true }]
      : []
  return [{ kind: 'ground', points: ground }, ...level]
}

function forces(view: SketchView, { half, outer, roof, floor, under }: Section): readonly Shape[] {
  const reach = 0.3 * under
  const down = (x: number, from: number, label?: Label): Shape => ({
    kind: 'arrow',
    from: [x, from + reach],
    to: [x, from],
    ...(label ? { label } : {}),
  })
  const inBox = -(floor + under) / 2 + 0.02 * under
  return [
    down(-0.4 * half, -roof, view.label('W_cover')),
    down(0, inBox),
    // The room may be narrower than the label, which would hide the raft beside the arrow.
    { kind: 'label', at: [-outer - 0.2 * reach, inBox + 0.7 * reach], anchor: 'end', label: view.label('W_box') },
    { kind: 'arrow', from: [0, -under - reach], to: [0, -under], label: view.label('U_fin') },
    ...(outer > half ? onToe(view, (outer + half) / 2, { outer, floor, reach }) : []),
  ]
}

function onToe(view: SketchView, x: number, of: { outer: number; floor: number; reach: number }): readonly Shape[] {
  return [
    { kind: 'arrow', from: [x, -of.floor + of.reach], to: [x, -of.floor] },
    {
      kind: 'label',
      at: [of.outer + 0.1 * of.reach, -of.floor + 0.7 * of.reach],
      anchor: 'start',
      label: view.label('W_toe'),
    },
  ]
}
