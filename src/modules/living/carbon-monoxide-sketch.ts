import { type Drawing, type Shape, type SketchView, stroke } from '../sketch.ts'

const hour = 3600
const ppm = 1e6

/** A chart: carbon monoxide in ppm against hours, with the limit, the level at which all must be out if it would be reached, and where it ends. */
export function drawCarbonMonoxide(view: SketchView): Drawing {
  const [until, change] = [view.number('burning') / hour, view.number('t_x') / hour]
  const [out, settles] = [ppm * view.number('outdoor'), ppm * view.number('chi_s')]
  const at = (t: number): number => settles + (out - settles) * Math.exp(-t / change)
  const levels = settles > ppm * view.number('leave_level') ? ['chi_lim', 'leave_level'] : ['chi_lim']
  const top = 1.1 * Math.max(at(until), ...levels.map(name => ppm * view.number(name)))
  const across = (name: string): readonly Shape[] => [
    stroke(
      'thin',
      [
        [0, ppm * view.number(name)],
        [until, ppm * view.number(name)],
      ],
      { dashed: true },
    ),
    { kind: 'label', at: [0, ppm * view.number(name)], label: view.label(name), anchor: 'end' },
  ]
  return {
    says: `Carbon monoxide against time: it would settle at ${view.shown('chi_s')} and stands at ${view.shown('chi_t')} after ${view.shown('burning')}. The limit is ${view.shown('chi_lim')}; all must be out at ${view.shown('leave_level')}.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, top],
        [0, 0],
        [until, 0],
      ]),
      stroke(
        'thick',
        Array.from({ length: 41 }, (_, i) => until * (i / 40) ** 2).map(t => [t, at(t)] as const),
      ),
      ...levels.flatMap(across),
      { kind: 'label', at: [until, at(until)], label: view.label('chi_t'), anchor: 'start' },
      { kind: 'label', at: [until, 0], label: view.label('burning'), anchor: 'start' },
    ],
  }
}
