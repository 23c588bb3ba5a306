import { slips } from '../diagnostic/slips.ts'
import { type NoticeName, noticeNames } from './our-directives.ts'

/** A line that colons open or close, which Markdown has read as text. `from` is where its colons begin. */
export type ColonLine =
  | { readonly kind: 'bare'; readonly from: number }
  /** `meant` where it is nearly the head of a box of ours. */
  | { readonly kind: 'head'; readonly from: number; readonly meant?: NoticeName; readonly says: string }

const mostSlips = { caution: 2, hold: 1 } as const

/** Returns what a line of text that begins with colons is, or nothing. */
export function colonLine(line: string): ColonLine | undefined {
  const parts = /^([ \t>]*)(:{2,})([ \t]*)([A-Za-z][\w-]*)?(.*)$/.exec(line)
  if (parts === null) return undefined
  const [, before = '', colons = '', gap = '', word = '', after = ''] = parts
  const from = before.length
  if (word === '') return colons.length >= 3 && after.trim() === '' ? { kind: 'bare', from } : undefined
  const meant = noticeNames.find(name => slips(word.toLowerCase(), name) <= mostSlips[name])
  if (colons.length === 2 && (meant !== word || after.trim() !== '')) return undefined
  const says =
    meant === word && after.trim() !== '' ? saysText(after, word) : saysHead(line.trim(), { colons, gap, word })
  return meant === undefined ? { kind: 'head', from, says } : { kind: 'head', from, meant, says }
}

const saysText = (after: string, word: string): string =>
  /^[[{]/.test(after)
    ? `What follows \`${word}\` cannot be read, so the box is not one`
    : `The text of a box goes on the line after \`:::${word}\``

function saysHead(line: string, { colons, gap, word }: { colons: string; gap: string; word: string }): string {
  const shown = line.length > 40 ? `${line.slice(0, 40)}…` : line
  if (colons.length === 2) return `\`${shown}\` has two colons; a box has three`
  if (gap !== '') return `\`${shown}\` has a blank before \`${word}\`, so the box is not one`
  return `\`${shown}\` is not a box`
}
