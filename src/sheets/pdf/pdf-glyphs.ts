import { isDictionary, isName, isReference, type PdfValue } from './pdf-object.ts'
import { pageObjects } from './pdf-pages.ts'
import { dictionaryOf, entryOf, objectOf, rawObject, type SkiaPdf, streamOf } from './skia-pdf.ts'

/** What one font of the PDF draws. */
export interface FontUse {
  /** PostScript name without the subset mark, as `SourceSerif4-Regular`. */
  readonly font: string
  /** Glyphs drawn, spaces among them. */
  readonly glyphs: number
  /** Glyphs drawn that stand for a character the font does not have (glyph 0). */
  readonly missing: number
  /** The characters that the font's own table gives back. */
  readonly characters: string
}

interface Drawing {
  readonly stream: number
  readonly fonts: ReadonlyMap<string, number>
}

/** Returns the fonts that the pages draw with and what each draws; parts of a document have each its own copy of a font. Throws `UnreadablePdf`. */
export function readFontUses(pdf: SkiaPdf): FontUse[] {
  const codes = new Map<number, string[]>()
  for (const drawing of drawingsOf(pdf)) collectCodes(streamOf(pdf, drawing.stream), drawing.fonts, codes)
  const uses = new Map<string, FontUse>()
  for (const [object, drawn] of codes) {
    const use = fontUse(pdf, object, drawn)
    uses.set(use.font, together(use, uses.get(use.font)))
  }
  return [...uses.values()]
}

function together(use: FontUse, other: FontUse | undefined): FontUse {
  if (!other) return use
  return {
    font: use.font,
    glyphs: use.glyphs + other.glyphs,
    missing: use.missing + other.missing,
    characters: [...new Set(other.characters + use.characters)].join(''),
  }
}

function drawingsOf(pdf: SkiaPdf): Drawing[] {
  const pages = pageObjects(pdf).map(number => dictionaryOf(pdf, number))
  const drawn = pages.flatMap(page =>
    contents(page.entries.get('Contents')).map(stream => ({ stream, fonts: fontsOf(pdf, page) })),
  )
  const forms = pdf.offsets.flatMap((offset, number) =>
    offset > 0 && rawObject(pdf, number).includes('/Subtype /Form') ? [number] : [],
  )
  return [...drawn, ...forms.map(number => ({ stream: number, fonts: fontsOf(pdf, objectOf(pdf, number)) }))]
}

/** The object numbers of what the pages draw. */
export const pageContents = (pdf: SkiaPdf): number[] =>
  pageObjects(pdf).flatMap(number => contents(dictionaryOf(pdf, number).entries.get('Contents')))

function contents(value: PdfValue | undefined): number[] {
  const list: readonly PdfValue[] = Array.isArray(value) ? value : value === undefined ? [] : [value as PdfValue]
  return list.filter(isReference).map(reference => reference.object)
}

function fontsOf(pdf: SkiaPdf, owner: PdfValue): Map<string, number> {
  const fonts = entryOf(pdf, entryOf(pdf, owner, 'Resources'), 'Font')
  const entries = isDictionary(fonts) ? [...fonts.entries] : []
  return new Map(entries.flatMap(([name, font]) => (isReference(font) ? [[name, font.object] as const] : [])))
}

const DRAWN = /\/(\S+) [-\d.]+ Tf|<([\dA-Fa-f]*)> Tj|\[([^\]]*)\] TJ/g

function collectCodes(content: string, fonts: ReadonlyMap<string, number>, codes: Map<number, string[]>): void {
  let drawn: string[] = []
  for (const [, font, one, many] of content.matchAll(DRAWN)) {
    if (font === undefined) {
      drawn.push(one ?? (many ?? '').replace(/<([^>]*)>|[^<]/g, '$1'))
      continue
    }
    const object = fonts.get(font) ?? 0
    drawn = codes.get(object) ?? []
    codes.set(object, drawn)
  }
}

function fontUse(pdf: SkiaPdf, number: number, drawn: readonly string[]): FontUse {
  const font = number > 0 ? objectOf(pdf, number) : null
  const width = nameAt(pdf, font, 'Subtype') === 'Type0' ? 4 : 2
  const glyphs = drawn.flatMap(hex => hex.match(new RegExp(`.{${width}}`, 'g')) ?? [])
  const missing = glyphs.filter(code => width === 4 && code === '0000').length
  return { font: fontName(pdf, font), glyphs: glyphs.length, missing, characters: charactersOf(pdf, font) }
}

function fontName(pdf: SkiaPdf, font: PdfValue): string {
  const name =
    nameAt(pdf, font, 'BaseFont') ?? nameAt(pdf, entryOf(pdf, font, 'FontDescriptor'), 'FontName') ?? 'unnamed'
  return name.replace(/^[A-Z]{6}\+/, '')
}

function nameAt(pdf: SkiaPdf, value: PdfValue | undefined, key: string): string | undefined {
  const found = entryOf(pdf, value, key)
  return isName(found) ? found.name : undefined
}

function charactersOf(pdf: SkiaPdf, font: PdfValue): string {
  const table = isDictionary(font) ? font.entries.get('ToUnicode') : undefined
  if (!isReference(table)) return ''
  const [singles, ranges] = [/^<\w+> <(\w+)>$/gm, /^<(\w+)> <(\w+)> <(\w+)>$/gm]
  const map = streamOf(pdf, table.object).replace(/begincodespacerange[\s\S]*?endcodespacerange/g, '')
  const alone = [...map.matchAll(singles)].map(([, text = '']) => fromUtf16(text))
  return (
    alone.join('') +
    [...map.matchAll(ranges)].map(([, low = '', high = '', text = '']) => run(low, high, text)).join('')
  )
}

function run(low: string, high: string, text: string): string {
  const [from, to] = [Number.parseInt(low, 16), Number.parseInt(high, 16)]
  const first = fromUtf16(text).codePointAt(0) ?? 0
  return Array.from({ length: to - from + 1 }, (_, step) => String.fromCodePoint(first + step)).join('')
}

function fromUtf16(hex: string): string {
  return Buffer.from(hex, 'hex').swap16().toString('utf16le')
}
