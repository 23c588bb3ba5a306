import { isNought } from '../formula/bare-unit.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { literalOf } from './literal.ts'
import type { PlannedBranch, PlannedFormula, PlannedLine, PlannedSolve } from './plan-types.ts'
import { printCheck } from './print-check.ts'
import { type PrintContext, printedOf, shownOf, siOf } from './print-context.ts'
import { printFormula, printTruth } from './print-formula.ts'
import { rowForPrint } from './print-given.ts'
import { printLook } from './print-look.ts'
import type { LineBase } from './printed-line.ts'
import { referenceOf } from './reference-of.ts'
import type { BranchLine, FormulaLine, Line, SolveLine } from './workings.ts'

/**
 * Every line that was reached and has its values. Lines are printed in the order of evaluation, since a line that hands a value on
 * prints the characters of the line that gave it.
 */
export function printTrail(context: PrintContext): ReadonlyMap<PlannedLine, Line> {
  const printed = new Map<PlannedLine, Line>()
  for (const line of context.results.plan.trail) {
    const made = printLine(context, line)
    if (made) printed.set(line, made)
  }
  return printed
}

/** The printed ones of some lines, in order. */
export const pick = (lines: readonly PlannedLine[], printed: ReadonlyMap<PlannedLine, Line>): Line[] =>
  lines.flatMap(line => printed.get(line) ?? [])

function printLine(context: PrintContext, line: PlannedLine): Line | undefined {
  const origin = context.numbering.lines.get(line)
  if (!origin) return undefined
  const base = {
    ...origin,
    says: line.says,
    place: line.place,
    ...referenceOf(line.source),
    ...(line.row ? { row: rowForPrint(line.row) } : {}),
  }
  switch (line.kind) {
    case 'formula':
      return formulaLine(context, line, base)
    case 'look':
      return printLook(context, line, base)
    case 'branch':
      return branchLine(context, line, base)
    case 'solve':
      return solveLine(context, line, base)
    case 'check':
      return printCheck(context, line, base)
  }
}

function formulaLine(context: PrintContext, line: PlannedFormula, base: LineBase): FormulaLine {
  const { gives, formula, operands, compiled } = line
  const { working, result, fewer } = printFormula(context, { formula, operands, compiled, unit: gives.unit })
  const plain = handedOn(context, line) ?? result
  context.printed.set(gives, plain)
  return { kind: 'formula', ...base, name: gives.name, symbol: gives.symbol, working, result: plain, fewer }
}

/** The result of a line that is only a number or only a name: the same characters, exact where they were exact. */
function handedOn(context: PrintContext, { formula, operands, gives }: PlannedFormula): Shown | undefined {
  const literal = literalOf(formula.tree)
  if (literal && isNought({ text: literal.digits, unit: literal.unit }) && gives.unit.offset === undefined)
    return { digits: '0', unit: gives.unit, exact: true }
  if (literal)
    return literal.unit.text === gives.unit.text
      ? { digits: typedDigits(literal.digits), unit: gives.unit, exact: true }
      : undefined
  const found = formula.tree.kind === 'name' ? operands.get(formula.tree.name) : undefined
  const same = found && 'kind' in found && found.kind === 'number' ? found : gives.same
  return same?.unit.text === gives.unit.text ? shownOf(context, same) : undefined
}

function branchLine(context: PrintContext, line: PlannedBranch, base: LineBase): BranchLine {
  if (line.chosen) {
    const { holds, because } = line.chosen
    return { kind: 'branch', ...base, holds, because }
  }
  if (!line.test) throw new Error('a branch is chosen by words or by numbers')
  const { formula, operands, compiled, slot } = line.test
  const working = printTruth(context, { formula, operands, compiled })
  return { kind: 'branch', ...base, holds: context.results.slots[slot] === 1, working }
}

function solveLine(context: PrintContext, line: PlannedSolve, base: LineBase): SolveLine {
  const answer = line.solve(context.results.slots)
  for (const { name, entity } of line.gives) {
    if (!line.step.gives[name]?.whole || !Number.isInteger(siOf(context, entity))) continue
    context.printed.set(entity, { digits: String(siOf(context, entity)), unit: entity.unit, exact: true })
  }
  return {
    kind: 'solve',
    ...base,
    title: line.step.method.title,
    method: line.step.method.says,
    takes: line.takes.map(({ says, value }) => ({ says, value: takenOf(context, value) })),
    gives: line.gives.map(({ entity }) => ({
      name: entity.name,
      id: context.numbering.origins.get(entity)?.id ?? '',
      says: entity.says,
      printed: printedOf(context, entity),
    })),
    verified: answer.ok ? answer.verified : '',
  }
}

function takenOf(
  context: PrintContext,
  value: PlannedSolve['takes'][number]['value'],
): SolveLine['takes'][number]['value'] {
  if (typeof value === 'string') return value
  return 'kind' in value ? printedOf(context, value) : value.map(entity => printedOf(context, entity))
}
