import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'

const require = createRequire(import.meta.url)

function face(weight: number): string {
  const file = require.resolve(`@fontsource/source-serif-4/files/source-serif-4-latin-${weight}-normal.woff2`)
  const data = readFileSync(file).toString('base64')
  return `@font-face { font-family: 'Source Serif 4'; font-weight: ${weight}; src: url(data:font/woff2;base64,${data}) }`
}

const STYLE = `
${face(400)}
${face(700)}
@page { size: A4; margin: 20mm; @bottom-right { content: counter(page) " of " counter(pages); font-family: 'Source Serif 4' } }
body { font: 10pt/1.4 'Source Serif 4' }
h2 { break-before: page }
.page-of, .page-count { display: inline-block; width: 3em; text-align: right }
`

/** The fonts that the sample may use. */
export const SAMPLE_FONTS = ['KaTeX_*', 'SourceSerif4*']

/** Returns a finished document around a body, in the package's face. */
export function documentWith(body: string, style = ''): string {
  const head = `<meta charset="utf-8"><title>Skerry Point: roof &amp; walls</title><style>${STYLE}${style}</style>`
  return `<!doctype html><html lang="en-GB"><head>${head}</head><body>${body}</body></html>`
}

const WORDS = 'The roof slab carries its cover of earth and the load of the season in both directions. '
const SKETCH =
  '<svg role="img" aria-label="Roof slab, plan" width="120" height="60"><rect width="110" height="50" fill="none" stroke="#000"/></svg>'

/** The heading of the section with this number (from 1). */
export function headingOf(section: number): string {
  return `Section ${section}: walls and roof`
}

/** Returns sections of which every third runs over two pages, with a contents page before them that has a number cell for each. */
export function packageOf(sections: number, extra = ''): string {
  const numbers = Array.from({ length: sections }, (_, index) => index + 1)
  const contents = numbers.map(
    section =>
      `<p><a href="#s-${section}">${headingOf(section)}</a> <span class="page-of" data-page-of="s-${section}"></span></p>`,
  )
  const table =
    '<table><thead><tr><th scope="col">symbol</th><th scope="col">value</th></tr></thead><tr><td>w</td><td>52.3</td></tr></table>'
  const body = numbers.map(
    section =>
      `<h2 id="s-${section}">${headingOf(section)}</h2><p>${WORDS.repeat(section % 3 === 0 ? 70 : 6)}</p>${table}${SKETCH}`,
  )
  return documentWith(
    `<h1>Field station</h1><p>Sheets: <span class="page-count"></span></p>${contents.join('')}${extra}${body.join('')}`,
  )
}
