import remarkDirective from 'remark-directive'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkMath from 'remark-math'
import type {} from 'remark-stringify'
import type { Plugin } from 'unified'
import { narrowDirectives } from './narrow-directives.ts'
import { writeAsTyped } from './write-as-typed.ts'

/**
 * A remark plugin that adds what a notebook's Markdown has beyond CommonMark: front matter, GFM, mathematics, and the
 * directives of ours. Text that only looks like a directive (`1:1.5`, `12:30`, `IS 456:2000`) is not read as one, and
 * comes out as typed both in the tree and from remark-stringify.
 */
export const undercroftSyntax: Plugin = function () {
  for (const plugin of [remarkFrontmatter, remarkGfm, remarkMath, remarkDirective] as readonly Plugin[])
    plugin.call(this)
  const { micromarkExtensions = [], toMarkdownExtensions = [] } = this.data()
  const syntax = micromarkExtensions.pop()
  const writing = toMarkdownExtensions.pop()
  if (syntax !== undefined) micromarkExtensions.push(narrowDirectives(syntax))
  if (writing !== undefined) toMarkdownExtensions.push(writeAsTyped(writing))
}
