import type { EarlyModel } from './package-model.ts'

const draftWords = 'DRAFT'

/**
 * The page rules of one package: paper, margins, and in the margins its number, revision, title, names, date and page count.
 * Chromium has no running titles, so the texts are literal strings, escaped for CSS.
 */
export function furniture(model: EarlyModel): string {
  const { title } = model.notebook
  const name = [title.number, title.revision && `Revision ${title.revision}`].filter(Boolean).join(' \u00b7 ')
  const people = [
    title.prepared && `Prepared ${title.prepared}`,
    `Checked ${title.checked || '\u2013'}`,
    model.date,
  ].filter(Boolean)
  const boxes = [
    box('top-left', quoted(name || title.project), 'font-weight: 600'),
    box('top-center', quoted(model.draft ? draftWords : ''), 'font-weight: 700; letter-spacing: 0.18em'),
    box('top-right', quoted(title.title)),
    box('bottom-left', quoted(people.join(' \u00b7 '))),
    box('bottom-right', `"Sheet " counter(page) " of " counter(pages)`, 'font-weight: 600'),
  ]
  return [
    `@page { size: ${model.paper}; margin: 15mm 10.5mm 12.5mm 18mm; ${boxes.join(' ')} }`,
    `.undercroft .cover { min-height: ${model.paper === 'letter' ? 246 : 264}mm }`,
    `@page cover { margin: 17mm 10.5mm 14mm 18mm; ${bare(model)} }`,
  ].join('\n')
}

const rule = '0.4pt solid #1a1a1a'

function box(place: string, content: string, more = ''): string {
  const edge = place.startsWith('top')
    ? `border-bottom: ${rule}; padding-bottom: 1mm; margin-bottom: 2.6mm; vertical-align: bottom;`
    : `border-top: ${rule}; padding-top: 1mm; margin-top: 2.2mm; vertical-align: top;`
  return `@${place} { content: ${content}; font: 7.8pt/1.25 "Source Serif 4"; color: #1a1a1a; ${edge} ${more} }`
}

/** The cover says all this itself, but for the draft mark. */
function bare(model: EarlyModel): string {
  const places = ['top-left', 'top-center', 'top-right', 'bottom-left', 'bottom-center', 'bottom-right']
  const hidden = places.map(place => `@${place} { content: none; border: none }`)
  return model.draft ? `${hidden.join(' ')} @top-right { content: "${draftWords}"; border: none }` : hidden.join(' ')
}

/** A CSS string: backslash, quotes and line ends escaped, and `<` so that no style element can be closed from inside it. */
export function quoted(text: string): string {
  const escaped = text.replace(/[\\"<\n\r\f]/g, letter => `\\${letter.charCodeAt(0).toString(16)} `)
  return `"${escaped}"`
}
