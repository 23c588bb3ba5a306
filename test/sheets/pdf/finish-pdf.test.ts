import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type FinishOptions, finishPdf, openBrowser } from '../../../src/sheets/pdf/index.ts'
import { unpacked } from '../../command/pdf-text.ts'
import { placesIn } from './places-in.ts'
import { openWithPdfjs, pageTexts } from './read-with-pdfjs.ts'
import { packageOf, SAMPLE_FONTS } from './sample-document.ts'
import { sampleFinish } from './sample-finish.ts'

let printed: Uint8Array
let pdf: Uint8Array

function finish(options: FinishOptions): Uint8Array {
  const result = finishPdf(printed, options)
  if (!result.ok) throw new Error(result.says)
  return result.pdf
}

beforeAll(async () => {
  const browser = await openBrowser({ variables: process.env })
  if (!browser.ok) throw new Error(browser.says)
  const result = await browser.print(packageOf(9), { fonts: SAMPLE_FONTS })
  await browser.close()
  if (!result.ok) throw new Error(result.says)
  printed = result.pdf
  pdf = finish(sampleFinish)
})

describe('attachments', () => {
  test('attachments: an outside reader gets back every name, word and byte', async () => {
    const document = await openWithPdfjs(pdf)
    const found = Object.values(
      (await document.getAttachments()) as Record<
        string,
        { filename: string; description: string; content: Uint8Array }
      >,
    )
    expect(found).toHaveLength(sampleFinish.attachments.length)
    for (const { name, bytes, description } of sampleFinish.attachments) {
      const file = found.find(entry => entry.filename === name)
      expect(file?.description).toBe(description)
      expect(Buffer.compare(file?.content ?? Buffer.from('none'), bytes), name).toBe(0)
    }
  })

  test('attachments: each says what it is to the document and what it holds', () => {
    const text = unpacked(pdf)
    expect([...text.matchAll(/\/AFRelationship \/(\w+)/g)].map(match => match[1])).toEqual([
      'Source',
      'Data',
      'Unspecified',
      'Supplement',
    ])
    expect(text).toContain('/Subtype /text#2Fmarkdown')
    expect(text).toMatch(/\/AF \[(\d+ 0 R ?){4}\]/)
  })

  test('attachments: without any, the PDF has none', async () => {
    const document = await openWithPdfjs(finish({ ...sampleFinish, attachments: [] }))
    expect(await document.getAttachments()).toBeNull()
  })
})

describe('identity', () => {
  test('identity: title, author, language, dates, tool and identifier are those given', async () => {
    const document = await openWithPdfjs(pdf)
    const { info, metadata } = await document.getMetadata()
    expect(info).toMatchObject({
      Title: sampleFinish.title,
      Author: sampleFinish.author,
      Creator: sampleFinish.creator,
      Language: 'en-GB',
      CreationDate: "D:20260304050607+00'00'",
      ModDate: "D:20260304050607+00'00'",
      PDFFormatVersion: '1.7',
    })
    // This reader gives null for a second identifier that equals the first.
    expect(document.fingerprints).toEqual(['e3b0c44298fc1c149afbf4c8996fb924', null])
    expect(await document.getPageMode()).toBe('UseOutlines')
    expect(metadata.get('dc:title')).toBe(sampleFinish.title)
    expect(metadata.get('dc:creator')).toEqual([sampleFinish.author])
    expect(metadata.get('xmp:createdate')).toBe('2026-03-04T05:06:07Z')
  })

  test('identity: no date of the printing is left anywhere in the file', () => {
    const dates = unpacked(pdf).match(/D:\d{14}/g) ?? []
    expect(new Set(dates)).toEqual(new Set(['D:20260304050607']))
  })

  test('identity: without author and tool none is written', async () => {
    const { title, language, date, sha256 } = sampleFinish
    const document = await openWithPdfjs(finish({ title, language, date, sha256, attachments: [] }))
    const { info } = await document.getMetadata()
    expect(info).not.toHaveProperty('Author')
    expect(info).toMatchObject({ Title: title })
  })
})

describe('the form', () => {
  test('every object stands where the cross-reference stream says', () => {
    const places = placesIn(pdf)
    expect(places.size).toBeGreaterThan(100)
    expect([...places].filter(([number, found]) => number !== found)).toEqual([])
  })

  test('the tags, most of the objects, are packed', () => {
    const [plain, all] = [Buffer.from(pdf).toString('latin1'), unpacked(pdf)].map(
      text => text.split('/StructElem').length,
    )
    expect([plain, all]).toEqual([1, Buffer.from(printed).toString('latin1').split('/StructElem').length])
  })
})

describe('the rest of the document', () => {
  test('pages, outline and tags are as before', async () => {
    const [before, after] = [await openWithPdfjs(printed), await openWithPdfjs(pdf)]
    expect(await pageTexts(pdf)).toEqual(await pageTexts(printed))
    expect(await after.getOutline()).toEqual(await before.getOutline())
    expect(await (await after.getPage(2)).getStructTree()).toEqual(await (await before.getPage(2)).getStructTree())
  })

  test('the printed PDF that was handed in is not changed', () => {
    const copy = printed.slice()
    finish({ ...sampleFinish, date: new Date('1999-01-01T00:00:00Z') })
    expect(Buffer.compare(copy, printed)).toBe(0)
  })
})

describe('refusals', () => {
  test('form: a PDF with another tail than the browser writes is refused', () => {
    for (const other of [pdf, printed.slice(0, -8), new TextEncoder().encode('%PDF-1.7\n%%EOF\n'), new Uint8Array(0)]) {
      expect(finishPdf(other, sampleFinish)).toMatchObject({ ok: false, reason: 'check-failed' })
    }
  })

  test('identifier: anything but a SHA-256 in hexadecimal is our own mistake and throws', () => {
    for (const sha256 of ['', 'abc', 'g'.repeat(64)])
      expect(() => finishPdf(printed, { ...sampleFinish, sha256 })).toThrow(RangeError)
  })
})

describe('the same bytes', () => {
  // Beside the repository's packages, so that the program finds them as an installed one does.
  const folder = mkdtempSync(join(import.meta.dirname, '../../../node_modules/.undercroft-test-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test('bytes: two processes and this one make the same file', async () => {
    const program = join(folder, 'print-once.mjs')
    const bundle = { entryPoints: [join(import.meta.dirname, 'print-once.ts')], outfile: program }
    await build({ ...bundle, bundle: true, platform: 'node', format: 'esm', packages: 'external' })
    const targets = ['one.pdf', 'two.pdf'].map(name => join(folder, name))
    const run = promisify(execFile)
    const other = {
      ...process.env,
      TZ: 'Asia/Kathmandu',
      LANG: 'tr_TR.UTF-8',
      TMPDIR: mkdtempSync(join(tmpdir(), 'undercroft-test-')),
    }
    await Promise.all([run('node', [program, targets[0]!]), run('node', [program, targets[1]!], { env: other })])
    rmSync(other.TMPDIR, { recursive: true })
    const [one, two] = targets.map(target => readFileSync(target))
    expect(Buffer.compare(one!, two!)).toBe(0)
    expect(Buffer.compare(one!, pdf)).toBe(0)
  })
})
