import type { GivenRow } from '../evaluation/workings.ts'

/** The name of a given value as its module has it: without the number of its row. */
export function fieldOf({ name, row }: GivenRow): string {
  const index = `_${row?.index ?? ''}`
  return row && name.endsWith(index) ? name.slice(0, -index.length) : name
}

/** The full name of a given value, by which its users are known: rows of a list are numbered. */
export const keyOf = ({ name }: GivenRow, block: string): string => `${block}.${name}`
