import type { Drawing, Point, Shape, SketchView } from '../sketch.ts'

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
  const waits = works.flatMap((row, index): readonly Shape[] => {
    const [t = 0, f = 0] = at(needs[index] ?? from)
    const late = t > 0.6 * end
    return [
      {
        kind: 'line',
        points: [
          [t, 0],
          [t, f],
        ],
        weight: 'thin',
        dashed: true,
      },
      {
        kind: 'label',
        at: [t + (late ? -0.015 : 0.015) * end, (0.12 + 0.16 * (index % 3)) * f_ck],
        label: row.label('t_need'),
        anchor: late ? 'end' : 'start',
      },
    ]
  })
  return {
    says: `Characteristic strength against age at ${view.shown('temperature')}, from three adjusted days on, rising to ${view.shown('f_ck')}; dashed lines stand where ${works.length === 1 ? 'the work' : `each of ${works.length} works`} finds its strength, the last after ${works.at(-1)?.shown('t_need') ?? ''}.`,
    toScale: false,
    shapes: [
      {
        kind: 'line',
        points: [
          [0, 1.1 * f_ck],
          [0, 0],
          [end, 0],
        ],
        weight: 'medium',
      },
      { kind: 'line', points: curve, weight: 'thick' },
      ...waits,
      { kind: 'label', at: [0, f_ck], label: view.label('f_ck'), anchor: 'end' },
      ...[7, 14, 28, 56]
        .filter(t => t < end)
        .map((t): Shape => ({ kind: 'label', at: [t, -0.06 * f_ck], label: { text: `${t} d` }, anchor: 'middle' })),
    ],
  }
}
