import { beforeAll, expect, test } from 'vitest'
import { checkPdf, type DeliveryTerms } from '../../../src/sheets/pdf/check-pdf.ts'
import { printPackage } from '../../../src/sheets/pdf/index.ts'
import { type PageNumbers, readPageNumbers } from '../../../src/sheets/pdf/pdf-pages.ts'
import { readSkiaPdf, type SkiaPdf } from '../../../src/sheets/pdf/skia-pdf.ts'
import { packageOf, SAMPLE_FONTS } from './sample-document.ts'

let pdf: SkiaPdf
let numbers: PageNumbers
let terms: DeliveryTerms

beforeAll(async () => {
  const printed = await printPackage(packageOf(4), { variables: process.env, fonts: SAMPLE_FONTS })
  if (!printed.ok) throw new Error(printed.says)
  pdf = readSkiaPdf(printed.pdf)
  numbers = readPageNumbers(pdf)
  terms = { fonts: SAMPLE_FONTS, pageText: 'A hundred letters '.repeat(5), shown: numbers }
})

function saysOf(changed: Partial<DeliveryTerms>): string | undefined {
  return checkPdf(pdf, { ...terms, ...changed })?.says
}

test('delivery: a sound PDF passes', () => {
  expect(saysOf({})).toBeUndefined()
  expect(saysOf({ shown: { pages: undefined, pageOf: {} } })).toBeUndefined()
})

test('contents: one number that is not the page of its name is refused', () => {
  const pageOf = { ...numbers.pageOf, 's-3': 5 }
  expect(numbers.pageOf['s-3']).toBe(4)
  expect(saysOf({ shown: { pages: undefined, pageOf } })).toBe('the contents say page 5 for `s-3`, the PDF has it on 4')
  expect(saysOf({ shown: { pages: undefined, pageOf: { gone: 2 } } })).toBe(
    'the contents say page 2 for `gone`, the PDF has it on no page',
  )
})

test('cover: a sheet count that is not the number of pages is refused', () => {
  const pages = numbers.pages + 1
  expect(saysOf({ shown: { pages, pageOf: {} } })).toBe(`the cover says ${pages} pages, the PDF has ${numbers.pages}`)
})

test('text: nine letters in ten must be drawn', () => {
  const glyphs = Number(/got (\d+)/.exec(saysOf({ pageText: 'x'.repeat(1e6) }) ?? '')?.[1])
  expect(glyphs).toBeGreaterThan(1000)
  expect(saysOf({ pageText: 'x'.repeat(Math.floor(glyphs / 0.9)) })).toBeUndefined()
  expect(saysOf({ pageText: 'x'.repeat(Math.ceil(glyphs / 0.9) + 1) })).toMatch(
    /^expected at least \d+ glyphs in the PDF, got \d+$/,
  )
  expect(saysOf({ pageText: ' \n\u200B'.repeat(1e6) })).toBeUndefined()
})

test('fonts: a name without a star allows that font alone', () => {
  expect(saysOf({ fonts: ['SourceSerif4-Regular', 'SourceSerif4-Bold'] })).toBeUndefined()
  expect(saysOf({ fonts: ['SourceSerif4-Regular', 'SourceSerif4'] })).toContain('`SourceSerif4-Bold` for')
  expect(saysOf({ fonts: [] })).toContain('`SourceSerif4-Regular` for')
})
