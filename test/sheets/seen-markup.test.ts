import { describe, expect, it } from 'vitest'
import { seenMarkup } from '../../src/sheets/pencil/seen-markup.ts'

const glyphs = '<span class="katex-html" aria-hidden="true"><span><span>7</span></span></span>'

describe('seen-markup', () => {
  it('leaves the glyphs away and keeps everything round them', () => {
    expect(seenMarkup(`<body><p>a<span class="katex">M${glyphs}</span>b</p>${glyphs}</body>`)).toBe(
      '<body><p>a<span class="katex">M</span>b</p></body>',
    )
  })
  it('begins at the body', () => {
    expect(seenMarkup('<head><style>x</style></head><body>y')).toBe('<body>y')
    expect(seenMarkup('<div>y</div>')).toBe('<div>y</div>')
  })
  it('a glyph box that does not end: the page as it is', () => {
    const broken = '<body><span class="katex-html" aria-hidden="true"><span>7</span>'
    expect(seenMarkup(broken)).toBe(broken)
  })
})
