import type { Element } from 'hast'
import { h } from 'hastscript'
import type { BasisRow, Workings } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import { caution, ratioBar, verdict } from '../typesetting/marks.ts'
import { sentenceCase } from '../typesetting/prose.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { tallyChecks } from '../typesetting/tally-checks.ts'
import { valueCells } from '../typesetting/value-html.ts'
import { coverageTables } from './coverage-tables.ts'
import { part } from './part.ts'

/** What the structure is for, beside each requirement the checks that show it is met; then the coverage ledger. */
export function basisSheet({ basis, coverage }: Workings): Element {
  return part('basis', 'Design basis and scope', [...basisTable(basis), ...coverageTables(coverage)])
}

function basisTable(basis: readonly BasisRow[]): Element[] {
  if (basis.length === 0) return [h('p', 'The notebook states no design basis.')]
  const heads = [th('Required'), th('Value', 2), th('Shown by'), th('Highest ratio', 2), th('Result')]
  return [h('table.basis', [h('thead', h('tr', heads)), h('tbody', basis.map(basisRow))])]
}

function th(text: string, colSpan = 1): Element {
  return colSpan > 1 ? h('th.value', { scope: 'colgroup', colSpan }, text) : h('th', { scope: 'col' }, text)
}

function basisRow({ what, value, checks }: BasisRow): Element {
  const cells = value ? valueCells(value.shown, value.to) : [h('td', { colSpan: 2 })]
  return h('tr', [
    h('td.meaning', sentenceCase(what)),
    ...cells,
    h('td', checks.length > 0 ? anchorLinks(checks) : [h('i', 'no check named')]),
    ...worstRatio(checks),
    outcome(checks),
  ])
}

function worstRatio(checks: BasisRow['checks']): Element[] {
  const [worst] = checks.flatMap(({ ratio }) => ratio ?? []).toSorted((a, b) => b.value - a.value)
  if (!worst) return [h('td', { colSpan: 2 })]
  return [h('td.bar', [ratioBar(worst.value)]), h('td.number', plainNumber(worst.shown.digits))]
}

/** The worst verdict of the checks, which are then told to be several. */
function outcome(checks: BasisRow['checks']): Element {
  const [worst] = [...tallyChecks(checks).values()].map(some => some[0])
  return h('td', worst ? [verdict(worst)] : [caution(), ' not shown'])
}
