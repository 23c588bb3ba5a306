import { nearestName } from '../diagnostic/nearest-name.ts'
import type { RangeChart } from '../sheets/ranges-sheet.ts'
import { type Measure, measureOf, sectionMeasures } from '../study/measure.ts'
import { swingsOf } from '../study/swings.ts'
import { swingsDrawing } from '../study/swings-drawing.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

/**
 * The charts that the title block asks for under `ranges`: values (`roof.M_x`), checks by number (`4.11`), or `sections` for the largest ratio
 * of each. Refuses a name that nothing has. A notebook with errors has none.
 */
export function rangeCharts({ results, notebook, status }: Evaluated): readonly RangeChart[] {
  const { ranges } = notebook.title
  if (status === exitStatus.notebook || ranges.length === 0) return []
  const measures = ranges.flatMap((name): readonly Measure[] =>
    name === 'sections' ? sectionMeasures(results) : [measureNamed(results, name)],
  )
  return swingsOf(results.plan, measures).map(swings => ({
    title: swings.measure.says ? `${swings.measure.name}: ${swings.measure.says}` : swings.measure.name,
    drawing: swingsDrawing(swings),
    bars: swings.swings.length,
    still: swings.still.length,
  }))
}

function measureNamed(results: Evaluated['results'], name: string): Measure {
  const measure = measureOf(results, name)
  if (measure) return measure
  const near = nearestName(name, ['sections', ...results.plan.names.keys()])
  throw new Stopped(
    exitStatus.notebook,
    `\`ranges\` in the title block: nothing is called \`${name}\``,
    near ? `The nearest is \`${near}\`` : 'Name a value (`roof.M_x`), a check (`4.11`) or `sections`',
  )
}
