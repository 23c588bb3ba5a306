import type { Row } from './plan-types.ts'

/** A row's symbol has the row's number as a further index. */
export const rowSymbol = (symbol: string, row: Row | undefined): string => (row ? `${symbol}_${row.index + 1}` : symbol)
