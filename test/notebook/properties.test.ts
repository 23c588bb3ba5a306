import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatDiagnostic } from '../../src/diagnostic/format-diagnostic.ts'
import { readNotebook, readNotebookBytes } from '../../src/notebook/read-notebook.ts'
import type { Notebook } from '../../src/notebook/types.ts'
import { head } from './reading-of.ts'
import { placesOf, writtenOf } from './written-of.ts'

const sound = readFileSync(new URL('../notebooks/sound.md', import.meta.url), 'utf8')
const seeded = (numRuns: number) => ({ seed: 20_260_302, numRuns }) as const

/** What must hold of every reading, whatever the author wrote. */
function holds(notebook: Notebook): void {
  const { text, diagnostics, path } = notebook
  for (const { line, column, offset, end } of placesOf(notebook)) {
    expect(line).toBeGreaterThanOrEqual(1)
    expect(column).toBeGreaterThanOrEqual(1)
    expect(offset).toBeGreaterThanOrEqual(0)
    expect(end).toBeGreaterThanOrEqual(offset)
    expect(end).toBeLessThanOrEqual(text.length)
    const before = text
      .replace(/^\ufeff/, ' ')
      .slice(0, offset)
      .split(/\r\n|\r|\n/)
    expect(line).toBe(before.length)
    expect(text.slice(offset, end)).not.toMatch(/[\r\n]/)
  }
  for (const { text: written, place, exact } of writtenOf(notebook)) {
    if (exact !== false) expect(text.slice(place.offset, place.end)).toBe(written)
  }
  for (const diagnostic of diagnostics) {
    expect(diagnostic.says).not.toMatch(/\.$/)
    expect(formatDiagnostic(diagnostic, { path, text })).toContain(`:${diagnostic.place.line}:`)
  }
  const offsets = diagnostics.map(({ place }) => place.offset)
  expect(offsets).toEqual([...offsets].sort((a, b) => a - b))
}

const pieces = [
  ...[
    '```',
    '~~~',
    '````',
    'assume',
    'calc',
    'work',
    'site',
    'two-way-slab',
    'roof',
    ':',
    ': ',
    '- ',
    '> ',
    '  ',
    '\t',
    '#',
    '=',
  ],
  ...[
    '\n',
    '\n',
    '\n',
    '\r\n',
    '\r',
    '\n\n',
    '---\n',
    ':::',
    ':::caution',
    ':::hold',
    '::::',
    ':value[',
    ':see[',
    ':cite[',
    ']',
    '{',
    '}',
  ],
  ...[
    'value',
    'basis',
    'range',
    '3.2 m',
    ' to ',
    'a.b',
    'M_u',
    '<=',
    '"',
    "'",
    '*',
    '&a',
    '*a',
    '!x',
    '[',
    ',',
    '|',
    '>',
    '?',
    '<<',
    '%',
  ],
  ...[
    'title',
    'units',
    'checked',
    '1:1.5',
    '12:30',
    '$',
    '`',
    '\\',
    '\ufeff',
    '土',
    '🏗️',
    '\u0301',
    '<div>',
    '[^1]',
    '[^1]: ',
    '1. ',
    '| - |',
    '\ud800',
  ],
]
const hostile = fc.array(fc.constantFrom(...pieces), { maxLength: 60 }).map(parts => parts.join(''))
const fence = fc
  .tuple(fc.constantFrom('assume site', 'calc two-way-slab roof', 'work thrust'), hostile)
  .map(([words, lines]) => `\`\`\`${words}\n${lines}\n\`\`\`\n`)

describe('reading, whatever is written', () => {
  it('hostile text never throws and is placed', () => {
    fc.assert(
      fc.property(hostile, text => holds(readNotebook(text, { path: 'a.md' }))),
      seeded(1500),
    )
  })
  it('hostile blocks after a sound title', () => {
    fc.assert(
      fc.property(fence, hostile, (block, text) => holds(readNotebook(`${head}${block}\n${text}`, { path: 'a.md' }))),
      seeded(1500),
    )
  })
  it('hostile title blocks', () => {
    fc.assert(
      fc.property(hostile, lines => holds(readNotebook(`---\ntitle: x\n${lines}\n---\n`, { path: 'a.md' }))),
      seeded(1000),
    )
  })
  it('any characters at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), text => holds(readNotebook(text, { path: 'a.md' }))),
      seeded(500),
    )
  })
  it('any bytes at all', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), bytes => holds(readNotebookBytes(bytes, { path: 'a.md' }))),
      seeded(500),
    )
  })
  it('a sound notebook with pieces cut out and put in', () => {
    const cut = fc.tuple(fc.nat(sound.length), fc.nat(30), fc.constantFrom('', ...pieces))
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), cuts => {
        const text = cuts.reduce((old, [at, length, put]) => old.slice(0, at) + put + old.slice(at + length), sound)
        holds(readNotebook(text, { path: 'a.md' }))
      }),
      seeded(150),
    )
  })
  it('the text is kept to the byte, and reading is the same every time', () => {
    fc.assert(
      fc.property(hostile, text => {
        const [first, second] = [readNotebook(text, { path: 'a.md' }), readNotebook(text, { path: 'a.md' })]
        expect(first.text).toBe(text)
        expect(second).toEqual(first)
      }),
      seeded(300),
    )
  })
})
