import type { Element } from 'hast'
import { h } from 'hastscript'
import { sketchSvg } from '../typesetting/sketch-svg.ts'
import { part } from './part.ts'

/** What the plausible ranges of the assumptions do to one result or ratio. */
export interface RangeChart {
  readonly title: string
  readonly drawing: Parameters<typeof sketchSvg>[0]
  readonly bars: number
  /** How many assumptions with a range do not move it. */
  readonly still: number
}

/** Room for each bar with its label, and for the scale above and the value below. */
const room = ({ bars }: RangeChart) => ({ width: 440, height: 50 + 17 * Math.max(bars, 1) })

/** Charts of what the title block asks for under `ranges`: each assumption at both ends of its plausible range. Nothing where it asks for none. */
export function rangesSheet(charts: readonly RangeChart[] = []): Element[] {
  if (charts.length === 0) return []
  const intro =
    'Each assumption that has a plausible range is taken to both its ends, all others as written; the widest effect stands on top. Filled bars lead to the high end of the range, open bars to the low end.'
  return [part('ranges', 'Effect of the ranges', [h('p', intro), ...charts.map(chartFigure)])]
}

function chartFigure(chart: RangeChart, index: number): Element {
  const { title, drawing, still } = chart
  const note = still > 0 ? ` ${still} further ${still === 1 ? 'range does' : 'ranges do'} not move it.` : ''
  return h('figure.range-chart', [
    sketchSvg(drawing, `range-chart-${index + 1}`, room(chart)),
    h('figcaption', `${title}.${note}`),
  ])
}
