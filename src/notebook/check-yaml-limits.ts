import type { InnerText } from './inner-text.ts'
import { innerPlace } from './inner-text.ts'
import { limits } from './limits.ts'
import { error, type Reading } from './reading.ts'

/** Reports a block that is too long or nests too deeply to be read as YAML, and returns whether it may be. */
export function checkYamlLimits(inner: InnerText, reading: Reading): boolean {
  if (inner.text.length > limits.blockSize) {
    const says = `The block has ${inner.text.length} characters; the limit is ${limits.blockSize}`
    error(reading, 'file-too-large', { place: innerPlace(inner, 0), says, help: 'Split it into several blocks' })
    return false
  }
  const deep = tooDeep(inner.text)
  if (deep === undefined) return true
  const says = `Lists and maps nest more than ${limits.blockNesting} deep here, which is the limit`
  error(reading, 'file-too-large', { place: innerPlace(inner, deep, deep + 1), says })
  return false
}

/** The offset at which brackets, compact `- - -` or indents first nest too deeply, counted without regard to quotes. */
function tooDeep(text: string): number | undefined {
  let brackets = 0
  let indents: number[] = []
  let start = 0
  for (const line of text.split('\n')) {
    const lead = /^[ \t]*(?:[-?:][ \t]+)*/.exec(line)?.[0] ?? ''
    const marks = [...lead.matchAll(/[-?:]/g)].map(({ index }) => index)
    const columns = [...marks, lead.length]
    if (lead.length < line.trimEnd().length) {
      indents = [...indents.filter(indent => indent < (columns[0] ?? 0)), ...columns]
    }
    if (indents.length > limits.blockNesting) return start + lead.length
    for (const { 0: bracket, index } of line.matchAll(/[[\]{}]/g)) {
      brackets = Math.max(0, brackets + ('[{'.includes(bracket) ? 1 : -1))
      if (brackets > limits.blockNesting) return start + index
    }
    start += line.length + 1
  }
  return undefined
}
