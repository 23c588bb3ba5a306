import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type OpenBrowser, openBrowser, type PrintedPackage, type PrintFailure } from '../../../src/sheets/pdf/index.ts'
import { openWithPdfjs, pageTexts } from './read-with-pdfjs.ts'
import { documentWith, headingOf, packageOf, SAMPLE_FONTS } from './sample-document.ts'

let browser: OpenBrowser
const sections = 9
const html = packageOf(sections)
let first: PrintedPackage

beforeAll(async () => {
  const opened = await openBrowser({ variables: process.env })
  if (!opened.ok) throw new Error(`${opened.says}\n${opened.help}`)
  browser = opened
  first = printed(await browser.print(html, { fonts: SAMPLE_FONTS }))
})

afterAll(() => browser?.close())

function printed(result: PrintedPackage | PrintFailure): PrintedPackage {
  if (!result.ok) throw new Error(`${result.reason}: ${result.says}`)
  return result
}

function withoutDates(pdf: Uint8Array): string {
  return Buffer.from(pdf)
    .toString('latin1')
    .replace(/\(D:\d{14}/g, '(D:')
}

describe('scale', () => {
  test('a document that fits is printed at its size, one that does not by so much smaller', async () => {
    expect(first.scale).toBeCloseTo(1, 4)
    // A4 less two margins of 20 mm is 170 mm wide
    const wide = documentWith('<p>Wide</p><div style="width: 200mm">box</div>', 'body { margin: 0 }')
    const { scale } = printed(await browser.print(wide, { fonts: SAMPLE_FONTS }))
    expect(scale).toBeCloseTo(170 / 200, 2)
  })
})

describe('page numbers', () => {
  test('contents: each printed number is the page where an outside reader finds the heading', async () => {
    const texts = await pageTexts(first.pdf)
    expect(texts.length).toBeGreaterThanOrEqual(12)
    for (let section = 1; section <= sections; section += 1) {
      const page = texts.findIndex((text, index) => index > 0 && text.includes(headingOf(section))) + 1
      const line = texts[0]?.split('\n').find(text => text.includes(headingOf(section)))
      expect(line).toMatch(new RegExp(`\\b${page}$`))
      expect(first.pageOf[`s-${section}`]).toBe(page)
    }
  })

  test('cover: the sheet count is the number of pages', async () => {
    const texts = await pageTexts(first.pdf)
    expect(first.pages).toBe(texts.length)
    expect(texts[0]).toMatch(new RegExp(`Sheets:\\s+${texts.length}\n`))
  })

  test('prints: a first run needs two, a right guess one, a wrong guess two', async () => {
    const right = printed(await browser.print(html, { fonts: SAMPLE_FONTS, guess: first }))
    const pageOf = { ...first.pageOf, 's-4': 99 }
    const wrong = printed(await browser.print(html, { fonts: SAMPLE_FONTS, guess: { ...first, pageOf } }))
    const wrongCount = printed(await browser.print(html, { fonts: SAMPLE_FONTS, guess: { ...first, pages: 3 } }))
    expect([first.prints, right.prints, wrong.prints, wrongCount.prints]).toEqual([2, 1, 2, 2])
    for (const other of [right, wrong, wrongCount]) expect(withoutDates(other.pdf)).toBe(withoutDates(first.pdf))
  })

  test('prints: a document without number cells needs one', async () => {
    const plain = printed(await browser.print(documentWith('<p>Nothing to count</p>'), { fonts: SAMPLE_FONTS }))
    expect([plain.prints, plain.pages]).toEqual([1, 1])
  })

  test('names: an id with spaces and accents keeps its name', async () => {
    const cell = '<p><a href="#sectión 9 (a)">x</a><span class="page-of" data-page-of="sectión 9 (a)"></span></p>'
    const result = printed(
      await browser.print(documentWith(`${cell}<h2 id="sectión 9 (a)">x</h2>`), { fonts: SAMPLE_FONTS }),
    )
    expect(result.pageOf).toEqual({ 'sectión 9 (a)': 2 })
  })

  test('disagreement: a document whose pages move with its numbers is refused', async () => {
    // A two-figure number makes the square smaller, so that the heading falls a page earlier, where it has one figure again.
    const style =
      '.row{display:flex;width:160mm;align-items:flex-start}.square{flex:1;aspect-ratio:1}.row .page-of{width:auto;letter-spacing:20mm}'
    const row = '<div class="row"><span class="page-of" data-page-of="end"></span><div class="square"></div></div>'
    const end = '<div style="height:136mm;break-inside:avoid"><a href="#end" id="end">end</a></div>'
    const before = '<p style="break-after:page">A page before</p>'.repeat(8)
    const result = await browser.print(documentWith(`${before}${row}${end}`, style), { fonts: SAMPLE_FONTS })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toBe(
      'the page numbers in the contents still disagreed with the pages after 3 prints',
    )
  })

  test('no place: a number cell for an id that no page has is refused by its name', async () => {
    const result = await browser.print(documentWith('<span class="page-of" data-page-of="gone"></span>'), {
      fonts: SAMPLE_FONTS,
    })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toContain('`gone`')
  })
})

describe('the document', () => {
  test('that has no root to keep hidden while it loads is refused', async () => {
    await expect(browser.print('<p>No root</p>', { fonts: SAMPLE_FONTS })).rejects.toThrow('an `html` element')
  })

  test('identity: title, language, outline and named browser', async () => {
    const document = await openWithPdfjs(first.pdf)
    const { info } = (await document.getMetadata()) as unknown as { info: Record<string, unknown> }
    expect(info.Title).toBe('Skerry Point: roof & walls')
    expect(info.Language).toBe('en-GB')
    const outline = await document.getOutline()
    expect(outline.map(item => item.title)).toEqual(['Field station'])
    expect(outline[0]?.items.map(item => item.title)).toEqual(
      Array.from({ length: sections }, (_, index) => headingOf(index + 1)),
    )
    expect(browser.browser.version).toMatch(/^\d+\.\d+\.\d+\.\d+$/)
  })

  test('tags: headings, tables with heads and the sketch with its words are in the structure', async () => {
    const document = await openWithPdfjs(first.pdf)
    const tree = JSON.stringify(await (await document.getPage(2)).getStructTree())
    for (const role of ['"H2"', '"P"', '"Table"', '"TH"', '"Figure"']) expect(tree).toContain(role)
    expect(tree).toContain('"alt":"Roof slab, plan"')
  })

  test('one browser: an earlier document changes nothing in a later one', async () => {
    printed(await browser.print(documentWith('<p>Another document</p>'), { fonts: SAMPLE_FONTS }))
    const [again, beside] = await Promise.all([
      browser.print(html, { fonts: SAMPLE_FONTS }),
      browser.print(packageOf(2), { fonts: SAMPLE_FONTS }),
    ])
    expect(withoutDates(printed(again).pdf)).toBe(withoutDates(first.pdf))
    expect(printed(beside).pages).toBeLessThan(first.pages)
  })

  test('scripts: a script in the page does not run', async () => {
    const body = '<p id="told">quiet</p><script>document.getElementById("told").textContent = "loud"</script>'
    const result = printed(await browser.print(documentWith(body), { fonts: SAMPLE_FONTS }))
    expect((await pageTexts(result.pdf)).join('')).toContain('quiet')
  })
})

describe('requests', () => {
  let server: Server
  let asked = 0
  let address = ''
  beforeAll(async () => {
    server = createServer((_request, response) => response.end('x'))
    server.on('connection', () => {
      asked += 1
    })
    await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  })
  afterAll(() => server.close())

  test('network: no image, style, font, frame, prefetch or early connection reaches a server', async () => {
    await fetch(address)
    expect(asked).toBe(1)
    const links = ['stylesheet', 'preconnect', 'prefetch', 'icon'].map(
      kind => `<link rel="${kind}" href="${address}/${kind}">`,
    )
    const style = `@font-face{font-family:Far;src:url(${address}/far.woff2)} .far{font-family:Far,'Source Serif 4';background:url(${address}/b.png)}`
    const body = `${links.join('')}<img alt="" src="${address}/a.png"><iframe src="${address}/frame"></iframe><p class="far">Words</p>`
    printed(await browser.print(documentWith(body, style), { fonts: SAMPLE_FONTS }))
    expect(asked).toBe(1)
  })

  test('files: no other file of the machine gets into the page', async () => {
    const file = new URL('./sample-document.ts', import.meta.url).href
    const body = `<p>Words</p><iframe width="600" height="600" src="${file}"></iframe><object data="${file}"></object>`
    const result = printed(await browser.print(documentWith(body), { fonts: SAMPLE_FONTS }))
    expect((await pageTexts(result.pdf)).join('')).not.toContain('woff2')
  })
})

describe('refusals', () => {
  test('fonts: a character outside the faces is refused with its font', async () => {
    const result = await browser.print(documentWith('<p>Ж and ordinary words</p>'), { fonts: SAMPLE_FONTS })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toBe(
      "characters fell to fonts that are not the package's own: `OpenSans-Regular` for `Ж`",
    )
  })

  test('fonts: a list without the face refuses the face, a list with the fall-back lets it pass', async () => {
    const body = documentWith('<p>Ж and ordinary words</p>')
    const narrow = await browser.print(body, { fonts: ['KaTeX_*', 'OpenSans-Regular'] })
    expect(narrow.ok ? '' : narrow.says).toContain('`SourceSerif4-Regular`')
    expect((await browser.print(body, { fonts: ['SourceSerif4-Regular', 'OpenSans-Regular'] })).ok).toBe(true)
  })

  test('glyphs: a character that no font has is refused, since it would print as an empty box', async () => {
    const result = await browser.print(documentWith('<p>Tick ✓ and 漢 with fi</p>'), { fonts: SAMPLE_FONTS })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toBe('2 characters are in none of the fonts, perhaps `✓` `漢`')
  })

  test('text: pages whose text does not come out are refused', async () => {
    const body = `<p>Seen</p><p style="position:absolute;left:-9999mm">${'Lost words '.repeat(20)}</p>`
    const result = await browser.print(documentWith(body), { fonts: SAMPLE_FONTS })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toMatch(/^expected at least \d+ glyphs in the PDF, got \d+$/)
  })

  test('text: pages that draw no text at all are refused as without a font', async () => {
    const result = await browser.print(
      documentWith('<p style="position:absolute;left:-9999mm">Lost</p>', '@page{@bottom-right{content:none}}'),
      {
        fonts: SAMPLE_FONTS,
      },
    )
    expect(result).toMatchObject({ ok: false, reason: 'no-font' })
  })

  test('paths: a link to a file beside the notebook is refused', async () => {
    const result = await browser.print(documentWith('<p>See <a href="notes.md">the notes</a></p>'), {
      fonts: SAMPLE_FONTS,
    })
    expect(result).toMatchObject({ ok: false, reason: 'check-failed' })
    expect(result.ok ? '' : result.says).toMatch(/^the PDF holds a path of this machine: `file:\//)
  })

  test('paths: words about a file are not a path', async () => {
    expect(await browser.print(documentWith('<h1>Input file: loads</h1>'), { fonts: SAMPLE_FONTS })).toMatchObject({
      ok: true,
    })
  })
})
