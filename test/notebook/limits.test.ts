import { describe, expect, it } from 'vitest'
import { limits } from '../../src/notebook/limits.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { bodyOf, head, onlyFault } from './reading-of.ts'

const tooLarge = (body: string) => {
  const fault = onlyFault(bodyOf(body))
  expect(fault).toMatchObject({ rule: 'file-too-large', severity: 'error' })
  return fault
}

describe('limits: the file', () => {
  it('of 2 MB is read, and of a byte more is not', () => {
    const paragraph = `${'x'.repeat(9_998)}\n\n`
    const fill = (bytes: number) => `${head}${paragraph.repeat(bytes / 10_000 - 1)}`.padEnd(bytes, 'x')
    expect(readNotebook(fill(limits.fileBytes), { path: 'a.md' }).diagnostics).toEqual([])
    expect(onlyFault(readNotebook(fill(limits.fileBytes + 1), { path: 'a.md' })).says).toContain('the limit is 2.00 MB')
  })
  it('is measured in bytes, not in characters', () => {
    tooLarge('é\n\n'.repeat(limits.fileBytes / 4 + 1))
  })
  it('of 10 MB is refused unread', () => {
    expect(tooLarge('word\n\n'.repeat(10_000_000 / 6)).says).toMatch(/^The file has 10\.0\d MB; the limit is 2\.00 MB$/)
  })
  it('of 100,000 lines is read', () => {
    const notebook = bodyOf(`${'One line of 1:1.5 text.\n\n'.repeat(50_000)}:value[x]\n`)
    expect(onlyFault(notebook)).toMatchObject({ rule: 'mention-form', place: { line: 100_005, column: 8 } })
  })
})

describe('limits: a paragraph', () => {
  it.each([
    ['of one line', 'x'.repeat(limits.paragraph + 1)],
    ['of 1 MB', '1:1.5 '.repeat(1_000_000 / 6)],
    ['of many lines', 'a word\n'.repeat(limits.paragraph / 7 + 1)],
    ['of many lines in a quote', '> a word\n'.repeat(limits.paragraph / 9 + 1)],
    ['after a fence that a box ends', `:::caution\n\`\`\`\n:::\n\n${'x'.repeat(limits.fence + 1)}`],
    ['in what only looks like a fence', `<div>\n\`\`\`\n</div>\n\n${'a word\n'.repeat(limits.fence / 7 + 1)}`],
  ])('%s is refused at its head', (_, body) => {
    expect(tooLarge(body).place.column).toBe(1)
  })
  it('of just the limit is read', () => {
    expect(bodyOf('x'.repeat(limits.paragraph)).diagnostics).toEqual([])
    const quoted = '> a word\n'.repeat(2000)
    expect(bodyOf(`${quoted}>\n${quoted}`).diagnostics).toEqual([])
  })
  it('a long fence of somebody else is read', () => {
    expect(bodyOf(`\`\`\`csv\n${'1,2,3\n'.repeat(20_000)}\`\`\`\n\ntext\n`).diagnostics).toEqual([])
    expect(bodyOf(`~~~csv\n${'1,2,3\n'.repeat(20_000)}~~~\n\ntext\n`).diagnostics).toEqual([])
  })
})

describe('limits: nesting', () => {
  const deep = 10_000
  it.each([
    ['quotes', `${'>'.repeat(deep)} a`],
    ['quotes with blanks', `${'> '.repeat(deep)} a`],
    ['lists on one line', `${'- '.repeat(1000)}a`],
    ['numbered lists on one line', `${'1. '.repeat(1000)}a`],
    ['footnotes on one line', `${'[^a]: '.repeat(1000)}a`],
    ['lists by indent', Array.from({ length: 200 }, (_, level) => `${' '.repeat(2 * level)}- a\n\n`).join('')],
    ['lists by tabs', Array.from({ length: 200 }, (_, level) => `${'\t'.repeat(level)}- a\n\n`).join('')],
    ['boxes', Array.from({ length: 80 }, (_, level) => `${':'.repeat(83 - level)}caution\n\n`).join('')],
    ['brackets', `${'['.repeat(deep / 2)}a${']'.repeat(deep / 2)}`],
    ['images', `${'!['.repeat(3000)}a${'](b)'.repeat(3000)}`],
    ['emphasis', `${'*a _b '.repeat(1000)}${'b_ a* '.repeat(1000)}`],
    ['strikes', `${'~a *b '.repeat(1000)}${'b* a~ '.repeat(1000)}`],
  ])('%s', (_, body) => {
    tooLarge(body)
  })
  it('an unclosed quote mark run in text is no nesting', () => {
    expect(bodyOf('a > b > c > d and [x] [y] [z] - e - f\n').diagnostics).toEqual([])
  })
  it('a long list that is not deep is read', () => {
    expect(bodyOf('- [a](b)\n  - c\n\n'.repeat(500)).diagnostics).toEqual([])
  })
})

describe('limits: blocks', () => {
  const block = (index: number) => `\`\`\`work b${index}\nx = 1\n\`\`\`\n`
  it('a thousand are read, the rest is refused once', () => {
    const body = Array.from({ length: 1005 }, (_, index) => block(index)).join('\n')
    const notebook = bodyOf(body)
    expect(notebook.blocks.length).toBe(1000)
    expect(onlyFault(notebook)).toMatchObject({ rule: 'file-too-large', place: { line: 5 + 4 * 1000 } })
  })
  const calc = (yaml: string) => `\`\`\`calc two-way-slab roof\n${yaml}\n\`\`\`\n`
  it.each([
    ['brackets', `a: ${'['.repeat(5000)}${']'.repeat(5000)}`],
    ['braces', `a: ${'{a: '.repeat(5000)}1${'}'.repeat(5000)}`],
    ['brackets never closed', `a: ${'['.repeat(5000)}`],
    ['brackets behind others that close nothing', `# ${']'.repeat(40)}\na: ${'['.repeat(30)}1${']'.repeat(30)}`],
    ['compact lists', `${'- '.repeat(3000)}a`],
    ['compact keys', `${'? '.repeat(3000)}a`],
    ['indents', Array.from({ length: 60 }, (_, level) => `${' '.repeat(level)}a:`).join('\n')],
  ])('YAML nested by %s', (_, yaml) => {
    tooLarge(calc(yaml))
  })
  it('YAML as deep as a module wants is read', () => {
    expect(bodyOf(calc('a:\n  - b:\n      - { c: [d, { e: f }] }')).diagnostics).toEqual([])
  })
  it('a block too long', () => {
    const line = `a${'x'.repeat(96)}: 1\n\n`
    tooLarge(calc(Array.from({ length: 600 }, (_, index) => `k${index}${line}`).join('')))
  })
  it('aliases cannot multiply', () => {
    const bomb = ['a0: &a0 [x, x]', ...Array.from({ length: 30 }, (_, n) => `a${n + 1}: &a${n + 1} [*a${n}, *a${n}]`)]
    const { diagnostics } = bodyOf(calc(bomb.join('\n')))
    expect(new Set(diagnostics.map(({ rule }) => rule))).toEqual(new Set(['yaml-feature']))
    const title = readNotebook(`---\ntitle: x\n${bomb.join('\n')}\n---\n`, { path: 'a.md' })
    expect(title.diagnostics.map(({ rule }) => rule)).toContain('yaml-feature')
  })
  it('working too long', () => {
    const lines = Array.from({ length: limits.statements + 1 }, (_, index) => `x${index} = 1`).join('\n')
    const fault = tooLarge(`\`\`\`work a\n${lines}\n\`\`\`\n`)
    expect(fault.place.line).toBe(5 + limits.statements + 1)
  })
})
