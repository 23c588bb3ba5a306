import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { BlockWorking } from '../evaluation/workings.ts'
import type { TexTrouble } from '../typesetting/author-formula.ts'
import { caution, cross } from '../typesetting/marks.ts'
import type { EarlyModel } from './package-model.ts'
import { part } from './part.ts'

/** What is wrong or doubtful in the notebook, in the order of the file, and the block it stands in; nothing where there is nothing to say. */
export function messagesSheet({ workings, notebook }: Messages, tex: readonly TexTrouble[]): Element[] {
  const { diagnostics } = workings
  if (diagnostics.length + tex.length === 0) return []
  const errors = diagnostics.some(each => each.severity === 'error')
  const sorted = diagnostics.toSorted((a, b) => a.place.offset - b.place.offset)
  const head = h(
    'thead',
    h(
      'tr',
      ['Line', 'In', 'Kind', 'Message'].map(name => h('th', { scope: 'col' }, name)),
    ),
  )
  const rows = [...sorted.map(each => messageRow(each, blockAt({ workings, notebook }, each))), ...tex.map(texRow)]
  return [
    part('messages', errors ? 'Errors and warnings' : 'Warnings', [h('table.messages', [head, h('tbody', rows)])]),
  ]
}

type Messages = Pick<EarlyModel, 'workings' | 'notebook'>

/** The block that a message points into; none where it points at prose or the title block. */
function blockAt({ workings, notebook }: Messages, { place }: Diagnostic): BlockWorking | undefined {
  return workings.blocks.find(block => {
    const read = notebook.blocks[block.index]
    return block.place.offset <= place.offset && read !== undefined && place.offset < read.end
  })
}

function messageRow(
  { place, severity, says, help, rule, stops, notes }: Diagnostic,
  block: BlockWorking | undefined,
): Element {
  const sign = severity === 'error' ? cross() : caution()
  return h('tr', [
    h('td.number', `${place.line}:${place.column}`),
    h('td', block ? [h('a', { href: `#${block.id}` }, `${block.number} ${block.name}`.trim())] : []),
    h('td.kind', h('span.verdict', [sign, severity])),
    h('td', [
      h('p', sentence(says)),
      ...(notes ?? []).map(note => h('p.help', sentence(note.says))),
      ...(help ? [h('p.help', sentence(help))] : []),
      h('p.rule', stops ? `${rule}; ${stops} further values could not be evaluated` : rule),
    ]),
  ])
}

function texRow({ tex, says }: TexTrouble): Element {
  const message = [h('p', ['A formula in the text cannot be set: ', h('code', tex)]), h('p.help', sentence(says))]
  return h('tr', [h('td.number'), h('td'), h('td.kind', h('span.verdict', [caution(), 'warning'])), h('td', message)])
}

/** Names stand in backticks; here they are set as code. */
function sentence(text: string): (string | Element)[] {
  const parts = text.split('`').map((piece, index) => (index % 2 === 1 ? h('code', piece) : piece))
  return [...parts, '.']
}
