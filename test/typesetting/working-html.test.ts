import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import type { CheckLine, FormulaLine, LookLine } from '../../src/evaluation/workings.ts'
import { all, classed, textOf } from '../../src/sheets/pencil/find-elements.ts'
import { checkLine } from '../../src/typesetting/check-line.ts'
import { formulaLine } from '../../src/typesetting/formula-line.ts'
import { lookLine } from '../../src/typesetting/look-line.ts'
import { ratioBar } from '../../src/typesetting/marks.ts'
import { settingOf } from '../../src/typesetting/setting.ts'
import { workingHtml } from '../../src/typesetting/working-html.ts'
import { fence, runText } from '../evaluation/run-text.ts'
import { smallPackage } from '../sheets/small-package.ts'

const { workings } = smallPackage()
const setting = settingOf(workings, { medium: 'screen' })
const roof = workings.blocks.find(block => block.name === 'roof')
if (roof?.kind !== 'calc') throw new Error('no roof')
const line = (name: string) => roof.lines.find(each => 'name' in each && each.name === name)
const html = (element: Element): string => toHtml(element, { allowDangerousHtml: true })
const words = (element: Element): string => textOf(element).replaceAll(/\s+/g, ' ')

describe('working-html: a calculation', () => {
  const page = workingHtml(roof, 3, setting)
  it('has its number, title, name and question at the head', () => {
    const text = words(page)
    expect(html(page)).toContain('<h3><span class="no">1</span> Two-way slab by IS 456 coefficients</h3>')
    expect(text).toContain('roof · two-way-slab')
    expect(text).toContain('What moments act in a panel held on four edges')
  })
  it('has an empty box and a number for every line of both methods', () => {
    const steps = all(page, element => classed(element, 'step'))
    expect(steps).toHaveLength(roof.lines.length + (roof.second?.lines.length ?? 0))
    for (const step of steps) expect(html(step).match(/class="box"/g)).toHaveLength(1)
  })
  it('links a given value to the assumption that made it', () => {
    expect(html(page)).toMatch(/<td class="number"><a href="#v-site-short_span">3\.4<\/a><\/td>/)
  })
  it('says in words what each method shares, keeps or exceeds', () => {
    const text = words(page)
    expect(text).toContain('Both methods share:')
    expect(text).toContain('kept')
    expect(text).toContain('agree')
  })
  it('says where no answer of the two methods is compared, and then not what they share', () => {
    if (!roof.second) throw new Error('the roof has a second method')
    const alone = workingHtml({ ...roof, second: { ...roof.second, comparisons: [] } }, 3, setting)
    expect(words(alone)).toContain('no answer of the two methods is compared')
    expect(words(alone)).not.toContain('Both methods share:')
    expect(all(alone, element => classed(element, 'comparisons'))).toEqual([])
    expect(all(page, element => classed(element, 'comparisons'))).toHaveLength(1)
  })
  it('a block that an error stopped says so', () => {
    expect(words(workingHtml({ ...roof, complete: false }, 3, setting))).toContain('Not complete')
  })
})

describe('working-html: words', () => {
  it('long words of a choice take the room of the whole row', () => {
    const { workings: own, block } = runText(
      fence(
        'calc two-way-slab slab',
        'short_span: 3 m\nlong_span: 4 m\nload: 20 kPa\nedges: one long edge continuous\ncorners: held down',
      ),
    )
    const slab = block('slab')
    if (!slab) throw new Error('no slab')
    const page = workingHtml(slab, 3, settingOf(own, { medium: 'print' }))
    const [wide] = all(page, element => classed(element, 'worded'))
    expect(wide && words(wide)).toContain('one long edge continuous')
    expect(wide?.properties.colSpan).toBe(3)
    expect(html(page)).toContain('<td class="word" colspan="2"><span>held down</span></td>')
  })
})

describe('working-html: lists', () => {
  it('has a seam behind what runs over both columns, where a sheet may end', () => {
    const page = workingHtml(workings.blocks.find(block => block.name === 'cover') ?? roof, 3, setting)
    expect(html(page)).toMatch(/<\/table><div class="seam"><\/div>/)
  })
  it('a list is a table, a row a line, each value linked to its origin and its row to its users', () => {
    const cover = workings.blocks.find(block => block.name === 'cover')
    if (cover?.kind !== 'calc') throw new Error('no cover')
    const page = workingHtml(cover, 3, setting)
    const [table] = all(page, element => classed(element, 'given-list'))
    if (!table) throw new Error('no list')
    const rows = all(table, element => element.tagName === 'tr').map(words)
    expect(rows).toHaveLength(4)
    expect(rows[0]).toContain('Thickness')
    expect(rows[1]).toContain('1 topsoil and fill')
    expect(rows[1]).toContain('1.2')
    expect(rows[2]).toContain('0.15')
    expect(html(table)).toMatch(/<span class="origin"><a href="#v-site-cover">A2<\/a>/)
  })
})

describe('working-html: lines', () => {
  it('formula: numbers link to their origin, the line to its users, the margin to the source', () => {
    const made = html(formulaLine(line('M_x_mid') as FormulaLine, 'roof', setting))
    expect(made).toContain('href="#v-roof-load"')
    expect(made).toContain('aria-label="used in"')
    expect(made).toMatch(/IS 456 \[\d+\]/)
  })
  it('formula: a value handed on as it is stands once, linked to where it was made; in another unit both stand', () => {
    const body =
      fence('assume site', 'a: { value: 2.5 m, basis: b }') + fence('work w', 'x = site.a\ny = x\nz = y to mm')
    const { workings: own, line: lineOf } = runText(body)
    const set = (name: string) =>
      formulaLine(lineOf('w', name) as FormulaLine, 'w', settingOf(own, { medium: 'print' }))
    const seen = (name: string) => html(set(name)).replaceAll(/<[^>]*>/g, '')
    expect(seen('y').match(/2\.5/g)).toHaveLength(1)
    expect(html(set('y'))).toContain('href="#v-w-x"')
    expect(all(set('y'), element => classed(element, 'put') && classed(element, 'result'))).toHaveLength(1)
    expect(seen('z')).toMatch(/2\.5.*2\D?500/)
  })
  it('look: shows keys, corners, the interpolation and how sure the table is', () => {
    const made = words(lookLine(line('alpha_x_mid') as LookLine, 'roof', setting))
    for (const text of ['1.3', '1.4', '0.049', '0.053', 'from memory']) expect(made).toContain(text)
  })
  it('check: words, a drawn mark and the ratio; nothing by colour', () => {
    const check: CheckLine = {
      ...(workings.blocks.flatMap(block => (block.kind === 'work' ? block.lines : [])).at(-1) as CheckLine),
    }
    const failing = html(checkLine(check, setting))
    expect(failing).toContain('<b>not satisfied</b>')
    expect(failing).toContain('class="mark"')
    expect(failing).toContain('<span class="ratio">1.12')
    expect(html(checkLine({ ...check, satisfied: true, verdict: 'satisfied' }, setting))).toContain('<b>satisfied</b>')
  })
  it('ratio bar: stops at its frame, and runs past it in black', () => {
    expect(html(ratioBar(0.5))).toContain('width="40"')
    expect(html(ratioBar(0.5))).not.toContain('fill="#000"')
    expect(html(ratioBar(1.1))).toContain('width="8" height="9" fill="#000"')
    expect(html(ratioBar(40))).toContain('width="20" height="9" fill="#000"')
    expect(html(ratioBar(-1))).toContain('width="0"')
  })
})
