import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { evaluateFile } from '../../src/command/evaluated.ts'
import { provePackage } from '../../src/command/package-texts.ts'
import { assets } from '../../src/sheets/assets.ts'
import { type Composed, compose } from '../../src/sheets/compose.ts'
import { openBrowser } from '../../src/sheets/pdf/index.ts'
import { room } from '../../src/typesetting/fit-tex.ts'
import { smallPackage } from './small-package.ts'
import { type Looker, openLooker } from './test-page.ts'
import { wholePrint } from './whole-print.ts'

interface Finding {
  readonly id: string
  readonly nodes: readonly { readonly html: string }[]
}

let looker: Looker
let composed: Composed
beforeAll(async () => {
  composed = compose(smallPackage(), await assets('.'))
  looker = await openLooker()
})
afterAll(() => looker?.close())

describe('pages: in a browser', () => {
  it('no formula, table or drawing passes the width of its sheet', async () => {
    const page = await looker.open(wholePrint(composed.print), 'print')
    await page.setViewport({ width: 686, height: 900 }) // 181.5 mm of type at 96 dots an inch
    const wide = await page.evaluate(() => {
      const passes = (element: Element): boolean => {
        const room = element.parentElement?.getBoundingClientRect()
        const own = element.getBoundingClientRect()
        return room !== undefined && own.right > room.right + 1
      }
      const inner = Array.from(document.querySelectorAll('.ex > *, .ex .katex-base, .symbol .katex')).filter(
        element => {
          const column = element.closest('.ex, .equation, .equation-entry')?.getBoundingClientRect()
          return column !== undefined && element.getBoundingClientRect().right > column.right + 1
        },
      )
      const outer = Array.from(document.querySelectorAll('table, svg.sketch, .step')).filter(passes)
      return [...inner, ...outer].map(element => element.outerHTML.slice(0, 120))
    })
    const across = await page.evaluate(() => document.documentElement.scrollWidth)
    await page.close()
    expect(wide).toEqual([])
    expect(across).toBeLessThanOrEqual(686)
  })
  it('an example with a check outside its limits, on letter paper, is nowhere wider than its sheet', async () => {
    const evaluated = await evaluateFile('examples/marrow-flats/marrow-flats.md')
    const { paper } = evaluated.notebook.title
    const options = { version: '0.1.0', name: 'marrow-flats.md', command: 'issue', draft: false, date: undefined }
    const { print } = provePackage(evaluated, { ...options, paper, assets: await assets('.') }).compose()
    expect([paper, print.join('').includes('satisfied but outside limits')]).toEqual(['letter', true])
    for (const [place, part] of print.entries()) {
      const page = await looker.open(part, 'print')
      await page.setViewport({ width: 708, height: 900 }) // 187.4 mm of type
      expect(await page.evaluate(() => document.documentElement.scrollWidth), `part ${place}`).toBeLessThanOrEqual(708)
      await page.close()
    }
  }, 120_000)
  it('a step has the room that its layout reckons with, and letters no smaller than 7.5 pt', async () => {
    const page = await looker.open(wholePrint(composed.print), 'print')
    await page.setViewport({ width: 686, height: 900 })
    const { inColumn, across, symbols, small } = await page.evaluate(() => {
      const em = (element: Element): number => {
        const katex = element.querySelector('.katex')
        return katex ? Number.parseFloat(getComputedStyle(katex).fontSize) : Number.NaN
      }
      const widths = (selector: string): number[] =>
        Array.from(document.querySelectorAll(selector)).map(box => box.getBoundingClientRect().width / em(box))
      const row = '.equation:not(.far, .unnamed, .comparison) > '
      const small = Array.from(document.querySelectorAll('.step *, .given *, .shared-head *'))
        .filter(element => !element.closest('.katex, sup, sub, svg') && element.textContent?.trim() !== '')
        .filter(element => Number.parseFloat(getComputedStyle(element).fontSize) < 7.5 / 0.75 - 0.01)
        .map(element => element.outerHTML.slice(0, 80))
      // a step that runs across, whether this package has one or not
      document.querySelector(`.step.formula:has(${row}.ex):not(.across)`)?.classList.add('across')
      return {
        inColumn: widths(`.step:not(.across) .work > ${row}.ex`),
        across: widths(`.step.across .work > ${row}.ex`),
        symbols: widths(`.work > ${row}.symbol`),
        small,
      }
    })
    await page.close()
    expect(inColumn.length).toBeGreaterThan(10)
    expect(across.length).toBeGreaterThan(0)
    expect(Math.min(...inColumn)).toBeGreaterThanOrEqual(room.column)
    expect(Math.min(...across)).toBeGreaterThanOrEqual(room.across)
    expect(Math.min(...symbols)).toBeGreaterThanOrEqual(room.symbol)
    expect(small).toEqual([])
  })
  it('axe finds nothing on the screen', async () => {
    const page = await looker.open(composed.screen, 'screen')
    const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
    await page.evaluate(axe)
    const found = (await page.evaluate(
      '(async () => (await axe.run(document, { resultTypes: ["violations"] })).violations.map(v => ({ id: v.id, nodes: v.nodes.slice(0, 3).map(n => ({ html: n.html.slice(0, 200) })) })))()',
    )) as Finding[]
    await page.close()
    expect(found).toEqual([])
  })
})

describe('pages: printed', () => {
  it('passes the printer: own fonts only, no text lost, contents right', async () => {
    const opened = await openBrowser({ variables: process.env })
    if (!opened.ok) throw new Error(opened.says)
    const printed = await opened.print(composed.print, { fonts: ['SourceSerif4*', 'KaTeX_*'] })
    await opened.close()
    expect(printed.ok ? '' : printed.says).toBe('')
    expect(printed.ok && printed.pages).toBeGreaterThan(6)
  })
})
