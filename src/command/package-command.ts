import { basename } from 'node:path'
import type { IssueOptions } from './issue-options.ts'

/** The command as the package's record states it: what it was made from and how, and no folder of this machine. */
export function packageCommand(file: string, { draft, paper, since, htmlOnly }: IssueOptions): string {
  const words = ['undercroft', 'issue', file === '-' ? '-' : quoted(basename(file))]
  if (draft) words.push('--draft')
  if (paper) words.push('--paper', paper)
  if (since) words.push('--since', quoted(basename(since)))
  if (htmlOnly) words.push('--html-only')
  return words.join(' ')
}

/** A name as a shell takes it for one word. */
const quoted = (name: string): string => (/^[\w.,+@%=:-]+$/.test(name) ? name : `'${name.replaceAll("'", "'\\''")}'`)
