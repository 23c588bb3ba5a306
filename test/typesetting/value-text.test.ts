import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import { unitOf } from '../../src/quantity/unit.ts'
import { crosses } from '../../src/typesetting/sketch-frame.ts'
import { pieces, textNodes } from '../../src/typesetting/small-figures.ts'
import { shownText, valueCells } from '../../src/typesetting/value-html.ts'

const shown = (digits: string, unit: string) => ({ digits, unit: unitOf(unit), exact: false })
const cells = (digits: string, unit: string) => valueCells(shown(digits, unit)).map(cell => toHtml(cell))

describe('values as text', () => {
  it('value text: a unit stands off its number, a degree close to it', () => {
    expect(shownText(shown('12500', 'kPa'))).toBe('12\u202f500\u00a0kPa')
    expect(shownText(shown('30', 'deg'))).toBe('30°')
    expect(shownText(shown('0.85', ''))).toBe('0.85')
  })

  it('value text: in two cells the degree stays with the number', () => {
    expect(cells('30', 'deg')).toEqual([
      '<td class="number"><span>30°</span></td>',
      '<td class="unit"><span></span></td>'.replace('<span></span>', ''),
    ])
    expect(cells('26.08', 'kPa')).toEqual(['<td class="number"><span>26.08</span></td>', '<td class="unit">kPa</td>'])
  })

  it('value text: words fill both cells, long ones marked; a choice that reads as a quantity lines up with numbers', () => {
    const words = (text: string) => valueCells(text).map(cell => toHtml(cell))
    expect(words('held down')).toEqual(['<td class="word" colspan="2"><span>held down</span></td>'])
    expect(words('one long edge continuous')[0]).toContain('<td class="word long" colspan="2">')
    expect(words('12 mm')).toEqual(['<td class="number"><span>12</span></td>', '<td class="unit">mm</td>'])
    for (const text of ['No. 4', '2 edges held', 'IS 456', '10']) expect(words(text), text).toHaveLength(1)
  })

  it('small figures: a power keeps its sign, an index stays below', () => {
    expect(pieces('1.2×10⁻⁶ m')).toEqual([
      { text: '1.2×10', level: 'line' },
      { text: '−6', level: 'sup' },
      { text: ' m', level: 'line' },
    ])
    expect(pieces('10⁺³')[1]).toEqual({ text: '+3', level: 'sup' })
    expect(toHtml({ type: 'root', children: textNodes('inH₂O') })).toBe('inH<sub>2</sub>O')
  })
})

describe('lines that a label must keep clear of', () => {
  const box = { left: 0, top: 0, right: 10, bottom: 4 }
  it.each([
    ['runs through', [-5, 2], [15, 2], true],
    ['passes above', [-5, -1], [15, -1], false],
    ['passes below', [-5, 5], [15, 5], false],
    ['stands to the left', [-1, -5], [-1, 9], false],
    ['stands to the right', [11, -5], [11, 9], false],
    ['ends before it', [-9, 2], [-1, 2], false],
    ['cuts a corner', [-1, 1], [1, -1.5], false],
    ['runs askew', [-1, -1], [11, 5], true],
  ] as const)('sketch frame: a line that %s', (_, from, to, wanted) => {
    expect(crosses(box, [from, to])).toBe(wanted)
  })
})
