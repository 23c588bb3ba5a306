import { fromUnit, inUnit } from '../quantity/to-unit.ts'
import { arctangent, both, comparisons, either, opposite, singles } from './applied.ts'
import { arithmetic } from './arithmetic-operation.ts'
import { larger, smaller } from './guarded.ts'
import { constant, type OneName, type Operation, one, slot, two } from './operation.ts'
import { scaleReading } from './scale-reading.ts'
import { tableClosure } from './table-closure.ts'
import type { FunctionName, Node, Seat } from './types.ts'

export type SeatOf = (name: string) => Seat

/** The operations of a node. The formula must be proved first: seats of a wrong kind throw. */
export function operationsOf(node: Node, seatOf: SeatOf): Operation {
  const inner = (of: Node): Operation => operationsOf(of, seatOf)
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
      return one(inner(node.of), { name: 'negative', apply: x => -x })
    case 'arithmetic':
      return reading(node, seatOf) ?? arithmetic(node.op, inner(node.left), inner(node.right))
    case 'comparison':
      return two(inner(node.left), inner(node.right), { apply: comparisons[node.op] })
    case 'logic':
      return two(inner(node.left), inner(node.right), { apply: node.op === 'and' ? both : either })
    case 'not':
      return one(inner(node.of), { apply: opposite })
    case 'call':
      return called(node, seatOf)
  }
}

function reading(node: Node, seatOf: SeatOf): Operation | undefined {
  const read = scaleReading(node)
  return read && one(operationsOf(read.of, seatOf), { apply: si => inUnit(si, read.unit) })
}

function seated(name: string, seatOf: SeatOf): Operation {
  const seat = seatOf(name)
  if (seat.kind === 'slot') return slot(seat.slot)
  throw new TypeError(`\`${name}\` is a ${seat.kind === 'slots' ? 'list' : 'table'} where one value is expected`)
}

function called(node: Extract<Node, { kind: 'call' }>, seatOf: SeatOf): Operation {
  const [first, second] = node.args
  if (!first) throw new TypeError(`\`${node.fn}\` has no argument`)
  const single = singles[node.fn]
  if (single) return one(operationsOf(first, seatOf), { name: nameOf(node.fn), apply: single })
  if (node.fn === 'min' || node.fn === 'max') return extreme(members(node.args, seatOf), node.fn)
  if (node.fn === 'sum') return { kind: 'total', of: members([first], seatOf) }
  if (!second) throw new TypeError(`\`${node.fn}\` has one argument`)
  if (node.fn === 'atan2') return two(operationsOf(first, seatOf), operationsOf(second, seatOf), { apply: arctangent })
  return one(operationsOf(second, seatOf), { apply: tableClosure(tableSeat(first, seatOf)) })
}

const nameOf = (fn: FunctionName): OneName => (fn === 'sqrt' || fn === 'cbrt' || fn === 'abs' ? fn : 'other')

function tableSeat(node: Node, seatOf: SeatOf): Extract<Seat, { kind: 'table' }> {
  const seat = node.kind === 'name' ? seatOf(node.name) : undefined
  if (seat?.kind === 'table') return seat
  throw new TypeError('`interpolate` takes a table first')
}

/** Arguments with lists opened up. */
function members(nodes: readonly Node[], seatOf: SeatOf): readonly Operation[] {
  return nodes.flatMap(node => {
    const seat = node.kind === 'name' ? seatOf(node.name) : undefined
    return seat?.kind === 'slots' ? seat.slots.map(slot) : [operationsOf(node, seatOf)]
  })
}

function extreme(of: readonly Operation[], fn: 'min' | 'max'): Operation {
  if (of.length === 0) return constant(Number.NaN)
  return of.reduce((left, right) => two(left, right, { name: fn, apply: fn === 'min' ? smaller : larger }))
}
