import type { Node } from '../../src/formula/types.ts'
import { fromUnit } from '../../src/quantity/to-unit.ts'
import { ceilOf, floorOf, isAtMost, isBelow, isEqual, roundOf } from '../../src/quantity/tolerance.ts'

const finite = Number.isFinite

/** What a formula means, one operation after the other and nothing clever: the closures must give the same bits. */
export function referenceValue(node: Node, numberOf: (name: string) => number): number {
  const value = (of: Node): number => referenceValue(of, numberOf)
  switch (node.kind) {
    case 'number':
      return node.value
    case 'quantity':
      return fromUnit(node.value, node.unit)
    case 'unit':
      return node.unit.factor
    case 'pi':
      return Math.PI
    case 'name':
      return numberOf(node.name)
    case 'negative':
      return -value(node.of)
    case 'not':
      return truth(value(node.of) === 0, value(node.of))
    case 'arithmetic':
      return arithmetic[node.op](value(node.left), value(node.right), node)
    case 'logic': {
      const [a, b] = [value(node.left), value(node.right)]
      return truth(node.op === 'and' ? a !== 0 && b !== 0 : a !== 0 || b !== 0, a, b)
    }
    case 'comparison': {
      const [a, b] = [value(node.left), value(node.right)]
      return finite(a) && finite(b) ? truth(holds[node.op](a, b)) : Number.NaN
    }
    case 'call':
      return call(node.fn, node.args.map(value))
  }
}

const truth = (is: boolean, ...of: number[]): number => (of.some(Number.isNaN) ? Number.NaN : is ? 1 : 0)

const holds = {
  '<': isBelow,
  '<=': isAtMost,
  '>': (a: number, b: number) => isBelow(b, a),
  '>=': (a: number, b: number) => isAtMost(b, a),
  '==': isEqual,
  '!=': (a: number, b: number) => !isEqual(a, b),
}

type Arithmetic = Extract<Node, { kind: 'arithmetic' }>

const arithmetic: Record<Arithmetic['op'], (a: number, b: number, node: Arithmetic) => number> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => (b !== 0 && finite(b) ? a / b : Number.NaN),
  '^': (a, b, node) => (known(node.right) && !known(node.left) ? knownPower(a, b) : power(a, b)),
}

const power = (a: number, b: number): number => (finite(a) && finite(b) ? a ** b : Number.NaN)

/** A power that the formula states itself is a product or a root. */
function knownPower(a: number, b: number): number {
  if (b === 0.5) return Math.sqrt(a)
  if (b === -1) return arithmetic['/'](1, a, undefined as never)
  return b === 1 ? a : b === 2 ? a * a : b === 3 ? a * a * a : b === 4 ? a * a * (a * a) : power(a, b)
}

/** Whether a node holds no name, so that it is worked out once. */
function known(node: Node): boolean {
  if (node.kind === 'name') return false
  if (node.kind === 'negative' || node.kind === 'not') return known(node.of)
  if (node.kind === 'call') return node.args.every(known)
  return 'left' in node ? known(node.left) && known(node.right) : true
}

function call(fn: string, [a = Number.NaN, b = Number.NaN]: number[]): number {
  switch (fn) {
    case 'min':
    case 'max':
      return finite(a) && finite(b) ? Math[fn](a, b) : Number.NaN
    case 'atan2':
      return finite(a + b) ? Math.atan2(a, b) : Number.NaN
    case 'exp':
    case 'atan':
      return finite(a) ? Math[fn](a) : Number.NaN
    case 'floor':
      return floorOf(a)
    case 'ceil':
      return ceilOf(a)
    case 'round':
      return roundOf(a)
    case 'sqrt':
    case 'cbrt':
    case 'abs':
    case 'log':
      return Math[fn](a)
    default:
      throw new Error(fn)
  }
}
