import type { Element, Root } from 'hast'
import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import { h } from 'hastscript'
import { beforeAll, describe, expect, it } from 'vitest'
import { type Assets, assets } from '../../src/sheets/assets.ts'
import { type Composed, compose } from '../../src/sheets/compose.ts'
import { all, attribute, classed, textOf } from '../../src/sheets/pencil/find-elements.ts'
import { blockAt, calc } from './skerry-notebook.ts'
import { pitInputs, smallBlocks, smallPackage } from './small-package.ts'
import { wholePrint } from './whole-print.ts'

let look: Assets
let composed: Composed
let print: string
let page: Root
const everything = (tree: Root): Element[] => {
  const found: Element[] = []
  const walk = (node: Root | Element): void => {
    for (const child of node.children) {
      if (child.type !== 'element') continue
      found.push(child)
      walk(child)
    }
  }
  walk(tree)
  return found
}

beforeAll(async () => {
  look = await assets('.')
  composed = compose(smallPackage(), look)
  print = wholePrint(composed.print)
  page = fromHtmlIsomorphic(composed.screen)
})

describe('compose: the package', () => {
  it('every link leads to a place on the page, and no place is named twice', () => {
    for (const html of [composed.screen, print]) {
      const elements = everything(fromHtmlIsomorphic(html))
      const ids = elements.flatMap(element => attribute(element, 'id') ?? [])
      const links = elements.flatMap(element => attribute(element, 'href') ?? []).filter(href => href.startsWith('#'))
      expect(new Set(ids).size).toBe(ids.length)
      expect(links.length).toBeGreaterThan(50)
      expect(links.filter(href => !ids.includes(href.slice(1)))).toEqual([])
    }
  })
  it('each entry of the contents names a place', () => {
    const elements = everything(page)
    const ids = new Set(elements.flatMap(element => attribute(element, 'id') ?? []))
    const wanted = elements.flatMap(element => attribute(element, 'dataPageOf') ?? [])
    expect(wanted.length).toBeGreaterThan(7)
    expect(wanted.filter(id => !ids.has(id))).toEqual([])
  })
  it('the parts stand in their order', () => {
    const parts = all(page, element => classed(element, 'part')).map(element => attribute(element, 'id'))
    expect(parts).toEqual([
      'cover',
      'contents',
      'basis',
      'register',
      'checks',
      'messages',
      'text',
      'drawing',
      'references',
      'record',
      'passport',
    ])
  })
  it('headings step down one level at a time', () => {
    const levels = everything(page).flatMap(element =>
      /^h[1-6]$/.test(element.tagName) ? [Number(element.tagName[1])] : [],
    )
    expect(levels[0]).toBe(1)
    for (const [index, level] of levels.entries()) expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1)
  })
  it('asks nothing from outside itself', () => {
    for (const html of [composed.screen, print]) {
      expect(html.match(/url\((?!data:)/g)).toBeNull()
      expect(html.match(/<script|<link|src="http/g)).toBeNull()
    }
  })
  it('prints no raw number, placeholder or small figure that the face has not got', () => {
    const body = all(page, element => element.tagName === 'main')
      .map(textOf)
      .join('')
    const read = body.replaceAll(/\\[a-z]+|annotation/g, '')
    expect(read).not.toMatch(/NaN|undefined|\[object|\d\.\d{9,}|\de[+-]\d/)
    expect(print.replace(/<style>.*?<\/style>/gs, '').replaceAll(/aria-label="[^"]*"/g, '')).not.toMatch(
      /[\u202f₀-₉⁴-⁹⁻]/,
    )
  })
  it('is the same text from the same model', () => {
    const model = smallPackage()
    const again = wholePrint(compose(model, look).print)
    expect(wholePrint(compose(model, look).print) === again).toBe(true)
  })
  it('carries DRAFT on every page only as a draft', () => {
    const draft = compose(smallPackage({ draft: true }), look)
    expect(wholePrint(draft.print)).toContain('class="draft-mark"')
    expect(wholePrint(draft.print)).toContain('@top-center { content: "DRAFT"')
    expect(print).not.toContain('DRAFT')
  })
  it('sets the number, the revision and the names into the page furniture', () => {
    expect(print).toContain('"SP-C-014 · Revision B"')
    expect(print).toContain('Prepared M. Aird, Skerry Works')
    expect(print).toContain('counter(page) " of " counter(pages)')
  })
  it('a title cannot close the style sheet or its own string', () => {
    const odd = compose(smallPackage({ title: { title: '5" </style><b>\\' } }), look)
    expect(wholePrint(odd.print).match(/<\/style>/g)?.length).toBe(print.match(/<\/style>/g)?.length)
    expect(wholePrint(odd.print)).toContain('"5\\22  \\3c /style>\\3c b>\\5c "')
  })
  it('letter paper is letter paper', () => {
    expect(wholePrint(compose({ ...smallPackage(), paper: 'letter' }, look).print)).toContain('@page { size: letter')
    expect(print).toContain('@page { size: A4')
  })
  it('TeX of the author that cannot be set is shown as typed and reported', () => {
    const body: Root = {
      type: 'root',
      children: [h('p', [h('code.language-math.math-inline', '\\frac{a')]), blockAt(0)],
    }
    const broken = compose(smallPackage({ body, blocks: smallBlocks().slice(0, 1), mentions: [], notices: [] }), look)
    expect(broken.faults.map(fault => fault.tex)).toEqual(['\\frac{a'])
    expect(broken.screen).toContain('<code class="bad-tex">\\frac{a</code>')
    expect(broken.screen).toContain('A formula in the text cannot be set')
  })
  it('print has a spoken label for every formula and hides none', () => {
    const bare = print.replace(/<style>.*?<\/style>/gs, '')
    expect(bare).not.toContain('class="katex-html" aria-hidden')
    expect(bare).not.toContain('<math')
    const formulas = bare.match(/<span class="katex"[^>]*>/g) ?? []
    expect(formulas.length).toBeGreaterThan(100)
    expect(formulas.filter(tag => !/role="img"/.test(tag) || !/aria-label="[^"]+"/.test(tag))).toEqual([])
  })
})

describe('compose: the cover', () => {
  const row = (what: string): string => {
    const rows = all(page, element => element.tagName === 'tr').map(textOf)
    return rows.find(text => text.includes(what)) ?? ''
  }
  it('says the state of the package in words', () => {
    expect(row('Checks')).toContain('1 of 2 not satisfied')
    expect(row('Holds')).toContain('2 open: A1 and 1 in the text')
    expect(row('Assumptions without a basis')).toContain('1 of 4: A2')
    expect(row('Level of check')).toContain('other person: not yet checked')
    expect(row('Pencil proof')).toContain('not made')
  })
  it('names the tightest check of geometry in a line of its own, behind what governs', () => {
    const blocks = smallBlocks()
    const pit = blocks.findIndex(block => block.kind === 'calc' && block.name.text === 'pit')
    blocks[pit] = calc('battered-pit', 'pit', { ...pitInputs, site_length: '19.7 m' })
    const fitted = fromHtmlIsomorphic(compose(smallPackage({ blocks }), look).screen)
    const [cover] = all(fitted, element => attribute(element, 'id') === 'cover')
    const rows = cover ? all(cover, element => element.tagName === 'tr').map(textOf) : []
    const said = rows.filter(text => text.includes('fits on the site'))
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/^Geometry/)
    expect(rows.find(text => text.startsWith('Checks of geometry'))).toMatch(
      /1 of 1 satisfied but outside limits: [\d.]+; highest ratio 0\.99/,
    )
    expect(rows.find(text => text.startsWith('Checks1') || text.startsWith('Checks '))).not.toContain('0.99')
  })
  it('counts and lists the values typed in blocks, each linked, not those that an assumption gives', () => {
    expect(row('Values typed in blocks')).toMatch(/^Values typed in blocks\d+, without a basis in the register$/)
    const [table] = all(page, element => element.tagName === 'table' && classed(element, 'typed'))
    const rows = table ? all(table, element => element.tagName === 'tr' && !classed(element, 'group')) : []
    const groups = table ? all(table, element => classed(element, 'group')).map(textOf) : []
    const said = rows.map(textOf)
    const count = rows.slice(1).reduce((sum, one) => sum + textOf(one.children.at(-1) as Element).split(', ').length, 0)
    expect(row('Values typed in blocks')).toContain(`${count}, without`)
    expect(said.find(text => text.includes('4.7'))).toContain('m')
    expect(said.some(text => text.includes('600'))).toBe(true)
    expect(groups.some(text => text.includes('pit'))).toBe(true)
    expect(groups.some(text => text.includes('thrust'))).toBe(true)
    // the short span is an assumption's value
    expect(said.some(text => text.includes('3.4'))).toBe(false)
    const links = rows.slice(1).flatMap(one => all(one, element => element.tagName === 'a'))
    expect(links).toHaveLength(rows.length - 1)
  })
  it('always carries the caution', () => {
    expect(textOf(page)).toContain('for review by a licensed engineer under the local code')
  })
})
