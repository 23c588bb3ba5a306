import { texNumber, typedDigits } from '../quantity/number-print.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import { standsClose, unitTex } from '../quantity/unit.ts'
import { unitInLine, unitOfLiteral } from './bare-unit.ts'
import { atLeast, atom, behind, bracketed, joined, type Piece, strengths } from './piece.ts'
import { type ShownOf, several } from './printed-parts.ts'
import { readingTex, readSymbol, type SymbolReading, withIndex } from './symbol.ts'
import { type Leaves, texTree, unitPiece } from './tex-tree.ts'
import type { Formula, Node } from './types.ts'

/** The symbol a name is printed with; undefined where it has none and its own letters serve. */
export type SymbolOf = (name: string) => string | undefined

/** A value for print, with the anchor of the step that made it where its number is to be a link. */
export interface Linked extends Shown {
  readonly to?: string
}

/** What is printed for a name; a list where the name stands for several values. */
export type LinkedOf = ShownOf<Linked>

/** TeX of a formula in symbols, for KaTeX in strict mode. */
export function texSymbols(formula: Formula, symbolOf: SymbolOf): string {
  const reading = (name: string): SymbolReading => readSymbol(symbolOf(name) ?? name)
  return texTree(formula.tree, {
    ...writtenLeaves,
    name: name => symbolPiece(reading(name)),
    list: name => joined(['\\sum_{i} ', symbolPiece(withIndex(reading(name), 'i'))], strengths.series),
    members: name => [symbolPiece(reading(name))],
    unit: unitPiece,
    overUnit: node => overUnit(node, each => symbolPiece(reading(each))),
    quantity: node => numberPiece(typedDigits(node.text), unitOfLiteral(node, false)),
    dot: '\\cdot',
  }).tex
}

/**
 * TeX of a formula with numbers put in. `bare`: numbers without units, bare units left away, which holds only where `coherent` says
 * so; otherwise every number carries its unit. A name over its own unit (`f_ck / MPa`) is printed as the number alone in both.
 */
export function texNumbers(formula: Formula, shownOf: LinkedOf, { bare }: { readonly bare: boolean }): string {
  const value = (shown: Linked): Piece => linked(numberPiece(shown.digits, unitInLine(shown.unit, bare)), shown.to)
  const values = (name: string): readonly Piece[] => several(shownOf(name)).map(value)
  return texTree(formula.tree, {
    ...writtenLeaves,
    name: name => tableOrValue(name, { formula, values }),
    list: name => added(values(name)),
    members: values,
    unit: node => (bare ? unity : unitPiece(node)),
    overUnit: node => (bare ? undefined : numberOverUnit(node, { formula, shownOf })),
    quantity: node => numberPiece(typedDigits(node.text), unitOfLiteral(node, bare)),
    dot: '\\times',
  }).tex
}

/** TeX of a number with its unit, as a result is printed: `{26.08\;{\mathrm{kN}}}`. */
export const texShown = (shown: Shown): string => numberPiece(shown.digits, shown.unit).tex

const writtenLeaves = {
  number: (text: string): Piece => numberPiece(typedDigits(text), undefined),
} satisfies Partial<Leaves>

const unity: Piece = { ...atom('1', 1), unity: true }

function symbolPiece(reading: SymbolReading): Piece {
  const below = reading.below.reduce((so, each) => so + each.width * 0.7, 0)
  const strength = reading.compound ? strengths.power - 0.5 : strengths.atom
  return { tex: readingTex(reading), strength, width: reading.head.width + below + reading.primes * 0.3, stack: 0 }
}

function numberPiece(digits: string, unit: Unit | undefined): Piece {
  const number = texNumber(digits)
  const minus = digits.startsWith('-')
  const gap = unit && (standsClose(unit) ? '' : '\\;')
  const tex = unit?.text ? `{${number}${gap}${unitTex(unit)}}` : number
  const strength = strengthOf(digits, unit?.text ? unit : undefined)
  return { tex, strength, width: digits.length + (unit?.text.length ?? 0), stack: 0, ...(minus && { minus }) }
}

/** The print as a link within the page: `\\href{#v-roof-w}{26.08}`, which KaTeX sets where its `trust` lets it. */
const linked = (piece: Piece, to: string | undefined): Piece =>
  to === undefined ? piece : { ...piece, tex: `\\href{#${to}}{${piece.tex}}` }

function strengthOf(digits: string, unit: Unit | undefined): number {
  if (digits.startsWith('-')) return unit ? strengths.negativeMeasured : strengths.negative
  if (unit) return strengths.measured
  return digits.includes('e') ? strengths.product : strengths.atom
}

/** The first argument of `interpolate` names a table and has no number. */
function tableOrValue(
  name: string,
  { formula, values }: { formula: Formula; values: (name: string) => readonly Piece[] },
): Piece {
  return tableNames(formula.tree).has(name) ? symbolPiece(readSymbol(name)) : (values(name)[0] ?? atom('?', 1))
}

function tableNames(node: Node, names = new Set<string>()): ReadonlySet<string> {
  if (node.kind === 'call') {
    const [first] = node.args
    if (node.fn === 'interpolate' && first?.kind === 'name') names.add(first.name)
    for (const arg of node.args) tableNames(arg, names)
  }
  if (node.kind === 'negative' || node.kind === 'not') tableNames(node.of, names)
  if ('left' in node) for (const side of [node.left, node.right]) tableNames(side, names)
  return names
}

/** A sum over a list, with its terms written out. */
function added(values: readonly Piece[]): Piece {
  if (values.length === 0) return atom('0', 1)
  return values.reduce((left, right) =>
    joined([atLeast(left, strengths.sum), ' + ', behind(right, strengths.sum)], strengths.sum),
  )
}

/** In symbols a name over a bare unit stands on the line: `f_{ck}/\mathrm{MPa}`. */
function overUnit(node: Extract<Node, { kind: 'arithmetic' }>, name: (name: string) => Piece): Piece | undefined {
  if (node.op !== '/' || node.left.kind !== 'name' || node.right.kind !== 'unit') return undefined
  const unit = unitPiece(node.right)
  const below = unit.strength < strengths.atom ? bracketed(unit) : unit
  return joined([name(node.left.name), '/', below], strengths.overUnit)
}

function numberOverUnit(
  node: Extract<Node, { kind: 'arithmetic' }>,
  { shownOf }: { formula: Formula; shownOf: LinkedOf },
): Piece | undefined {
  if (node.op !== '/' || node.right.kind !== 'unit') return undefined
  const { left, right } = node
  if (left.kind === 'quantity' && isSameUnit(left.unit, right.unit))
    return numberPiece(typedDigits(left.text), undefined)
  if (left.kind !== 'name') return undefined
  const [shown] = several(shownOf(left.name))
  const isItsUnit = shown && isSameUnit(shown.unit, right.unit)
  return isItsUnit ? linked(numberPiece(shown.digits, undefined), shown.to) : undefined
}

/** One size under two spellings: `MPa` and `N/mm^2`. */
const isSameUnit = (a: Unit, b: Unit): boolean =>
  a.text === b.text ||
  (a.offset === undefined &&
    b.offset === undefined &&
    a.dimension === b.dimension &&
    Math.abs(a.factor - b.factor) <= 1e-12 * b.factor)
