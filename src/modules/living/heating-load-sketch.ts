import { type Drawing, type Point, type Shape, type SketchView, stroke } from '../sketch.ts'

const year = 365
const celsius = (kelvin: number): number => kelvin - 273.15

/** A yearly wave from its coldest day on, in degrees Celsius against days: its height and how much later it comes. */
const wave = (mean: number, swing: number, late: number): readonly Point[] =>
  Array.from({ length: 74 }, (_, i) => i * 5).map(day => [
    day,
    mean - swing * Math.cos((2 * Math.PI * (day - late)) / year),
  ])

const across = (y: number, more: { dashed?: true } = {}): Shape =>
  stroke(
    'thin',
    [
      [0, y],
      [year, y],
    ],
    more,
  )

/** A chart: warmth of the ground through the year at its surface and at the roof, and the room without heating and as wanted. */
export function drawHeatingLoad(view: SketchView): Drawing {
  const [mean, swing] = [celsius(view.number('ground_mean')), view.number('ground_swing')]
  const at = (name: string): number => celsius(view.number(name))
  const lag = view.number('t_lag') / 86400
  const levels = ['theta_u', 'theta_z', 'least_temperature'].map(at)
  const [low, high] = [Math.min(mean - swing, ...levels) - 1, Math.max(mean + swing, ...levels) + 1]
  return {
    says: `Temperature of the ground through the year, from the coldest day of its surface on: at the roof it is coldest at ${view.shown('theta_gc')}, ${view.shown('t_lag')} later than the surface. Without heating the room comes to ${view.shown('theta_u')} after ${view.shown('warm_up')}, and to ${view.shown('theta_z')} at the end of the stay; wanted are ${view.shown('least_temperature')}.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, high],
        [0, low],
        [year, low],
      ]),
      stroke('medium', wave(mean, swing, 0)),
      stroke('thick', wave(mean, swing * view.number('k_z'), lag)),
      across(at('least_temperature')),
      stroke(
        'thin',
        [
          [0, at('theta_gc')],
          [lag, at('theta_gc')],
        ],
        { dashed: true },
      ),
      across(at('theta_u'), { dashed: true }),
      across(at('theta_z'), { dashed: true }),
      { kind: 'label', at: [0, at('theta_gc')], label: view.label('theta_gc'), anchor: 'end' },
      { kind: 'label', at: [year, at('theta_u')], label: view.label('theta_u'), anchor: 'start' },
      { kind: 'label', at: [year, at('theta_z')], label: view.label('theta_z'), anchor: 'start' },
      { kind: 'label', at: [0, at('least_temperature')], label: view.label('least_temperature'), anchor: 'end' },
      { kind: 'label', at: [year / 2, mean + swing], label: { text: 'surface' }, anchor: 'middle' },
      { kind: 'label', at: [year, low], label: { text: 'a year' }, anchor: 'start' },
    ],
  }
}
