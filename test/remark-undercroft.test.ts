import type { Element, Root as Page } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Code, Root } from 'mdast'
import type { ContainerDirective } from 'mdast-util-directive'
import remarkDirective from 'remark-directive'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkMath from 'remark-math'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import remarkStringify from 'remark-stringify'
import { type Plugin, unified } from 'unified'
import { visit } from 'unist-util-visit'
import { VFile } from 'vfile'
import { describe, expect, it } from 'vitest'
import { defineModule, quantity, remarkUndercroft, step } from '../src/index.ts'

/** Written the way remark-stringify writes, so that only what is ours can differ. */
const text = `---
title: Roof of the store
---

# Roof

A battered pit at 1:1.5, poured at 12:30; see IS 456:2000.

\`\`\`assume site
span: { value: 5 m, basis: drawing SP-12 }   # clear
load:   20 kN/m^2
\`\`\`

* A list with a block in it:

  ~~~work strip
  M = site.load * site.span^2 / 8    # moment of a strip

  M <= 40 kN*m/m                     # what the slab carries
  ~~~

The moment is :value[ strip.M ]{figures=3}, by :see[strip]; **not** :value[strip.M]{unit="kip*ft/ft"}.

:::caution
Keep the load below :value[site.load].
:::

\`\`\`js
const untouched = ':value[strip.M]'
\`\`\`
`

/** A module, whose working gives sources; and one of them cited. */
const withModule = `
\`\`\`calc halving-layers roof_cover
layers:
  - { material: concrete, thickness: 300 mm }
required_factor: 20
\`\`\`

After :cite[halving-data].
`

/** Runs a page through a pipeline of a stranger's and returns what came out. */
async function page(value: string, { before = [], after = [], options = {} }: Pipeline = {}) {
  const file = new VFile({ value, path: 'notes/roof.md' })
  const pipeline = unified().use(remarkParse).use(before).use(remarkUndercroft, options).use(after).use(remarkRehype)
  const tree = (await pipeline.run(pipeline.parse(file), file)) as Page
  return { file, tree, html: toHtml(tree) }
}

interface Pipeline {
  readonly before?: Plugin[]
  readonly after?: Plugin[]
  readonly options?: Parameters<typeof remarkUndercroft>[0]
}

describe('remarkUndercroft', () => {
  it('puts the working in the place of each block, and the answers into the sentences', async () => {
    const { html } = await page(text)
    expect(html).not.toContain('```')
    expect(html).toContain('<section class="assume" id="b-site">')
    expect(html).toContain('<section class="calc work" id="b-strip">')
    // 20 kN/m² on 5 m: 20 * 5^2 / 8 = 62.5, by hand.
    expect(html).toMatch(/The moment is <[^.]*?>62\.5/)
    expect(html).toContain('<aside class="notice caution">')
  })

  it('leaves everything else to the pipeline', async () => {
    const { html } = await page(text)
    expect(html).toContain('A battered pit at 1:1.5, poured at 12:30; see IS 456:2000.')
    expect(html).toContain('<code class="language-js">const untouched = \':value[strip.M]\'\n</code>')
  })

  it('makes only links that lead somewhere on the page, and no id twice', async () => {
    const { tree, html } = await page(text + withModule)
    expect(html).toContain('After <span class="cite">[1]</span>.')
    const ids: string[] = []
    const links: string[] = []
    visit(tree, 'element', ({ properties: { id, href } }: Element) => {
      if (typeof id === 'string') ids.push(id)
      if (typeof href === 'string' && href.startsWith('#')) links.push(href.slice(1))
    })
    expect(links.filter(link => !ids.includes(link))).toEqual([])
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([])
    expect(links.length).toBeGreaterThan(3)
  })

  it('makes of each problem a message with its place and rule, and throws nothing', async () => {
    const { file } = await page(text.replace('site.span^2', 'site.spam^2'))
    expect(
      file.messages.map(({ ruleId, source, fatal, line, column, place, note, reason }) => ({
        ...{ ruleId, source, fatal, line, column, place, note, reason },
      })),
    ).toMatchObject([
      { ruleId: 'assumption-basis', source: 'undercroft', fatal: false, line: 11 },
      {
        ruleId: 'name-unknown',
        source: 'undercroft',
        fatal: true,
        line: 17,
        column: 19,
        reason: 'Nothing here is named `site.spam`',
        note: 'Did you mean `site.span`?',
        place: { start: { line: 17, column: 19 }, end: { line: 17, column: 28 } },
      },
    ])
    expect(String(file.messages[1])).toContain('notes/roof.md:17:19')
    const { place } = file.messages[1] ?? {}
    if (!place || !('start' in place)) throw new Error('the message has no stretch')
    const { start, end } = place
    expect(String(file).slice(start.offset, end.offset)).toBe('site.spam')
  })

  it('leaves notebook, results and workings in the file’s data', async () => {
    const { file } = await page(text)
    const { notebook, results, workings } = file.data.undercroft ?? {}
    expect(notebook?.title.title).toBe('Roof of the store')
    expect(notebook?.path).toBe('notes/roof.md')
    expect(results).toBeDefined()
    expect(workings?.blocks.map(({ name }) => name)).toEqual(['site', 'strip'])
  })

  it('gives the author’s own text back from remark-stringify, to the byte', async () => {
    const written = await unified().use(remarkParse).use(remarkUndercroft).use(remarkStringify).process(text)
    expect(String(written)).toBe(text)
  })

  it('keeps nothing from one file for the next', async () => {
    const pipeline = unified().use(remarkParse).use(remarkUndercroft).use(remarkRehype).freeze()
    const html = async (value: string): Promise<string> => toHtml((await pipeline.run(pipeline.parse(value))) as Page)
    const first = await html(text)
    await html('---\ntitle: Other\n---\n\n```work strip\na = 1 m\n```\n')
    expect(await html(text)).toBe(first)
  })

  it('takes a page without a path', async () => {
    const file = new VFile(text)
    const pipeline = unified().use(remarkParse).use(remarkUndercroft)
    await pipeline.run(pipeline.parse(file), file)
    expect(file.data.undercroft?.notebook.path).toBe('notebook.md')
  })
})

describe('remarkUndercroft among other plugins', () => {
  const others = [remarkGfm, remarkMath, remarkFrontmatter] as Plugin[]

  it.each([
    ['before', { before: others }],
    ['after', { after: others }],
  ])('gives the same page with those it uses itself %s it', async (_, pipeline) => {
    const [alone, among] = [await page(text), await page(text, pipeline)]
    expect(among.html).toBe(alone.html)
    expect(among.file.messages.map(String)).toEqual(alone.file.messages.map(String))
  })

  it('leaves a stranger’s directives to the stranger, before it and after it', async () => {
    const value = `${text}\n:::note\nMind the :abbr[RC] slab.\n:::\n\n::figure[Section]\n`
    const seen: string[] = []
    const spy: Plugin<[], Root> = () => tree =>
      visit(
        tree,
        ['containerDirective', 'leafDirective', 'textDirective'],
        node => void seen.push((node as ContainerDirective).name),
      )
    for (const pipeline of [{ before: [remarkDirective, spy] }, { after: [remarkDirective, spy] }]) {
      const { file, html } = await page(value, pipeline as Pipeline)
      expect(seen.splice(0)).toEqual(expect.arrayContaining(['note', 'abbr', 'figure']))
      expect(file.messages.filter(({ fatal }) => fatal).map(String)).toEqual([])
      expect(html).toContain('id="b-strip"')
    }
  })

  it('shows a later plugin the author’s other fences, and none of ours', async () => {
    const fences: string[] = []
    const spy: Plugin<[], Root> = () => tree => visit(tree, 'code', (node: Code) => void fences.push(node.lang ?? ''))
    await page(text, { after: [spy as Plugin] })
    expect(fences).toEqual(['js'])
  })

  it('evaluates a block that an earlier plugin has written', async () => {
    const spy: Plugin<[], Root> = () => tree => {
      visit(tree, 'heading', node => void node.children.push({ type: 'text', value: ' of the store' }))
    }
    const { html } = await page(text, { before: [spy as Plugin] })
    expect(html).toContain('<h1>Roof of the store</h1>')
    // the title of a block stands a level below the heading before it
    expect(html).toContain('<h2><span class="no">1</span> Strip</h2>')
    expect(html).toContain('id="b-strip"')
  })
})

describe('remarkUndercroft with modules of a stranger’s', () => {
  const pour = defineModule({
    id: 'pour',
    version: '1.0.0',
    title: 'Concrete of one pour',
    asks: 'How much concrete does this slab take?',
    inputs: {
      area: quantity('area', { says: 'area of the slab', symbol: 'A', above: '0 m^2' }),
      thickness: quantity('length', { says: 'thickness', symbol: 'h', above: '0 mm' }),
    },
    steps: [step('V', 'area * thickness', { says: 'volume', unit: { SI: 'm^3', US: 'ft^3' } })],
    results: ['V'],
    limits: [],
    cautions: [],
    published: [],
    example: { area: '20 m^2', thickness: '250 mm' },
  })
  const value = `---\ntitle: Pour\n---\n\n\`\`\`calc pour slab\narea: 20 m^2\nthickness: 250 mm\n\`\`\`\n\nOrder :value[slab.V].\n`

  it('evaluates a block by it', async () => {
    const { html, file } = await page(value, { options: { modules: [pour] } })
    expect(file.messages.map(String)).toEqual([])
    // 20 m² by 0.25 m is 5 m³.
    expect(html).toMatch(/Order <[^.]*?>5\.000/)
    expect(html).toContain('Concrete of one pour')
  })

  it('knows only the modules it is given', async () => {
    const { file } = await page(value)
    expect(file.messages).toMatchObject([
      { ruleId: 'module-unknown', fatal: true, reason: 'No module is called `pour`' },
    ])
  })
})
