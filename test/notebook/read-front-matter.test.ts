import { describe, expect, it } from 'vitest'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { marked, onlyFault, textAt, titleOf } from './reading-of.ts'

describe('title block: values', () => {
  it('what is absent has its stated default', () => {
    const { title, diagnostics } = titleOf('')
    expect(diagnostics).toEqual([])
    expect(title).toEqual({
      title: 'Example',
      project: '',
      number: '',
      revision: '',
      purpose: '',
      prepared: '',
      checked: '',
      approved: '',
      date: '',
      language: 'en',
      units: 'SI',
      figures: 4,
      paper: 'A4',
      codes: [],
      ranges: [],
      designBasis: [],
      coverage: [],
      revisions: [],
      references: new Map(),
    })
  })
  it('every key is read', () => {
    const lines = [
      'project: Skerry Point field station',
      'number: SP-C-014',
      'revision: B',
      'purpose: for review',
      'prepared: I. Aldous',
      'checked: M. Thorne',
      'approved: R. Vale',
      'check level: other person',
      'date: 2026-03-02',
      'language: en-GB',
      'units: US',
      'figures: 5',
      'paper: A4',
      'codes: [IS 456:2000, "ACI 318-19"]',
      'ranges: [roof.M_x, sections]',
      'design basis: [{ what: moment, value: roof.M_x, shown by: roof.area }]',
      'coverage: { fire: no fire load, shear: { by: [cuts] } }',
      'revisions: [{ mark: B, date: 2026-03-02, note: water raised }]',
      'references: { bh2: Borehole log BH2, site-report-14: Site report 14 }',
    ]
    const { title, diagnostics } = titleOf(lines.join('\n'))
    expect(diagnostics).toEqual([])
    const { designBasis, coverage, ...rest } = title
    expect(designBasis.map(({ what, value, shownBy }) => [what, value, ...shownBy].map(each => each?.text))).toEqual([
      ['moment', 'roof.M_x', 'roof.area'],
    ])
    expect(coverage.map(({ key, by, reason }) => [key.text, by.map(({ text }) => text), reason])).toEqual([
      ['fire', [], 'no fire load'],
      ['shear', ['cuts'], ''],
    ])
    expect(rest).toEqual({
      title: 'Example',
      project: 'Skerry Point field station',
      number: 'SP-C-014',
      revision: 'B',
      purpose: 'for review',
      prepared: 'I. Aldous',
      checked: 'M. Thorne',
      approved: 'R. Vale',
      checkLevel: 'other person',
      date: '2026-03-02',
      language: 'en-GB',
      units: 'US',
      figures: 5,
      paper: 'A4',
      codes: ['IS 456:2000', 'ACI 318-19'],
      ranges: ['roof.M_x', 'sections'],
      revisions: [{ mark: 'B', date: '2026-03-02', note: 'water raised' }],
      references: new Map([
        ['bh2', 'Borehole log BH2'],
        ['site-report-14', 'Site report 14'],
      ]),
    })
  })
  it('letter paper goes with US units unless another is named', () => {
    expect(titleOf('units: US').title.paper).toBe('letter')
    expect(titleOf('units: SI').title.paper).toBe('A4')
    expect(titleOf('paper: letter').title.paper).toBe('letter')
  })
  it('text stays as typed: no number, truth or null is made of it', () => {
    const { title } = titleOf('number: 010\nrevision: 1e3\nproject: yes\npurpose: ~')
    expect([title.number, title.revision, title.project, title.purpose]).toEqual(['010', '1e3', 'yes', '~'])
  })
})

describe('title block: refusals', () => {
  it('an unknown key names the nearest', () => {
    const notebook = titleOf('preparred: I. Aldous')
    const fault = onlyFault(notebook)
    expect(fault).toMatchObject({ rule: 'front-matter-key', severity: 'error', help: 'Write `prepared`' })
    expect(fault.place).toEqual({ line: 3, column: 1, offset: 19, end: 28 })
  })
  it('a line of the design basis names the key whose value is wrong, and a key that it has not', () => {
    const lineOf = (line: string) =>
      titleOf(`design basis: [{ ${line} }]`).diagnostics.map(({ says, help }) => [says, help])
    expect(lineOf('what: [a, b], shown by: roof.area').flat()).toEqual([
      'Expected one value for `what`, got a list',
      'Give one value',
    ])
    expect(lineOf('')).toEqual([['A line of `design basis` does not say `what` is asked', expect.any(String)]])
    expect(lineOf('what: depth, value: [a], shown by: roof.area')).toEqual([
      ['Expected one value for `value`, got a list', 'Give one value'],
    ])
    expect(lineOf('what: depth, shown by: roof.area, shwn: x')).toEqual([
      ['A line of `design basis` has no key `shwn`', expect.stringContaining('{ what: people sheltered')],
    ])
  })
  it('a hyphen in `check level` is seen through', () => {
    expect(onlyFault(titleOf('check-level: self')).help).toBe('Write `check level`')
  })
  it.each([
    ['units: metric', 'metric'],
    ['units: si', 'si'],
    ['figures: 2', '2'],
    ['figures: 7', '7'],
    ['figures: 4.5', '4.5'],
    ['paper: A3', 'A3'],
    ['language: English please', 'English please'],
    ['date: 2 March 2026', '2 March 2026'],
    ['date: 2026-02-29', '2026-02-29'],
    ['date: 2026-13-01', '2026-13-01'],
    ['check level: nobody', 'nobody'],
    ['codes: IS 456:2000', 'IS 456:2000'],
    ['project: [a, b]', '[a, b]'],
    ['references: { a b: c }', 'a b'],
    ['references: { a: }', ''],
  ])('%s is refused at the value', (line, text) => {
    expect(marked(titleOf(line))).toEqual([`front-matter-value: ${text}`])
  })
  it.each(['figures: 3', 'figures: 6', 'date: 2028-02-29', 'check level: other organisation', 'language: de-CH'])(
    '%s is taken',
    line => expect(titleOf(line).diagnostics).toEqual([]),
  )
  it('a title is required', () => {
    const none = readNotebook('---\nproject: x\n---\n', { path: 'a.md' })
    expect(onlyFault(none)).toMatchObject({ rule: 'front-matter-value', place: { line: 1, column: 1 } })
    const empty = readNotebook("---\ntitle: ''\n---\n", { path: 'a.md' })
    expect(onlyFault(empty)).toMatchObject({ rule: 'front-matter-value', place: { line: 2 } })
  })
  it('a misspelled title is one fault', () => {
    const notebook = readNotebook('---\ntitel: x\n---\n', { path: 'a.md' })
    expect(onlyFault(notebook)).toMatchObject({ rule: 'front-matter-key', help: 'Write `title`' })
  })
  it('a title with a colon in it says to use quotes', () => {
    const fault = onlyFault(readNotebook('---\ntitle: Roof: loads\n---\n', { path: 'a.md' }))
    expect(fault).toMatchObject({ rule: 'yaml-syntax', place: { line: 2, column: 8 } })
    expect(fault.help).toContain('single quotes')
  })
  it('no title block, one not at the head, and one never closed are told apart', () => {
    const at = (text: string) => {
      const { rule, place } = onlyFault(readNotebook(text, { path: 'a.md' }))
      return `${rule} ${place.line}:${place.column}`
    }
    expect(at('')).toBe('front-matter-missing 1:1')
    expect(at('# Roof\n')).toBe('front-matter-missing 1:1')
    expect(at('\n---\ntitle: x\n---\n')).toBe('front-matter-missing 2:1')
    expect(at('---\ntitle: x\n')).toBe('fence-unclosed 1:1')
    expect(at('\ufeff---\ntitle: x\n')).toBe('fence-unclosed 1:1')
  })
})

describe('title block: the checker', () => {
  const signed = (checked: string, level = '') =>
    titleOf(`prepared: Ines Aldous, Skerry Works\nchecked: ${checked}\n${level}`)
  it.each(['Ines Aldous, Harbour Partners', 'INES  ALDOUS', '"ines aldous , x"'])('%s is the preparer', checked => {
    const notebook = signed(checked)
    const fault = onlyFault(notebook)
    expect(fault).toMatchObject({ rule: 'checker-is-preparer', severity: 'error', place: { line: 4 } })
    expect(fault.notes?.[0]?.place).toMatchObject({ line: 3, column: 11 })
  })
  it('a self check says so, and nobody is nobody', () => {
    expect(signed('Ines Aldous', 'check level: self').diagnostics).toEqual([])
    expect(signed("''").diagnostics).toEqual([])
    expect(signed('Ines Aldouse').diagnostics).toEqual([])
    expect(titleOf("prepared: ''\nchecked: ''").diagnostics).toEqual([])
  })
  it('another level stands against it', () => {
    expect(onlyFault(signed('Ines Aldous', 'check level: other person')).says).toContain('`other person`')
  })
})

describe('title block: revisions', () => {
  const rows = (text: string, revision = 'A') => titleOf(`revision: ${revision}\nrevisions:\n${text}`)
  it('the current one must be in the table', () => {
    const notebook = rows('  - { mark: A, date: 2026-01-20, note: first issue }', 'C')
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe('front-matter-value')
    expect(textAt(notebook, fault.place)).toBe('C')
  })
  it('a table without a current one is refused', () => {
    const fault = onlyFault(titleOf('revisions: [{ mark: A, date: 2026-01-20, note: first issue }]'))
    expect(fault.help).toBe('Write `revision: A`')
  })
  it.each([
    ['  - { mark: A, date: 2026-01-20 }', 'no `note`'],
    ['  - { mark: A, note: first issue }', 'no `date`'],
    ['  - { mark: A, date: 2026-20-01, note: first issue }', 'not a day'],
    ['  - { mark: A, date: 2026-01-20, note: x, by: me }', 'no key `by`'],
    ['  - A', 'Expected a map'],
  ])('%s is refused', (row, says) => {
    expect(
      rows(row)
        .diagnostics.map(fault => fault.says)
        .join('\n'),
    ).toContain(says)
  })
  it('a mark given twice is refused at the second', () => {
    const row = '  - { mark: A, date: 2026-01-20, note: first issue }'
    expect(onlyFault(rows(`${row}\n${row}`)).place.line).toBe(6)
  })
})
