import type { Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { colonLine } from './colon-line.ts'
import { type Lines, lineBounds, lineIndex, placeOf } from './lines.ts'
import type { Stretch } from './mention-parts.ts'
import { nodeSpan } from './node-span.ts'
import { isNoticeName } from './our-directives.ts'
import { error, type Reading } from './reading.ts'

/**
 * Reports boxes that are not closed, `:::` lines that close nothing, and lines that are nearly the head of a box. A `:::`
 * that closes somebody else's box, or one reported here, is no stray.
 */
export function checkColons(tree: Root, reading: Reading): void {
  const { lines } = reading
  let open = 0
  visit(tree, (node, _, parent) => {
    if (node.type === 'containerDirective' && isNoticeName(node.name)) {
      const span = nodeSpan(node, lines)
      if (isClosed(span, lines)) return
      const inBox = parent?.type === 'containerDirective'
      reportUnclosed(span, { inBox, reading })
      open += 1
    } else if (node.type === 'paragraph') {
      for (const line of linesWithin(nodeSpan(node, lines), lines)) open = checkLine(line, { open, reading })
    }
  })
}

/** Checks one line of a paragraph, and returns how many boxes that are not ours are open after it. */
function checkLine(stretch: Stretch, { open, reading }: { open: number; reading: Reading }): number {
  const { lines } = reading
  const found = colonLine(lines.text.slice(stretch.start, stretch.end))
  if (found === undefined) return open
  const place = placeOf(lines, stretch.start + found.from, stretch.end)
  if (found.kind === 'bare') {
    if (open > 0) return open - 1
    error(reading, 'container-stray', { place, says: 'This line closes nothing', help: strayHelp })
    return 0
  }
  if (found.meant !== undefined)
    error(reading, 'notice-form', { place, says: found.says, help: `Write \`:::${found.meant}\` alone on its line` })
  return open + 1
}

const strayHelp = 'Leave it out, or give an outer box more colons than the inner one: `::::caution`'

function linesWithin({ start, end }: Stretch, lines: Lines): readonly Stretch[] {
  const found: Stretch[] = []
  for (let index = lineIndex(lines, start); index <= lineIndex(lines, Math.max(start, end - 1)); index += 1) {
    found.push(lineBounds(lines, index))
  }
  return found
}

function isClosed(span: Stretch, lines: Lines): boolean {
  const own = linesWithin(span, lines)
  const last = own.length > 1 ? own.at(-1) : undefined
  const opening = /^:+/.exec(lines.text.slice(span.start, span.end))?.[0] ?? ''
  const closing = last && /^[ \t>]*(:{3,})[ \t]*$/.exec(lines.text.slice(last.start, last.end))?.[1]
  return closing?.startsWith(opening) ?? false
}

function reportUnclosed(span: Stretch, { inBox, reading }: { inBox: boolean; reading: Reading }): void {
  const head = linesWithin(span, reading.lines)[0]
  const place = placeOf(reading.lines, span.start, head?.end)
  const opening = /^:+/.exec(reading.lines.text.slice(span.start, span.end))?.[0] ?? ':::'
  const says = inBox ? 'The box round this one ends before it does' : 'The box is opened here and never closed'
  const help = inBox
    ? 'Give the outer box more colons than the inner one: `::::caution`'
    : `Close it with a line \`${opening}\``
  error(reading, 'fence-unclosed', { place, says, help })
}
