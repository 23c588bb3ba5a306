import { quotient, raised } from './guarded.ts'
import { constant, isConstant, type Part } from './part.ts'
import { joined } from './part-closure.ts'
import { powerClosure } from './power-closure.ts'

type Op = '+' | '-' | '*' | '/' | '^'

const apply: Readonly<Record<Op, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': quotient,
  '^': raised,
}

/** Two operands joined: constants folded, powers known now made products, and as few functions as the tables of shapes allow. */
export function arithmeticClosure(op: Op, left: Part, right: Part): Part {
  if (!isConstant(right)) return joined(op, left, right)
  if (isConstant(left)) return constant(apply[op](left.value, right.value))
  if (op === '^') return powerClosure(left, right.value)
  // A divisor known now needs no test at each call.
  if (op === '/' && Number.isNaN(quotient(1, right.value))) return constant(Number.NaN)
  return joined(op, left, right)
}
