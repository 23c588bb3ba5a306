import type { Document } from 'yaml'
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
    const [from, to] = first.pos
    const rest = inner.text.slice(from).split(/\r?\n/, 1)[0] ?? ''
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
