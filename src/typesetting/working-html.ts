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
import { secondHtml } from './second-html.ts'
import { type Setting, settingIn } from './setting.ts'
import type { Sheet } from './sketch-frame.ts'
import { sketchSvg } from './sketch-svg.ts'

/** The widest a sketch beside a Given table, and one above it, may be: points. */
const beside = { width: 212, height: 185 }
const above = { width: 400, height: 110 }
/** The sketch is about as high as the table beside it: a row in points, and rows that any sketch has room for. */
const rowHeight = 15
const leastRows = 8
/** A sketch lower than this share of the table leaves a hole beside it. */
const leastShare = 0.6
/** A Given table so short leaves the sketch standing out below it. */
const shortGiven = 3

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
    ...start(block, setting),
    ...(block.lines.length > 0 ? [h('div.ledger', linesHtml(block.lines, block.name, setting))] : []),
    ...secondHtml(block, setting),
    ...limitsHtml(block.limits, setting),
    ...cautionsHtml(block, setting),
  ])
}

function workHtml(block: WorkWorking, level: number, setting: Setting): Element {
  return h('section.calc.work', { id: block.id }, [
    heading({ block, title: titleOfWork(block), aside: 'own working' }, level),
    ...incomplete(block),
    ...block.tables.map(table => pointsTable(table, setting)),
    h('div.ledger', linesHtml(block.lines, block.name, setting)),
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

/** Given, with the sketch beside it or, where the two are of very different height, above; lists of several rows below. */
function start(block: CalcWorking, setting: Setting): Element[] {
  const { alone, lists } = partLists(block.given)
  const given = givenTable(alone, block.name, setting)
  const below = lists.map(list => givenList(list, block.name, setting))
  if (!block.sketch) return [h('div.start', [...given, ...below])]
  const figure = (sheet: Sheet): Element =>
    h('figure', block.sketch ? [sketchSvg(block.sketch, `sketch-${block.name}`, sheet), scaleNote(block)] : [])
  const highest = Math.min(beside.height, rowHeight * Math.max(alone.length, leastRows))
  const next = figure({ ...beside, height: highest })
  const fits = alone.length >= shortGiven && heightOf(next) > alone.length * rowHeight * leastShare
  return fits
    ? [h('div.start.split', [h('div', given), next]), ...below]
    : [h('div.start', [figure(above), ...given, ...below])]
}

/** Height of a sketch in points, as drawn. */
function heightOf({ children: [sketch] }: Element): number {
  return sketch?.type === 'element' ? Number.parseFloat(String(sketch.properties.height)) : 0
}

function scaleNote(block: CalcWorking): ElementContent {
  return h('figcaption', block.sketch?.toScale ? 'To scale' : 'Chart; axes scaled apart')
}
