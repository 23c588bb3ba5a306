import { readFileSync } from 'node:fs'
import { toHtml } from 'hast-util-to-html'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import remarkStringify from 'remark-stringify'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { notebookOfTree } from '../../src/notebook/notebook-of-tree.ts'
import { undercroftSyntax } from '../../src/notebook/undercroft-syntax.ts'

const ours = unified().use(remarkParse).use(undercroftSyntax).use(remarkStringify)
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
  it('a reference that cannot be read as well', () => expect(written('x :value[a] y\n')).toBe('x :value[a] y\n'))
  it('a whole notebook is stable from the first writing on', () => {
    const once = written(readFileSync(new URL('../notebooks/sound.md', import.meta.url), 'utf8'))
    expect(written(once)).toBe(once)
  })
})
