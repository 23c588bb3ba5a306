import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fillText, type TextFillings } from '../../src/notebook/fill-text.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'

const rows = [
  ['Name', 'Result'],
  ['`x`', '1 m'],
]
const table =
  '<!-- undercroft: results of a -->\n\n| Name | Result |\n| - | - |\n| `x` | 1 m |\n\n<!-- undercroft: end of results -->'

const filled = (text: string, fillings: Partial<TextFillings> = {}): string =>
  fillText(readNotebook(text, { path: 'a.md' }), { block: () => rows, mention: () => '1 m', ...fillings })

const fence = '```work a\nx = 1 m\n```'

describe('fill text: where it puts a table', () => {
  it.each([
    ['under a fence', `# A\n\n${fence}\n\nText.\n`, `# A\n\n${fence}\n\n${table}\n\nText.\n`],
    ['where text follows at once', `${fence}\nText.\n`, `${fence}\n\n${table}\nText.\n`],
    ['at the end of a file without a line ending', fence, `${fence}\n\n${table}`],
    ['after a byte order mark', `\ufeff${fence}\n`, `\ufeff${fence}\n\n${table}\n`],
    [
      'in a quote',
      `> ${fence.replaceAll('\n', '\n> ')}\n`,
      `> ${`${fence}\n\n${table}`.replaceAll('\n', '\n> ').replaceAll('> \n', '>\n')}\n`,
    ],
    [
      'in a list',
      `- ${fence.replaceAll('\n', '\n  ')}\n- b\n`,
      `- ${`${fence}\n\n${table}`.replaceAll('\n', '\n  ').replaceAll('  \n', '\n')}\n- b\n`,
    ],
  ])('%s', (_, text, wanted) => {
    expect(filled(text)).toBe(wanted)
    expect(filled(wanted)).toBe(wanted)
  })
  it('and leaves a comment of the author behind a table where the mark of its end is gone', () => {
    const own = `${fence}\n\n<!-- undercroft: results of a -->\n\n| a |\n| - |\n\n<!-- checked by hand -->\n`
    expect(filled(own, { block: () => undefined })).toBe(own)
  })
  it('not under a fence that is left open', () => expect(filled('```work a\nx = 1 m\n')).toBe('```work a\nx = 1 m\n'))
  it.each(['\r\n', '\r'])('in the line endings of the author: %j', ending => {
    const text = `# A\n\n${fence}\n\nIt is :value[a.x].\n`.replaceAll('\n', ending)
    const wanted = `# A\n\n${fence}\n\n${table}\n\nIt is 1 m.\n`.replaceAll('\n', ending)
    expect(filled(text)).toBe(wanted)
    expect(filled(wanted)).toBe(wanted)
  })
})

describe('fill text: an earlier run', () => {
  const once = `${fence}\n\n${table}\n\nText.\n`
  it('its table is replaced, and taken away where there are no results any more', () => {
    const other = [
      ['Name', 'Result'],
      ['`x`', '2 m'],
    ]
    expect(filled(once, { block: () => other })).toBe(once.replace('1 m |', '2 m |'))
    expect(filled(once, { block: () => undefined })).toBe(`${fence}\n\nText.\n`)
  })
  it('a table of a block that is gone goes, wherever it stands', () => {
    expect(filled(`Text.\n\n${table.replace('of a', 'of gone')}\n\n${fence}\n`)).toBe(`Text.\n\n${fence}\n\n${table}\n`)
    expect(filled(`${table}\n\nText.\n`)).toBe('\n\nText.\n')
  })
  it('what an author has written between the comments, or shows in a fence, stays', () => {
    const written = `${table.replace('<!-- undercroft: end', 'My own words.\n\n<!-- undercroft: end')}\n`
    expect(filled(written)).toBe(written)
    const shown = `\`\`\`markdown\n${table}\n\`\`\`\n`
    expect(filled(shown)).toBe(shown)
    const half = `${table.slice(0, table.indexOf('<!-- undercroft: end'))}\nText.\n`
    expect(filled(half)).toBe(half)
  })
})

describe('fill text: mentions', () => {
  it('a value in place of each, whatever stands round it; what has no answer stays as typed', () => {
    const text = '# At :value[a.x]\n\n*:value[a.x]{unit="mm" figures=3}*, [:value[a.y]](b) :see[a] :cite[c] 1:1.5\n'
    const answers = ['1 m', '1000 mm']
    expect(filled(text, { mention: index => answers[index] })).toBe(
      '# At 1 m\n\n*1000 mm*, [:value[a.y]](b) :see[a] :cite[c] 1:1.5\n',
    )
  })
  it('words that would be Markdown are escaped, and a bar in a table too', () => {
    expect(filled('It is :value[a.x].\n', { mention: () => '*all* [of] it' })).toBe('It is \\*all\\* \\[of] it.\n')
    const row = '| a | b |\n| - | - |\n| :value[a.x] | c |\n'
    expect(filled(row, { mention: () => 'x|y' })).toBe(row.replace(':value[a.x]', 'x\\|y'))
  })
})

describe('fill text: the author’s bytes', () => {
  const folder = new URL('../notebooks/', import.meta.url)
  const notebooks = readdirSync(folder).filter(name => name.endsWith('.md'))
  it.each(notebooks)('%s: all are kept, and only what is filled in is new', name => {
    const text = readFileSync(new URL(name, folder), 'utf8')
    expect(filled(text, { block: () => undefined, mention: () => undefined })).toBe(text)
    const lines = filled(text, { mention: () => undefined }).split('\n')
    const own = lines
      .join('\n')
      .replaceAll(/\n[> ]*\n[> ]*<!-- undercroft: results of \w+ -->[\s\S]*?<!-- undercroft: end of results -->/g, '')
    expect(own).toBe(text)
  })
})
