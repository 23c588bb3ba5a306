import type { Element } from 'hast'
import { room, widthTogether } from './fit-tex.ts'
import { renderTex } from './render-tex.ts'

/** What stands in a step, and whether it runs across under the words because its own column is too narrow. */
export interface Laid {
  readonly html: Element
  readonly across: boolean
}

/** How the parts of a line are laid: together on one line or not, within their column or across. */
export interface Layout {
  readonly together: boolean
  readonly across: boolean
}

/** Formulas in two groups that may stand below each other: in symbols, with numbers. */
export interface Parts {
  readonly first: readonly string[]
  readonly second: readonly string[]
  /** Between formulas on one line, and for what stands behind them, in em. */
  readonly between: number
  readonly behind?: number
  /** Taken from the room by a symbol that is wider than its column. */
  readonly taken?: number
}

/** So many lines in the column are too many where one line across says it, or two do. */
const most = { one: 3, two: 5 } as const

/**
 * One line in the column where it fits, then two or a few that break at operators; across where a part cannot be broken and is wider
 * than the column, or where it takes many lines.
 */
export function layOut({ first, second, between, behind = 0, taken = 0 }: Parts): Layout {
  const all = [...first, ...second]
  const whole = widthTogether(all, between) + behind
  const [column, across] = [room.column - taken, room.across - taken]
  if (whole <= column) return { together: true, across: false }
  const together = whole <= across
  const lines =
    Math.ceil(widthTogether(first, between) / column) + Math.ceil((widthTogether(second, between) + behind) / column)
  const wide = all.some(tex => renderTex(tex, true).widths.widest > column)
  return wide || lines > (together ? most.one : most.two)
    ? { together, across: true }
    : { together: false, across: false }
}
