import { describe, expect, it } from 'vitest'
import type { AssumeBlock, WorkBlock } from '../../src/notebook/types.ts'
import { bodyOf, fenceOf, head, marked, onlyFault, textAt } from './reading-of.ts'

describe('blocks: the first line', () => {
  it.each([
    ['assume', 'assume'],
    ['assume site plan', 'plan'],
    ['assume Site', 'Site'],
    ['assume site-plan', 'site-plan'],
    ['assume 2nd', '2nd'],
    ['calc', 'calc'],
    ['calc two-way-slab', 'calc two-way-slab'],
    ['calc two-way-slab roof slab', 'slab'],
    ['calc two-way-slab roof-slab', 'roof-slab'],
    ['work', 'work'],
    ['work _x', '_x'],
    ['work é', 'é'],
  ])('%s is refused', (words, text) => {
    const { notebook, block } = fenceOf(words, '')
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe('block-name')
    expect(textAt(notebook, fault.place).replace(/^```/, '')).toBe(text)
    expect(block).toBeUndefined()
  })
  it('a likely name is offered', () => {
    expect(onlyFault(fenceOf('assume Site-Plan 2'.replace(' 2', '_2'), '').notebook).help).toBe('Write `site_plan_2`')
    expect(onlyFault(fenceOf('work 2nd', 'a = 1').notebook).help).toBe('Write `nd`')
  })
  it('what is wrong inside a block without a usable name is said as well', () => {
    expect(marked(fenceOf('work Thrust', 'roof.M').notebook)).toEqual([
      'block-name: Thrust',
      'statement-unread: roof.M',
    ])
  })
  it.each(['js', 'python work', 'yaml', '', 'text assume', 'c foo', 'ocaml run'])(
    'a fence of %j is not ours',
    words => {
      const { notebook, block } = fenceOf(words, 'x = 1\na: 2')
      expect([block, notebook.diagnostics]).toEqual([undefined, []])
    },
  )
  it.each([
    ['calcs two-way-slab roof', 'x: 1', 'calc'],
    ['Calc two-way-slab roof', 'x: 1', 'calc'],
    ['calculate two-way-slab roof', 'x: 1', 'calc'],
    ['assumptions site', 'x: 1 m', 'assume'],
    ['asume site', 'x: 1 m', 'assume'],
    ['works thrust', 'e = 1', 'work'],
    ['working thrust', 'e <= k', 'work'],
  ])('%s is nearly ours', (words, lines, kind) => {
    const fault = onlyFault(fenceOf(words, lines).notebook)
    expect(fault).toMatchObject({ rule: 'block-kind', help: `Write \`${kind}\`` })
  })
  it('a word near a kind is not ours where the lines do not look like the block', () => {
    expect(fenceOf('word name', 'Dear Sir').notebook.diagnostics).toEqual([])
    expect(fenceOf('cal 2026 March', 'Mo Tu We').notebook.diagnostics).toEqual([])
  })
  it('an indented code block is not a fence', () => {
    expect(bodyOf('    assume site\n    x: 1\n').blocks).toEqual([])
  })
})

describe('blocks: names', () => {
  it('two of one name: the second is refused, placed, and left out', () => {
    const notebook = bodyOf('```work a\nx = 1\n```\n\n```assume a\ny: 2 m\n```\n')
    const fault = onlyFault(notebook)
    expect(fault).toMatchObject({ rule: 'block-duplicate', place: { line: 9, column: 11 } })
    expect(fault.notes?.[0]?.place).toMatchObject({ line: 5, column: 9 })
    expect(notebook.blocks.map(({ kind }) => kind)).toEqual(['work'])
  })
  it('blocks stand in the order of the text, and their nodes know them', () => {
    const notebook = bodyOf('```work b\nx = 1\n```\n\n> ```assume a\n> y: 2 m\n> ```\n')
    expect(notebook.blocks.map(({ name }) => name.text)).toEqual(['b', 'a'])
    const [, first, quote] = notebook.tree.children
    expect(first?.data?.undercroft).toEqual({ kind: 'block', index: 0 })
    if (quote?.type !== 'blockquote') throw new Error('expected a quote')
    expect(quote.children[0]?.data?.undercroft).toEqual({ kind: 'block', index: 1 })
  })
})

describe('blocks: the closing fence', () => {
  it.each([
    '```work a\nx = 1\n',
    '```work a\nx = 1',
    '```work a',
    '````work a\nx = 1\n```\n',
    '```work a\nx = 1\n~~~\n',
    '> ```work a\n> x = 1\n\ntext\n',
    '- ```work a\n  x = 1\n\ntext\n',
    '```work a\nx = 1\n    ```\n',
  ])('%j is not closed', text => {
    const notebook = bodyOf(text)
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe('fence-unclosed')
    expect(textAt(notebook, fault.place)).toMatch(/^`{3,4}work a$/)
    expect(notebook.blocks[0]).toMatchObject({ unread: true, statements: [] })
  })
  it.each([
    '```work a\nx = 1\n```',
    '```work a\n```',
    '```work a\n\n```\n',
    '```work a\nx = 1\n`````\n',
    '```work a\nx = 1\n```   \n',
    '~~~work a\nx = 1\n~~~\n',
    '> ```work a\n> x = 1\n> ```\n',
    '-\t```work a\n\tx = 1\n\t```\n',
    '   ```work a\n   x = 1\n   ```\n',
    '```work a\r\nx = 1\r\n```\r\n',
    '```work a\rx = 1\r```\r',
  ])('%j is closed', text => expect(bodyOf(text).diagnostics).toEqual([]))
  it("somebody else's unclosed fence is nobody's fault", () => {
    expect(bodyOf('```js\nx = 1\n').diagnostics).toEqual([])
  })
})

describe('assume: rows', () => {
  const rowsOf = (lines: string) => (fenceOf('assume site', lines).block as AssumeBlock).assumptions
  it('the short form is a value alone', () => {
    const [cover] = rowsOf('cover: 1.8 m')
    expect(cover).toMatchObject({ name: { text: 'cover' }, value: { text: '1.8 m' }, status: 'confirmed' })
    expect(cover).not.toHaveProperty('basis')
  })
  it('the ends of a range are placed by themselves', () => {
    const notebook = fenceOf('assume site', 'z_w: { value: 3 m, range: 2.4 m  to  4.0 m }').notebook
    const range = (notebook.blocks[0] as AssumeBlock).assumptions[0]?.range
    expect([range?.from.text, range?.to.text]).toEqual(['2.4 m', '4.0 m'])
    expect(range && [textAt(notebook, range.from.place), textAt(notebook, range.to.place)]).toEqual(['2.4 m', '4.0 m'])
  })
  it.each([
    ['z: { basis: x }', 'key-missing', 'z'],
    ['z: {}', 'key-missing', 'z'],
    ['z: { valeu: 1 m }', 'key-unknown', 'valeu'],
    ['z:', 'key-missing', 'z'],
    ['z: [1 m, 2 m]', 'value-kind', '[1 m, 2 m]'],
    ['z: { value: [1 m] }', 'value-kind', '[1 m]'],
    ['z: { value: 1 m, valeu: 2 m }', 'key-unknown', 'valeu'],
    ['z: { value: 1 m, range: 2 m }', 'value-kind', '2 m'],
    ['z: { value: 1 m, range: 1 m to 2 m to 3 m }', 'value-kind', '1 m to 2 m to 3 m'],
    ['z: { value: 1 m, range: [1 m, 2 m] }', 'value-kind', '[1 m, 2 m]'],
    ['z: { value: 1 m, status: holding }', 'choice-unknown', 'holding'],
    ['z: { value: 1 m, basis: { a: b } }', 'value-kind', '{ a: b }'],
    ['water depth: 3 m', 'name-form', 'water depth'],
    ["f'_c: 3 MPa", 'name-form', "f'_c"],
    ['and: 3 MPa', 'name-form', 'and'],
    ['sqrt: 3 MPa', 'name-form', 'sqrt'],
    ['N: 3 kN', 'name-is-unit', 'N'],
    ['day: 3 kN', 'name-is-unit', 'day'],
  ])('%s is refused', (lines, rule, text) => {
    const notebook = fenceOf('assume site', lines).notebook
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe(rule)
    expect(textAt(notebook, fault.place)).toBe(text)
  })
  it('names of formulas are names of assumptions', () => {
    const names = rowsOf('M_u: 1 kN*m\nφ: 0.9\nγ_w: 9.81 kN/m^3\nB: 2 m\nx1: 3 m').map(({ name }) => name.text)
    expect(names).toEqual(['M_u', 'φ', 'γ_w', 'B', 'x1'])
  })
  it('a status that is not known is not taken for confirmed', () => {
    expect(rowsOf('z: { value: 1 m, status: confirmd }')[0]?.status).toBe('hold')
  })
  it('a likely name is offered', () => {
    expect(onlyFault(fenceOf('assume site', 'water depth: 3 m').notebook).help).toBe('Write `water_depth`')
  })
})

describe('work: statements', () => {
  const work = (lines: string) => fenceOf('work a', lines)
  const statementsOf = (lines: string) => (work(lines).block as WorkBlock).statements
  it('steps, checks, tables, remarks, blank lines and lines of remark alone', () => {
    const { notebook, block } = work(
      'e = M / N_u to mm   # eccentricity\n\n  # alone\ne<=k#tight\ntable c = 0 m, 1; 2 m, .5;\n',
    )
    expect(notebook.diagnostics).toEqual([])
    expect(block).toMatchObject({
      statements: [
        { kind: 'step', name: { text: 'e' }, formula: { text: 'M / N_u to mm' }, remark: { text: 'eccentricity' } },
        { kind: 'check', formula: { text: 'e<=k' }, remark: { text: 'tight' } },
        {
          kind: 'table',
          name: { text: 'c' },
          points: [
            [{ text: '0 m' }, { text: '1' }],
            [{ text: '2 m' }, { text: '.5' }],
          ],
        },
      ],
    })
  })
  it('comparisons are checks, however they are written', () => {
    for (const line of ['a < b', 'a >= b', 'a == b', 'a != b', 'a ≤ b', 'not (a < b)', 'x and y', 'a < b < c']) {
      expect(statementsOf(line), line).toMatchObject([{ kind: 'check', formula: { text: line } }])
    }
  })
  it('a comparison may be named', () => {
    expect(statementsOf('fits = a <= b')).toMatchObject([{ kind: 'step', formula: { text: 'a <= b' } }])
  })
  it('`table` may be a name', () => {
    expect(statementsOf('table = 3 m')).toMatchObject([{ kind: 'step', name: { text: 'table' } }])
  })
  it.each([
    ['roof.M', 'statement-unread', 'roof.M'],
    ['= 3 m', 'statement-unread', '= 3 m'],
    ['x =', 'statement-unread', ''],
    ['a.b = 3 m', 'name-form', 'a.b'],
    ['2x = 3 m', 'name-form', '2x'],
    ['f(x) = 3 m', 'name-form', 'f(x)'],
    ['pi = 3', 'name-form', 'pi'],
    ['N = 3 kN', 'name-is-unit', 'N'],
    ['table c = 0 m, 1', 'statement-unread', '0 m, 1'],
    ['table c = 0 m, 1; 2 m', 'statement-unread', '2 m'],
    ['table c = 0 m, 1; 2 m, 3, 4', 'statement-unread', '2 m, 3, 4'],
    ['table c = 0 m, 1; ; 2 m, 3', 'statement-unread', ''],
    ['table 2c = 0 m, 1; 2 m, 3', 'name-form', '2c'],
    ['x = 1\nx = 2', 'name-duplicate', 'x'],
    ['x = 1\ntable x = 0 m, 1; 2 m, 3', 'name-duplicate', 'x'],
  ])('%j is refused', (lines, rule, text) => {
    const { notebook } = work(lines)
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe(rule)
    expect(textAt(notebook, fault.place)).toBe(text)
  })
  it('a name given twice notes the first', () => {
    expect(onlyFault(work('x = 1\ny = 2\nx = 3').notebook).notes?.[0]?.place).toMatchObject({ line: 6, column: 1 })
  })
  it('every line that is wrong is said', () => {
    expect(marked(work('roof.M\nx = 1\n= 2\nx = 3').notebook)).toEqual([
      ...['statement-unread: roof.M', 'statement-unread: = 2', 'name-duplicate: x'],
    ])
  })
  it('a line that could not be read leaves the block marked', () => {
    expect(work('roof.M\nx = 1').block).toMatchObject({ unread: true })
    expect(work('x = 1').block).not.toHaveProperty('unread')
  })
  it('the head of the file is before the block', () => expect(head.split('\n').length).toBe(5))
})
