import katex from 'katex'
import { describe, expect, it } from 'vitest'
import { fittingSize } from '../../src/typesetting/fit-tex.ts'
import { renderTex } from '../../src/typesetting/render-tex.ts'

const formulaWidth = (tex: string) => renderTex(tex, true).widths

// KaTeX_Main: figures are 0.5 em wide, a full stop 0.27778, a plus sign 0.77778 (fonts' own metrics)
describe('box-width', () => {
  it('counts every figure of a number', () => {
    expect(formulaWidth('1234').whole).toBeCloseTo(2, 6)
    expect(formulaWidth('0.0').whole).toBeCloseTo(1.27778, 5)
  })
  it('adds the space round a sign', () => {
    expect(formulaWidth('1+1').whole).toBeCloseTo(0.5 + 0.2222 + 0.77778 + 0.2222 + 0.5, 3)
  })
  it('takes the wider half of a fraction', () => {
    expect(formulaWidth('\\frac{1}{12345678}').whole).toBeCloseTo(4 + 0.24, 2)
  })
  it('a subscript counts at its own size', () => {
    expect(formulaWidth('1_{1234}').whole - formulaWidth('1').whole).toBeCloseTo(4 * 0.5 * 0.7 + 0.05, 2)
  })
  it('knows where a line can break', () => {
    const { whole, widest } = formulaWidth('11111 + 22222 + 33333')
    expect(widest).toBeLessThan(whole / 2)
  })
})

describe('fitting-size', () => {
  it('leaves alone what fits or can be broken', () => {
    expect(fittingSize('1 + 1')).toBe(1)
    expect(fittingSize(Array.from({ length: 40 }, () => '1111').join('+'))).toBe(1)
  })
  it('makes one wide box smaller, but never so small that it cannot be read', () => {
    const wide = `\\frac{${'1'.repeat(120)}}{2}`
    expect(fittingSize(wide)).toBeLessThan(1)
    expect(fittingSize(wide)).toBeGreaterThanOrEqual(0.7)
    expect(fittingSize(`\\frac{${'1'.repeat(600)}}{2}`)).toBe(0.7)
  })
})

describe('katex-tree', () => {
  it.each(['\\frac{a}{b}', '\\sqrt{x^{2}}', 'K_{a} = \\tan^{2}(45{}^{\\circ})', '\\href{#v-a}{2}'])(
    '%s: the markup of KaTeX itself',
    tex => {
      const { mathml, glyphs } = renderTex(tex)
      expect(`<span class="katex">${mathml}${glyphs}</span>`).toBe(
        katex.renderToString(tex, { strict: 'error', trust: true }),
      )
    },
  )
})
