import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import { caution, tick, usedIn } from '../typesetting/marks.ts'
import type { Setting } from '../typesetting/setting.ts'
import { coverCautions, coverOpen } from './cover-cautions.ts'
import { coverGoverning } from './cover-governing.ts'
import { coverState, type StateLine } from './cover-state.ts'
import type { CheckedSection } from './gather-checks.ts'
import type { EarlyModel } from './package-model.ts'

/** The cover: title block, state of the package, cautions, what governs each section, revisions, and lines for signature. */
export function coverSheet(model: EarlyModel, sections: readonly CheckedSection[], setting: Setting): Element {
  const { title } = model.notebook
  return h('header.part.cover', { id: 'cover' }, [
    h('div.cover-head', [
      h('p.project', title.project),
      h('h1', title.title),
      ...(title.purpose
        ? [h('p.cover-purpose', `Calculation package, ${title.purpose}`)]
        : [h('p.cover-purpose', 'Calculation package')]),
      ...(model.draft ? [h('p.draft-note', 'Draft. Not issued; not to be used for construction.')] : []),
    ]),
    identity(model),
    h('div.cover-body', [state(model), cautions(model, setting)]),
    ...coverGoverning(sections, model.paper === 'letter' ? 5 : 7, setting),
    h('div.cover-foot', [revisions(model), signatures(model)]),
  ])
}

function identity({ notebook: { title }, date }: EarlyModel): Element {
  const rows: [string, ElementContent[]][] = [
    ['Number', words(title.number)],
    ['Revision', words(title.revision)],
    ['Date', words(date)],
    ['Sheets', [h('span.page-count', '')]],
    ['Codes', words(title.codes.join(', '))],
  ]
  const kept = rows.filter(([name]) => name !== 'Codes' || title.codes.length > 0)
  return h(
    'dl.identity',
    kept.map(([name, value]) => h('div', { className: [`id-${name.toLowerCase()}`] }, [h('dt', name), h('dd', value)])),
  )
}

function words(text: string): ElementContent[] {
  return [{ type: 'text', value: text || '\u2013' }]
}

function state(model: EarlyModel): Element {
  return h('table.state', [h('caption', 'State of the package'), h('tbody', coverState(model).map(stateRow))])
}

function stateRow({ what, finding, to, attention }: StateLine): Element {
  const text = to ? h('a', { href: `#${to}` }, finding) : h('span', finding)
  return h('tr', [
    h('td.sign', [attention ? caution() : tick()]),
    h('th', { scope: 'row' }, what),
    h('td', [attention ? h('b', [text]) : text]),
  ])
}

function cautions({ workings, notebook, paper }: EarlyModel, setting: Setting): Element {
  const { figures } = notebook.title
  return h('div.cautions', [
    h('p.label', 'Cautions and what is left open'),
    ...coverCautions(workings, setting),
    ...coverOpen(workings, paper === 'letter' ? 380 : 440),
    h('p.how', [
      'Results are shown to ',
      h('span.figures-shown', String(figures)),
      ' significant figures and computed to full precision. Where a line needs more figures of an operand to come out by hand, the line shows them. A demand equal to its capacity is satisfied. An arrow ',
      usedIn(),
      ' leads to the lines that use a value.',
    ]),
  ])
}

function revisions({ notebook: { title } }: EarlyModel): Element {
  const rows = title.revisions.map(({ mark, date, note }) =>
    h('tr', { className: mark === title.revision ? ['current'] : [] }, [h('td', mark), h('td', date), h('td', note)]),
  )
  const none = h('tr', [h('td', title.revision || '\u2013'), h('td', title.date), h('td', 'no revision recorded')])
  return h('table.revisions', [
    h('caption', 'Revisions'),
    h(
      'thead',
      h(
        'tr',
        ['Mark', 'Date', 'Reason'].map(name => h('th', { scope: 'col' }, name)),
      ),
    ),
    h('tbody', rows.length > 0 ? rows : [none]),
  ])
}

function signatures({ notebook: { title } }: EarlyModel): Element {
  const cell = (role: string, name: string): Element =>
    h('div', [h('p.label', role), h('p.name', name || '\u00a0'), h('p.sign-line', 'Signature and date')])
  return h('div.signatures', [
    cell('Prepared', title.prepared),
    cell('Checked', title.checked),
    cell('Approved', title.approved),
  ])
}
