import type { Element, ElementContent, Nodes, Root } from 'hast'
import { h } from 'hastscript'
import type { BlockWorking, Workings } from '../evaluation/workings.ts'
import type { Notice } from '../notebook/types.ts'
import { answerHtml } from '../typesetting/answer-html.ts'
import { authorFormula, type TexTrouble } from '../typesetting/author-formula.ts'
import { caution } from '../typesetting/marks.ts'
import type { Setting } from '../typesetting/setting.ts'
import { titleOfWork, workingHtml } from '../typesetting/working-html.ts'
import { toText } from './plain-text.ts'

/** A heading of the author's text or of a calculation, in order. */
export interface Placed {
  readonly id: string
  readonly level: number
  readonly title: string
  readonly number?: string
  /** The block it heads. */
  readonly block?: BlockWorking
}

/** What is known of the author's text as far as it has been placed. */
export interface PlacedText {
  readonly headings: readonly Placed[]
  /** The author's section that each mention stands in, by the mention's anchor. */
  readonly sections: ReadonlyMap<string, string>
  /** Formulas of the author's that could not be set, as TeX with the complaint. */
  readonly faults: readonly TexTrouble[]
}

/** What stands in the place of the placeholders. */
export interface Notes {
  readonly workings: Workings
  readonly notices: readonly Notice[]
}

interface Walk extends Notes {
  readonly setting: Setting
  /** Added to the author's heading levels, so that the highest is level 2. */
  readonly shift: number
  readonly headings: Placed[]
  readonly sections: Map<string, string>
  readonly faults: TexTrouble[]
  level: number
}

/** Places the text part by part, in its order. */
export interface Placing {
  readonly part: (part: Root) => Root
  readonly placed: PlacedText
}

/**
 * Begins to fill every placeholder of the author's text: `data-undercroft-block` by the block's working, `-mention` by its answer,
 * `-notice` by a boxed caution or hold; `code.language-math` by the formula set. Headings get anchors and fit under the package's.
 */
export function placingOf(root: Root, notes: Notes, setting: Setting): Placing {
  const walk: Walk = {
    ...notes,
    setting,
    shift: 2 - highestLevel(root),
    headings: [],
    sections: new Map(),
    faults: [],
    level: 1,
  }
  return {
    part: ({ children }) => ({
      type: 'root',
      children: children.flatMap(child => place(child, walk)) as Root['children'],
    }),
    placed: walk,
  }
}

/** The highest level of heading in the author's text, as a number from 1. */
export const highestLevel = (root: Root): number => Math.min(...headingLevels(root), 6)

function headingLevels(node: Nodes): number[] {
  const own = node.type === 'element' ? levelOf(node) : undefined
  const below = 'children' in node ? node.children.flatMap(headingLevels) : []
  return own === undefined ? below : [own, ...below]
}

/** The level of a heading; nothing for any other element. */
export function levelOf(element: Element): number | undefined {
  return /^h[1-6]$/.test(element.tagName) ? Number(element.tagName.slice(1)) : undefined
}

function place(node: Nodes, walk: Walk): Nodes[] {
  if (node.type !== 'element') return [node]
  const block = indexOf(node, 'dataUndercroftBlock')
  if (block !== undefined) return placeBlock(block, walk)
  const mention = indexOf(node, 'dataUndercroftMention')
  if (mention !== undefined) return [placeMention(mention, walk)]
  const tex = mathOf(node)
  if (tex !== undefined) return [authorFormula(tex, { ...walk, display: isDisplay(node) })]
  if (levelOf(node) !== undefined) return [placeHeading(node, walk)]
  const notice = indexOf(node, 'dataUndercroftNotice')
  const inner = { ...node, children: node.children.flatMap(child => place(child, walk)) as ElementContent[] }
  return [notice === undefined ? inner : noticeHtml(inner, notice, walk.notices[notice])]
}

function placeMention(mention: number, walk: Walk): Element {
  const id = `m-${mention + 1}`
  const section = walk.headings.findLast(heading => !heading.block)
  if (section) walk.sections.set(id, section.title)
  return answerHtml(walk.workings.answers[mention], walk.setting, id)
}

function indexOf(element: Element, property: string): number | undefined {
  const value = element.properties[property]
  return value === undefined || value === null ? undefined : Number(value)
}

function placeBlock(index: number, walk: Walk): Nodes[] {
  const block = walk.workings.blocks.find(each => each.index === index)
  if (!block) return [h('p.incomplete', 'A block stood here that could not be read; see the list of messages.')]
  const level = Math.min(6, Math.max(2, walk.level + 1))
  if (block.kind !== 'assume') {
    const title = block.kind === 'calc' ? block.title : titleOfWork(block)
    walk.headings.push({ id: block.id, level, title, number: block.number, block })
  }
  return [workingHtml(block, level, walk.setting)]
}

function placeHeading(node: Element, walk: Walk): Element {
  const wanted = (levelOf(node) ?? 2) + walk.shift
  walk.level = Math.min(wanted, walk.level + 1, 6)
  const id = `text-${walk.headings.length + 1}`
  const children = node.children.flatMap(child => place(child, walk)) as ElementContent[]
  walk.headings.push({ id, level: walk.level, title: toText(node) })
  return { ...node, tagName: `h${walk.level}`, properties: { ...node.properties, id }, children }
}

/** TeX between dollar signs arrives as code with a class; a display one inside a `pre`. */
function mathOf(node: Element): string | undefined {
  const inner = node.tagName === 'pre' && node.children.length === 1 ? node.children[0] : node
  if (inner?.type !== 'element' || inner.tagName !== 'code') return undefined
  return classes(inner).includes('language-math') ? toText(inner) : undefined
}

function isDisplay(node: Element): boolean {
  const inner = node.tagName === 'pre' ? node.children[0] : node
  return inner?.type === 'element' && classes(inner).includes('math-display')
}

function classes(element: Element): readonly (string | number)[] {
  return Array.isArray(element.properties.className) ? element.properties.className : []
}

function noticeHtml(element: Element, index: number, notice: Notice | undefined): Element {
  const kind = notice?.kind ?? 'caution'
  const title = h('p.notice-title', [caution(), kind === 'hold' ? 'Hold' : 'Caution'])
  return h('div', { id: noticeId(index), className: ['notice', kind] }, [title, ...element.children])
}

/** Anchor of a boxed caution or hold, by its index in the notebook. */
export const noticeId = (index: number): string => `notice-${index + 1}`
