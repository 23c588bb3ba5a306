import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Fill } from '../modules/sketch.ts'

const ink = '#333'

/** Fills that read in black and white, as SVG patterns; `id` makes their names one page's own. */
export function patterns(id: string, fills: ReadonlySet<Fill>): Element[] {
  return Object.entries(drawn)
    .filter(([fill]) => fills.has(fill as Fill))
    .map(([fill, { size, marks }]) =>
      s('pattern', { id: `${id}-${fill}`, patternUnits: 'userSpaceOnUse', width: size[0], height: size[1] }, marks()),
    )
}

/** What stands in the `fill` attribute. */
export function paint(id: string, fill: Fill): string {
  if (fill in drawn) return `url(#${id}-${fill})`
  return fill === 'lining' ? '#4a4a4a' : fill === 'void' ? '#fff' : 'none'
}

interface Drawn {
  readonly size: readonly [number, number]
  readonly marks: () => Element[]
}

const ground = (colour: string, size: readonly [number, number]): Element =>
  s('rect', { width: size[0], height: size[1], fill: colour })
const stroke = (d: string, width: number): Element => s('path', { d, fill: 'none', stroke: ink, strokeWidth: width })
const dot = (x: number, y: number, r: number): Element => s('circle', { cx: x, cy: y, r, fill: ink })

const drawn: Readonly<Record<'concrete' | 'soil' | 'water' | 'pressure', Drawn>> = {
  concrete: {
    size: [17, 15],
    marks: () => [
      ground('#e6e6e3', [17, 15]),
      dot(3, 3.2, 0.35),
      dot(9.6, 6.1, 0.3),
      dot(14.2, 12.4, 0.35),
      dot(5.4, 12.8, 0.28),
      dot(15.2, 2.6, 0.26),
      stroke('M11.6 10.4l1.9 .3l-1.2 1.4z', 0.35),
      stroke('M5.2 7.3l1.6 -.8l.3 1.6z', 0.35),
    ],
  },
  soil: {
    size: [24, 20],
    marks: () => [
      stroke('M2 8l4-4M4.2 8.6l4-4M6.4 9.2l4-4', 0.4),
      stroke('M14 15l4 4M16.2 14.2l4 4M18.4 13.4l4 4', 0.4),
    ],
  },
  water: {
    size: [18, 10],
    marks: () => [ground('#f4f6f8', [18, 10]), stroke('M1 3h9M11 8h6M1 8h2', 0.4)],
  },
  pressure: {
    size: [4, 4],
    marks: () => [ground('#f3f3f1', [4, 4])],
  },
}
