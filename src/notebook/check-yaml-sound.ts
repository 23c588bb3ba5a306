import type { Document, YAMLError } from 'yaml'
import { type InnerText, innerPlace } from './inner-text.ts'
import { error, type Reading } from './reading.ts'
import { yamlSentence } from './yaml-sentences.ts'

/**
 * Reports the first error of the YAML reader, or a line that divides documents, and returns whether there is none.
 * Only the first: what the reader says after it is often only its consequence.
 */
export function checkYamlSound(document: Document, inner: InnerText, reading: Reading): boolean {
  const first = document.errors.reduce<(typeof document.errors)[number] | undefined>(
    (least, next) => (least === undefined || next.pos[0] < least.pos[0] ? next : least),
    undefined,
  )
  if (first !== undefined) {
    const { from, to } = causeOf(first, inner.text)
    const rest = inner.text.slice(first.pos[0]).split(/\r?\n/, 1)[0] ?? ''
    const { rule, ...sentence } = yamlSentence(first, rest)
    error(reading, rule, { place: innerPlace(inner, from, to), ...sentence })
    return false
  }
  const { docStart = null, docEnd = false } = document.directives ?? {}
  const mark = docStart === true || docEnd ? /^(?:---|\.\.\.|%\S+)(?=\s|$)/m.exec(inner.text) : null
  if (mark === null) return true
  const place = innerPlace(inner, mark.index, mark.index + mark[0].length)
  const says = `\`${mark[0]}\` divides documents of YAML; a block is one and has no such line`
  error(reading, 'yaml-feature', { place, says, help: 'Leave the line out' })
  return false
}

/** What is opened and not closed is missed only further on; the author must look where it was opened. */
function causeOf({ code, message, pos }: YAMLError, text: string): { from: number; to: number } {
  const [from, to] = pos
  const quote = code === 'MISSING_CHAR' ? /^Missing closing (["'])quote/.exec(message)?.[1] : undefined
  const bracket = code === 'BAD_INDENT' ? /[\]}]$/.exec(message)?.[0] : undefined
  const opened =
    quote !== undefined
      ? text.lastIndexOf(quote, from - 1)
      : bracket !== undefined
        ? lastOpen(text.slice(0, from), { opening: bracket === ']' ? '[' : '{', closing: bracket })
        : -1
  return opened < 0 ? { from, to } : { from: opened, to: opened + 1 }
}

/** The offset of the last opening bracket that no closing one follows. */
function lastOpen(text: string, { opening, closing }: { opening: string; closing: string }): number {
  let closed = 0
  for (let at = text.length - 1; at >= 0; at -= 1) {
    if (text[at] === closing) closed += 1
    else if (text[at] === opening && closed === 0) return at
    else if (text[at] === opening) closed -= 1
  }
  return -1
}
