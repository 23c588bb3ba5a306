/** The page of one rule: what it means, a notebook that gives it, and what to write instead. */
export interface Message {
  /** Markdown: what it means, beyond the rule's one line. */
  readonly means: string
  /** A whole notebook that gives it, and nothing else at the same place. */
  readonly example?: string
  /** Where no notebook can be shown: why not. */
  readonly noExample?: string
  /** Markdown: what to write instead. */
  readonly instead: string
  /** The stage that gives it: reading the file, or evaluating what was read. */
  readonly stage: 'reader' | 'evaluation'
  /** How the example is saved, where that is the point of it. */
  readonly saved?: 'Latin-1'
}

/** Returns a notebook with a short title block and this text. */
export const notebook = (...lines: readonly string[]): string => `---\ntitle: Example\n---\n\n${lines.join('\n')}\n`

/** Returns a fence with these words and lines. */
export const fence = (words: string, ...lines: readonly string[]): string =>
  ['```', words, '\n', ...lines.map(line => `${line}\n`), '```'].join('')
