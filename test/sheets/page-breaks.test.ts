import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { beforeAll, describe, expect, it } from 'vitest'
import { evaluateFile } from '../../src/command/evaluated.ts'
import { expectPackage } from '../../src/command/package-texts.ts'
import { type Assets, assets } from '../../src/sheets/assets.ts'
import { type OpenBrowser, openBrowser } from '../../src/sheets/pdf/index.ts'
import { pageTexts } from './pdf/read-with-pdfjs.ts'
import { wholePrint } from './whole-print.ts'

let look: Assets
let made: Promise<string>
beforeAll(async () => {
  look = await assets('.')
  made = skerryPoint()
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

/** The package of the example as it is printed, made once; its page numbers are all 0, so that one print is enough. */
const skerryPoint = async (): Promise<string> => {
  const evaluated = await evaluateFile('examples/skerry-point/skerry-point.md')
  const expected = expectPackage(evaluated, {
    version: '0.1.0',
    command: 'undercroft issue skerry-point.md',
    name: 'skerry-point',
    draft: false,
    paper: 'A4',
    date: undefined,
    assets: look,
  })
  const { proved } = expected.prove()
  const html = wholePrint(proved.compose({ name: 'Browser', version: '1', pinned: true }).print)
  return html.replaceAll(/ data-page-of="[^"]*">/g, '>0').replaceAll('class="page-count"', '')
}

/** One block of a package, on sheets that are filled to so many millimetres before it. */
function behindFilled(html: string, block: string, heights: readonly number[]): string {
  const start = html.lastIndexOf('<section', html.indexOf(`id="b-${block}"`))
  const section = html.slice(start, html.indexOf('</section>', start) + '</section>'.length)
  const spacer = (height: number) => `<div style="break-before:page;height:${height}mm">filled${height}x</div>`
  const sheets = heights.map(height => `${spacer(height)}<p>Led to.</p>${section}`)
  return `${html.slice(0, html.indexOf('<main'))}<main><section class="part text">${sheets.join('')}</section></main></body></html>`
}

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
    const html = await made
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

  it('a calculation begins where its head and its sketch fit, wherever the steps behind its list fall', async () => {
    const heights = Array.from({ length: 18 }, (_, index) => 120 + 4 * index)
    const pages = (await printed(behindFilled(await made, 'entrance', heights))).map(lines => lines.join(' '))
    const filled = pages.filter(page => /filled\d+x/.test(page))
    expect(filled).toHaveLength(heights.length)
    expect(filled.filter(page => !page.includes('Radiation round the bends')).map(page => page.slice(0, 60))).toEqual(
      [],
    )
  }, 120_000)

  it('a table of given values that goes on overleaf has its head there, however little of it stands before', async () => {
    const heights = Array.from({ length: 24 }, (_, index) => 190 + 2 * index)
    const pages = (await printed(behindFilled(await made, 'settling', heights))).map(lines => lines.join(' '))
    const split = pages.filter((page, index) => /filled\d+x.*Immediate settlement/.test(pages[index - 1] ?? '') && page)
    expect(split.length).toBeGreaterThan(12)
    const headless = (page: string) => page.includes('Unit weight of water') && !page.includes('Given')
    expect(split.filter(headless).map(page => page.slice(0, 90))).toEqual([])
  }, 120_000)
})
