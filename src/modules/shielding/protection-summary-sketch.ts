import { drawBars } from '../bars.ts'
import type { Drawing, SketchView } from '../sketch.ts'

/** A chart: the share that each path has in the dose inside, one bar a path, in the order of the rows. */
export function drawProtectionSummary(view: SketchView): Drawing {
  const bars = view.rows('paths').map((row, index) => ({
    value: row.number('s_path'),
    name: row.word('path') || `path ${index + 1}`,
    label: row.label('s_path'),
  }))
  return {
    says: `Share of each of ${bars.length} paths in the dose inside, in the order given; the largest is ${view.shown('s_max')}. All together: protection factor ${view.shown('P')}, dose ${view.shown('D_in')}.`,
    toScale: false,
    shapes: drawBars(bars),
  }
}
