import type { Element, Root } from 'hast'
import { h } from 'hastscript'
import { describe, expect, it } from 'vitest'
import type { Workings } from '../../src/evaluation/workings.ts'
import { textParts } from '../../src/sheets/text-parts.ts'

/** A chapter of a text whose highest heading is of level 1, with a block of so many lines under a heading of its own. */
function chapter(title: string, index: number): Element[] {
  return [h('h1', title), h('p', 'Words'), h('h2', 'Under it'), h('div', [h('div', { dataUndercroftBlock: index })])]
}

/** The chapters of each part of a text with so many lines in each chapter. */
function partsOf(lines: readonly number[]): string[][] {
  const body: Root = {
    type: 'root',
    children: [h('p', 'Before'), ...lines.flatMap((_, index) => chapter(`C${index}`, index))],
  }
  const blocks = lines.map((count, index) => ({ kind: 'work', index, lines: new Array(count).fill({}) }))
  const parts = textParts(body, { blocks } as unknown as Workings)
  expect(parts.flatMap(({ children }) => children)).toEqual(body.children)
  return parts.map(({ children }) =>
    children.flatMap(child => (child.type === 'element' && child.tagName === 'h1' ? [textIn(child)] : [])),
  )
}

const textIn = ({ children: [child] }: Element): string => (child?.type === 'text' ? child.value : '')

describe('text-parts', () => {
  it('a text of up to 1300 lines is one part, a longer one two, each from the head of a chapter', () => {
    expect(partsOf([600, 700])).toEqual([['C0', 'C1']])
    expect(partsOf([600, 701])).toEqual([['C0'], ['C1']])
    expect(partsOf([10, 900, 400, 200, 400])).toEqual([
      ['C0', 'C1'],
      ['C2', 'C3', 'C4'],
    ])
    expect(partsOf([900, 900, 900])).toEqual([['C0'], ['C1'], ['C2']])
  })
  it('a chapter is never cut, however long, and what comes last without lines begins no part', () => {
    expect(partsOf([3000])).toEqual([['C0']])
    expect(partsOf([1000, 1000, 0, 0])).toEqual([['C0'], ['C1', 'C2', 'C3']])
  })
  it('a text without headings or without blocks is one part, an empty one none', () => {
    const none = { blocks: [] } as unknown as Workings
    expect(textParts({ type: 'root', children: [h('p', 'Words')] }, none)).toHaveLength(1)
    expect(textParts({ type: 'root', children: [] }, none)).toEqual([])
    expect(textParts({ type: 'root', children: [{ type: 'text', value: '\n' }] }, none)).toEqual([])
  })
})
