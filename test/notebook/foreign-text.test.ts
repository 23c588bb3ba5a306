import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { toHtml } from 'hast-util-to-html'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import remarkStringify from 'remark-stringify'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { notebookOfTree } from '../../src/notebook/notebook-of-tree.ts'
import { undercroftSyntax } from '../../src/notebook/undercroft-syntax.ts'

const ours = unified().use(remarkParse).use(undercroftSyntax).use(remarkStringify)
const plainly = unified().use(remarkParse).use(remarkGfm).use(remarkStringify)
const plain = unified().use(remarkParse).use(remarkGfm)

function readTree(text: string) {
  const tree = ours.parse(text)
  notebookOfTree(tree, text, { path: 'a.md' })
  return tree
}
const written = (text: string): string => ours.stringify(readTree(text))
const html = async (tree: ReturnType<typeof readTree>): Promise<string> =>
  toHtml(await unified().use(remarkRehype).run(tree))

const foreign = [
  ...[
    '1:1.5',
    'batter 1:1.5 (V:H)',
    '12:30',
    'ratio :n of',
    'a:b',
    '10:1 slope',
    'IS 456:2000',
    'EN 1992-1-1:2004',
    '(H:V)',
  ],
  ...[
    'w:c',
    'key:value',
    '7:am',
    '**:n**',
    'std:ISO',
    '"x:y"',
    'f:x{y}',
    'foo:bar[baz]',
    'a:b[c]{d}',
    'a:b[c]{d=1}',
    'note: this',
  ],
  ...[
    'std::vector',
    'a::b',
    ':smile:',
    '4:3:2',
    '1:2:4',
    '12:30:45',
    'A:B:C',
    '::',
    '::leaf',
    '::leaf[a]{b}',
    '::: note',
    ':see',
    ':cited[a]',
  ],
  ...[':valued[a]', ':::note\ntext\n:::', '[x](http://a:80)', ':value of it', 'x :hold y'],
]

describe('foreign text: colons', () => {
  it.each(foreign)('%j is written back as typed', text => expect(written(`${text}\n`)).toBe(`${text}\n`))
  it.each(foreign)('%j gives the HTML that it gives without us', async text => {
    expect(await html(readTree(`${text}\n`))).toBe(await html(plain.parse(`${text}\n`)))
  })
  it('a colon that would begin a mention is escaped, so that it does not begin one', () => {
    const text = 'Write \\:value\\[a.b] for it\n'
    expect(readTree(written(text))).toMatchObject({
      children: [{ children: [{ type: 'text', value: 'Write :value[a.b] for it' }] }],
    })
  })
})

describe('foreign text: whatever stands round colons', () => {
  const piece = fc.constantFrom(
    ':',
    '::',
    ' ',
    '.',
    '1',
    '12',
    'a',
    'IS',
    '-',
    '_',
    '(',
    ')',
    '[',
    ']',
    '{',
    '}',
    '\n',
    'value',
    'hold',
  )
  const text = fc.array(piece, { minLength: 1, maxLength: 25 }).map(parts => `x${parts.join('')}x\n`)
  const mentions = /:(?:value|see|cite)[[{]|:::hold/
  it('is written as remark alone would write it, or as typed', () => {
    fc.assert(
      fc.property(text, typed => {
        fc.pre(!mentions.test(typed))
        expect([typed, plainly.stringify(plainly.parse(typed))]).toContain(written(typed))
      }),
      { seed: 11, numRuns: 800 },
    )
  })
  it('gives the tree that remark alone gives', () => {
    const bare = (tree: object) =>
      JSON.parse(JSON.stringify(tree, (key, value) => (key === 'data' ? undefined : value)))
    fc.assert(
      fc.property(text, typed => {
        fc.pre(!mentions.test(typed))
        expect(bare(readTree(typed))).toEqual(bare(plainly.parse(typed)))
      }),
      { seed: 12, numRuns: 800 },
    )
  })
})

describe('beside other plugins', () => {
  const inPipe = (typed: string, ...plugins: readonly (typeof remarkGfm | typeof remarkDirective)[]) => {
    const processor = unified().use(remarkParse)
    for (const plugin of plugins) processor.use(plugin as typeof remarkGfm)
    const tree = processor.use(undercroftSyntax).parse(typed)
    return notebookOfTree(tree, typed, { path: 'a.md' })
  }
  const typed = '---\ntitle: x\n---\n\nSee :see[roof], ~~a~~ :icon[home] and ratio:value of.\n\n:::note\nx\n:::\n'
  it('GFM that is there already does no harm', () => {
    expect(inPipe(typed, remarkGfm)).toEqual(inPipe(typed))
  })
  it('with remark-directive, directives of others are theirs, and ours are ours', () => {
    const { tree, mentions, diagnostics } = inPipe(typed, remarkDirective)
    expect([mentions.length, diagnostics]).toEqual([1, []])
    expect(tree.children[2]).toMatchObject({ type: 'containerDirective', name: 'note' })
    expect(JSON.stringify(tree.children[1])).toContain('"name":"icon"')
    expect(JSON.stringify(tree.children[1])).toContain('"value":":value"')
  })
})

describe('nodes of ours: written back', () => {
  it.each([
    ':value[a.b]{unit=kN figures=3} and :see[roof] and :cite[x]',
    ":value[ a.b ]{unit='kN'}",
    '~~~work a\nx = 1\n~~~',
    '````work a\nx = 1\n````',
    '> ~~~work a\n> x = 1\n>\n> y = 2\n> ~~~',
    '```work a\n```',
    '```work   a\n```',
    ':::caution\ntext\n:::',
    '::::caution\n:::hold\ntext\n:::\n::::',
  ])('%j is as typed', text => expect(written(`${text}\n`)).toBe(`${text}\n`))
  it.each([
    ['CRLF', '\r\n'],
    ['CR', '\r'],
  ])('a fence keeps the line endings of its author: %s', (_, ending) => {
    const fences = [
      '```work a\nx = 1\n\ny = 2\n```',
      '```work b\n```',
      '> ~~~calc levels c\n> x: 1\n> y: 2\n> ~~~',
      '* ```work d\n  x = 1\n  ```',
      '```work open\nx = 1',
    ]
    for (const fence of fences.map(each => each.replaceAll('\n', ending)))
      expect(written(`${fence}${ending}`)).toBe(fence.includes('open') ? `${fence}${ending}\`\`\`\n` : `${fence}\n`)
  })
  it('a fence that ends the file in CRLF without a last line ending is closed in CRLF', () => {
    expect(written('```work a\r\nx = 1')).toBe('```work a\r\nx = 1\r\n```\n')
    expect(written('```work a')).toBe('```work a\n```\n')
  })
  it('a reference that cannot be read as well', () => expect(written('x :value[a] y\n')).toBe('x :value[a] y\n'))
  it('a whole notebook is stable from the first writing on', () => {
    const once = written(readFileSync(new URL('../notebooks/sound.md', import.meta.url), 'utf8'))
    expect(written(once)).toBe(once)
  })
})
