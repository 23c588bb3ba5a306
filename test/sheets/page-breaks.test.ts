import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { beforeAll, describe, expect, it } from 'vitest'
import { evaluateFile } from '../../src/command/evaluated.ts'
import { provePackage } from '../../src/command/package-texts.ts'
import { type Assets, assets } from '../../src/sheets/assets.ts'
import { type OpenBrowser, openBrowser } from '../../src/sheets/pdf/index.ts'
import { pageTexts } from './pdf/read-with-pdfjs.ts'

let look: Assets
beforeAll(async () => {
  look = await assets('.')
})

async function printed(html: string): Promise<string[][]> {
  const opened = await openBrowser({ variables: process.env })
  if (!opened.ok) throw new Error(opened.says)
  try {
    return await linesOf(opened, html)
  } finally {
    await opened.close()
  }
}

async function linesOf(opened: OpenBrowser, html: string): Promise<string[][]> {
  const made = await opened.print(html, { fonts: ['SourceSerif4*', 'KaTeX_*'] })
  if (!made.ok) throw new Error(made.says)
  // nothing is wider than the sheet, or all would be printed smaller
  expect(made.scale).toBeGreaterThan(0.995)
  expect(made.scale).toBeLessThanOrEqual(1.000001)
  return (await pageTexts(made.pdf)).map(text =>
    text
      .split('\n')
      .map(line => line.trim())
      .filter(Boolean),
  )
}

const table = (name: number, rows: number): string =>
  toHtml(
    h('table', { style: 'break-before: page' }, [
      h('thead', h('tr', [h('th', `head${name}`)])),
      h(
        'tbody',
        Array.from({ length: rows }, (_, row) => h('tr', h('td', `row${name}x${row}x`))),
      ),
    ]),
  )

describe('page-breaks', () => {
  it('a table that goes on overleaf repeats its head and takes two rows with it at least', async () => {
    const styles = [look.fonts, look.sheet, look.print, '@page { size: 100mm 60mm; margin: 5mm }']
    const tables = Array.from({ length: 14 }, (_, index) => table(index, index + 7))
    const html = `<!doctype html><html lang="en"><head><title>t</title>${styles.map(css => `<style>${css}</style>`).join('')}</head><body class="undercroft"><main>${tables.join('')}</main></body></html>`
    const pages = (await printed(html)).map(lines => lines.join(' '))
    const rows = pages.map(page => page.match(/row\d+x\d+x/g)?.length ?? 0)
    expect(pages.length).toBeGreaterThan(14)
    expect(pages.filter((_, index) => rows[index] === 1)).toEqual([])
    expect(pages.filter(page => page.includes('row') && !/head\d+/.test(page))).toEqual([])
  })

  it('skerry-point: no heading stands alone at the foot of a sheet, no sheet is nearly empty, and the sheets are few', async () => {
    const evaluated = await evaluateFile('examples/skerry-point/skerry-point.md')
    const proved = provePackage(evaluated, {
      version: '0.1.0',
      command: 'undercroft issue skerry-point.md',
      name: 'skerry-point',
      draft: false,
      paper: 'A4',
      date: undefined,
      assets: look,
    })
    const html = proved.compose().print
    const headings = [...html.matchAll(/<h[2-6][^>]*>(.*?)<\/h[2-6]>/gs)].map(found =>
      (found[1] ?? '').replace(/<[^>]*>/g, '').trim(),
    )
    const pages = await printed(html)
    const foot = /^(Sheet|Prepared)\b/
    const last = pages.slice(1).map(lines => lines.filter(line => !foot.test(line)).at(-1) ?? '')
    const cover = pages[0]?.join(' ') ?? ''
    expect(cover.split('Signature and date').length).toBe(4)
    expect(pages[1]?.join(' ')).toContain('Contents')
    expect(headings.length).toBeGreaterThan(40)
    expect(last.filter(line => headings.includes(line))).toEqual([])
    // the last sheet ends where the package ends
    expect(pages.slice(1, -1).filter(lines => lines.join('').length < 900)).toEqual([])
    expect(pages.length).toBeLessThanOrEqual(150)
  }, 240_000)
})
