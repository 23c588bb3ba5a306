import { toHtml } from 'hast-util-to-html'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Assets, assets } from '../../src/sheets/assets.ts'
import { formulaHtml } from '../../src/typesetting/formula-html.ts'
import { renderTex } from '../../src/typesetting/render-tex.ts'
import { type Looker, openLooker } from './test-page.ts'

/** Of the kinds that our own formulas are printed as. */
const own = [
  "K_{a} = \\tan^{2}\\left(45{}^{\\circ} - \\frac{\\varphi'}{2}\\right)",
  '\\frac{\\frac{a+b}{c}}{\\sqrt{x^{2}+\\frac{1}{y}}}',
  '\\sqrt[3]{1 + \\sqrt{2}}',
  '\\sum_{i} g_{1,i} + \\int_0^1 x\\,dx',
  '\\min\\left[\\frac{a}{b},\\ c^{d^{e}}\\right]',
]
/** And what an author may write besides. */
const formulas = [
  ...own,
  '\\hat{\\bar{x}} + \\vec{v} + \\overline{ab}',
  '\\begin{cases} a & x < 0 \\\\ b & x \\ge 0 \\end{cases}',
  '\\begin{pmatrix} 1 & 2 \\\\ 3 & 4 \\end{pmatrix}',
]

let looker: Looker
let look: Assets
beforeAll(async () => {
  look = await assets('.')
  looker = await openLooker()
})
afterAll(() => looker?.close())

/** Where each glyph stands, from the formula's own left top corner. */
async function glyphs(medium: 'screen' | 'print'): Promise<readonly (readonly number[])[]> {
  const styles = [look.fonts, look.sheet, look.print, ...(medium === 'print' ? [look.paper] : [])]
  const body = formulas
    .map(tex => toHtml(formulaHtml(tex, { medium, spoken: 'x', display: true }), { allowDangerousHtml: true }))
    .map(html => `<p class="one">${html}</p>`)
  const css = styles.map(style => `<style>${style}</style>`).join('')
  const page = await looker.open(
    `<!doctype html><meta charset="utf-8">${css}<body class="undercroft">${body.join('')}`,
    'print',
  )
  await page.evaluate(() => document.fonts.ready.then(() => true))
  const found = await page.evaluate(() =>
    Array.from(document.querySelectorAll('.one')).map(one => {
      const corner = one.getBoundingClientRect()
      const leaves = Array.from(one.querySelectorAll('.katex-html span')).filter(
        span => span.childElementCount === 0 && span.textContent !== '' && span.textContent !== '\u200b',
      )
      return leaves.flatMap(leaf => {
        const { left, top } = leaf.getBoundingClientRect()
        return [left - corner.left, top - corner.top]
      })
    }),
  )
  await page.close()
  return found
}

/** Measured widths, in em of the formula. */
async function widths(): Promise<readonly number[]> {
  const spans = formulas.map(tex =>
    toHtml(formulaHtml(tex, { medium: 'print', spoken: 'x', display: true }), { allowDangerousHtml: true }),
  )
  const css = [look.fonts, look.sheet, look.print, look.paper].map(style => `<style>${style}</style>`).join('')
  const lines = spans.map(span => `<p class="one" style="white-space:nowrap">${span}</p>`).join('')
  const page = await looker.open(
    `<!doctype html><meta charset="utf-8">${css}<body class="undercroft">${lines}`,
    'print',
  )
  await page.evaluate(() => document.fonts.ready.then(() => true))
  const found = await page.evaluate(() =>
    Array.from(document.querySelectorAll('.one > .katex')).map(formula => {
      const bases = Array.from(formula.querySelectorAll('.katex-base')).map(base => base.getBoundingClientRect().width)
      return bases.reduce((a, b) => a + b, 0) / Number.parseFloat(getComputedStyle(formula).fontSize)
    }),
  )
  await page.close()
  return found
}

describe('box-width: what is reckoned is what the browser sets', () => {
  it('within three per cent', async () => {
    const measured = await widths()
    for (const [index, tex] of own.entries()) {
      const reckoned = renderTex(tex, true).widths.whole
      expect(reckoned / (measured[index] ?? Number.NaN), tex).toBeGreaterThan(0.97)
      expect(reckoned / (measured[index] ?? Number.NaN), tex).toBeLessThan(1.03)
    }
  })
})

describe('print patch: margins in place of offsets', () => {
  it('keeps every glyph where it was', async () => {
    const [screen, print] = [await glyphs('screen'), await glyphs('print')]
    for (const [index, tex] of formulas.entries()) {
      const [before = [], after = []] = [screen[index], print[index]]
      expect(after.length, tex).toBe(before.length)
      const moved = before.map((place, at) => Math.abs(place - (after[at] ?? Number.NaN)))
      expect(Math.max(...moved), tex).toBeLessThan(0.5)
      expect(before.length).toBeGreaterThan(6)
    }
  })
})
