import { plainLine } from './comparison-words.ts'

/** What could be taken for markup; an underscore within a word and a colon before a blank cannot. */
const markup = /[\\`*[\]<>|&#~$]|(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])|:(?=\S)/gu

/** Text that came out of a notebook, as Markdown that says no more than it. */
export const escaped = (text: string): string => plainLine(text).replaceAll(markup, '\\$&')

/** A table of cells that are Markdown. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n')
}

/** A part that is opened by its head. */
export const folded = (head: string, body: string): string =>
  `<details><summary>${head}</summary>\n\n${body ? `${body}\n\n` : ''}</details>`
