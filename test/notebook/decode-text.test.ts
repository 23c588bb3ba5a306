import { describe, expect, it } from 'vitest'
import { readNotebook, readNotebookBytes } from '../../src/notebook/read-notebook.ts'
import { head, onlyFault } from './reading-of.ts'

const bytes = (...parts: readonly (string | readonly number[])[]) =>
  Uint8Array.from(parts.flatMap(part => (typeof part === 'string' ? [...new TextEncoder().encode(part)] : [...part])))
const read = (...parts: readonly (string | readonly number[])[]) => readNotebookBytes(bytes(...parts), { path: 'a.md' })

describe('bytes of a file', () => {
  it('UTF-8 is read, with and without a byte order mark, which the text keeps', () => {
    expect(read(head, 'Höhe 土\n').text).toBe(`${head}Höhe 土\n`)
    expect(read(head, 'Höhe 土\n').diagnostics).toEqual([])
    const marked = read([0xef, 0xbb, 0xbf], head)
    expect([marked.text, marked.diagnostics, marked.title.title]).toEqual([`\ufeff${head}`, [], 'Example'])
  })
  it.each([
    ['Latin-1', [0xe9]],
    ['a cut character', [0xe5, 0x9c]],
    ['an overlong form', [0xc0, 0x80]],
    ['a surrogate', [0xed, 0xa0, 0x80]],
    ['bytes that end like U+FFFD', [0xff, 0xbf, 0xbd]],
  ])('%s is refused at the first bad byte', (_, bad) => {
    const notebook = read(head, 'A replaced \ufffd first.\nHöhe ', bad, ' b\n')
    expect(onlyFault(notebook)).toMatchObject({ rule: 'file-not-utf8', place: { line: 6, column: 6 } })
    expect(notebook.blocks).toEqual([])
  })
  it('UTF-16 is named', () => {
    expect(onlyFault(read([0xff, 0xfe, 0x2d, 0x00])).says).toContain('UTF-16')
    expect(onlyFault(read([0xfe, 0xff, 0x00, 0x2d])).says).toContain('UTF-16')
  })
  it('a NUL is no text', () => {
    expect(onlyFault(read(head, 'a', [0], 'b'))).toMatchObject({ rule: 'file-not-utf8', place: { line: 5, column: 2 } })
    expect(onlyFault(readNotebook('\0', { path: 'a.md' })).rule).toBe('file-not-utf8')
  })
  it('an empty file has no title block', () => {
    expect(onlyFault(read())).toMatchObject({
      rule: 'front-matter-missing',
      place: { line: 1, column: 1, offset: 0, end: 0 },
    })
  })
})
