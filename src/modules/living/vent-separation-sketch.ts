import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'
import { airExhausts } from './separation-tables.ts'

/** A pipe turned down at its top: up, over and a little down, its mouth at the point. */
const turnedDown = ([x, z]: Point, away: 1 | -1): Shape => ({
  kind: 'line',
  weight: 'thick',
  points: [
    [x - away * 0.5, 0],
    [x - away * 0.5, z + 0.35],
    [x, z + 0.35],
    [x, z],
  ],
})

const nameOf = (row: SketchView): string => row.word('source') || row.word('kind')

const isExhaust = (row: SketchView): boolean => airExhausts.some(kind => kind === row.word('kind'))

const sourceAt = (row: SketchView, index: number): readonly Shape[] => {
  const [x, z] = [row.number('apart'), row.number('mouth')]
  const pipe: Shape = {
    kind: 'line',
    weight: 'medium',
    points: [
      [x, 0],
      [x, Math.max(z, 0.05)],
    ],
  }
  return [
    isExhaust(row) ? turnedDown([x, z], -1) : pipe,
    {
      kind: 'label',
      at: [x, Math.max(z, 0) + 0.6 + 0.5 * (index % 2)],
      label: { text: nameOf(row) },
      anchor: 'middle',
    },
  ]
}

/** An elevation, heights and lengths scaled apart: the intake, the exhausts, and the other sources at their distances. */
export function drawVentSeparation(view: SketchView): Drawing {
  const rows = view.rows('sources')
  const z = view.number('intake_height')
  const exhausts = rows.filter(isExhaust)
  const first = exhausts[0]
  const far = Math.max(...rows.map(row => row.number('apart')), 1)
  const apart = first?.number('apart') ?? 0
  const water = view.number('flood')
  return {
    says: `Elevation, heights and lengths scaled apart: the intake with its mouth ${view.shown('intake_height')} above the ground, and ${rows.map(row => `${nameOf(row)} at ${row.shown('L_s')}`).join(', ')}. ${exhausts.map(row => `${nameOf(row)} is to stand ${row.shown('L_dil')} off by dilution`).join('; ')}.`,
    toScale: false,
    shapes: [
      {
        kind: 'ground',
        points: [
          [-0.12 * far - 1, 0],
          [1.12 * far, 0],
        ],
      },
      turnedDown([0, z], 1),
      { kind: 'label', at: [0, z + 0.6], label: { text: 'intake' }, anchor: 'middle' },
      ...rows.flatMap(sourceAt),
      { kind: 'dimension', from: [0, 0], to: [0, z], off: -14, label: view.label('intake_height') },
      ...(apart > 0 && first
        ? [{ kind: 'dimension', from: [0, 0], to: [apart, 0], off: -26, label: first.label('apart') } as const]
        : []),
      ...(water > 0
        ? [{ kind: 'level', at: [far / 2, water], label: view.label('flood'), side: 'right', water: true } as const]
        : []),
    ],
  }
}
