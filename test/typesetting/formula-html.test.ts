import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import { authorFormula, type TexTrouble } from '../../src/typesetting/author-formula.ts'
import { formulaHtml } from '../../src/typesetting/formula-html.ts'
import type { Setting } from '../../src/typesetting/setting.ts'

const html = (tex: string, medium: 'screen' | 'print', parsed = false): string =>
  toHtml(formulaHtml(tex, { medium, spoken: 'a over b', parsed }), { allowDangerousHtml: true })

describe('formula-html: on screen', () => {
  it('has MathML for readers and hides the glyphs from them', () => {
    const page = html('\\frac{a}{b}', 'screen')
    expect(page).toContain('<mfrac><mi>a</mi><mi>b</mi></mfrac>')
    expect(page).toContain('<span class="katex-html" aria-hidden="true">')
  })
  it('nothing hidden can be reached by the keyboard', () => {
    const page = html('\\href{#v-roof-w}{57}', 'screen')
    expect(page).toContain('<a tabindex="-1" href="#v-roof-w">')
  })
})

describe('formula-html: in print', () => {
  it('is one picture with a spoken label, and no MathML', () => {
    const page = html('\\frac{a}{b}', 'print')
    expect(page).toContain('role="img" aria-label="a over b"')
    expect(page).not.toContain('aria-hidden')
    expect(page).not.toContain('<math')
  })
  it('has margins in place of offsets, and no zero-width space', () => {
    const page = html('\\frac{a}{b}', 'print')
    expect(page).toContain('style="margin:-2.655em 0 2.655em;"')
    expect(page).not.toContain('top:')
    expect(page).not.toContain('\u200b')
  })
})

describe('formula-html: for any pipeline', () => {
  it.each(['screen', 'print'] as const)('parsed, it is elements all through and the same markup (%s)', medium => {
    const parsed = formulaHtml('\\sqrt{x^2}', { medium, spoken: 'x', parsed: true })
    expect(JSON.stringify(parsed)).not.toContain('"raw"')
    expect(toHtml(parsed).replaceAll(/<\/?(path|svg)[^>]*>/g, '').length).toBeGreaterThan(200)
  })
})

describe('formula-html: refusals', () => {
  it.each(['\\frac{a', '\\unknown', 'µ', '\\href{https://example.org}{a}', '\\htmlId{a}{b}'])('%s is refused', tex => {
    expect(() => html(tex, 'screen')).toThrow()
  })
  it('of the author: shown as typed and reported', () => {
    const faults: TexTrouble[] = []
    const setting = { medium: 'screen', parsed: false } as Setting
    const made = authorFormula('\\frac{a', { setting, faults, display: false })
    expect(toHtml(made)).toBe('<code class="bad-tex">\\frac{a</code>')
    expect(faults).toHaveLength(1)
  })
})
