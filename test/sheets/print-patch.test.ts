import { toHtml } from 'hast-util-to-html'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Assets, assets } from '../../src/sheets/assets.ts'
import { formulaHtml } from '../../src/typesetting/formula-html.ts'
import { type Looker, openLooker } from './test-page.ts'

const formulas = [
  "K_{a} = \\tan^{2}\\left(45{}^{\\circ} - \\frac{\\varphi'}{2}\\right)",
  '\\frac{\\frac{a+b}{c}}{\\sqrt{x^{2}+\\frac{1}{y}}}',
  '\\sqrt[3]{1 + \\sqrt{2}}',
  '\\sum_{i} g_{1,i} + \\int_0^1 x\\,dx',
  '\\hat{\\bar{x}} + \\vec{v} + \\overline{ab}',
  '\\begin{cases} a & x < 0 \\\\ b & x \\ge 0 \\end{cases}',
  '\\begin{pmatrix} 1 & 2 \\\\ 3 & 4 \\end{pmatrix}',
  '\\min\\left[\\frac{a}{b},\\ c^{d^{e}}\\right]',
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
