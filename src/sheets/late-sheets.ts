import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Workings } from '../evaluation/workings.ts'
import type { Setting } from '../typesetting/setting.ts'
import { setSmallFigures } from '../typesetting/whole-page-figures.ts'
import type { LateModel } from './package-model.ts'
import { passportSheet } from './passport-sheet.ts'
import { registerSheet } from './register-sheet.ts'

/** The sheets that wait for margins and passports. */
export interface LateSheets {
  readonly register: Element
  readonly passport: Element
}

export const lateSheets = (workings: Workings, late: LateModel, setting: Setting): LateSheets => ({
  register: registerSheet(workings, setting, late.margins),
  passport: passportSheet(late.passports, setting),
})

/** The same sheets with nothing but their headings. */
export function emptyLateSheets(workings: Workings, setting: Setting): LateSheets {
  const { register, passport } = lateSheets(workings, { passports: [] }, setting)
  return { register: headingOnly(register), passport: headingOnly(passport) }
}

const headingOnly = (sheet: Element): Element => ({ ...sheet, children: sheet.children.slice(0, 1) })

/** The sheets as they stand in a whole text, by id. */
export function lateTexts({ register, passport }: LateSheets): ReadonlyMap<string, string> {
  const text = (sheet: Element) => toHtml(setSmallFigures(sheet), { allowDangerousHtml: true })
  return new Map([register, passport].map(sheet => [String(sheet.properties.id), text(sheet)]))
}
