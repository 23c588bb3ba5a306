import { printable } from '../diagnostic/printable.ts'
import { textWidth } from '../diagnostic/text-width.ts'

/** Rows as text in columns, each as wide as its widest cell; a rule under the heads. Nothing in a cell can steer the terminal. */
export function columns(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const shown = [heads, ...rows].map(row => row.map(printable))
  const widths = heads.map((_, index) => Math.max(...shown.map(row => textWidth(row[index] ?? ''))))
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, index) => cell + ' '.repeat((widths[index] ?? 0) - textWidth(cell)))
      .join('  ')
      .trimEnd()
  const [head = [], ...body] = shown
  return [line(head), widths.map(width => '-'.repeat(width)).join('  '), ...body.map(line)].join('\n')
}
