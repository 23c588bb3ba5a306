import { type Bar, drawBars } from '../bars.ts'
import type { Drawing, SketchView } from '../sketch.ts'

function barsOf(view: SketchView): readonly Bar[] {
  const rows = view.rows('loads').map((row, index) => ({
    value: row.number('E_l'),
    name: row.word('load') || `load ${index + 1}`,
    label: row.label('E_l'),
  }))
  return [...rows, { value: view.number('E_0'), name: 'standing', label: view.label('E_0') }]
}

/** A chart: one bar for the daily energy of each load, the standing draw last. */
export function drawDcLoad(view: SketchView): Drawing {
  const bars = barsOf(view)
  const largest = bars.reduce((most, bar) => (bar.value > most.value ? bar : most))
  return {
    says: `Daily energy by load, ${bars.length} bars that add up to ${view.shown('E_day')}; the longest is ${largest.name}.`,
    toScale: false,
    shapes: drawBars(bars),
  }
}
