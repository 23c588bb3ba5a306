import type { Element } from 'hast'
import { isTall, room, widthTogether } from './fit-tex.ts'

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

/** One line in the column where it fits, then two; across where that is lower, or where a part would be broken. */
export function layOut({ first, second, between, behind = 0, taken = 0 }: Parts): Layout {
  const all = [...first, ...second]
  const whole = widthTogether(all, between) + behind
  const widest = Math.max(widthTogether(first, between), widthTogether(second, between) + behind)
  const [column, across] = [room.column - taken, room.across - taken]
  if (whole <= column) return { together: true, across: false }
  const acrossTogether = whole <= across
  if (widest <= column && !(acrossTogether && all.some(isTall))) return { together: false, across: false }
  return { together: acrossTogether, across: true }
}
