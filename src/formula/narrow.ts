import { unitOf } from '../quantity/unit.ts'
import { arityFault } from './functions.ts'
import { refused, syntax, type Token } from './token.ts'
import type { Comparison, Node, Span } from './types.ts'
import { unitNode } from './unit-node.ts'

/** As much of a node of the parser as is looked at. */
export interface Parsed {
  readonly type: string
  readonly name?: string
  readonly fn?: string | Parsed
  readonly args?: readonly Parsed[]
  readonly content?: Parsed
  readonly params?: readonly Parsed[]
  readonly conditionals?: readonly string[]
}

/** A narrowed node and the tokens it covers, brackets round it included. */
interface Narrowed {
  readonly node: Node
  readonly first: number
  readonly last: number
}

type Arithmetic = Extract<Node, { kind: 'arithmetic' }>['op']

const arithmetic: ReadonlyMap<string, Arithmetic> = new Map([
  ['add', '+'],
  ['subtract', '-'],
  ['multiply', '*'],
  ['divide', '/'],
  ['pow', '^'],
])
const comparisons: ReadonlyMap<string, Comparison> = new Map([
  ['smaller', '<'],
  ['smallerEq', '<='],
  ['larger', '>'],
  ['largerEq', '>='],
  ['equal', '=='],
  ['unequal', '!='],
])

/**
 * Narrows the parser's tree to our own. Its leaves are called after the tokens they stand for (`v3`, `f7`), so that every node finds
 * its place. Any node that formulas do not have is refused.
 */
export function narrow(parsed: Parsed, tokens: readonly Token[]): Node {
  return new Narrowing(tokens).of(parsed).node
}

class Narrowing {
  private readonly tokens: readonly Token[]
  constructor(tokens: readonly Token[]) {
    this.tokens = tokens
  }

  of(parsed: Parsed): Narrowed {
    switch (parsed.type) {
      case 'SymbolNode':
        return this.leaf(parsed.name ?? '')
      case 'ParenthesisNode':
        return this.bracketed(parsed)
      case 'OperatorNode':
        return this.operation(parsed)
      case 'FunctionNode':
        return this.call(parsed)
      case 'RelationalNode':
        return this.chain(parsed)
      default:
        throw this.strange()
    }
  }

  private strange(): Error {
    const end = this.tokens.at(-1)?.span.end ?? 0
    return refused({ start: 0, end }, 'The formula uses something that formulas do not have')
  }

  private token(at: number): Token {
    const token = this.tokens[at]
    if (!token) throw this.strange()
    return token
  }

  private span(first: number, last: number): Span {
    return { start: this.token(first).span.start, end: this.token(last).span.end }
  }

  private leaf(name: string): Narrowed {
    const at = Number(name.slice(1))
    return { node: leafNode(this.token(at)), first: at, last: at }
  }

  private bracketed(parsed: Parsed): Narrowed {
    if (!parsed.content) throw this.strange()
    const inside = this.of(parsed.content)
    return { node: inside.node, first: inside.first - 1, last: inside.last + 1 }
  }

  private operation(parsed: Parsed): Narrowed {
    const [left, right] = parsed.args ?? []
    const fn = typeof parsed.fn === 'string' ? parsed.fn : ''
    if (left && fn === 'unaryMinus') return this.negative(this.of(left))
    if (left && fn === 'not') return this.not(this.of(left))
    if (!left || !right) throw this.strange()
    return this.binary(fn, [this.of(left), this.of(right)])
  }

  private negative(of: Narrowed): Narrowed {
    const first = of.first - 1
    const span = this.span(first, of.last)
    const direct = this.token(of.first).kind === 'quantity'
    return { node: direct ? negated(of.node, span) : { kind: 'negative', of: of.node, span }, first, last: of.last }
  }

  private not(of: Narrowed): Narrowed {
    const first = of.first - 1
    const node: Node = { kind: 'not', of: of.node, at: this.token(first).span, span: this.span(first, of.last) }
    return { node, first, last: of.last }
  }

  private binary(fn: string, [left, right]: readonly [Narrowed, Narrowed]): Narrowed {
    const place = { at: this.token(left.last + 1).span, span: this.span(left.first, right.last) }
    const sides = { left: left.node, right: right.node, ...place }
    return { node: this.joined(fn, sides), first: left.first, last: right.last }
  }

  private joined(fn: string, sides: { left: Node; right: Node; at: Span; span: Span }): Node {
    const op = arithmetic.get(fn)
    if (op) return unitNode(op, sides) ?? { kind: 'arithmetic', op, ...sides }
    const comparison = comparisons.get(fn)
    if (comparison) return { kind: 'comparison', op: comparison, ...sides }
    if (fn === 'and' || fn === 'or') return { kind: 'logic', op: fn, ...sides }
    throw this.strange()
  }

  private call(parsed: Parsed): Narrowed {
    const name = typeof parsed.fn === 'string' ? parsed.fn : (parsed.fn?.name ?? '')
    const first = Number(name.slice(1))
    const token = this.token(first)
    if (token.kind !== 'function') throw this.strange()
    const args = (parsed.args ?? []).map(each => this.of(each))
    const last = (args.at(-1)?.last ?? first + 1) + 1
    const node: Node = { kind: 'call', fn: token.text, args: args.map(each => each.node), span: this.span(first, last) }
    checkCall(node)
    return { node, first, last }
  }

  private chain(parsed: Parsed): Narrowed {
    const params = (parsed.params ?? []).map(each => this.of(each))
    const links = params
      .slice(1)
      .map((right, i) => this.binary(parsed.conditionals?.[i] ?? '', [params[i] ?? right, right]))
    return links.reduce((left, right) => {
      const sides = {
        left: left.node,
        right: right.node,
        at: right.node.kind === 'comparison' ? right.node.at : right.node.span,
      }
      const node: Node = { kind: 'logic', op: 'and', ...sides, span: this.span(left.first, right.last) }
      return { node, first: left.first, last: right.last }
    })
  }
}

function leafNode(token: Token): Node {
  const { span } = token
  switch (token.kind) {
    case 'number':
      return { kind: 'number', value: Number(token.text), text: token.text, span }
    case 'quantity':
      return { kind: 'quantity', value: Number(token.number), text: token.number, unit: token.unit, span }
    case 'unit':
      return { kind: 'unit', unit: unitOf(token.text), span }
    case 'pi':
      return { kind: 'pi', span }
    case 'name':
      return { kind: 'name', name: token.text, span }
    default:
      throw syntax(span, `\`${token.text}\` stands where a value is expected`)
  }
}

/** A minus before a temperature on a scale belongs to the number: -5 degC is 268.15 K, not -278.15 K. */
function negated(of: Node, span: Span): Node {
  if (of.kind !== 'quantity' || of.unit.offset === undefined) return { kind: 'negative', of, span }
  return { ...of, value: -of.value, text: of.text.startsWith('-') ? of.text.slice(1) : `-${of.text}`, span }
}

function checkCall(node: Node): void {
  if (node.kind !== 'call') return
  const fault = arityFault(node.fn, node.args.length)
  if (fault) throw refused(node.span, fault)
  const [first] = node.args
  if (node.fn === 'sum' && first?.kind !== 'name')
    throw refused(first?.span ?? node.span, '`sum` takes the name of a list', 'Write `sum(layers.x)`')
  if (node.fn === 'interpolate' && first?.kind !== 'name')
    throw refused(
      first?.span ?? node.span,
      '`interpolate` takes the name of a table first',
      'Write `interpolate(table, x)`',
    )
}
