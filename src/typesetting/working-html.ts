import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { BlockWorking, CalcWorking, WorkWorking } from '../evaluation/workings.ts'
import { assumptionTable } from './assumption-table.ts'
import { givenList, partLists } from './given-list.ts'
import { givenTable } from './given-table.ts'
import { cautionsHtml, limitsHtml } from './limits-html.ts'
import { linesHtml } from './line-html.ts'
import { pointsTable } from './points-table.ts'
import { prose } from './prose.ts'
import { withSeams } from './seams.ts'
import { secondHtml } from './second-html.ts'
import { type Setting, settingIn } from './setting.ts'
import type { Sheet } from './sketch-frame.ts'
import { sketchSvg } from './sketch-svg.ts'

/** The most room a sketch has in the first of the two columns that a calculation begins with, in points. */
const room = { width: 244, height: 140 }
/** The sketch is about as high as the table beside it: a row in points, and rows that any sketch has room for. */
const rowHeight = 13
const leastRows = 9

/** A block of the notebook as it is printed. `level` is that of its heading, 2 to 6. */
export function workingHtml(block: BlockWorking, level: number, setting: Setting): Element {
  switch (block.kind) {
    case 'assume':
      return assumptionTable(block, setting)
    case 'calc':
      return calcHtml(block, level, setting)
    case 'work':
      return workHtml(block, level, setting)
  }
}

function calcHtml(block: CalcWorking, level: number, outer: Setting): Element {
  const setting = settingIn(outer, block)
  const method = [`${block.module} ${block.version}`, ...(block.code ? [block.code] : [])].join(' · ')
  return h('section.calc', { id: block.id }, [
    heading({ block, title: block.title, aside: method }, level),
    h('p.purpose', prose(block.asks, setting)),
    ...incomplete(block),
    h('div.calc-body', [
      ...start(block, setting),
      ...(block.lines.length > 0 ? [h('div.ledger', linesHtml(block.lines, block.name, setting))] : []),
      ...secondHtml(block, setting),
      ...limitsHtml(block.limits, setting),
      ...cautionsHtml(block, setting),
    ]),
  ])
}

function workHtml(block: WorkWorking, level: number, setting: Setting): Element {
  return h('section.calc.work', { id: block.id }, [
    heading({ block, title: titleOfWork(block), aside: 'own working' }, level),
    ...incomplete(block),
    ...block.tables.map(table => pointsTable(table, block.name, setting)),
    h('div.calc-body', [h('div.ledger', linesHtml(block.lines, block.name, setting))]),
  ])
}

/** The title of the author's own working: its name in words. */
export function titleOfWork({ name }: WorkWorking): string {
  const words = name.replaceAll('_', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}

function heading(of: { block: BlockWorking; title: string; aside: string }, level: number): Element {
  return h('div.calc-head', [
    h(`h${Math.min(6, Math.max(2, level))}`, [h('span.no', of.block.number), ' ', of.title]),
    h('p.which', [h('b', of.block.name), ' · ', of.aside]),
  ])
}

function incomplete(block: BlockWorking): Element[] {
  if (block.complete) return []
  return [
    h('p.incomplete', 'Not complete: an error in the notebook stopped it. What could not be evaluated is absent.'),
  ]
}

/** Sketch and Given run through two columns, filled alike; lists of several rows stand below them. */
function start(block: CalcWorking, setting: Setting): Element[] {
  const { alone, lists } = partLists(block.given)
  const given = givenTable(alone, block.name, setting)
  const below = lists.map(list => givenList(list, block.name, setting))
  const height = Math.min(room.height, rowHeight * Math.max(alone.length, leastRows))
  return [h('div.start', [...figure(block, { ...room, height }), ...given]), ...withSeams(below)]
}

function figure(block: CalcWorking, sheet: Sheet): Element[] {
  if (!block.sketch) return []
  return [h('figure', [sketchSvg(block.sketch, `sketch-${block.name}`, sheet), scaleNote(block)])]
}

function scaleNote({ sketch }: CalcWorking): ElementContent {
  if (sketch?.toScale) return h('figcaption', 'To scale')
  return h('figcaption', sketch?.scheme ? 'Scheme, not to scale' : 'Chart; axes scaled apart')
}
