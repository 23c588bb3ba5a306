import type { Element } from 'hast'
import { h } from 'hastscript'
import { part } from './part.ts'
import type { Since, SinceChange, SinceCheck } from './since.ts'

/** The revision page: what changed since that revision, what it moved and by which change, and what is to be checked again. */
export function sinceSheet(since: Since | undefined): Element[] {
  if (!since) return []
  const intro =
    'Everything in this package whose value or text is another than in that revision has a heavy bar at its left.'
  return [
    part('since', `Changes since ${since.revision}`, [
      ...since.says.map(says => h('p', h('b', `${says.replaceAll('`', '')}.`))),
      h('p', intro),
      changesTable(since.changes),
      checksTable(since.checks),
      h('p', [h('b', 'To be checked again: '), `${since.recheck}.`]),
      ...linesList(since),
    ]),
  ]
}

const heads = (names: readonly string[]): Element =>
  h(
    'thead',
    h(
      'tr',
      names.map(name => h('th', { scope: 'col' }, name)),
    ),
  )

function changesTable(changes: readonly SinceChange[]): Element {
  if (changes.length === 0) return h('p', 'Nothing changed in meaning.')
  const rows = changes.map(({ name, text, by, to }) =>
    h('tr', [h('td', to ? h('a', { href: `#${to}` }, name) : name), h('td', text), h('td', by)]),
  )
  return h('table.since-changes', [h('caption', 'What changed'), heads(['Of', 'Old and new', 'By']), h('tbody', rows)])
}

function checksTable(checks: readonly SinceCheck[]): Element {
  if (checks.length === 0) return h('p', 'No check moved.')
  const rows = checks.map(({ id, number, says, old, now, turned, by }) =>
    h('tr', [
      h('td', turned === 'removed' ? number : h('a', { href: `#${id}` }, number)),
      h('td', turned ? [says, ' ', h('b', turned)] : says),
      h('td.number', old),
      h('td.number', now),
      h('td', by),
    ]),
  )
  return h('table.since-checks', [
    h('caption', 'Checks that moved: demand to capacity'),
    heads(['Step', 'Check', 'Old', 'New', 'Moved by']),
    h('tbody', rows),
  ])
}

function linesList({ lines }: Since): Element[] {
  if (lines.length === 0) return []
  return [
    h(
      'dl.record.since-lines',
      lines.flatMap(({ block, numbers }) => [h('dt', block), h('dd', numbers)]),
    ),
  ]
}

/** The bars in the margin, as a style: what is marked is named by its anchor, so that no sheet needs to know of it. */
export function sinceStyle(since: Since | undefined): string[] {
  if (!since || since.changed.length === 0) return []
  const names = since.changed.flatMap(id => [id, `register-${id}`]).map(id => `[id="${id.replace(/["\\]/g, '\\$&')}"]`)
  const any = `:is(${names.join(',')})`
  return [
    `.undercroft ${any}:not(tr),.undercroft tr${any}>:first-child{box-shadow:inset 1.1mm 0 0 #1a1a1a}.undercroft .step${any}>.no,.undercroft tr${any}>:first-child{padding-left:1.7mm}`,
  ]
}
