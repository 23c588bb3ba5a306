import { spokenNumber, typedDigits } from '../quantity/number-print.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import { unitSpoken } from '../quantity/unit.ts'
import { unitOfLiteral } from './bare-unit.ts'
import { callArguments, type ShownOf, valuesOf } from './printed-parts.ts'
import { symbolSpoken } from './symbol.ts'
import type { Comparison, Formula, FunctionName, Node } from './types.ts'

interface Leaves {
  readonly name: (name: string) => string
  readonly quantity: (node: Extract<Node, { kind: 'quantity' }>) => string
  readonly unit: (unit: Unit) => string
  readonly list: (name: string) => string
  readonly members: (name: string) => readonly string[]
}

/** A formula in symbols, in words: `alpha x times w times l x squared`. */
export function spokenSymbols(formula: Formula, symbolOf: (name: string) => string | undefined): string {
  const name = (each: string): string => symbolSpoken(symbolOf(each) ?? each)
  return speak(formula.tree, {
    name,
    quantity: node => literal(node, false),
    unit: unitSpoken,
    list: each => `the sum of all ${name(each)}`,
    members: each => [name(each)],
  })
}

/** A formula with numbers put in, in words. `bare`: without units. */
export function spokenNumbers(formula: Formula, shownOf: ShownOf, { bare }: { readonly bare: boolean }): string {
  const values = valuesOf(shownOf, { bare, write: measured })
  return speak(formula.tree, {
    name: name => values(name)[0] ?? symbolSpoken(name),
    quantity: node => literal(node, bare),
    unit: unit => (bare ? '' : unitSpoken(unit)),
    list: name => (values(name).length ? grouped(values(name).join(' plus ')) : '0'),
    members: values,
  })
}

/** A number with its unit in words: `26.08 kilonewton metres per metre`. */
export const spokenShown = (shown: Shown): string => measured(shown.digits, shown.unit)

const measured = (digits: string, unit: Unit | undefined): string =>
  [spokenNumber(digits), unit ? unitSpoken(unit) : ''].filter(Boolean).join(' ')

const literal = (node: Extract<Node, { kind: 'quantity' }>, bare: boolean): string =>
  measured(typedDigits(node.text), unitOfLiteral(node, bare))

const grouped = (words: string): string => `open bracket ${words} close bracket`

const relations: Readonly<Record<Comparison, string>> = {
  '<': 'is less than',
  '<=': 'is at most',
  '>': 'is greater than',
  '>=': 'is at least',
  '==': 'equals',
  '!=': 'does not equal',
}

const functions: Readonly<Record<FunctionName, string>> = {
  sqrt: 'the square root of',
  cbrt: 'the cube root of',
  abs: 'the absolute value of',
  min: 'the least of',
  max: 'the greatest of',
  exp: 'e to the power',
  log: 'the natural logarithm of',
  log10: 'the logarithm to base 10 of',
  sin: 'the sine of',
  cos: 'the cosine of',
  tan: 'the tangent of',
  asin: 'the inverse sine of',
  acos: 'the inverse cosine of',
  atan: 'the inverse tangent of',
  atan2: 'the angle of',
  floor: 'the whole part of',
  ceil: 'the next whole number above',
  round: 'the nearest whole number to',
  sum: 'the sum of',
  interpolate: 'the interpolation in',
}

function speak(node: Node, leaves: Leaves): string {
  const of = (each: Node): string => speak(each, leaves)
  switch (node.kind) {
    case 'number':
      return spokenNumber(typedDigits(node.text))
    case 'quantity':
      return leaves.quantity(node)
    case 'unit':
      return leaves.unit(node.unit)
    case 'name':
      return leaves.name(node.name)
    case 'pi':
      return 'pi'
    case 'negative':
      return `minus ${held(node.of, leaves)}`
    case 'arithmetic':
      return arithmetic(node, leaves)
    case 'comparison':
      return `${of(node.left)} ${relations[node.op]} ${of(node.right)}`
    case 'logic':
      return `${condition(node.left, { of, op: node.op })} ${node.op} ${condition(node.right, { of, op: node.op })}`
    case 'not':
      return `not ${grouped(of(node.of))}`
    case 'call':
      return call(node, leaves)
  }
}

function condition(node: Node, { of, op }: { of: (node: Node) => string; op: string }): string {
  return node.kind === 'logic' && node.op !== op ? grouped(of(node)) : of(node)
}

const isSum = (node: Node): boolean => node.kind === 'arithmetic' && (node.op === '+' || node.op === '-')
const isCompound = (node: Node): boolean => node.kind === 'arithmetic' || node.kind === 'negative'

/** In brackets where the words alone would not say how far the operand reaches. */
function held(node: Node, leaves: Leaves): string {
  return isSum(node) || node.kind === 'negative' ? grouped(speak(node, leaves)) : speak(node, leaves)
}

function tight(node: Node, leaves: Leaves): string {
  const words = speak(node, leaves)
  return isCompound(node) ? grouped(words) : words
}

const signs = { '+': 'plus', '-': 'minus', '*': 'times', '/': 'over' } as const

function arithmetic(node: Extract<Node, { kind: 'arithmetic' }>, leaves: Leaves): string {
  const { op, left, right } = node
  if (op === '^') return power(left, { exponent: right, leaves })
  const strong = op === '*' || op === '/'
  const a = strong ? held(left, leaves) : speak(left, leaves)
  const b = op === '+' ? speak(right, leaves) : op === '/' ? tight(right, leaves) : held(right, leaves)
  if (strong && b === '') return a
  return op === '*' && a === '' ? b : `${a || '1'} ${signs[op]} ${b || '1'}`
}

function power(base: Node, { exponent, leaves }: { exponent: Node; leaves: Leaves }): string {
  const words = tight(base, leaves)
  if (words === '') return ''
  if (exponent.kind === 'number' && exponent.value === 2) return `${words} squared`
  if (exponent.kind === 'number' && exponent.value === 3) return `${words} cubed`
  return `${words} to the power ${tight(exponent, leaves)}`
}

function call(node: Extract<Node, { kind: 'call' }>, leaves: Leaves): string {
  const [first] = node.args
  if (node.fn === 'sum' && first?.kind === 'name') return leaves.list(first.name)
  const args = callArguments(node, { of: arg => speak(arg, leaves), table: symbolSpoken, members: leaves.members })
  const inside =
    args.length > 1 ? grouped(args.join(', ')) : first && isCompound(first) ? grouped(args.join('')) : args.join('')
  return `${functions[node.fn]} ${inside}`
}
