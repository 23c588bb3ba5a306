import { constant, isConstant, type Part } from './part.ts'
import type { Compiled } from './types.ts'

type Op = '+' | '-' | '*' | '/' | '^'

/** Divided by nought or by an infinity gives NaN, so that neither is lost further on. */
const quotient = (a: number, b: number): number => (b !== 0 && Number.isFinite(b) ? a / b : Number.NaN)

/** A power; NaN to the power 0 stays NaN, and an infinity on either side does not become a number. */
const raised = (a: number, b: number): number => (Number.isFinite(a) && Number.isFinite(b) ? a ** b : Number.NaN)

const apply: Readonly<Record<Op, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': quotient,
  '^': raised,
}

/** Two operands joined: constants folded, the usual shapes (slot and slot, slot and constant, small powers) without inner calls. */
export function arithmeticClosure(op: Op, left: Part, right: Part): Part {
  if (isConstant(left) && isConstant(right)) return constant(apply[op](left.value, right.value))
  if (op === '^' && isConstant(right)) return { kind: 'closure', run: constantPower(left, right.value) }
  if (op === '/' && isConstant(right)) return { kind: 'closure', run: overConstant(left, right.value) }
  if (left.kind === 'slot' && right.kind === 'slot') return { kind: 'closure', run: slotSlot(op, left.at, right.at) }
  if (isConstant(left)) return { kind: 'closure', run: constantAny(op, left.value, read(right)) }
  if (isConstant(right)) return { kind: 'closure', run: anyConstant(op, read(left), right.value) }
  if (right.kind === 'slot') return { kind: 'closure', run: anySlot(op, read(left), right.at) }
  return { kind: 'closure', run: anyAny(op, read(left), read(right)) }
}

function read(part: Part): Compiled {
  if (part.kind === 'closure') return part.run
  if (part.kind === 'constant') return () => part.value
  const { at } = part
  return s => s[at] as number
}

function slotSlot(op: Op, a: number, b: number): Compiled {
  switch (op) {
    case '+':
      return s => (s[a] as number) + (s[b] as number)
    case '-':
      return s => (s[a] as number) - (s[b] as number)
    case '*':
      return s => (s[a] as number) * (s[b] as number)
    case '/':
      return s => quotient(s[a] as number, s[b] as number)
    case '^':
      return s => raised(s[a] as number, s[b] as number)
  }
}

function constantAny(op: Op, a: number, b: Compiled): Compiled {
  switch (op) {
    case '+':
      return s => a + b(s)
    case '-':
      return s => a - b(s)
    case '*':
      return s => a * b(s)
    case '/':
      return s => quotient(a, b(s))
    case '^':
      return s => raised(a, b(s))
  }
}

function anyConstant(op: Op, a: Compiled, b: number): Compiled {
  switch (op) {
    case '+':
      return s => a(s) + b
    case '-':
      return s => a(s) - b
    case '*':
      return s => a(s) * b
    default:
      return anyAny(op, a, () => b)
  }
}

function anySlot(op: Op, a: Compiled, b: number): Compiled {
  switch (op) {
    case '+':
      return s => a(s) + (s[b] as number)
    case '-':
      return s => a(s) - (s[b] as number)
    case '*':
      return s => a(s) * (s[b] as number)
    case '/':
      return s => quotient(a(s), s[b] as number)
    case '^':
      return s => raised(a(s), s[b] as number)
  }
}

function anyAny(op: Op, a: Compiled, b: Compiled): Compiled {
  switch (op) {
    case '+':
      return s => a(s) + b(s)
    case '-':
      return s => a(s) - b(s)
    case '*':
      return s => a(s) * b(s)
    case '/':
      return s => quotient(a(s), b(s))
    case '^':
      return s => raised(a(s), b(s))
  }
}

/** A divisor known now needs no test at each call. */
function overConstant(left: Part, by: number): Compiled {
  if (by === 0 || !Number.isFinite(by)) return () => Number.NaN
  if (left.kind === 'slot') {
    const { at } = left
    return s => (s[at] as number) / by
  }
  const a = read(left)
  return s => a(s) / by
}

function constantPower(left: Part, by: number): Compiled {
  const a = read(left)
  if (left.kind === 'slot' && by === 2) {
    const { at } = left
    return s => (s[at] as number) * (s[at] as number)
  }
  switch (by) {
    case 1:
      return a
    case 2:
      return s => square(a(s))
    case 3:
      return s => cube(a(s))
    case 4:
      return s => square(square(a(s)))
    case 0.5:
      return s => Math.sqrt(a(s))
    case -1:
      return s => quotient(1, a(s))
    default:
      return s => raised(a(s), by)
  }
}

const square = (x: number): number => x * x
const cube = (x: number): number => x * x * x
