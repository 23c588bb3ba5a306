import type { Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { undercroftSyntax } from './undercroft-syntax.ts'

/** Returns the tree of a notebook's Markdown. A text within `limits` cannot make it overflow the stack. */
export const parseMarkdown = (text: string): Root => unified().use(remarkParse).use(undercroftSyntax).parse(text)
