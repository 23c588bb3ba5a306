import type { Nodes, Root, RootContent } from 'hast'
import type { Workings } from '../evaluation/workings.ts'
import { highestLevel, levelOf } from './place-workings.ts'

/** Lines of working in a part, second methods not counted, some eighty sheets at most: the browser takes longer over a sheet the more of them it prints together. */
const LINES = 1300

/** Cuts the author's text before chapters into parts, as even in lines of working as its chapters allow; none where the author wrote nothing. */
export function textParts(body: Root, workings: Workings): Root[] {
  if (!body.children.some(({ type }) => type === 'element')) return []
  const chapters = chaptersOf(body).map(children => ({ children, lines: linesIn(children, workings) }))
  const all = chapters.reduce((sum, { lines }) => sum + lines, 0)
  const count = Math.max(1, Math.ceil(all / LINES))
  const parts: RootContent[][] = []
  let before = 0
  for (const { children, lines } of chapters) {
    const last = parts.at(-1)
    // A chapter goes into the part that its middle falls into; a part has lines.
    const goesOn = before === 0 || parts.length === count || before + lines / 2 < (parts.length / count) * all
    if (last && goesOn) last.push(...children)
    else parts.push([...children])
    before += lines
  }
  return parts.map(children => ({ type: 'root', children }))
}

function chaptersOf(body: Root): RootContent[][] {
  const highest = highestLevel(body)
  const chapters: RootContent[][] = []
  for (const child of body.children) {
    const last = chapters.at(-1)
    const begins = child.type === 'element' && levelOf(child) === highest
    if (last && !begins) last.push(child)
    else chapters.push([child])
  }
  return chapters
}

function linesIn(nodes: readonly Nodes[], workings: Workings): number {
  return nodes.reduce((sum, node) => {
    const index = node.type === 'element' ? node.properties.dataUndercroftBlock : undefined
    const block = index === undefined ? undefined : workings.blocks.find(each => each.index === Number(index))
    return (
      sum +
      (block ? ('lines' in block ? block.lines.length : 0) : 'children' in node ? linesIn(node.children, workings) : 0)
    )
  }, 0)
}
