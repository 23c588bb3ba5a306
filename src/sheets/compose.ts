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
import { messagesSheet } from './messages-sheet.ts'
import type { EarlyModel, PackageModel, PencilCount } from './package-model.ts'
import { passportSheet } from './passport-sheet.ts'
import type { Placed } from './place-workings.ts'
import { rangesSheet } from './ranges-sheet.ts'
import { recordSheet } from './record-sheet.ts'
import { referencesSheet } from './references-sheet.ts'
import { registerSheet } from './register-sheet.ts'
import { sinceSheet, sinceStyle } from './since-sheet.ts'

/** The texts of a package: one for the screen, and one to be printed, in parts. */
export interface Composed {
  readonly screen: string
  readonly print: PrintParts
  /** Formulas of the author's that could not be set. */
  readonly faults: readonly TexTrouble[]
}

/** The parts of the text to be printed, each a document: what stands before the author's text, the text with its calculations in one or more, and what stands behind it. */
export type PrintParts = readonly string[]

/** Composes the package, once for each medium, from one model. Each text holds everything it needs. */
export function compose(model: PackageModel, assets: Assets): Composed {
  const { front, back } = composeAround(model, assets)
  const text = Array.from({ length: countTextParts(model) }, (_, place) => composeTextPart(model, place, assets))
  return { ...composeScreen(model, assets), print: [front, ...text, back] }
}

/** In how many parts the author's text is printed. */
export const countTextParts = (model: EarlyModel): number => sheetsText(model, 'print').text.count

/** Composes a part of the author's text with its calculations to be printed: all of it stands before the page is proved and its margins are found. */
export function composeTextPart(model: EarlyModel, place: number, assets: Assets): string {
  const html = sheetsText(model, 'print').text.part(place)
  return printed(model, [textSection(html, place)], assets)
}

/** Composes what stands before and behind the author's text, to be printed. */
export function composeAround(model: PackageModel, assets: Assets): { readonly front: string; readonly back: string } {
  const { front, back } = sheets(model, 'print')
  return { front: printed(model, front, assets), back: printed(model, back, assets) }
}

/** What the pencil proof comes to where every line closes. */
export const countExpected = (model: EarlyModel): PencilCount => sheetsText(model, 'print').text.whole().expected

function printed(model: EarlyModel, parts: readonly Element[], assets: Assets): string {
  const look = [assets.fonts, assets.sheet, assets.print, assets.paper, furniture(model), ...sinceStyle(model.since)]
  return document(model, parts, look)
}

/** Composes the package for the screen alone. */
export function composeScreen(model: PackageModel, assets: Assets): Omit<Composed, 'print'> {
  const { front, text, back } = sheets(model, 'screen')
  const look = [assets.fonts, assets.sheet, assets.print, furniture(model), assets.screen, ...sinceStyle(model.since)]
  return { screen: document(model, [...front, textSection(text.parts.join('')), ...back], look), faults: text.faults }
}

function sheetsText({ workings, notebook, checking, body }: EarlyModel, medium: Medium) {
  const checked = checkerMarks(checking)
  const setting = settingOf(workings, { medium, checked })
  return { checked, setting, text: authorSheets(body, { workings, notices: notebook.notices }, setting) }
}

function sheets(model: PackageModel, medium: Medium): { front: Element[]; text: AuthorSheets; back: Element[] } {
  const { workings } = model
  const { checked, setting, text: lazy } = sheetsText(model, medium)
  const text = lazy.whole()
  const sections = checksBySection(text.headings)
  const before = [
    basisSheet(workings),
    ...sinceSheet(model.since),
    registerSheet(workings, setting, model.margins),
    ...rangesSheet(model.ranges),
    checksSheet(sections, setting),
    ...checkingSheet(model.checking, checked),
  ]
  const messages = messagesSheet(model, text.faults)
  const back = [
    ...drawingSheet(workings, setting),
    referencesSheet(workings, text.sections),
    recordSheet(model, medium),
    passportSheet(model.passports, setting),
  ]
  const order = [...(model.draft ? messages : []), ...before, ...(model.draft ? [] : messages)]
  const contents = contentsSheet([...order.map(headed), ...text.headings, ...back.map(headed)])
  return { front: [coverSheet(model, sections, setting), contents, ...order], text, back }
}

const textSection = (html: string, place = 0): Element =>
  h('section.part.text', place === 0 ? { id: 'text' } : {}, [raw(html)])

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
