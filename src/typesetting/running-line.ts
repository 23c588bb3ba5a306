import type { FormulaLine, Printed, Substitution } from '../evaluation/workings.ts'

/** A step as it holds for every row: its symbols with the running index i. */
export interface Running {
  readonly symbol: string
  readonly working: Substitution
}

/** The step that some lines over rows are of, in symbols; nothing where they are not one formula with the row's number put in. */
export function runningLine(lines: readonly FormulaLine[]): Running | undefined {
  const [first] = lines
  if (!first || first.working.formula.names.length === 0) return undefined
  const { formula } = first.working
  if (!lines.every(line => line.working.formula.text === formula.text)) return undefined
  const rows = lines.map(({ row }) => row?.index ?? 0)
  const symbol = runningSymbol(
    lines.map(line => line.symbol),
    rows,
  )
  const operands = new Map<string, Printed>()
  for (const name of formula.names) {
    const printed = lines.flatMap(line => [line.working.operands.get(name) ?? []].flat())
    const running = runningSymbol(
      printed.map(each => each.symbol),
      rows,
    )
    if (printed.length !== lines.length || !printed[0] || running === undefined) return undefined
    operands.set(name, { ...printed[0], symbol: running })
  }
  return symbol === undefined ? undefined : { symbol, working: { ...first.working, operands } }
}

/** `z_2`, `z_3` of rows 2 and 3 are `z_i`; `z_1`, `z_2` of the rows before them `z_{i-1}`; what all rows share stays. */
export function runningSymbol(symbols: readonly string[], rows: readonly number[]): string | undefined {
  const [first] = symbols
  if (first === undefined || symbols.length !== rows.length) return undefined
  if (symbols.every(symbol => symbol === first)) return first
  const stem = first.replace(/_\d+$/, '')
  for (const [shift, index] of [
    [0, 'i'],
    [-1, 'i-1'],
  ] as const) {
    if (symbols.every((symbol, at) => symbol === `${stem}_${(rows[at] ?? 0) + shift}`)) return `${stem}_${index}`
  }
  return undefined
}
