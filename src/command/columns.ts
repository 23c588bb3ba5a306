/** Rows as text in columns, each as wide as its widest cell; a rule under the heads. */
export function columns(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = heads.map((head, index) => Math.max(head.length, ...rows.map(row => row[index]?.length ?? 0)))
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, index) => cell.padEnd(widths[index] ?? 0))
      .join('  ')
      .trimEnd()
  return [line(heads), widths.map(width => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n')
}
