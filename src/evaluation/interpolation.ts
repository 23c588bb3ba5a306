import { compileNode } from '../formula/compile.ts'
import type { Formula, Node, Seat } from '../formula/types.ts'
import { seatOf } from './operands.ts'
import type { Operands, Points, Typed } from './plan-types.ts'

type Call = Extract<Node, { kind: 'call' }>

/**
 * The formula as it is worked out by hand: each `interpolate(table, x)` written as the straight line between the two points on
 * either side of x, or as the point itself. Nothing where the formula interpolates in no table.
 */
export function workedOut(formula: Formula, operands: Operands, slots: Float64Array): Formula | undefined {
  if (![...operands.values()].some(found => 'kind' in found && found.kind === 'points')) return undefined
  const seats = (name: string): Seat => {
    const found = operands.get(name)
    if (!found) throw new Error(`nothing is called \`${name}\``)
    return seatOf(found)
  }
  const write = (node: Node): Node =>
    node.kind === 'call' && node.fn === 'interpolate' ? between(node) : mapNode(node, write)
  return { ...formula, tree: write(formula.tree) }

  function between(call: Call): Node {
    const [table, key] = call.args
    const points = table?.kind === 'name' ? operands.get(table.name) : undefined
    if (!points || !('kind' in points) || points.kind !== 'points' || !key)
      throw new Error('`interpolate` takes a table and a value')
    return straightLine(points, { key, at: compileNode(key, seats)(slots), write })
  }
}

function straightLine(points: Points, about: { key: Node; at: number; write: (node: Node) => Node }): Node {
  const on = points.x.findIndex(x => Math.abs(x - about.at) <= 1e-9 * Math.max(Math.abs(x), Math.abs(about.at)))
  const upper = points.x.findIndex(x => x > about.at)
  const [from, to] = [points.typed[on >= 0 ? on : upper - 1], points.typed[on >= 0 ? on : upper]]
  if (!from || !to) throw new Error('a value between points has one on each side')
  if (on >= 0) return literal(from.y)
  const share = over(minus(about.write(about.key), literal(from.x)), minus(literal(to.x), literal(from.x)))
  return arithmetic('+', literal(from.y), arithmetic('*', minus(literal(to.y), literal(from.y)), share))
}

export const nowhere = { start: 0, end: 0 }
export const arithmetic = (op: '+' | '-' | '*' | '/', left: Node, right: Node): Node => ({
  kind: 'arithmetic',
  op,
  left,
  right,
  at: nowhere,
  span: nowhere,
})
const minus = (left: Node, right: Node): Node => arithmetic('-', left, right)
const over = (left: Node, right: Node): Node => arithmetic('/', left, right)

function literal({ digits, unit }: Typed): Node {
  const [text, negative] = digits.startsWith('-') ? [digits.slice(1), true] : [digits, false]
  const node: Node =
    unit.text === ''
      ? { kind: 'number', value: Number(text), text, span: nowhere }
      : { kind: 'quantity', value: Number(text), text, unit, span: nowhere }
  return negative ? { kind: 'negative', of: node, span: nowhere } : node
}

/** The node with each of its parts written anew. */
export function mapNode(node: Node, write: (part: Node) => Node): Node {
  switch (node.kind) {
    case 'negative':
    case 'not':
      return { ...node, of: write(node.of) }
    case 'arithmetic':
    case 'comparison':
    case 'logic':
      return { ...node, left: write(node.left), right: write(node.right) }
    case 'call':
      return { ...node, args: node.args.map(write) }
    default:
      return node
  }
}
