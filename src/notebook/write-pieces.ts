import type { PhrasingContent, Root, RootContent, TableRow } from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkStringify from 'remark-stringify'
import { unified } from 'unified'

/** Columns are not aligned, so that a change of one cell changes one line. */
const writer = unified().use(remarkGfm, { tablePipeAlign: false }).use(remarkStringify)

const write = (node: RootContent): string => {
  const tree: Root = { type: 'root', children: [node] }
  return writer.stringify(tree).trimEnd()
}

/** Words as Markdown that reads back as just those words; in a cell of a table where `inTable`. */
export function writeWords(words: string, { inTable }: { readonly inTable: boolean }): string {
  const written = write({ type: 'paragraph', children: [{ type: 'text', value: words }] })
  return inTable ? written.replaceAll(/(?<!\\)\|/g, '\\|') : written
}

/** A table, its first row the heads. What stands in backticks is code. */
export function writeTable(rows: readonly (readonly string[])[]): string {
  return write({ type: 'table', children: rows.map(rowOf) })
}

const rowOf = (cells: readonly string[]): TableRow => ({
  type: 'tableRow',
  children: cells.map(cell => ({ type: 'tableCell', children: contentOf(cell) })),
})

function contentOf(cell: string): PhrasingContent[] {
  const pieces = cell.replaceAll(/\s+/g, ' ').trim().split('`')
  return pieces.flatMap((value, index): PhrasingContent[] =>
    value === '' ? [] : [{ type: index % 2 === 1 ? 'inlineCode' : 'text', value }],
  )
}
