import { describe, expect, it } from 'vitest'
import type { CalcBlock } from '../../src/notebook/types.ts'
import { fenceOf, marked, onlyFault, textAt } from './reading-of.ts'

const inputs = (lines: string) => fenceOf('calc two-way-slab roof', lines)
const inputsOf = (lines: string) => (inputs(lines).block as CalcBlock).inputs

describe('YAML of a block: values', () => {
  it('scalars stay the text that was typed', () => {
    const entries = inputsOf('a: 010\nb: 1e3\nc: yes\nd: ~\ne: .5\nf: 12:30\ng: 0x10\nh: null\ni: 5%')
    expect(entries.map(({ value }) => value.kind === 'scalar' && value.written.text)).toEqual([
      ...['010', '1e3', 'yes', '~', '.5', '12:30', '0x10', 'null', '5%'],
    ])
  })
  it('plain, quoted and flow scalars know their exact place', () => {
    const { notebook } = inputs('a: 3 m + x   # why\nb: \'7 m\'\nc: "8 m"\nd: { e: [9 m, 10 m] }')
    const [a, b, c, d] = (notebook.blocks[0] as CalcBlock).inputs
    for (const entry of [a, b, c]) {
      if (entry?.value.kind !== 'scalar') throw new Error('expected a scalar')
      expect(entry.value.written.exact).toBeUndefined()
      expect(textAt(notebook, entry.value.written.place)).toBe(entry.value.written.text)
    }
    if (d?.value.kind !== 'map') throw new Error('expected a map')
    const [e] = d.value.entries
    if (e?.value.kind !== 'list') throw new Error('expected a list')
    const [, ten] = e.value.items
    if (ten?.kind !== 'scalar') throw new Error('expected a scalar')
    expect(ten.written).toMatchObject({ text: '10 m', place: { line: 9, column: 15 } })
    expect(textAt(notebook, ten.written.place)).toBe('10 m')
  })
  it('folded, escaped and block scalars are marked as not exact', () => {
    const entries = inputsOf(`a: one\n  two\nb: 'it''s'\nc: "x\\ty"\nd: |\n  x\ne: >\n  y`)
    for (const { value } of entries) expect(value).toMatchObject({ kind: 'scalar', written: { exact: false } })
    expect(entries.map(({ value }) => value.kind === 'scalar' && value.written.text)).toEqual([
      ...['one two', "it's", 'x\ty', 'x', 'y'],
    ])
  })
  it('keys that objects already have are ordinary keys', () => {
    expect(inputsOf('__proto__: 1\nconstructor: 2\ntoString: 3').map(({ key }) => key.text)).toEqual([
      ...['__proto__', 'constructor', 'toString'],
    ])
  })
})

describe('YAML of a block: refusals', () => {
  it.each([
    ['load: *a', 'yaml-feature', '*a'],
    ['load: &a 3 m', 'yaml-feature', '&a'],
    ['load: !x 3 m', 'yaml-feature', '!x'],
    ['load: !!str 3 m', 'yaml-feature', '!!str'],
    ['<<: { a: 1 }', 'yaml-feature', '<<'],
    ['[a]: 1', 'yaml-feature', '[a]'],
    ['a: 1\n---\nb: 2', 'yaml-feature', '---'],
    ['---\na: 1', 'yaml-feature', '---'],
    ['a: 1\n...', 'yaml-feature', '...'],
    ['load: > 3 kN', 'yaml-syntax', '3 kN'],
    ['load: @x', 'yaml-syntax', '@'],
    ['load: `x`', 'yaml-syntax', '`'],
    ['load: % x', 'yaml-syntax', '%'],
    ['load: a: b', 'yaml-syntax', 'a'],
    ['load: - 5 kN', 'yaml-syntax', '-'],
    ['load: "3 kN', 'yaml-syntax', '"'],
    ['load: "3 kN" + 2', 'yaml-syntax', '+ 2'],
    ['load 3 kN', 'yaml-syntax', 'load 3 kN'],
    ['load:3 kN', 'yaml-syntax', 'load:3 kN'],
    ['a: 1\nload 3', 'yaml-syntax', 'load 3'],
    ['- a\n- b', 'yaml-syntax', '- a'],
    ['load: [1, [2]', 'yaml-syntax', '['],
    ['load: { a: { b: 1 },\nspan: 2', 'yaml-syntax', '{'],
    ['load:', 'value-kind', ''],
    ["load: ''", 'value-kind', ''],
    ['load: { a:1 }', 'value-kind', ''],
    ['load: [1, ""]', 'value-kind', ''],
    ['a: 1\na: 2', 'key-duplicate', 'a'],
    ['layers:\n  - { x: 1 m, x: 2 m }', 'key-duplicate', 'x'],
  ])('%j is %s', (lines, rule, text) => {
    const { notebook } = inputs(lines)
    const fault = onlyFault(notebook)
    expect([fault.rule, fault.severity]).toEqual([rule, 'error'])
    expect(textAt(notebook, fault.place)).toBe(text)
  })
  it('what is not closed is shown where it is opened', () => {
    expect(onlyFault(inputs('load: { a: { b: 1 }\nspan: 2').notebook).place).toMatchObject({ line: 6, column: 7 })
    expect(onlyFault(inputs('load: "3 kN\nspan: 2').notebook).place).toMatchObject({ line: 6, column: 7 })
    expect(onlyFault(inputs("load: '3 kN\nspan: 2").notebook).place).toMatchObject({ line: 6, column: 7 })
  })
  it('a tab as indent is named', () => {
    expect(onlyFault(inputs('layers:\n\t- a').notebook).says).toBe('The line is indented with a tab')
    expect(onlyFault(inputs('layers: [, a]').notebook).says).toBe('A comma has nothing before it')
  })
  it.each([
    ['load: { at: base: 3 kN }', 'A value inside brackets holds `: `', 'single quotes'],
    ['load: { at: base, see {B} }', 'Inside brackets, what stands here', 'single quotes'],
    ['load: "3 kN', 'A quote is opened', 'Close it'],
    ['load: [, a]', 'A comma has nothing before it', 'Leave the comma out'],
  ])('%j says what is wrong and what to write', (lines, says, help) => {
    const fault = onlyFault(inputs(lines).notebook)
    expect(fault.says).toContain(says)
    expect(fault.help).toContain(help)
  })
  it.each([
    ['cover: { value: 8,000 mm, basis: survey }', 'A comma ends a value'],
    ['cover: { value: 8 mm, basis: survey, sheet 4 }', 'A comma ends a value'],
    ['cover: { value: 8 mm, of: survey }', 'Its keys are'],
    ['cover: { value: 8 mm, bassis: survey }', 'Write `basis`'],
  ])('%j: a value cut off by a comma is told from an unknown key', (lines, help) => {
    const { notebook } = fenceOf('assume site', lines)
    expect(notebook.diagnostics.find(({ rule }) => rule === 'key-unknown')?.help).toContain(help)
  })
  it.each([
    ['layers:\n  - { thickness: 3,2 m, gamma: 18 kN/m^3 }', 'write a number as in `2500` or `2.5`'],
    ['layers:\n  - { layer: sand, fine, gamma: 18 kN/m^3 }', 'in single quotes'],
    ['layers:\n  - { thickness: , gamma: 18 kN/m^3 }', 'Give it one'],
    ['depth:', 'Give it one'],
  ])('%j: so is an input, in a row too', (lines, help) => {
    expect(onlyFault(inputs(lines).notebook).help).toContain(help)
  })
  it('a second key notes where the first stands', () => {
    const fault = onlyFault(inputs('load: 1 kN\nspan: 2 m\nload: 3 kN').notebook)
    expect(fault.place).toMatchObject({ line: 8, column: 1 })
    expect(fault.notes?.[0]?.place).toMatchObject({ line: 6, column: 1 })
  })
  it('a missing blank after the colon is seen', () => {
    expect(onlyFault(inputs('load: { a:1 }').notebook).help).toBe('Write `a: ` with a blank after the colon')
  })
  it('several problems of one block are all said, in order', () => {
    const { notebook, block } = inputs('a:\nb: *x\nc: 1\nc: 2\nd: 3')
    expect(marked(notebook)).toEqual(['value-kind: ', 'yaml-feature: *x', 'key-duplicate: c'])
    expect(block).toMatchObject({ unread: true, inputs: [{ key: { text: 'c' } }, { key: { text: 'd' } }] })
  })
})
