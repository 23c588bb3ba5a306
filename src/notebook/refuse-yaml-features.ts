import { isAlias, type Node } from 'yaml'
import { type InnerText, innerPlace } from './inner-text.ts'
import { error, type Reading } from './reading.ts'

const leaveOut = 'Leave it out, or put the value in single quotes'

/** Reports an alias, an anchor or a tag, and returns whether the node is or carries one. */
export function refuseYamlFeatures(node: Node, inner: InnerText, reading: Reading): boolean {
  const start = node.range?.[0] ?? 0
  const refuse = (mark: string, from: number, says: string): true => {
    error(reading, 'yaml-feature', { place: innerPlace(inner, from, from + mark.length), says, help: leaveOut })
    return true
  }
  if (isAlias(node)) {
    return refuse(`*${node.source}`, start, `\`*${node.source}\` is an alias, which notebooks do not use`)
  }
  if (node.anchor !== undefined) {
    const mark = `&${node.anchor}`
    return refuse(mark, inner.text.lastIndexOf(mark, start), `\`${mark}\` is an anchor, which notebooks do not use`)
  }
  if (node.tag === undefined) return false
  const from = inner.text.lastIndexOf('!', start)
  const mark = /^!\S*/.exec(inner.text.slice(inner.text[from - 1] === '!' ? from - 1 : from))?.[0] ?? '!'
  return refuse(
    mark,
    inner.text[from - 1] === '!' ? from - 1 : from,
    `\`${mark}\` is a tag, which notebooks do not use`,
  )
}
