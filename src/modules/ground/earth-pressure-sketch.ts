import type { Drawing, Label, Point, Shape, SketchView } from '../sketch.ts'

interface Station {
  readonly depth: number
  readonly pressure: number
  readonly label?: Label
}

/** The wall with the pressure on it: depths to one scale, pressures to another. */
export function earthPressureSketch(view: SketchView): Drawing {
  const top = view.number('wall_top')
  const base = view.number('wall_base')
  const stations = view.rows('layers').flatMap(stationsOf)
  const most = Math.max(...stations.map(at => at.pressure), 1)
  const scale = (0.7 * (base - top)) / most
  return {
    says:
      `Pressure on the wall from its top to its base, ${view.shown('h_wall')} high: ${view.shown('p_top')} at the top, ` +
      `${view.shown('p_base')} at the base, ${resultantWords(view)}.`,
    toScale: true,
    shapes: [
      ...wall(view, top, base),
      ...diagram(stations, { top, base, scale }),
      ...water(view, { base, scale }),
      ...resultant(view, { base, reach: 0.7 * (base - top) }),
      {
        kind: 'dimension',
        from: [-0.1 * (base - top), -base],
        to: [-0.1 * (base - top), -top],
        off: 14,
        label: view.label('h_wall'),
      },
    ],
  }
}

const resultantWords = (view: SketchView): string =>
  view.number('P') > 0 ? `force ${view.shown('P')} at ${view.shown('y_P')} above the base` : 'no force'

function stationsOf(row: SketchView): readonly Station[] {
  const at = (depth: string, pressure: string, label = true): Station => ({
    depth: row.number(depth),
    pressure: row.number(pressure),
    ...(label ? { label: row.label(pressure) } : {}),
  })
  return [
    at('z_upper', 'p_upper'),
    at('z_kink_above', 'p_kink_above', false),
    at(
      'z_water',
      'p_water',
      row.number('z_water') > row.number('z_upper') && row.number('z_water') < row.number('z_lower'),
    ),
    at('z_kink_below', 'p_kink_below', false),
    at('z_lower', 'p_lower'),
  ].filter(({ depth, pressure }) => Number.isFinite(depth) && Number.isFinite(pressure))
}

const wall = (view: SketchView, top: number, base: number): readonly Shape[] => {
  const thick = 0.1 * (base - top)
  const points: readonly Point[] = [
    [-thick, -top],
    [0, -top],
    [0, -base],
    [-thick, -base],
  ]
  return [{ kind: 'polygon', fill: 'concrete', points }, ...waterLevel(view, base)]
}

function diagram(stations: readonly Station[], of: { top: number; base: number; scale: number }): readonly Shape[] {
  const outline: readonly Point[] = stations.map(({ depth, pressure }) => [pressure * of.scale, -depth])
  return [
    { kind: 'polygon', fill: 'pressure', points: [[0, -of.top], ...outline, [0, -of.base]] },
    ...stations.flatMap(({ depth, pressure, label }): Shape[] =>
      label
        ? [{ kind: 'label', at: [pressure * of.scale + 0.045 * (of.base - of.top), -depth], anchor: 'start', label }]
        : [],
    ),
  ]
}

/** The part of the pressure that is water, hatched. */
function water(view: SketchView, of: { base: number; scale: number }): readonly Shape[] {
  const [from, top, base] = [view.number('z_u'), view.number('u_top'), view.number('u_base')]
  if (!(base > 0)) return []
  const points: readonly Point[] = [
    [0, -from],
    [top * of.scale, -from],
    [base * of.scale, -of.base],
    [0, -of.base],
  ]
  return [{ kind: 'polygon', fill: 'water', points }]
}

function waterLevel(view: SketchView, base: number): readonly Shape[] {
  const depth = view.number('water_depth')
  const height = base - view.number('wall_top')
  if (!(depth < base) || depth < view.number('wall_top') - 0.5 * height) return []
  return [{ kind: 'level', at: [1.2 * height, -depth], label: view.label('water_depth'), side: 'right', water: true }]
}

function resultant(view: SketchView, of: { base: number; reach: number }): readonly Shape[] {
  const y = -of.base + view.number('y_P')
  const from: Point = [of.reach * 1.2, y]
  return [
    { kind: 'arrow', from, to: [0, y] },
    { kind: 'label', at: [of.reach * 1.24, y], anchor: 'start', label: view.label('P') },
  ]
}
