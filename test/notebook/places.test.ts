import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import type { Notebook } from '../../src/notebook/types.ts'
import { placesOf, writtenOf } from './written-of.ts'

const sound = readFileSync(new URL('../notebooks/sound.md', import.meta.url), 'utf8')
const quoted = (text: string) => text.replaceAll(/^/gm, '> ')

const files: readonly (readonly [string, string])[] = [
  ['LF', sound],
  ['CRLF', sound.replaceAll('\n', '\r\n')],
  ['lone CR', sound.replaceAll('\n', '\r')],
  ['LF after a byte order mark', `\ufeff${sound}`],
  ['CRLF after a byte order mark', `\ufeff${sound.replaceAll('\n', '\r\n')}`],
  ['in a list indented with tabs', `${sound}\n-\t\`\`\`assume tabbed\n\twidth: 3 m\n\t\`\`\`\n`],
  ['in a list indented with blanks and a tab', `${sound}\n1. \t~~~work tabbed\n\tw = 3 m # x\n   \tv = w\n\t~~~\n`],
  ['in quotes of quotes', `${sound}\n> > ~~~work deep\n> > w = 3 m # x\n> >\n> > w < 4 m\n> > ~~~\n`],
  ['in a quote with CRLF', `${sound}\n${quoted('```calc m q\na: [1 m, 2 m]\n```')}\n`.replaceAll('\n', '\r\n')],
  ['in a fence indented by three', `${sound}\n   ~~~work ind\n   w = 3 m\n  v = w\n u = v\n   ~~~\n`],
  ['wide characters before', sound.replace('The drift', '土圧 🏗️ drift').replace('# a remark', '# 土圧 🏗️')],
  ['in a box', `${sound}\n::::hold\nx\n\n\`\`\`work boxed\nw = 3 m\n\`\`\`\n::::\n`],
  ['in a footnote', `${sound}\nx[^1]\n\n[^1]:\n    \`\`\`work noted\n    w = 3 m\n    \`\`\`\n`],
]

function misplaced(notebook: Notebook): readonly string[] {
  const lines = notebook.text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/)
  return writtenOf(notebook).flatMap(({ text, place, exact }) => {
    const byOffset = notebook.text.slice(place.offset, place.end)
    const byColumn = lines[place.line - 1]?.slice(place.column - 1, place.column - 1 + text.length)
    return exact === false || (byOffset === text && byColumn === text) ? [] : [`${text} | ${byOffset} | ${byColumn}`]
  })
}

describe('places: what the author wrote stands where its place says', () => {
  it.each(files)('%s', (_, text) => {
    const notebook = readNotebook(text, { path: 'a.md' })
    expect(notebook.diagnostics).toEqual([])
    expect(notebook.text).toBe(text)
    expect(notebook.blocks.length).toBeGreaterThanOrEqual(3)
    expect(misplaced(notebook)).toEqual([])
  })
  it('all of the sound notebook is exact', () => {
    const all = writtenOf(readNotebook(sound, { path: 'a.md' }))
    expect(all.length).toBeGreaterThan(50)
    expect(all.filter(({ exact }) => exact === false)).toEqual([])
  })
  it('every line ending gives the same lines and columns', () => {
    const at = (text: string) =>
      placesOf(readNotebook(text, { path: 'a.md' })).map(({ line, column }) => [line, column])
    const [[, lf], [, crlf], [, cr]] = files as [[string, string], [string, string], [string, string]]
    expect(at(crlf)).toEqual(at(lf))
    expect(at(cr)).toEqual(at(lf))
    expect(at(`\ufeff${lf}`)).toEqual(at(lf))
  })
})
