import { larger, quotient, smaller } from './guarded.ts'
import type { OneName, Operation } from './operation.ts'
import { operationsOf, type SeatOf } from './operations.ts'
import type { Part } from './part.ts'
import { closureOf, joined } from './part-closure.ts'
import type { Compiled, Formula, Node } from './types.ts'

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
  return closureOf(partOf(operationsOf(node, seatOf)))
}

function partOf(operation: Operation): Part {
  switch (operation.kind) {
    case 'constant':
    case 'slot':
      return operation
    case 'one':
      return onOne(operation)
    case 'two':
      return onTwo(operation)
    case 'total':
      return { kind: 'closure', run: total(operation.of.map(each => closureOf(partOf(each)))) }
  }
}

const square = (x: number): number => x * x
const cube = (x: number): number => x * x * x

/** The usual ones with the function in place: calling one that is handed in costs more than working it out. */
const inPlace: Readonly<Partial<Record<OneName, (x: Compiled) => Compiled>>> = {
  sqrt: x => s => Math.sqrt(x(s)),
  cbrt: x => s => Math.cbrt(x(s)),
  abs: x => s => Math.abs(x(s)),
  square: x => s => square(x(s)),
  cube: x => s => cube(x(s)),
  fourth: x => s => square(square(x(s))),
  inverse: x => s => quotient(1, x(s)),
}

function onOne({ name, apply, of }: Extract<Operation, { kind: 'one' }>): Part {
  if (name === 'square' && of.kind === 'slot')
    return { kind: 'shape', name: 'q', leaves: { numbers: [of.at], inner: [] } }
  const x = closureOf(partOf(of))
  return { kind: 'closure', run: inPlace[name]?.(x) ?? (slots => apply(x(slots))) }
}

function onTwo({ name, apply, left, right }: Extract<Operation, { kind: 'two' }>): Part {
  const [x, y] = [partOf(left), partOf(right)]
  if (name !== 'other' && name !== 'min' && name !== 'max') return joined(name, x, y)
  const [a, b] = [closureOf(x), closureOf(y)]
  if (name === 'min') return { kind: 'closure', run: s => smaller(a(s), b(s)) }
  if (name === 'max') return { kind: 'closure', run: s => larger(a(s), b(s)) }
  return { kind: 'closure', run: s => apply(a(s), b(s)) }
}

const total =
  (of: readonly Compiled[]): Compiled =>
  slots => {
    let so = 0
    for (const each of of) so += each(slots)
    return so
  }
