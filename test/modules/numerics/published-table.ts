import { readFileSync } from 'node:fs'

/** Rows of a published table kept beside the tests of a folder, by column name; lines that begin with `#` say where it is from. */
export function publishedTable(name: string, folder = 'numerics'): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`../${folder}/published/${name}.csv`, import.meta.url), 'utf8')
  const [head = '', ...rows] = text.split('\n').filter(line => line !== '' && !line.startsWith('#'))
  const columns = head.split(',')
  return rows.map(row => Object.fromEntries(row.split(',').map((cell, i) => [columns[i] ?? '', cell])))
}
