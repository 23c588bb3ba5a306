import { h } from 'hastscript'
import { describe, expect, it } from 'vitest'
import { assets } from '../../src/sheets/assets.ts'
import { citedPlaces } from '../../src/sheets/cited-places.ts'
import { compose } from '../../src/sheets/compose.ts'
import { toText } from '../../src/sheets/plain-text.ts'
import { citing } from './skerry-notebook.ts'
import { smallPackage } from './small-package.ts'

const step = (number: string) => ({ id: `b-${number}`, number })
const said = (numbers: readonly string[]): string =>
  toText(
    h(
      'p',
      citedPlaces(
        numbers.map(number => step(number)),
        new Map(),
      ),
    ),
  )

describe('cited-places', () => {
  it('steps that follow each other are named by the first and the last', () => {
    expect(said(['8.01', '8.02', '8.03', '8.05', '8.06'])).toBe('8.01 to 8.03, 8.05, 8.06')
    expect(said(['4.03a', '4.03b', '4.04', '9.05'])).toBe('4.03a to 4.04, 9.05')
    expect(said(['8.99', '9.01', '9.02'])).toBe('8.99, 9.01, 9.02')
  })
  it('a calculation as a whole is cited by its limits', () => {
    expect(said(['8.01', '8'])).toBe('8.01, limits of 8')
  })
  it('the text is cited by section, a section once', () => {
    const places = [
      { id: 'm-1', number: 'text' },
      { id: 'm-2', number: 'text' },
      { id: 'm-5', number: 'text' },
    ]
    const sections = new Map([
      ['m-1', 'Roof'],
      ['m-2', 'Roof'],
      ['m-5', 'Walls'],
    ])
    const made = h('p', citedPlaces(places, sections))
    expect(toText(made)).toBe('text, section Roof, text, section Walls')
    expect(made.children.map(child => child.type === 'element' && child.properties.href).filter(Boolean)).toEqual([
      '#m-1',
      '#m-5',
    ])
  })
})

describe('references-sheet', () => {
  it('every source says where it is cited, the text by its section', async () => {
    const { screen } = compose(smallPackage(), await assets('.'))
    const list = screen.slice(screen.indexOf('id="references"'))
    const items = list.slice(0, list.indexOf('</section>')).match(/<li id="reference-.*?<\/li>/gs) ?? []
    expect(items.length).toBeGreaterThan(3)
    expect(items.filter(item => !/Cited at <a href="#/.test(item))).toEqual([])
    expect(items.find(item => item.includes('Site report 14'))).toContain('>text, section Roof</a>')
  })
  it('a section that cites a source twice stands there once', async () => {
    const mentions = [citing('site-report'), citing('site-report'), citing('site-report')]
    const { screen } = compose(smallPackage({ mentions }), await assets('.'))
    expect(screen.match(/text, section Roof/g)).toHaveLength(1)
  })
})
