import type { Entity } from '../evaluation/plan-types.ts'
import type { Drawing, Point, Shape } from '../modules/sketch.ts'
import { digitsOf, plainNumber } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import { unitText } from '../quantity/unit.ts'
import type { Measure } from './measure.ts'
import type { SweepRow } from './sweep.ts'

interface Swept {
  readonly entity: Entity
  readonly measures: readonly Measure[]
  readonly rows: readonly SweepRow[]
}

/**
 * A sweep as a chart: one line a measure over the assumption, broken where nothing is known; ratios with the line at 1. Measures that the
 * assumption does not move are left out, and those of another unit than the first that is drawn.
 */
export function sweepDrawing({ entity, measures, rows }: Swept): Drawing {
  const moved = measures.map((measure, index) => ({ measure, index })).filter(({ index }) => isMoved(rows, index))
  const alike = moved.filter(({ measure }) => measure.unit.text === moved[0]?.measure.unit.text)
  const x = (row: SweepRow): number => inUnit(row.si, entity.unit)
  const lines = alike.map(({ measure, index }) => ({
    measure,
    points: rows.map((row): Point => [x(row), inUnit(row.measures[index] ?? Number.NaN, measure.unit)]),
  }))
  const values = lines.flatMap(({ points }) => points.map(([, y]) => y)).filter(Number.isFinite)
  const isRatio = alike.some(({ measure }) => measure.checks.length > 0)
  const [low, high] = [Math.min(0, ...values), Math.max(isRatio ? 1 : 0, ...values)]
  const xs = rows.map(x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const foot = low - (high - low) * 0.09
  const named = (text: string, unit: string): string => `${text}${unit ? `, ${unit}` : ''}`
  return {
    says: `${alike.map(({ measure }) => measure.name).join(', ')} as ${entity.key} goes from ${shown(left)} to ${shown(right)} ${unitText(entity.unit)}`.trim(),
    toScale: false,
    shapes: [
      {
        kind: 'line',
        points: [
          [left, high],
          [left, low],
          [right, low],
        ],
        weight: 'thin',
      },
      ...(isRatio
        ? [
            {
              kind: 'line',
              points: [
                [left, 1],
                [right, 1],
              ],
              weight: 'thin',
              dashed: true,
            } as const,
          ]
        : []),
      ...lines.flatMap(({ points }) => pieces(points)),
      ...lines.flatMap(({ measure, points }) => nameAt(measure.name, points)),
      ...[low, ...(isRatio ? [1] : []), high].map(y => label([left, y], `${shown(y)} `, 'end')),
      ...[left, right].map(at => label([at, foot], shown(at), 'middle')),
      label([(left + right) / 2, foot], named(entity.key, unitText(entity.unit)), 'middle'),
    ],
  }
}

const isMoved = (rows: readonly SweepRow[], index: number): boolean =>
  rows.some(({ measures }) => measures[index] !== rows[0]?.measures[index])

const shown = (value: number): string => plainNumber(digitsOf(value, 3))

const label = (at: Point, text: string, anchor: 'start' | 'middle' | 'end'): Shape => ({
  kind: 'label',
  at,
  label: { text },
  anchor,
})

/** A line for each run of neighbours that have a value. */
function pieces(points: readonly Point[]): Shape[] {
  const runs: Point[][] = [[]]
  for (const point of points) {
    if (Number.isFinite(point[1])) runs.at(-1)?.push(point)
    else runs.push([])
  }
  return runs.filter(run => run.length > 1).map(run => ({ kind: 'line', points: run, weight: 'medium' }))
}

/** The name at the line's last value. */
function nameAt(name: string, points: readonly Point[]): Shape[] {
  const last = points.findLast(([, y]) => Number.isFinite(y))
  return last ? [label(last, ` ${name}`, 'start')] : []
}
