import { fromUnit, inUnit } from '../quantity/to-unit.ts'
import { ceilOf, floorOf, isAtMost, isBelow, isEqual, roundOf } from '../quantity/tolerance.ts'
import { arithmeticClosure } from './arithmetic-closure.ts'
import { constant, isConstant, type Part, slot } from './part.ts'
import { closureOf } from './part-closure.ts'
import { scaleReading } from './scale-reading.ts'
import { tableClosure } from './table-closure.ts'
import type { Comparison, Compiled, Formula, FunctionName, Node, Seat } from './types.ts'

export type SeatOf = (name: string) => Seat

/**
 * A formula to a function from slots (SI numbers) to its SI number. Comparisons give 1 or 0 and hold within a relative 1e-9. A NaN
 * operand gives NaN everywhere; dividing by nought or leaving a function's domain gives NaN or an infinity that nothing hides.
 * The formula must be proved first: seats of a wrong kind throw.
 */
export function compile(formula: Formula, seatOf: SeatOf): Compiled {
  return compileNode(formula.tree, seatOf)
}

/** The same for one node of a tree, as for one side of a check. */
export function compileNode(node: Node, seatOf: SeatOf): Compiled {
  return closureOf(part(node, seatOf))
}

function part(node: Node, seatOf: SeatOf): Part {
  switch (node.kind) {
    case 'number':
      return constant(node.value)
    case 'quantity':
      return constant(fromUnit(node.value, node.unit))
    case 'unit':
      return constant(node.unit.factor)
    case 'pi':
      return constant(Math.PI)
    case 'name':
      return seated(node.name, seatOf)
    case 'negative':
      return mapped(part(node.of, seatOf), x => -x)
    case 'arithmetic':
      return reading(node, seatOf) ?? arithmeticClosure(node.op, part(node.left, seatOf), part(node.right, seatOf))
    case 'comparison':
      return paired(part(node.left, seatOf), part(node.right, seatOf), comparisons[node.op])
    case 'logic':
      return paired(part(node.left, seatOf), part(node.right, seatOf), node.op === 'and' ? both : either)
    case 'not':
      return mapped(part(node.of, seatOf), x => (Number.isNaN(x) ? x : x === 0 ? 1 : 0))
    case 'call':
      return called(node, seatOf)
  }
}

function reading(node: Node, seatOf: SeatOf): Part | undefined {
  const read = scaleReading(node)
  return read && mapped(part(read.of, seatOf), si => inUnit(si, read.unit))
}

function seated(name: string, seatOf: SeatOf): Part {
  const seat = seatOf(name)
  if (seat.kind === 'slot') return slot(seat.slot)
  throw new TypeError(`\`${name}\` is a ${seat.kind === 'slots' ? 'list' : 'table'} where one value is expected`)
}

/** One argument; folded where it is constant. */
function mapped(of: Part, apply: (x: number) => number): Part {
  if (isConstant(of)) return constant(apply(of.value))
  const inner = closureOf(of)
  return { kind: 'closure', run: slots => apply(inner(slots)) }
}

function paired(left: Part, right: Part, apply: (a: number, b: number) => number): Part {
  if (isConstant(left) && isConstant(right)) return constant(apply(left.value, right.value))
  const a = closureOf(left)
  const b = closureOf(right)
  return { kind: 'closure', run: slots => apply(a(slots), b(slots)) }
}

/** A condition on two numbers: 1 or 0, and NaN where either is not a finite number. */
const condition =
  (holds: (a: number, b: number) => boolean) =>
  (a: number, b: number): number =>
    Number.isFinite(a) && Number.isFinite(b) ? (holds(a, b) ? 1 : 0) : Number.NaN

const comparisons: Readonly<Record<Comparison, (a: number, b: number) => number>> = {
  '<': condition(isBelow),
  '<=': condition(isAtMost),
  '>': condition((a, b) => isBelow(b, a)),
  '>=': condition((a, b) => isAtMost(b, a)),
  '==': condition(isEqual),
  '!=': condition((a, b) => !isEqual(a, b)),
}

const both = (a: number, b: number): number => (Number.isNaN(a + b) ? Number.NaN : a !== 0 && b !== 0 ? 1 : 0)
const either = (a: number, b: number): number => (Number.isNaN(a + b) ? Number.NaN : a !== 0 || b !== 0 ? 1 : 0)

/** Infinities end here instead of becoming an ordinary number. */
const finite =
  (apply: (x: number) => number) =>
  (x: number): number =>
    Number.isFinite(x) ? apply(x) : Number.NaN

const singles: Readonly<Partial<Record<FunctionName, (x: number) => number>>> = {
  sqrt: Math.sqrt,
  cbrt: Math.cbrt,
  abs: Math.abs,
  exp: finite(Math.exp),
  log: Math.log,
  log10: Math.log10,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: finite(Math.atan),
  floor: floorOf,
  ceil: ceilOf,
  round: roundOf,
}

/** The usual ones with the function in place: calling one that is handed in costs more than working it out. */
const inPlace: Readonly<Partial<Record<FunctionName, (x: Compiled) => Compiled>>> = {
  sqrt: x => s => Math.sqrt(x(s)),
  cbrt: x => s => Math.cbrt(x(s)),
  abs: x => s => Math.abs(x(s)),
}

function singly(of: Part, { fn, single }: { fn: FunctionName; single: (x: number) => number }): Part {
  const placed = inPlace[fn]
  return placed && !isConstant(of) ? { kind: 'closure', run: placed(closureOf(of)) } : mapped(of, single)
}

function called(node: Extract<Node, { kind: 'call' }>, seatOf: SeatOf): Part {
  const [first, second] = node.args
  if (!first) throw new TypeError(`\`${node.fn}\` has no argument`)
  const single = singles[node.fn]
  if (single) return singly(part(first, seatOf), { fn: node.fn, single })
  if (node.fn === 'min' || node.fn === 'max') return extreme(members(node.args, seatOf), node.fn)
  if (node.fn === 'sum') return total(members([first], seatOf))
  if (!second) throw new TypeError(`\`${node.fn}\` has one argument`)
  if (node.fn === 'atan2') return paired(part(first, seatOf), part(second, seatOf), arctangent)
  return mapped(part(second, seatOf), tableClosure(tableSeat(first, seatOf)))
}

const arctangent = (y: number, x: number): number => (Number.isFinite(x + y) ? Math.atan2(y, x) : Number.NaN)

function tableSeat(node: Node, seatOf: SeatOf): Extract<Seat, { kind: 'table' }> {
  const seat = node.kind === 'name' ? seatOf(node.name) : undefined
  if (seat?.kind === 'table') return seat
  throw new TypeError('`interpolate` takes a table first')
}

/** Arguments with lists opened up. */
function members(nodes: readonly Node[], seatOf: SeatOf): readonly Part[] {
  return nodes.flatMap(node => {
    const seat = node.kind === 'name' ? seatOf(node.name) : undefined
    return seat?.kind === 'slots' ? seat.slots.map(slot) : [part(node, seatOf)]
  })
}

function extreme(of: readonly Part[], fn: 'min' | 'max'): Part {
  if (of.length === 0) return constant(Number.NaN)
  return of.reduce((left, right) => {
    if (isConstant(left) && isConstant(right)) return paired(left, right, fn === 'min' ? smaller : larger)
    const [a, b] = [closureOf(left), closureOf(right)]
    return { kind: 'closure', run: fn === 'min' ? s => smaller(a(s), b(s)) : s => larger(a(s), b(s)) }
  })
}

const smaller = (a: number, b: number): number =>
  Number.isFinite(a) && Number.isFinite(b) ? Math.min(a, b) : Number.NaN
const larger = (a: number, b: number): number =>
  Number.isFinite(a) && Number.isFinite(b) ? Math.max(a, b) : Number.NaN

function total(of: readonly Part[]): Part {
  const runs = of.map(closureOf)
  return {
    kind: 'closure',
    run: slots => {
      let so = 0
      for (const each of runs) so += each(slots)
      return so
    },
  }
}
