import { compile, compileNode } from '../formula/compile.ts'
import { chooseCheckDigits, chooseConditionDigits, chooseDigits, type Operand } from '../formula/reach.ts'
import { coherent, coherentCheck } from '../formula/scale.ts'
import type { Compiled, Formula, Node } from '../formula/types.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import { workedOut } from './interpolation.ts'
import { literalOf } from './literal.ts'
import { seatOf } from './operands.ts'
import { onOwnScale } from './own-scale.ts'
import type { Entity, Operands } from './plan-types.ts'
import { exactOf, type PrintContext, printedOf } from './print-context.ts'
import type { Printed, Substitution } from './workings.ts'

export interface PrintedLine {
  readonly working: Substitution
  readonly result: Shown
  /** Fewer figures than asked: a difference of nearly equal numbers. */
  readonly fewer: boolean
}

type About = { readonly formula: Formula; readonly operands: Operands; readonly compiled: Compiled }

/** One line of working: digits of operands and result chosen so that recomputing the line gives the result. */
export function printFormula(context: PrintContext, about: About & { readonly unit: Unit }): PrintedLine {
  const seats = seatsOf(about.operands)
  const { slots } = context.results
  const chosen = chooseDigits({
    compiled: byHand(context, about).compiled,
    slots,
    operands: seats.map(({ entity }) => operandOf(context, entity)),
    resultUnit: about.unit,
    figures: context.figures,
  })
  const working = substitution(context, about, { seats, digits: chosen.operands, unit: about.unit })
  return { working, result: { digits: chosen.result, unit: about.unit, exact: false }, fewer: chosen.fewer }
}

/** The formula as it is worked out by hand, where that is another than the one in symbols: interpolations written out, a
 * temperature read on its own scale. */
function byHand(context: PrintContext, about: About): About {
  const straight = workedOut(about.formula, about.operands, context.results.slots) ?? about.formula
  const formula = onOwnScale(straight, about.operands)
  if (formula === about.formula) return about
  return { ...about, formula, compiled: compile(formula, seatIn(about.operands)) }
}

const seatIn = (operands: Operands) => (name: string) => {
  const found = operands.get(name)
  if (!found) throw new Error(`nothing is called \`${name}\``)
  return seatOf(found)
}

/** A condition of numbers, with as many figures as its outcome needs. */
export function printTruth(context: PrintContext, about: About): Substitution {
  const seats = seatsOf(about.operands)
  const { compiled } = byHand(context, about)
  const operands = seats.map(({ entity }) => operandOf(context, entity))
  const chosen = chooseConditionDigits({ compiled, slots: context.results.slots, operands, figures: context.figures })
  return substitution(context, about, { seats, digits: chosen.operands, unit: undefined })
}

export interface PrintedSides {
  readonly working: Substitution
  readonly left: string
  readonly right: string
}

/** A comparison with both sides, printed so that the printed numbers give its own outcome. Throws where it is no comparison. */
export function printSides(context: PrintContext, about: About & { readonly unit: Unit }): PrintedSides {
  const { unit, operands } = about
  const { tree } = byHand(context, about).formula
  if (tree.kind !== 'comparison') throw new Error('only a comparison has two sides')
  const seats = seatsOf(operands)
  const seat = seatIn(operands)
  const [leftDigits, rightDigits] = [tree.left, tree.right].map(side => exactSide(context, side, { operands, unit }))
  const chosen = chooseCheckDigits({
    op: tree.op,
    left: compileNode(tree.left, seat),
    right: compileNode(tree.right, seat),
    unit,
    slots: context.results.slots,
    operands: seats.map(({ entity }) => operandOf(context, entity)),
    figures: context.figures,
    ...(leftDigits === undefined ? {} : { leftDigits }),
    ...(rightDigits === undefined ? {} : { rightDigits }),
  })
  const working = substitution(context, about, { seats, digits: chosen.operands, unit: undefined })
  return { working, left: chosen.left, right: chosen.right }
}

/** The characters of a side that is only a number or only a name, where they are exact in the unit the sides are shown in. */
function exactSide(
  context: PrintContext,
  side: Node,
  about: { readonly operands: Operands; readonly unit: Unit },
): string | undefined {
  const literal = literalOf(side)
  if (literal) return literal.unit.text === about.unit.text ? typedDigits(literal.digits) : undefined
  const found = side.kind === 'name' ? about.operands.get(side.name) : undefined
  return found && 'kind' in found && found.kind === 'number' ? exactOf(context, found, about.unit) : undefined
}

interface Seat {
  readonly name: string
  readonly entity: Entity
}

/** Every number of the operands in order, the rows of a list one by one. */
function seatsOf(operands: Operands): Seat[] {
  return [...operands].flatMap(([name, found]) => {
    if (!('kind' in found)) return found.map(entity => ({ name, entity }))
    return found.kind === 'points' ? [] : [{ name, entity: found }]
  })
}

function operandOf(context: PrintContext, entity: Entity): Operand {
  const exact = exactOf(context, entity)
  return { slot: entity.slot, unit: entity.unit, ...(exact === undefined ? {} : { digits: exact }) }
}

function substitution(
  context: PrintContext,
  about: About,
  put: { readonly seats: readonly Seat[]; readonly digits: readonly string[]; readonly unit: Unit | undefined },
): Substitution {
  const printed = put.seats.map(({ entity }, index) => {
    const exact = exactOf(context, entity) !== undefined
    return printedOf(context, entity, { digits: put.digits[index] ?? '', unit: entity.unit, exact })
  })
  const operands = new Map<string, Printed | readonly Printed[]>()
  for (const [name, found] of about.operands) {
    const own = printed.filter((_, index) => put.seats[index]?.name === name)
    const [first] = own
    if ('kind' in found) {
      if (first) operands.set(name, first)
    } else operands.set(name, own)
  }
  const hand = byHand(context, about)
  const numbers = hand === about ? {} : { numbers: hand.formula }
  return { formula: about.formula, ...numbers, operands, bare: isBare(hand, put.unit) }
}

function isBare(about: About, unit: Unit | undefined): boolean {
  const unitOf = (name: string): Unit | undefined => {
    const found = about.operands.get(name)
    if (!found) return undefined
    if ('kind' in found) return found.kind === 'number' ? found.unit : undefined
    return found[0]?.unit
  }
  return unit ? coherent(about.formula, unitOf, unit) : coherentCheck(about.formula, unitOf)
}
