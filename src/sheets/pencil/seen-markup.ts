const hidden = '<span class="katex-html" aria-hidden="true">'

/**
 * The page's body without the glyphs that stand beside each formula's MathML, which are hidden from readers: most of a page's
 * markup, and no part of what is read. Where a glyph box does not end, the page is left as it is.
 */
export function seenMarkup(html: string): string {
  const start = Math.max(0, html.indexOf('<body'))
  const kept: string[] = []
  let from = start
  for (let at = html.indexOf(hidden, from); at >= 0; at = html.indexOf(hidden, from)) {
    const end = endOfSpan(html, at)
    if (end === undefined) break
    kept.push(html.slice(from, at))
    from = end
  }
  return kept.join('') + html.slice(from)
}

/** Past the end tag of the span that begins at `from`. */
function endOfSpan(html: string, from: number): number | undefined {
  const tag = /<(\/?)span\b/g
  tag.lastIndex = from
  let depth = 0
  for (let found = tag.exec(html); found; found = tag.exec(html)) {
    depth += found[1] ? -1 : 1
    if (depth === 0) return tag.lastIndex + 1
  }
  return undefined
}
