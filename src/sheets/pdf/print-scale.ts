import { pageContents } from './pdf-glyphs.ts'
import { type SkiaPdf, streamOf } from './skia-pdf.ts'

/** The scale of the page, and after it that of the document, which begins at the margins of the sheet; texts in the margins begin at 0 0. */
const SCALES = /^([\d.]+) 0 0 -\1 [-\d. ]+ cm\n[\s\S]*?^([\d.]+) 0 0 \2 (?!0 0 cm)[-\d. ]+ cm$/m

/** Points of paper in a CSS pixel. */
const POINTS = 72 / 96

/**
 * At which part of its size the browser printed the document, or the smallest part of it: 1, or less where something is wider than the sheet, for then
 * Chromium makes all of it smaller without a word. Undefined where the browser writes its pages otherwise and nothing can be said.
 */
export function printScale(pdf: SkiaPdf): number | undefined {
  const scales = pageContents(pdf).flatMap(stream => {
    const [, page, content] = SCALES.exec(streamOf(pdf, stream)) ?? []
    return page && content ? [(Number(page) * Number(content)) / POINTS] : []
  })
  return scales.length > 0 ? Math.min(...scales) : undefined
}
