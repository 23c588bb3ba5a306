import type { Change } from '../comparison/change-types.ts'
import type { Comparison } from '../comparison/types.ts'
import { changeName, changeText, stepText } from './comparison-words.ts'
import { escaped, table } from './markdown-parts.ts'

/** What was changed, as a table. */
export function changesMarkdown({ changes }: Comparison): string {
  if (changes.length === 0) return 'Nothing changed in meaning.'
  return `### Changed\n\n${table(['what', 'change', 'by'], changes.flatMap(changeRows))}`
}

function changeRows(change: Change): string[][] {
  const { what, fields, old, now } = change
  const name = what === 'title' ? `title block: ${escaped(change.key)}` : escaped(changeName(change))
  const said = old === now && fields.length > 0 ? '' : escaped(changeText(change))
  const rows = fields.map(field => [
    name,
    `${escaped(field.field)}: ${escaped(field.old) || 'nothing'} → ${escaped(field.now) || 'nothing'}`,
    '',
  ])
  return said ? [[name, said, stepText(change)], ...rows] : rows
}
