import { type Drawing, type Point, type Shape, type SketchView, stroke } from '../sketch.ts'

const day = 86400

/** A chart: characteristic strength against days at the given temperature, with the age that each work waits for. */
export function drawStrengthAge(view: SketchView): Drawing {
  const [f_ck, f_cm] = [view.number('f_ck') / 1e6, view.number('f_cm') / 1e6]
  const [s, k] = [view.number('s_c'), view.number('k_T')]
  const works = view.rows('works')
  const needs = works.map(row => row.number('t_need') / day)
  const end = 1.1 * Math.max(28 / k, ...needs)
  const from = 3 / k
  const at = (t: number): Point => [t, Math.min(f_ck, f_cm * Math.exp(s * (1 - Math.sqrt(28 / (k * t)))) - 8)]
  const curve = Array.from({ length: 61 }, (_, i) => at(from + ((end - from) * i) / 60))
  const waits = works.flatMap((row, index) => wait(row, index, { needs, at, end, f_ck }))
  return {
    says: `Characteristic strength against age at ${view.shown('temperature')}, from three adjusted days on, rising to ${view.shown('f_ck')}; dashed lines stand where ${works.length === 1 ? 'the work' : `each of ${works.length} works`} finds its strength, the last after ${works.at(-1)?.shown('t_need') ?? ''}.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, 1.25 * f_ck],
        [0, 0],
        [end, 0],
      ]),
      { kind: 'line', points: curve, weight: 'thick' },
      ...waits,
      dashed([0, f_ck], at(28 / k)),
      { kind: 'label', at: [0.02 * end, 1.13 * f_ck], label: view.label('f_ck'), anchor: 'start' },
      ...[7, 14, 28, 56]
        .filter(t => t < end)
        .flatMap((t): Shape[] => [
          stroke('thin', [
            [t, 0],
            [t, -0.03 * f_ck],
          ]),
          { kind: 'label', at: [t, -0.14 * f_ck], label: { text: `${t} d` }, anchor: 'middle' },
        ]),
    ],
  }
}

interface Chart {
  readonly needs: readonly number[]
  readonly at: (t: number) => Point
  readonly end: number
  readonly f_ck: number
}

/** A dashed line where a work finds its strength; its label stands clear of lines that follow closely, with a leader to its own. */
function wait(row: SketchView, index: number, { needs, at, end, f_ck }: Chart): readonly Shape[] {
  const t = needs[index] ?? Number.NaN
  const height = (0.12 + 0.2 * (index % 3)) * f_ck
  const late = t > 0.6 * end
  const last = late ? t : clearOf(t, needs, 0.3 * end)
  const beside = last + (late ? -0.015 : 0.015) * end
  return [
    dashed([t, 0], at(t)),
    ...(last > t
      ? [
          stroke('thin', [
            [t, height],
            [beside, height],
          ]),
        ]
      : []),
    { kind: 'label', at: [beside, height], label: row.label('t_need'), anchor: late ? 'end' : 'start' },
  ]
}

/** The last of the lines that follow one another from this one on, none farther than this from the one before. */
const clearOf = (t: number, needs: readonly number[], near: number): number =>
  needs.toSorted((a, b) => a - b).reduce((last, next) => (next > last && next - last < near ? next : last), t)

const dashed = (...points: readonly Point[]): Shape => stroke('thin', points, { dashed: true })
