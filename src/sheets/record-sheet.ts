import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Medium } from '../typesetting/medium.ts'
import type { Attachment } from './attachment.ts'
import type { EarlyModel, PackageRecord } from './package-model.ts'
import { part } from './part.ts'

/** What made the package, so that it can be made again to the byte. */
export function recordSheet({ record, notebook, attachments = [] }: EarlyModel, medium: Medium): Element {
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
    h('p', [
      'The notebook and the results as data are attached. The same notebook and tool give the same package, and ',
      h('code', 'undercroft prove'),
      ' shows whether this one is what its notebook gives.',
    ]),
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
  const head = h('thead', h('tr', ['Module', 'Version', 'Title, and the code it keeps to'].map(th)))
  const rows = used.map(({ id, version, title, code }) =>
    h('tr', [h('td', id), h('td', version), h('td', [title, ...(code ? [h('span.where', `, ${code}`)] : [])])]),
  )
  return [h('p.label', 'Modules used'), h('div.modules', [h('table.modules', [head, h('tbody', rows)])])]
}

const th = (name: string): Element => h('th', { scope: 'col' }, name)
const text = (value: string): ElementContent => ({ type: 'text', value })
