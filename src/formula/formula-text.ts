import { typedDigits } from '../quantity/number-print.ts'
import type { Unit } from '../quantity/types.ts'
import { unitInLine } from './bare-unit.ts'
import { callArguments, type ShownOf, valuesOf } from './printed-parts.ts'
import type { Formula, Node } from './types.ts'

/** Text of a part and how strongly it holds together. */
interface Text {
  readonly text: string
  readonly strength: number
  /** It ends in a number with its unit, which a unit behind a sign would join. */
  readonly endsInUnit?: boolean
  readonly startsWithUnit?: boolean
  readonly minus?: boolean
  /** A bare unit that counts as 1 in a line without units. */
  readonly unity?: boolean
}

interface Leaves {
  readonly name: (name: string) => Text
  readonly quantity: (node: Extract<Node, { kind: 'quantity' }>) => Text
  readonly unit: (unit: Unit) => Text
  readonly list: (name: string) => Text
  readonly members: (name: string) => readonly Text[]
  readonly times: string
}

const strength = { or: 1, and: 2, comparison: 3, sum: 4, product: 5, negative: 6, power: 7, atom: 8 } as const

const atom = (text: string): Text => ({ text, strength: strength.atom })

/** The formula in canonical typed text: one blank round signs, brackets only where the tree needs them. It reads back to the same tree. */
export function formulaText(formula: Formula): string {
  const text = nodeText(formula.tree)
  return formula.to ? `${text} to ${formula.to.text || '1'}` : text
}

/** The same for one node. */
export function nodeText(node: Node): string {
  return write(node, {
    name: atom,
    quantity: ({ text, unit }) => measured(typedDigits(text), unit),
    unit: unitAlone,
    list: name => atom(`sum(${name})`),
    members: name => [atom(name)],
    times: '*',
  }).text
}

/** The formula with numbers put in, `0.0478 × 52.3 × 3.4^2`. It is a formula itself, so that another reader can recompute it. */
export function shownText(formula: Formula, shownOf: ShownOf, { bare }: { readonly bare: boolean }): string {
  const values = valuesOf(shownOf, { bare, write: measured })
  return write(formula.tree, {
    name: name => values(name)[0] ?? atom(name),
    quantity: ({ text, unit }) => measured(typedDigits(text), unitInLine(unit, bare)),
    unit: unit => (bare ? { ...atom('1'), unity: true } : unitAlone(unit)),
    list: name => total(values(name)),
    members: values,
    times: '×',
  }).text
}

const plain = (digits: string): Text => ({
  ...atom(digits),
  ...(digits.startsWith('-') && { minus: true, strength: strength.negative }),
})

function measured(digits: string, unit: Unit | undefined): Text {
  if (unit === undefined || unit.text === '') return plain(digits)
  const minus = digits.startsWith('-')
  const text = unit.text.startsWith('1/') ? `${digits} ${inverse(unit.text)}` : `${digits} ${unit.text}`
  return { text, strength: strength.negative, endsInUnit: true, ...(minus && { minus }) }
}

/** `5 1/m` cannot be read, `5 m^-1` can. */
function inverse(text: string): string {
  const below = text.slice(2).replace(/^\((.*)\)$/, '$1')
  return below
    .split('*')
    .map(part => (part.includes('^') ? part.replace(/\^\(?/, match => `${match}-`) : `${part}^-1`))
    .join('*')
}

function unitAlone(unit: Unit): Text {
  const isSimple = unit.parts.length === 1 && unit.parts[0]?.exponent.n === 1
  const text = unit.text.startsWith('1/') ? inverse(unit.text) : unit.text || '1'
  return { text, strength: isSimple ? strength.atom : strength.product, startsWithUnit: true }
}

const total = (values: readonly Text[]): Text =>
  values.length === 0
    ? atom('0')
    : values.reduce((left, right) => ({
        text: `${left.text} + ${held(right, strength.sum).text}`,
        strength: strength.sum,
      }))

const bracketed = ({ text }: Text): Text => atom(`(${text})`)

const held = (of: Text, least: number): Text => (of.strength < least || of.minus ? bracketed(of) : of)
const first = (of: Text, least: number): Text => (of.strength < least ? bracketed(of) : of)

function write(node: Node, leaves: Leaves): Text {
  const of = (each: Node): Text => write(each, leaves)
  switch (node.kind) {
    case 'number':
      return atom(typedDigits(node.text))
    case 'quantity':
      return leaves.quantity(node)
    case 'unit':
      return leaves.unit(node.unit)
    case 'name':
      return leaves.name(node.name)
    case 'pi':
      return atom('pi')
    case 'negative':
      return negated(node.of, of(node.of))
    case 'arithmetic':
      return arithmetic(node.op, [of(node.left), of(node.right)], leaves)
    case 'comparison':
      return joined([of(node.left), of(node.right)], { op: node.op, least: strength.sum, gives: strength.comparison })
    case 'logic':
      return logic(node, [of(node.left), of(node.right)])
    case 'not':
      return { text: `not (${of(node.of).text})`, strength: strength.negative }
    case 'call':
      return call(node, leaves)
  }
}

/** A minus before a temperature on a scale would be read as the number's own, so that one stands in brackets. */
function negated(node: Node, of: Text): Text {
  const isPoint = node.kind === 'quantity' && node.unit.offset !== undefined
  const inner = isPoint ? bracketed(of) : held(of, strength.negative)
  return {
    text: `-${inner.text}`,
    strength: strength.negative,
    minus: true,
    ...(inner.endsInUnit && { endsInUnit: true }),
  }
}

interface Joint {
  readonly op: string
  readonly least: number
  readonly gives: number
}

function joined([left, right]: readonly [Text, Text], { op, least, gives }: Joint): Text {
  const [a, b] = [first(left, least), first(right, least)]
  return { text: `${a.text} ${op} ${b.text}`, strength: gives }
}

function logic(node: Extract<Node, { kind: 'logic' }>, sides: readonly [Text, Text]): Text {
  const gives = node.op === 'and' ? strength.and : strength.or
  const [left, right] = [first(sides[0], gives), first(sides[1], gives + 1)]
  return { text: `${left.text} ${node.op} ${right.text}`, strength: gives }
}

function arithmetic(op: string, [left, right]: readonly [Text, Text], leaves: Leaves): Text {
  if (op === '^') return power(left, right)
  if (op === '*' && right.unity) return left
  if (op === '*' && left.unity) return right
  if (op === '/' && right.unity) return left
  const gives = op === '+' || op === '-' ? strength.sum : strength.product
  const sign = op === '*' ? leaves.times : op
  const a = gives === strength.product && left.endsInUnit && right.startsWithUnit ? bracketed(left) : first(left, gives)
  const b = op === '/' && right.endsInUnit ? bracketed(right) : held(right, gives + 1)
  return {
    text: `${a.text} ${sign} ${b.text}`,
    strength: gives,
    ...(a.minus && { minus: true }),
    ...(b.endsInUnit && { endsInUnit: true }),
    ...(a.startsWithUnit && a === left && { startsWithUnit: true }),
  }
}

function power(left: Text, right: Text): Text {
  if (left.unity) return left
  const base = held(left, strength.atom)
  const exponent = right.endsInUnit ? bracketed(right) : first(right, strength.negative)
  return {
    text: `${base.text}^${exponent.text}`,
    strength: strength.power,
    ...(left.startsWithUnit && { startsWithUnit: true }),
  }
}

function call(node: Extract<Node, { kind: 'call' }>, leaves: Leaves): Text {
  const [list] = node.args
  if (node.fn === 'sum' && list?.kind === 'name') return leaves.list(list.name)
  const args = callArguments(node, { of: arg => write(arg, leaves), table: atom, members: leaves.members })
  return atom(`${node.fn}(${args.map(arg => arg.text).join(', ')})`)
}
