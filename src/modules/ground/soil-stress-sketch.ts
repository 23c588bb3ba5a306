import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

/** A profile beside the others: its title, its values down the layers, and where its zero line stands. */
interface Profile {
  readonly title: string
  readonly fill: 'none' | 'water' | 'pressure'
  readonly at: number
  /** Stress at the ground, and in a layer at the water level and at its base. */
  readonly ground: number
  readonly within: (row: SketchView) => number
  readonly base: string
}

/** Three profiles side by side, depths to one scale and stresses to another. */
export function soilStressSketch(view: SketchView): Drawing {
  const depth = view.number('depth')
  const scale = (0.7 * depth) / Math.max(view.number('sigma_v'), 1)
  return {
    says:
      `Total, pore and effective vertical stress from the ground down to ${view.shown('depth')}, side by side: there ` +
      `${view.shown('sigma_v')}, ${view.shown('u')} and ${view.shown('sigma_eff')}.`,
    toScale: false,
    shapes: [
      {
        kind: 'ground',
        points: [
          [-0.25 * depth, 0],
          [3.4 * depth, 0],
        ],
      },
      ...profiles(view, depth).flatMap(profile => drawn(view, profile, { depth, scale })),
      ...waterLevel(view, depth),
      {
        kind: 'dimension',
        from: [-0.1 * depth, -depth],
        to: [-0.1 * depth, 0],
        off: 10,
        label: view.label('depth'),
      },
    ],
  }
}

function profiles(view: SketchView, depth: number): readonly Profile[] {
  const onGround = view.number('surcharge') + view.number('p_free')
  const total = (row: SketchView): number => row.number('sigma_upper') + row.number('gamma') * row.number('h_moist')
  const pore = (row: SketchView): number =>
    view.number('gamma_w') * Math.max(row.number('z_upper') + row.number('h_moist') - view.number('water_depth'), 0)
  return [
    { title: 'total', fill: 'none', at: 0, ground: onGround, within: total, base: 'sigma_lower' },
    { title: 'pore', fill: 'water', at: 1.35 * depth, ground: view.number('p_free'), within: pore, base: 'u_lower' },
    {
      title: 'effective',
      fill: 'pressure',
      at: 2.4 * depth,
      ground: view.number('surcharge'),
      within: row => total(row) - pore(row),
      base: 'eff_lower',
    },
  ]
}

function drawn(view: SketchView, profile: Profile, of: { depth: number; scale: number }): readonly Shape[] {
  const { at, fill, title } = profile
  const out = (stress: number, z: number): Point => [at + stress * of.scale, -z]
  const rows = view.rows('layers').filter(row => row.number('z_lower') > row.number('z_upper'))
  const outline = rows.flatMap(row => [
    out(profile.within(row), row.number('z_upper') + row.number('h_moist')),
    out(row.number(profile.base), row.number('z_lower')),
  ])
  // A label at the ground stands in the title and the ground line, and nought says nothing.
  const worthLabel = (row: SketchView): boolean =>
    row.number('z_lower') > 0.12 * of.depth && row.number(profile.base) !== 0
  const points: readonly Point[] = [[at, 0], out(profile.ground, 0), ...outline, [at, -of.depth], [at, 0]]
  return [
    { kind: 'polygon', fill, points },
    { kind: 'line', weight: 'thin', points },
    { kind: 'label', at: [at + 0.2 * of.depth, 0.12 * of.depth], anchor: 'middle', label: { text: title } },
    ...rows.filter(worthLabel).map((row): Shape => {
      const [x, y] = out(row.number(profile.base), row.number('z_lower'))
      return {
        kind: 'label',
        at: [x + 0.03 * of.depth, y],
        anchor: 'start',
        label: { value: row.shown(profile.base) },
      }
    }),
  ]
}

function waterLevel(view: SketchView, depth: number): readonly Shape[] {
  const level = view.number('water_depth')
  if (level >= depth || level < -0.5 * depth) return []
  return [{ kind: 'level', at: [3.4 * depth, -level], label: view.label('water_depth'), side: 'right', water: true }]
}
