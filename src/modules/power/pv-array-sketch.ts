import { type Bar, drawBars } from '../bars.ts'
import type { Drawing, SketchView } from '../sketch.ts'

/** A chart: the charge of a day of the darkest month, what goes out and must go back against what the array gives. */
export function drawPvArray(view: SketchView): Drawing {
  const bar = (name: string, of: string): Bar => ({ value: view.number(of), name, label: view.label(of) })
  return {
    says: `Charge of a day in the darkest month: ${view.shown('daily_charge')} drawn, ${view.shown('Q_in')} to put back, ${view.shown('Q_req')} wanted with the surplus, and ${view.shown('Q_array')} from the array.`,
    toScale: false,
    shapes: drawBars([
      bar('drawn', 'daily_charge'),
      bar('to put back', 'Q_in'),
      bar('wanted', 'Q_req'),
      bar('from the array', 'Q_array'),
    ]),
  }
}
