import { quotient, raised } from './guarded.ts'
import { constant, isConstant, type One, type Operation, one, two } from './operation.ts'

type Op = '+' | '-' | '*' | '/' | '^'

const apply: Readonly<Record<Op, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': quotient,
  '^': raised,
}

/** Two operands joined; a power that is known now is a product or a root where it is a usual one. */
export function arithmetic(op: Op, left: Operation, right: Operation): Operation {
  if (isConstant(right) && !isConstant(left)) {
    if (op === '^') return knownPower(left, right.value)
    // A divisor known now needs no test each time.
    if (op === '/' && Number.isNaN(quotient(1, right.value))) return constant(Number.NaN)
  }
  return two(left, right, { name: op, apply: apply[op] })
}

const usual = new Map<number, One>([
  [2, { name: 'square', apply: x => x * x }],
  [3, { name: 'cube', apply: x => x * x * x }],
  [4, { name: 'fourth', apply: x => x * x * (x * x) }],
  [0.5, { name: 'sqrt', apply: Math.sqrt }],
  [-1, { name: 'inverse', apply: x => quotient(1, x) }],
])

const knownPower = (of: Operation, by: number): Operation =>
  by === 1 ? of : one(of, usual.get(by) ?? { apply: x => raised(x, by) })
