import { linkedNames } from './linked-names.ts'
import { type FontUse, readFontUses } from './pdf-glyphs.ts'
import { decodeName, type PageNumbers, readPageNumbers } from './pdf-pages.ts'
import { type PrintFailure, printFailure } from './print-failure.ts'
import { rawObject, type SkiaPdf } from './skia-pdf.ts'

/** What a printed package must be to be delivered. */
export interface DeliveryTerms {
  /** Names of the fonts that may be in the PDF; a star at the end stands for any ending (`KaTeX_*`). */
  readonly fonts: readonly string[]
  /** The text of the pages as the browser laid it out. */
  readonly pageText: string
  /** The numbers that were set into the contents, by the id each stands for; undefined where the page count was not set. */
  readonly shown: { readonly pages: number | undefined; readonly pageOf: Readonly<Record<string, number>> }
}

/** Glyphs drawn may not be fewer than this share of the letters laid out. Spaces count as glyphs, ligatures as one: sound pages reach 1.0 to 1.3. */
const LEAST_GLYPHS = 0.9

/** Returns why a PDF may not be delivered, or undefined where it may. Throws `UnreadablePdf`. */
export function checkPdf(pdf: SkiaPdf, terms: DeliveryTerms): PrintFailure | undefined {
  const numbers = readPageNumbers(pdf)
  if (numbers.pages === 0) return refused('the PDF has no pages', 'Put some content into the notebook')
  const uses = readFontUses(pdf)
  return (
    checkText(uses, terms.pageText) ??
    checkFonts(uses, terms.fonts) ??
    checkGlyphs(uses, terms.pageText) ??
    checkNumbers(numbers, terms.shown) ??
    checkLinks(pdf, numbers) ??
    checkPaths(pdf)
  )
}

function checkText(uses: readonly FontUse[], pageText: string): PrintFailure | undefined {
  const letters = pageText.replace(/[\s\u200B]/gu, '').length
  const glyphs = uses.reduce((sum, use) => sum + use.glyphs, 0)
  if (letters > 0 && glyphs === 0) {
    return printFailure('no-font', `the pages hold ${letters} letters and the PDF draws none`, FONT_HELP)
  }
  if (glyphs >= LEAST_GLYPHS * letters) return undefined
  return refused(`expected at least ${Math.ceil(LEAST_GLYPHS * letters)} glyphs in the PDF, got ${glyphs}`, FONT_HELP)
}

const FONT_HELP =
  'Text was lost on the way to the PDF. Print with the packed browser, or install any font (`apt-get install fonts-dejavu-core`)'

function checkFonts(uses: readonly FontUse[], allowed: readonly string[]): PrintFailure | undefined {
  const strays = uses.filter(use => use.glyphs > 0 && !allowed.some(pattern => matches(use.font, pattern)))
  if (strays.length === 0) return undefined
  const says = strays.map(
    stray => `\`${stray.font}\`${stray.characters === '' ? '' : ` for ${quote(stray.characters)}`}`,
  )
  const failure = refused(
    `characters fell to fonts that are not the package's own: ${says.join(', ')}`,
    'Write these characters another way, or draw them; the package embeds only its own fonts',
  )
  return { ...failure, characters: strays.map(({ characters }) => characters).join('') }
}

function matches(font: string, pattern: string): boolean {
  return pattern.endsWith('*') ? font.startsWith(pattern.slice(0, -1)) : font === pattern
}

function checkGlyphs(uses: readonly FontUse[], pageText: string): PrintFailure | undefined {
  const missing = uses.reduce((sum, use) => sum + use.missing, 0)
  if (missing === 0) return undefined
  const drawn = new Set(uses.flatMap(use => [...use.characters.normalize('NFKC')]))
  const lost = [...new Set(pageText.normalize('NFKC'))].filter(
    character => !drawn.has(character) && !/\s/u.test(character),
  )
  const failure = refused(
    `${missing === 1 ? '1 character is' : `${missing} characters are`} in none of the fonts${lost.length === 0 ? '' : `, perhaps ${quote(lost.join(''))}`}`,
    'Write these characters another way, or draw them; they would print as empty boxes',
  )
  return { ...failure, characters: lost.join('') }
}

function quote(characters: string): string {
  const all = [...characters]
  return (
    all
      .slice(0, 12)
      .map(character => `\`${character}\``)
      .join(' ') + (all.length > 12 ? ` and ${all.length - 12} more` : '')
  )
}

function checkNumbers(numbers: PageNumbers, shown: DeliveryTerms['shown']): PrintFailure | undefined {
  const help = 'The contents would send the reader to the wrong page. Give the number cells a fixed width'
  for (const [id, page] of Object.entries(shown.pageOf)) {
    const found = numbers.pageOf[id]
    if (found !== page)
      return refused(`the contents say page ${page} for \`${id}\`, the PDF has it on ${found ?? 'no page'}`, help)
  }
  if (shown.pages === undefined || shown.pages === numbers.pages) return undefined
  return refused(`the cover says ${shown.pages} pages, the PDF has ${numbers.pages}`, help)
}

function checkLinks(pdf: SkiaPdf, { pageOf }: PageNumbers): PrintFailure | undefined {
  const lost = linkedNames(pdf)
    .map(decodeName)
    .find(name => pageOf[name] === undefined)
  if (lost === undefined) return undefined
  return refused(
    `a link leads to \`#${lost}\`, and nothing in the package has that name`,
    'Link to a heading or a block',
  )
}

function checkPaths(pdf: SkiaPdf): PrintFailure | undefined {
  const holder = pdf.offsets.findIndex((offset, number) => offset > 0 && /file:\//i.test(rawObject(pdf, number)))
  if (holder < 0) return undefined
  const path = /file:\/[^\s)>]*/i.exec(rawObject(pdf, holder))?.[0] ?? ''
  return refused(
    `the PDF holds a path of this machine: \`${path}\``,
    'A link that names a file beside the notebook becomes such a path; link to a web address or a heading',
  )
}

function refused(says: string, help: string): PrintFailure {
  return printFailure('check-failed', says, help)
}
