import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Passport, PassportCase, PassportUse } from '../evaluation/passport.ts'
import { cross, tick } from '../typesetting/marks.ts'
import type { Medium } from '../typesetting/medium.ts'
import { prose } from '../typesetting/prose.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { symbolHtml } from '../typesetting/symbol-html.ts'
import type { Attachment } from './attachment.ts'
import type { PackageModel, PackageRecord } from './package-model.ts'
import { part } from './part.ts'

/** What made the package, so that it can be made again to the byte. */
export function recordSheet({ record, notebook, attachments = [] }: PackageModel, medium: Medium): Element {
  const rows: [string, ElementContent[]][] = [
    ['Tool', [text(`${record.tool} ${record.version}`)]],
    ['Notebook', [text(notebook.path)]],
    ['SHA-256', [h('code', record.sha256)]],
    ['Command', [h('code', record.command)]],
    ...browser(record),
    ...(record.made ? [['Made', [text(record.made)]] as [string, ElementContent[]]] : []),
  ]
  return part('record', 'Record', [
    h(
      'dl.record',
      rows.flatMap(([name, value]) => [h('dt', name), h('dd', value)]),
    ),
    ...modules(record),
    h(
      'p',
      'The notebook and the results as data are attached. The same notebook and tool give the same package, and `undercroft prove` shows whether this one is what its notebook gives.',
    ),
    ...(medium === 'screen' ? attached(attachments) : []),
  ])
}

/** The attachments of the page for the screen, whole in their links. */
function attached(attachments: readonly Attachment[]): Element[] {
  if (attachments.length === 0) return []
  const items = attachments.map(({ name, bytes, mime, description }) => {
    const href = `data:${mime};base64,${Buffer.from(bytes).toString('base64')}`
    return h('li', [h('a.attachment', { href, download: name }, name), `: ${description}`])
  })
  return [h('ul.attachments', items)]
}

function browser({ browser: of }: PackageRecord): [string, ElementContent[]][] {
  if (!of) return []
  const pinned = of.pinned ? 'the packed build' : 'not the packed build: the bytes of the PDF depend on it'
  return [['Printed by', [text(`${of.name} ${of.version}, ${pinned}`)]]]
}

function modules({ modules: used }: PackageRecord): Element[] {
  if (used.length === 0) return []
  const head = h('thead', h('tr', ['Module', 'Version', 'Title', 'Code'].map(th)))
  const rows = used.map(({ id, version, title, code }) =>
    h('tr', [h('td', id), h('td', version), h('td', title), h('td', code ?? '')]),
  )
  return [h('table.modules', [h('caption', 'Modules used'), head, h('tbody', rows)])]
}

const th = (name: string): Element => h('th', { scope: 'col' }, name)
const text = (value: string): ElementContent => ({ type: 'text', value })

/** The published cases that each module reproduces, the printed answer against ours, and whether its uses here lie inside what was tested. */
export function passportSheet(passports: readonly Passport[], setting: Setting): Element {
  if (passports.length === 0) return part('passport', 'Passport', [h('p', 'No module is used.')])
  return part('passport', 'Passport', [
    h(
      'p',
      'For each module: the published answers that this version gives, as printed and as computed, and the inputs of this package that lie outside the range those cases span.',
    ),
    h('table.passport', [
      h('thead', h('tr', ['Published case', 'Answer', 'Published', 'Ours', ''].map(passportHead))),
      ...passports.flatMap(one => passport(one, settingIn(setting, one))),
    ]),
  ])
}

function passport({ module, version, title, cases, uses }: Passport, setting: Setting): Element[] {
  const name = [h('b', title), h('span.block-name', ` ${module} ${version}`)]
  return [
    h('tbody.module', h('tr.group', h('th', { scope: 'rowgroup', colSpan: 5 }, name))),
    ...bySource(cases).map(one => sourceRows(one, setting)),
    h('tbody.uses', [
      h(
        'tr',
        h(
          'td',
          { colSpan: 5 },
          uses.length > 0 ? uses.map(one => use(one, setting)) : ['Not used outside other modules.'],
        ),
      ),
    ]),
  ]
}

function passportHead(name: string): Element {
  if (name === '') return h('td')
  return h('th', { scope: 'col', className: /Published$|Ours/.test(name) ? ['number'] : [] }, name)
}

/** Neighbouring cases of one source together. */
function bySource(cases: readonly PassportCase[]): PassportCase[][] {
  const together: PassportCase[][] = []
  for (const one of cases) {
    const before = together.at(-1)
    if (before?.[0]?.source === one.source && before[0].status === one.status) before.push(one)
    else together.push([one])
  }
  return together
}

function sourceRows(cases: readonly PassportCase[], setting: Setting): Element {
  const [first] = cases
  const head = h(
    'th.source',
    { scope: 'rowgroup', colSpan: 5 },
    first ? prose(`${first.source} (${first.status})`, setting) : [],
  )
  return h('tbody', [h('tr.group', [head]), ...cases.flatMap(one => caseRows(one, setting))])
}

function caseRows({ says, answers }: PassportCase, setting: Setting): Element[] {
  return answers.map((answer, index) =>
    h('tr', [
      ...(index === 0 ? [h('td.case', { rowSpan: answers.length }, prose(says, setting))] : []),
      h('td', prose(answer.says, setting)),
      h('td.number', answer.published),
      h('td.number', answer.ours),
      h('td', answer.agrees ? h('span.verdict', [tick(), 'agrees']) : differs()),
    ]),
  )
}

const differs = (): Element => h('span.verdict.fails', [cross(), h('b', 'differs')])

function use({ id, number, name, outside }: PassportUse, setting: Setting): Element {
  const link = h('a', { href: `#${id}` }, `${number} ${name}`)
  if (outside.length === 0) return h('p', [link, ': every input lies inside the tested range.'])
  const listed = outside.flatMap(({ symbol, value, tested }, index) => [
    index > 0 ? '; ' : ': ',
    symbolHtml(symbol, setting),
    ` ${value} (${tested})`,
  ])
  return h('p', [link, ': ', h('b', 'outside the tested range'), ...listed, '.'])
}
