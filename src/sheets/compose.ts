import type { Element, Root } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { TexTrouble } from '../typesetting/author-formula.ts'
import type { Medium } from '../typesetting/medium.ts'
import { raw } from '../typesetting/raw-node.ts'
import { settingOf } from '../typesetting/setting.ts'
import { setSmallFigures } from '../typesetting/whole-page-figures.ts'
import type { Assets } from './assets.ts'
import { type AuthorSheets, authorSheets } from './author-sheets.ts'
import { basisSheet } from './basis-sheet.ts'
import { checkerMarks } from './checker-marks.ts'
import { checkingSheet } from './checking-sheet.ts'
import { checksSheet } from './checks-sheet.ts'
import { contentsSheet } from './contents-sheet.ts'
import { coverSheet } from './cover-sheet.ts'
import { drawingSheet } from './drawing-sheet.ts'
import { furniture } from './furniture.ts'
import { checksBySection } from './gather-checks.ts'
import { emptyLateSheets, lateSheets, lateTexts } from './late-sheets.ts'
import { messagesSheet } from './messages-sheet.ts'
import type { EarlyModel, LateModel, PackageModel, PencilCount } from './package-model.ts'
import type { Placed } from './place-workings.ts'
import { rangesSheet } from './ranges-sheet.ts'
import { recordSheet } from './record-sheet.ts'
import { referencesSheet } from './references-sheet.ts'
import { sinceSheet, sinceStyle } from './since-sheet.ts'

/** The two texts of a package: one for the screen, one to be printed. */
export interface Composed {
  readonly screen: string
  readonly print: string
  /** Formulas of the author's that could not be set. */
  readonly faults: readonly TexTrouble[]
}

/** Composes the package, once for each medium, from one model. Each text holds everything it needs. */
export function compose(model: PackageModel, assets: Assets): Composed {
  return { ...composeScreen(model, assets), print: printText(model, assets, sheets(model, model, 'print').parts) }
}

/**
 * Composes the text to be printed before the page is proved: on its cover stands the count that the proof comes to where every line
 * closes. It may be issued only where the proof then gives that count. Its late sheets are empty, for `composeLate` to be put in their places.
 */
export function composeEarly(model: EarlyModel, assets: Assets): string {
  const expected = { ...model, proof: countExpected(model) }
  return printText(expected, assets, sheets(expected, 'empty', 'print').parts)
}

/** The late sheets of a text to be printed, by id. */
export function composeLate(model: EarlyModel, late: LateModel): ReadonlyMap<string, string> {
  return lateTexts(lateSheets(model.workings, late, sheetsText(model, 'print').setting))
}

/** What the pencil proof comes to where every line closes. */
export const countExpected = (model: EarlyModel): PencilCount => sheetsText(model, 'print').text.expected

function printText(model: EarlyModel, assets: Assets, parts: readonly Element[]): string {
  const look = [assets.fonts, assets.sheet, assets.print, assets.paper, furniture(model), ...sinceStyle(model.since)]
  return document(model, parts, look)
}

/** Composes the package for the screen alone. */
export function composeScreen(model: PackageModel, assets: Assets): Omit<Composed, 'print'> {
  const screen = sheets(model, model, 'screen')
  const look = [assets.fonts, assets.sheet, assets.print, furniture(model), assets.screen, ...sinceStyle(model.since)]
  return { screen: document(model, screen.parts, look), faults: screen.text.faults }
}

function sheetsText({ workings, notebook, checking, body }: EarlyModel, medium: Medium) {
  const checked = checkerMarks(checking)
  const setting = settingOf(workings, { medium, checked })
  return { checked, setting, text: authorSheets(body, { workings, notices: notebook.notices }, setting) }
}

function sheets(
  model: EarlyModel,
  late: LateModel | 'empty',
  medium: Medium,
): { parts: Element[]; text: AuthorSheets } {
  const { workings } = model
  const { checked, setting, text } = sheetsText(model, medium)
  const sections = checksBySection(text.headings)
  const { register, passport } =
    late === 'empty' ? emptyLateSheets(workings, setting) : lateSheets(workings, late, setting)
  const front = [
    basisSheet(workings),
    ...sinceSheet(model.since),
    register,
    ...rangesSheet(model.ranges),
    checksSheet(sections, setting),
    ...checkingSheet(model.checking, checked),
  ]
  const messages = messagesSheet(model, text.faults)
  const back = [
    ...drawingSheet(workings, setting),
    referencesSheet(workings, text.sections),
    recordSheet(model, medium),
    passport,
  ]
  const order = [...(model.draft ? messages : []), ...front, ...(model.draft ? [] : messages)]
  const contents = contentsSheet([...order.map(headed), ...text.headings, ...back.map(headed)])
  const body = h('section.part.text', { id: 'text' }, [raw(text.html)])
  return { parts: [coverSheet(model, sections, setting), contents, ...order, body, ...back], text }
}

/** The contents entry of a part: its own heading. */
function headed(part: Element): Placed {
  const heading = part.children[0]
  const title =
    heading?.type === 'element'
      ? heading.children.map(child => (child.type === 'text' ? child.value : '')).join('')
      : ''
  return { id: String(part.properties.id), level: 2, title }
}

function document(model: EarlyModel, parts: readonly Element[], styles: readonly string[]): string {
  const { title } = model.notebook
  const mark = model.draft ? [h('div.draft-mark', { ariaHidden: 'true' }, 'DRAFT')] : []
  const name = [title.number, title.title].filter(Boolean).join(' ')
  const head = h('head', [
    h('meta', { charSet: 'utf-8' }),
    h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    h('title', name),
    ...styles.map(css => h('style', css)),
  ])
  const body = h('body', { className: ['undercroft', model.draft ? 'draft' : 'issued'] }, [
    ...mark,
    h('main', [...parts]),
  ])
  const page = h('html', { lang: title.language || 'en' }, [head, setSmallFigures(body)])
  const tree: Root = { type: 'root', children: [{ type: 'doctype' }, page] }
  return toHtml(tree, { allowDangerousHtml: true })
}
