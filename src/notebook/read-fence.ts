import type { Code } from 'mdast'
import { type InnerText, innerText } from './inner-text.ts'
import { type Lines, lineBounds, lineEnding, lineIndex, writtenAt } from './lines.ts'
import { nodeSpan } from './node-span.ts'
import type { Written } from './types.ts'

/** A fenced code block of the author's, taken apart. */
export interface Fence {
  /** The words after the opening fence, each with its place. */
  readonly words: readonly Written[]
  readonly inner: InnerText
  readonly closed: boolean
  /** The opening fence with its words. */
  readonly head: Written
  /** Offset behind the whole of it. */
  readonly end: number
  /** The whole of it as typed, without what quotes and lists put before its lines. */
  readonly asTyped: string
}

/** Returns a fence taken apart, or nothing where the code is an indented one. */
export function readFence(node: Code, lines: Lines): Fence | undefined {
  const { start, end } = nodeSpan(node, lines)
  const first = lineIndex(lines, start)
  const last = lineIndex(lines, Math.max(start, end - 1))
  const head = writtenAt(lines, start, lineBounds(lines, first).end)
  const fence = /^(?:`{3,}|~{3,})/.exec(head.text)?.[0]
  if (fence === undefined) return undefined
  const closing = closingFence(lines, last).trimEnd()
  const closed = last > first && closing.startsWith(fence) && last - first > valueLines(node)
  const below = node.value === '' ? '' : node.value + lineEnding(lines, first + valueLines(node))
  const asTyped = head.text + lineEnding(lines, first) + below + (closed ? closing : fence)
  return {
    words: wordsOf(head, fence.length, lines),
    inner: innerText(lines, node.value, first + 1),
    closed,
    head,
    end,
    asTyped,
  }
}

const valueLines = ({ value }: Code): number => (value === '' ? 0 : value.split(/\r\n|\r|\n/).length)

function closingFence(lines: Lines, index: number): string {
  const { start, end } = lineBounds(lines, index)
  return /(?:`{3,}|~{3,})[ \t]*$/.exec(lines.text.slice(start, end))?.[0] ?? ''
}

function wordsOf({ text, place }: Written, from: number, lines: Lines): readonly Written[] {
  return [...text.slice(from).matchAll(/\S+/g)].map(word => {
    const offset = place.offset + from + word.index
    return writtenAt(lines, offset, offset + word[0].length)
  })
}
