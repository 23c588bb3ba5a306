import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { AssumeWorking, AssumptionRow } from '../evaluation/workings.ts'
import { isSymbolic } from '../formula/symbol.ts'
import { caution } from './marks.ts'
import { sentenceCase } from './prose.ts'
import type { Setting } from './setting.ts'
import { symbolHtml } from './symbol-html.ts'
import { valueCells } from './value-html.ts'

/** A block of assumptions where the author wrote it: number, name, value, basis. The register has the rest. */
export function assumptionTable(block: AssumeWorking, setting: Setting): Element {
  return h('section.assume', { id: block.id }, [
    h('table.assumptions', [
      h('caption', ['Assumptions ', h('span.block-name', block.name)]),
      h(
        'thead',
        h('tr', [th('No.'), th('Assumption'), h('th.value', { scope: 'colgroup', colSpan: 2 }, 'Value'), th('Basis')]),
      ),
      h(
        'tbody',
        block.rows.map(row => assumptionRow(row, setting)),
      ),
    ]),
  ])
}

const th = (text: string): Element => h('th', { scope: 'col' }, text)

function assumptionRow(row: AssumptionRow, setting: Setting): Element {
  return h('tr', { id: row.id }, [
    h('td.no', h('a', { href: `#register-${row.id}` }, row.number)),
    h('td.meaning', assumptionName(row, setting)),
    ...valueCells(row.value),
    h('td.basis', basisWords(row)),
  ])
}

/** The symbol where the author gave one, and the name in words: `z_w  water depth`. */
export function assumptionName(row: AssumptionRow, setting: Setting): ElementContent[] {
  const words = sentenceCase(withoutSymbol(row).replaceAll('_', ' '))
  if (isOwnSymbol(row)) return [symbolHtml(row.name, setting)]
  const symbol = typeof row.value !== 'string' && row.symbol && row.symbol !== row.name
  return symbol ? [symbolHtml(row.symbol, setting), h('span.in-words', words)] : [{ type: 'text', value: words }]
}

/** `sat_low` of `gamma_sat_low` where the symbol has its `gamma` already. */
function withoutSymbol({ name, symbol }: AssumptionRow): string {
  const [head = '', ...rest] = name.split('_')
  return rest.length > 0 && symbol.split('_')[0]?.toLowerCase() === head ? rest.join('_') : name
}

/** A name that is a symbol already, `f_ck` or `gamma_low`, is set as one. */
function isOwnSymbol({ name, symbol, value }: AssumptionRow): boolean {
  return typeof value !== 'string' && (symbol === '' || symbol === name) && isSymbolic(name)
}

/** The basis in the author's words, or that there is none; a hold says what must close it. */
export function basisWords(row: AssumptionRow): ElementContent[] {
  return h('span', [row.basis || h('i', 'no basis given'), ...holdWords(row)]).children
}

function holdWords(row: AssumptionRow): (string | Element)[] {
  if (row.status !== 'hold') return []
  return [' ', h('span.hold', [caution(), h('b', 'hold'), row.closes ? `, ${row.closes}` : ''])]
}
