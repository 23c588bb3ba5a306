import { type Drawing, type Point, type Shape, type SketchView, stroke } from '../sketch.ts'

const samples = 60
const curve = (end: number, height: (v: number) => number): readonly Point[] =>
  Array.from({ length: samples + 1 }, (_, i) => [(end * i) / samples, height((end * i) / samples)])

/** Density of speeds spread as Rayleigh has them about their mean, as a share of its peak. */
const rayleigh =
  (mean: number) =>
  (v: number): number => {
    const mode = mean * Math.sqrt(2 / Math.PI)
    return (v / mode) * Math.exp((1 - (v / mode) ** 2) / 2)
  }

function marks(view: SketchView, { end, top }: { end: number; top: number }): readonly Shape[] {
  const { text, si } = view.unit('v_h')
  return [5, 10, 20, 30, 40]
    .filter(mark => mark * si < end)
    .map(mark => ({
      kind: 'label',
      at: [mark * si, -0.1 * top],
      label: { text: `${mark} ${text}` },
      anchor: 'middle',
    }))
}

/** A chart: power at the bank against the speed of the wind, its mean power, and how often each speed blows. */
export function drawWindCharge(view: SketchView): Drawing {
  const [v, most] = [view.number('v_h'), view.number('rated_power')]
  const each = (view.number('efficiency') * view.number('rho_a') * view.number('A_w')) / 2
  const full = (most / each) ** (1 / 3)
  const end = Math.min(Math.max(2.6 * v, 1.15 * full), 4 * v)
  const power = (speed: number): number => Math.min(each * speed ** 3, most)
  const top = Math.max(power(end), view.number('P_c'))
  const mean = view.word('speed_is') === 'mean'
  const spread = curve(end, speed => 0.5 * top * rayleigh(v)(speed))
  const often = mean ? '; the dashed curve shows how often each speed blows' : ''
  return {
    says: `Power at the bank against the speed at the hub, with the cube of the speed up to the greatest of ${view.shown('rated_power')}; at ${view.shown('v_h')}${mean ? ' in the mean' : ''} the bank is given ${view.shown('P_c')}${often}.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, 1.1 * top],
        [0, 0],
        [end, 0],
      ]),
      stroke('thick', curve(end, power)),
      ...(mean ? [stroke('thin', spread, { dashed: true })] : []),
      stroke('thin', [
        [v, 0],
        [v, 1.02 * top],
      ]),
      stroke('thin', [
        [0, view.number('P_c')],
        [end, view.number('P_c')],
      ]),
      { kind: 'label', at: [v, 1.05 * top], label: view.label('v_h'), anchor: 'middle' },
      { kind: 'label', at: [end, view.number('P_c') + 0.03 * top], label: view.label('P_c'), anchor: 'end' },
      ...(full < end
        ? [{ kind: 'label', at: [end, 1.05 * top], label: view.label('rated_power'), anchor: 'end' } as const]
        : []),
      ...marks(view, { end, top }),
    ],
  }
}
