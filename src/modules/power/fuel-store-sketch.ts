import { type Drawing, type SketchView, stroke } from '../sketch.ts'

const day = 86400

/** A chart: what is left in the tanks day by day, from full and from no more than must be in store. */
export function drawFuelStore(view: SketchView): Drawing {
  const [wanted, lasts] = [view.number('days') / day, view.number('t_lasts') / day]
  const [full, store, run] = [view.number('V_use'), view.number('V_f'), view.number('V_run')]
  /** A tank that lasts far longer is drawn no farther than this. */
  const end = Math.min(lasts, 3 * wanted)
  const width = 1.08 * Math.max(wanted, end)
  const top = Math.max(full, store)
  return {
    says: `Fuel left against days of running: full tanks give ${view.shown('V_use')} and last ${view.shown('t_lasts')}; ${view.shown('V_f')} must be in store for ${view.shown('days')}, in which ${view.shown('V_run')} is burnt.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, 1.1 * top],
        [0, 0],
        [width, 0],
      ]),
      stroke('thick', [
        [0, full],
        [end, full * (1 - end / lasts)],
      ]),
      stroke(
        'thin',
        [
          [0, store],
          [wanted, store - run],
        ],
        { dashed: true },
      ),
      stroke('thin', [
        [wanted, 0],
        [wanted, 1.05 * top],
      ]),
      { kind: 'label', at: [0, full], label: view.label('V_use'), anchor: 'end' },
      { kind: 'label', at: [0, store], label: view.label('V_f'), anchor: 'end' },
      { kind: 'label', at: [wanted, 1.08 * top], label: view.label('days'), anchor: 'middle' },
      { kind: 'label', at: [end, -0.1 * top], label: view.label('t_lasts'), anchor: 'end' },
    ],
  }
}
