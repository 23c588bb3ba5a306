import type { CheckLine, FormulaLine, Line, LookLine, Printed, Substitution } from '../../src/evaluation/workings.ts'
import { staysInLine } from '../../src/formula/bare-unit.ts'
import { compileNode } from '../../src/formula/compile.ts'
import { shownText } from '../../src/formula/formula-text.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Comparison, Node } from '../../src/formula/types.ts'
import { lastPlace } from '../../src/quantity/number-print.ts'
import { inUnit } from '../../src/quantity/to-unit.ts'
import { isAtMost, isBelow, isEqual } from '../../src/quantity/tolerance.ts'
import type { Shown, Unit } from '../../src/quantity/types.ts'

/**
 * What is wrong with a printed line, recomputed from nothing but its printed characters: the formula with the printed digits put
 * in is read as a formula of its own. A result may differ by one unit in its last figure, a verdict not at all.
 */
export function faultsOf(line: Line, figures = 4): string[] {
  switch (line.kind) {
    case 'formula':
      return formulaFaults(line, figures)
    case 'look':
      return lookFaults(line, figures)
    case 'branch':
      return line.working && (recomputed(line.working) === 1) !== line.holds ? [`${line.number}: the condition`] : []
    case 'check':
      return checkFaults(line, figures)
    case 'solve':
      return []
  }
}

const isOne = (printed: Printed | readonly Printed[]): printed is Printed => 'shown' in printed

export function numbersIn({ formula, numbers, operands, bare }: Substitution): string {
  const shownOf = (name: string): Shown | readonly Shown[] => {
    const printed = operands.get(name)
    if (!printed) return []
    return isOne(printed) ? printed.shown : printed.map(each => each.shown)
  }
  return shownText(numbers ?? formula, shownOf, { bare })
}

/** The tree of the line with its numbers put in; it holds no name. */
function treeOf(working: Substitution): Node {
  const text = numbersIn(working)
  const read = readFormula(text)
  if (!read.ok) throw new Error(`cannot read \`${text}\`: ${read.fault.says}`)
  return read.formula.tree
}

const numberOf = (tree: Node): number =>
  compileNode(tree, name => {
    throw new Error(`\`${name}\` is printed without a number`)
  })(new Float64Array(0))

const recomputed = (working: Substitution): number => numberOf(treeOf(working))

/** The recomputed number in a unit: bare numbers are in it already, save degrees and percent, which stay in the line. */
const inShown = (value: number, bare: boolean, unit: Unit): number =>
  bare && !staysInLine(unit) ? value : inUnit(value, unit)

function closes(value: number, shown: Shown, figures: number): boolean {
  const place = shown.exact ? lastPlace(shown.digits) : lastPlace(shown.digits, figures)
  return Math.abs(Math.round(value / place) * place - Number(shown.digits)) <= place * (1 + 1e-9)
}

function formulaFaults(line: FormulaLine, figures: number): string[] {
  const { working, result } = line
  const value = inShown(recomputed(working), working.bare, result.unit)
  return closes(value, result, line.fewer ? 1 : figures)
    ? []
    : [`${line.number}: ${numbersIn(working)} = ${value}, printed ${result.digits} ${result.unit.text}`]
}

function lookFaults(line: LookLine, figures: number): string[] {
  const faults = line.interpolations.flatMap(({ working, result }) => {
    const value = inShown(recomputed(working), working.bare, result.unit)
    return closes(value, result, figures)
      ? []
      : [`${line.number}: ${numbersIn(working)} = ${value}, printed ${result.digits}`]
  })
  const last = line.interpolations.at(-1)?.result.digits ?? line.corners[0]?.[0]
  const same = line.result.unit.text === line.unit.text
  if (same && last !== line.result.digits) faults.push(`${line.number}: reads ${last}, printed ${line.result.digits}`)
  if (!same) {
    const si = Number(last) * line.unit.factor
    if (!closes(inUnit(si, line.result.unit), line.result, figures)) faults.push(`${line.number}: the change of unit`)
  }
  return faults
}

function holds(op: Comparison, a: number, b: number): boolean {
  const table: Record<Comparison, boolean> = {
    '<': isBelow(a, b),
    '<=': isAtMost(a, b),
    '>': isBelow(b, a),
    '>=': isAtMost(b, a),
    '==': isEqual(a, b),
    '!=': !isEqual(a, b),
  }
  return table[op]
}

function checkFaults(line: CheckLine, figures: number): string[] {
  const { working, demand, capacity, ratio, satisfied } = line
  const tree = treeOf(working)
  const faults =
    (numberOf(tree) === 1) === satisfied ? [] : [`${line.number}: ${numbersIn(working)} is not ${satisfied}`]
  if (!demand || !capacity || tree.kind !== 'comparison') return faults
  const isLeft = tree.op === '<' || tree.op === '<='
  const [left, right] = isLeft ? [demand, capacity] : [capacity, demand]
  for (const [node, shown] of [
    [tree.left, left],
    [tree.right, right],
  ] as const) {
    const value = inShown(numberOf(node), working.bare, shown.unit)
    if (!closes(value, shown, figures))
      faults.push(`${line.number}: ${numbersIn(working)}: ${value}, printed ${shown.digits} ${shown.unit.text}`)
  }
  if (holds(tree.op, Number(left.digits), Number(right.digits)) !== satisfied)
    faults.push(`${line.number}: ${left.digits} ${tree.op} ${right.digits} is not ${satisfied}`)
  if (ratio && !ratioAgrees(Number(ratio.shown.digits), { op: tree.op, satisfied, exact: ratio.value }))
    faults.push(`${line.number}: ratio ${ratio.shown.digits} beside ${satisfied}`)
  return faults
}

/** A printed ratio above 1 beside `satisfied`, or below 1 beside `not satisfied`, would contradict the verdict. */
function ratioAgrees(printed: number, about: { op: Comparison; satisfied: boolean; exact: number }): boolean {
  const strict = about.op === '<' || about.op === '>'
  if (about.satisfied) return strict ? printed < 1 || about.exact < 1 : printed <= 1
  return strict ? printed >= 1 : printed > 1
}
