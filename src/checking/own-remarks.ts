import { type Document, isNode, type Node, visit } from 'yaml'

const lines = (text: string | null | undefined): string[] =>
  (text ?? '')
    .split('\n')
    .map(line => line.trim())
    .filter(line => line !== '')

const own = (node: Node): string[] => [...lines(node.commentBefore), ...lines(node.comment)]

/** Every remark behind `#` at or inside a node, in order. */
export function remarksIn(node: unknown): readonly string[] {
  if (!isNode(node)) return []
  const found: string[] = []
  visit(node, { Node: (_key, each) => void found.push(...own(each as Node)) })
  return found
}

/** Those before the node itself. */
export const remarksBefore = (node: unknown): readonly string[] => (isNode(node) ? lines(node.commentBefore) : [])

/** Those behind it. */
export const remarksBehind = (node: unknown): readonly string[] => (isNode(node) ? lines(node.comment) : [])

/** Those before and behind everything in the file. */
export const remarksAround = ({ commentBefore, comment }: Document): readonly string[] => [
  ...lines(commentBefore),
  ...lines(comment),
]

/** Remarks as YAML keeps them; nothing where there are none. */
export const asYaml = (remarks: readonly string[] | undefined): string | undefined =>
  remarks && remarks.length > 0 ? remarks.map(line => ` ${line}`).join('\n') : undefined

/** The two lines that the program itself writes at the head of a record. */
export const headLines = (notebook: string): readonly string[] => [
  `Checking record of ${notebook}, kept by \`undercroft tick\`.`,
  'A tick stands while words, formula, source, inputs and result of its step are printed as they were.',
]

/** Whether a remark is one of them, of this notebook or of one that had another name. */
export const isHeadLine = (line: string): boolean =>
  line === headLines('')[1] || /^Checking record of .*, kept by `undercroft tick`\.$/.test(line)
