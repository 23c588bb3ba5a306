/** One fenced block of a page: the language, the words after it, and its text. */
export interface PageBlock {
  readonly language: string
  readonly about: string
  readonly text: string
}

/** The fenced blocks of a Markdown page, in order. A longer fence may hold shorter ones. */
export function pageBlocks(page: string): readonly PageBlock[] {
  const fence = /^(`{3,})(\S+)(?: ([^\n]*))?\n([\s\S]*?)^\1$/gm
  return [...page.matchAll(fence)].map(([, , language = '', about = '', text = '']) => ({ language, about, text }))
}
