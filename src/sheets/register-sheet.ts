import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { AssumptionRow, Workings } from '../evaluation/workings.ts'
import type { ShownMargin } from '../study/shown-margins.ts'
import { assumptionName, basisWords } from '../typesetting/assumption-table.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import type { Setting } from '../typesetting/setting.ts'
import { shownText } from '../typesetting/value-html.ts'
import { grouped } from './grouped.ts'
import { narrowValueCells } from './long-units.ts'
import { marginNote, marginsExplained, rangeText } from './margin-note.ts'
import type { Margins } from './package-model.ts'
import { part } from './part.ts'
import { typedRegister } from './typed-values.ts'

/** Every assumption of the package, in its block. */
export function assumptionRows(workings: Workings): AssumptionRow[] {
  return workings.blocks.flatMap(block => (block.kind === 'assume' ? block.rows : []))
}

/** The register: every assumption with its value, basis and status, its plausible range and margin, and who uses it. */
export function registerSheet(workings: Workings, setting: Setting, margins?: Margins): Element {
  const blocks = workings.blocks.flatMap(block => (block.kind === 'assume' ? [block] : []))
  if (blocks.length === 0)
    return part('register', 'Assumptions register', [
      h('p', 'The notebook declares no assumption.'),
      ...typedRegister(workings, setting),
    ])
  const bodies = blocks.map(block =>
    h('tbody', [
      h('tr.group', h('th', { scope: 'rowgroup', colSpan: 7 }, [h('a', { href: `#${block.id}` }, block.name)])),
      ...block.rows.map(row => registerRow(row, setting, margins?.get(row.id))),
    ]),
  )
  const note = margins ? [h('p.margins-explained', marginsExplained)] : []
  return part('register', 'Assumptions register', [
    ...note,
    h('table.register', [head(margins !== undefined), ...bodies]),
    ...typedRegister(workings, setting),
  ])
}

function head(withMargins: boolean): Element {
  const range = withMargins ? 'Range and margin' : 'Range'
  const value = h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value')
  return h('thead', h('tr', [th('No.'), th('Assumption'), value, th(range), th('Basis and status'), th('Used in')]))
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

function registerRow(row: AssumptionRow, setting: Setting, margin: ShownMargin | undefined): Element {
  return h('tr', { id: `register-${row.id}` }, [
    h('td.no', h('a', { href: `#${row.id}` }, row.number)),
    h('td.meaning', assumptionName(row, setting)),
    ...narrowValueCells(row.value),
    h('td.range', [...range(row), ...(margin ? [marginNote(margin)] : [])]),
    h('td.basis', [...basisWords(row), ...measured(row)]),
    h('td.users', row.users.length > 0 ? usersOf(row) : [h('i', 'not used')]),
  ])
}

/** As many users as a row names. */
const most = 5

/** Of the users with one number, rows of one calculation, the first stands for all. */
function usersOf({ users: all }: AssumptionRow): ElementContent[] {
  const users = [...grouped(all, ({ number }) => number).values()].flatMap(([first]) => first ?? [])
  const more = users.length - most
  return [...anchorLinks(users.slice(0, most)), ...(more > 0 ? [h('span', ` +${more}`)] : [])]
}

function range({ range: of }: AssumptionRow): ElementContent[] {
  if (!of) return []
  return [h('span', rangeText(of.from, of.to)), ...(of.inside ? [] : [h('b.outside', ' value lies outside')])]
}

function measured({ measured: value, evidence }: AssumptionRow): ElementContent[] {
  const parts = [value ? `measured ${shownText(value)}` : '', evidence ? `evidence: ${evidence}` : ''].filter(Boolean)
  return parts.length > 0 ? [h('div.evidence', parts.join('; '))] : []
}
