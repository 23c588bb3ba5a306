import { describe, expect, it } from 'vitest'
import type { Diagnostic, Place } from '../../src/diagnostic/diagnostic.ts'
import { diagnosticData } from '../../src/diagnostic/diagnostic-data.ts'
import { formatDiagnostic } from '../../src/diagnostic/format-diagnostic.ts'
import { placeWithin } from '../../src/diagnostic/place-within.ts'

/** The place of a piece of the text, on whichever line it first stands. */
function placeIn(text: string, piece: string): Place {
  const offset = text.indexOf(piece)
  const before = text.slice(0, offset).split(/\r\n|\r|\n/)
  return { line: before.length, column: (before.at(-1) ?? '').length + 1, offset, end: offset + piece.length }
}

const fault = (place: Place, more: Partial<Diagnostic> = {}): Diagnostic => ({
  rule: 'key-unknown',
  severity: 'error',
  place,
  says: 'An assumption has no key `valeu`',
  ...more,
})

const frame = (text: string, piece: string) =>
  formatDiagnostic(fault(placeIn(text, piece)), { path: 'a.md', text })
    .split('\n')
    .slice(2)

/** The characters of the printed line that stand over the carets, counting every character as one column. */
function overCarets([line = '', carets = '']: readonly string[]): string {
  const from = carets.indexOf('^')
  return line.slice(from, carets.lastIndexOf('^') + 1)
}

describe('a diagnostic as text', () => {
  it('place, severity, rule, sentence, line with carets, notes, help and what it stops', () => {
    const text = 'first\nwater:\n  valeu: 3.2 m\nlast\n'
    const diagnostic = fault(placeIn(text, 'valeu'), {
      help: 'Write `value`',
      notes: [{ says: 'The row begins here', place: placeIn(text, 'water') }, { says: 'Rows have keys' }],
      stops: 2,
    })
    expect(formatDiagnostic(diagnostic, { path: 'shelter.md', text })).toBe(
      [
        'shelter.md:3:3  error  key-unknown',
        'An assumption has no key `valeu`',
        '     3 |   valeu: 3.2 m',
        '       |   ^^^^^',
        '  note: The row begins here (shelter.md:2:1)',
        '     2 | water:',
        '       | ^^^^^',
        '  note: Rows have keys',
        '  help: Write `value`',
        '  2 values could not be evaluated because of this',
      ].join('\n'),
    )
  })
  it('a warning says so, and one value is one', () => {
    const text = 'x\n'
    const shown = formatDiagnostic(fault(placeIn(text, 'x'), { severity: 'warning', stops: 1 }), { path: 'a.md', text })
    expect(shown).toContain('a.md:1:1  warning  key-unknown')
    expect(shown).toContain('1 value could not')
  })
  it('colour is put round the parts and changes nothing else', () => {
    const mark = (name: string) => (text: string) => `<${name}>${text}</${name}>`
    const colour = { error: mark('e'), warning: mark('w'), place: mark('p'), says: mark('s'), faint: mark('f') }
    const text = 'a valeu\n'
    const diagnostic = fault(placeIn(text, 'valeu'), { help: 'x', notes: [{ says: 'y', place: placeIn(text, 'a') }] })
    const coloured = formatDiagnostic(diagnostic, { path: 'a.md', text, colour })
    expect(coloured.replaceAll(/<\/?[ewpsf]>/g, '')).toBe(formatDiagnostic(diagnostic, { path: 'a.md', text }))
    expect(coloured).toContain('<e>^^^^^</e>')
    expect(coloured).toContain('<p>a.md:1:3</p>')
  })
  it('as data it is itself with its path', () => {
    const diagnostic = fault({ line: 1, column: 1, offset: 0, end: 1 })
    expect(diagnosticData(diagnostic, 'a.md')).toEqual({ path: 'a.md', ...diagnostic })
  })
})

describe('carets', () => {
  it('stand under the exact text', () => {
    expect(overCarets(frame('a: 3 m + 2 kPa\n', '+'))).toBe('+')
    expect(overCarets(frame('one\r\ntwo valeu three\r\nfour', 'valeu'))).toBe('valeu')
    expect(overCarets(frame('one\rtwo valeu three\rfour', 'valeu'))).toBe('valeu')
  })
  it('tabs are stops of four', () => {
    const [line, carets] = frame('a\tbc\tvaleu\td\n', 'valeu')
    expect(line).toBe('     1 | a   bc  valeu   d')
    expect(carets).toBe('       |         ^^^^^')
  })
  it('a tab among the marked text has its whole width marked', () => {
    const [, carets] = frame('ab\tcd', 'b\tc')
    expect(carets).toBe('       |  ^^^^')
  })
  it('wide characters take two columns, marks on characters none', () => {
    expect(frame('土圧 valeu', 'valeu')[1]).toBe('       |      ^^^^^')
    expect(frame('x 土圧 y', '土圧')[1]).toBe('       |   ^^^^')
    expect(frame('e\u0301e\u0301 valeu', 'valeu')[1]).toBe('       |    ^^^^^')
    expect(frame('🏗️ valeu', 'valeu')[1]).toMatch(/^ {7}\| {3,4}\^{5}$/)
  })
  it('a point and an empty line get one caret', () => {
    const point = { line: 1, column: 3, offset: 2, end: 2 }
    expect(formatDiagnostic(fault(point), { path: 'a.md', text: 'ab' }).split('\n').slice(2)).toEqual([
      ...['     1 | ab', '       |   ^'],
    ])
    const empty = { line: 1, column: 1, offset: 0, end: 0 }
    expect(formatDiagnostic(fault(empty), { path: 'a.md', text: '' }).split('\n').slice(2)).toEqual([
      ...['     1 |', '       | ^'],
    ])
  })
  it('long lines are cut round the text, and the carets stay under it', () => {
    const text = `${'a b '.repeat(100)}valeu${' c d'.repeat(100)}`
    const lines = frame(text, 'valeu')
    expect(overCarets(lines)).toBe('valeu')
    expect(lines[0]?.length).toBeLessThanOrEqual(110)
    expect(lines[0]).toMatch(/^ {5}1 \| ….*…$/)
  })
  it('a marked text longer than the line is cut as well', () => {
    const lines = frame(`ab ${'x'.repeat(500)} cd`, 'x'.repeat(500))
    expect(lines[0]).toMatch(/^ {5}1 \| ab x+…$/)
    expect(overCarets(lines)).toMatch(/^x+$/)
  })
  it('at the head and at the end of a long line', () => {
    expect(overCarets(frame(`valeu ${'x '.repeat(300)}`, 'valeu'))).toBe('valeu')
    expect(overCarets(frame(`${'x '.repeat(300)} valeu`, 'valeu'))).toBe('valeu')
  })
})

describe('what steers a terminal', () => {
  it('is shown, not obeyed', () => {
    const text = 'a\u001b[31m\u202evaleu\u2066\u0000\u009b'
    const shown = formatDiagnostic(fault(placeIn(text, 'valeu'), { says: 'x\u001b[2J\ny' }), {
      path: '\u001b.md',
      text,
    })
    expect(shown.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202e\u2066]/u)
    expect(shown).toContain('x␛[2J␊y')
    expect(overCarets(shown.split('\n').slice(2))).toBe('valeu')
  })
})

describe('a place within a place', () => {
  it('counts from its first character', () => {
    const place = { line: 7, column: 5, offset: 40, end: 60 }
    expect(placeWithin(place, { start: 3, end: 8 })).toEqual({ line: 7, column: 8, offset: 43, end: 48 })
  })
})
