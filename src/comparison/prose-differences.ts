import type { Notebook } from '../notebook/types.ts'
import type { Edit } from './edit.ts'

/** Cautions and holds that came or went. They are the author's words, but a reviewer acts on them. */
export function noticeEdits(old: Notebook, now: Notebook): Edit[] {
  const said = (notebook: Notebook) => notebook.notices.map(({ kind, text }) => `${kind}: ${oneLine(text)}`)
  const [gone, come] = [without(said(old), said(now)), without(said(now), said(old))]
  const edit = (text: string, action: 'added' | 'removed', notebook: Notebook): Edit => {
    const notice = notebook.notices.find(each => `${each.kind}: ${oneLine(each.text)}` === text)
    const words = oneLine(notice?.text ?? '')
    return {
      change: {
        what: 'notice',
        action,
        key: notice?.kind ?? 'hold',
        ...(action === 'added' ? { now: words } : { old: words }),
        fields: [],
        bears: false,
        line: notice?.place.line ?? 1,
      },
      brings: [],
      uses: [],
      enters: [],
    }
  }
  return [...gone.map(text => edit(text, 'removed', old)), ...come.map(text => edit(text, 'added', now))]
}

/** Paragraphs, headings and lists of the author's text that stand in one of the notebooks only, however they are wrapped. */
export function paragraphDifferences(old: Notebook, now: Notebook): { added: number; removed: number } {
  const [a, b] = [paragraphs(old), paragraphs(now)]
  return { added: without(b, a).length, removed: without(a, b).length }
}

/** Blocks that say the same and are written with other comments, blanks or keys' order. Names are those of the new notebook. */
export function layoutDifferences(
  pairs: readonly { old: string; now: string }[],
  notebooks: { old: Notebook; now: Notebook },
): string[] {
  const [a, b] = [fences(notebooks.old), fences(notebooks.now)]
  return pairs.flatMap(({ old, now }) => (a.get(old) === b.get(now) ? [] : [now]))
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim()

function sliceOf(notebook: Notebook, node: Notebook['tree']['children'][number]): string {
  const { start, end } = node.position ?? {}
  return notebook.text.slice(start?.offset ?? 0, end?.offset ?? 0)
}

const paragraphs = (notebook: Notebook): string[] =>
  notebook.tree.children
    .filter(node => node.type !== 'yaml' && node.data?.undercroft === undefined)
    .map(node => oneLine(sliceOf(notebook, node)))

/** The text of each block without its first line, which has the name. */
function fences(notebook: Notebook): ReadonlyMap<string, string> {
  return new Map(
    notebook.tree.children.flatMap(node => {
      const mark = node.data?.undercroft
      const block = mark?.kind === 'block' ? notebook.blocks[mark.index] : undefined
      return block
        ? [
            [
              block.name.text,
              sliceOf(notebook, node)
                .replace(/^[^\n]*\n/, '')
                .trim(),
            ] as const,
          ]
        : []
    }),
  )
}

/** What one list has more than another, repeats counted. */
function without(list: readonly string[], other: readonly string[]): string[] {
  const left = [...other]
  return list.filter(each => {
    const at = left.indexOf(each)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}
