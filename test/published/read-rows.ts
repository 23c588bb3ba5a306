import { readFileSync } from 'node:fs'

/** Rows of a table of published values beside this file, by column name. Lines with `#` say the source and its status. */
export function readRows(file: string): readonly Readonly<Record<string, string>>[] {
  const lines = readFileSync(new URL(file, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
  const names = (lines[0] ?? '').split(',')
  return lines.slice(1).map(line => {
    const cells = line.split(',')
    return Object.fromEntries(names.map((name, index) => [name, cells[index] ?? '']))
  })
}
