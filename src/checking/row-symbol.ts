import type { Line } from '../evaluation/workings.ts'

type Row = Line['row']

/** `g_2` of the second row is `g_i`, so that another row put in before does it no harm. */
export const ownRow = (symbol: string, row: Row): string => ending(symbol, row?.index, 'i')

/** The symbol of a value by its name in the formula: `t_2` of the same row is `t_i`, `z_1` of the row before it `z_{i-1}`. */
export function symbolInRow(symbol: string, { name, row }: { readonly name: string; readonly row: Row }): string {
  if (!row || /_\d+$/.test(name)) return symbol
  return name.startsWith('prev_') ? ending(symbol, row.index - 1, 'i-1') : ownRow(symbol, row)
}

function ending(symbol: string, index: number | undefined, running: string): string {
  const end = `_${index}`
  return index !== undefined && symbol.endsWith(end) ? `${symbol.slice(0, -end.length)}_{${running}}` : symbol
}
