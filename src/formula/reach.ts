import { isAtMost, isBelow, isEqual } from '../quantity/tolerance.ts'
import type { Unit } from '../quantity/types.ts'
import { one } from '../quantity/unit.ts'
import { type LineInput, LineReach, type Operand, type ShownResult } from './line-reach.ts'
import type { Comparison, Compiled } from './types.ts'

export type { Operand } from './line-reach.ts'

export interface Digits {
  /** What to print for each operand in this line, in the order given. */
  readonly operands: readonly string[]
  readonly result: string
  /** True where the result is shown with fewer figures: a difference of nearly equal numbers. */
  readonly fewer: boolean
  /** One unit in the result's last figure, in the result's unit: what recomputing may differ by. */
  readonly place: number
}

/**
 * The digits to print in a line so that recomputing it from the printed characters gives the printed result within one unit in its
 * last figure. Operands start at the notebook's figures; while the line's reach (what half a unit in the last place of each operand
 * can do to the result) exceeds that unit, the operand that contributes most gets one more figure, in this line only. Past ten
 * figures the result is shown with fewer instead. Throws where the line itself has no finite result.
 */
export function chooseDigits(input: LineInput): Digits {
  const line = new LineReach(input)
  if (!Number.isFinite(line.result)) throw new RangeError('The line has no finite result')
  for (let figures = input.figures; figures > 0; figures--) {
    const shown = line.shownAt(figures)
    if (raisedUntilClosed(line, shown)) return { ...shown, operands: line.digits(), fewer: figures < input.figures }
  }
  return stubborn(line, input.figures)
}

function raisedUntilClosed(line: LineReach, shown: ShownResult): boolean {
  do {
    if (line.reach() <= shown.place * (1 + 1e-9) && line.closesOn(shown)) return true
  } while (line.raise())
  return false
}

/** A line whose reach no figures tame: it stands at a step of its formula, or its result is nought beside its operands. */
function stubborn(line: LineReach, figures: number): Digits {
  const shown = line.shownAt(figures)
  if (line.closesOn(shown)) return { ...shown, operands: line.digits(), fewer: false }
  const reach = line.reach()
  if (Math.abs(line.result) <= reach) return { operands: line.digits(), result: '0', fewer: true, place: reach }
  return { ...line.shownAt(1), operands: line.digits(), fewer: true }
}

/**
 * The digits to print in a condition (1 or 0) so that the printed numbers give the same outcome: more figures for the operand that turns
 * it, or for each in turn where only several together do.
 */
export function chooseConditionDigits(input: Omit<LineInput, 'resultUnit'>): Pick<Digits, 'operands'> {
  const line = new LineReach({ ...input, resultUnit: one })
  while (line.recomputed() !== line.result) if (!line.raise() && !line.raiseFewest()) break
  return { operands: line.digits() }
}

export interface CheckInput {
  readonly op: Comparison
  /** The two sides of the comparison, compiled. */
  readonly left: Compiled
  readonly right: Compiled
  /** Full values in SI. Not changed. */
  readonly slots: Float64Array
  readonly operands: readonly Operand[]
  /** The unit both sides are printed in. */
  readonly unit: Unit
  readonly figures: number
  /** A side whose digits are the author's own or a table's. */
  readonly leftDigits?: string
  readonly rightDigits?: string
}

export interface CheckDigits {
  readonly operands: readonly string[]
  readonly left: string
  readonly right: string
  readonly satisfied: boolean
  /** True where even ten figures of the operands do not close the sides or give the outcome. */
  readonly fewer: boolean
}

/** Past these figures two sides that print alike count as equal by the tolerance of comparisons. */
const mostSideFigures = 12

/**
 * The digits of both sides of a check, and of the numbers put into them, so that the printed comparison gives the check's own outcome
 * (0.9999 <= 1.000, never 1.000 <= 1.000 `not satisfied`) and each side closes as any other line.
 */
export function chooseCheckDigits(input: CheckInput): CheckDigits {
  const { slots, operands, unit } = input
  const side = (compiled: Compiled): LineReach =>
    new LineReach({ ...input, compiled, slots, operands, resultUnit: unit })
  const sides = { left: side(input.left), right: side(input.right) }
  const { left, right } = sides
  if (!Number.isFinite(left.result) || !Number.isFinite(right.result))
    throw new RangeError('A side has no finite result')
  const satisfied = holds(input.op, left.result, right.result)
  for (let figures = input.figures; figures <= mostSideFigures; figures++) {
    const shown = shownSides(sides, { ...input, figures })
    const agrees = holds(input.op, Number(shown.left.result), Number(shown.right.result)) === satisfied
    if (agrees) return { ...closed(sides, { shown, op: input.op, satisfied }), satisfied }
  }
  const shown = shownSides(sides, input)
  return { ...closed(sides, { shown, op: input.op, satisfied }), satisfied, fewer: true }
}

interface Sides {
  readonly left: LineReach
  readonly right: LineReach
}

interface ShownSides {
  readonly left: ShownResult
  readonly right: ShownResult
}

function shownSides({ left, right }: Sides, { figures, leftDigits, rightDigits }: CheckInput): ShownSides {
  const shown = (side: LineReach, digits: string | undefined): ShownResult => {
    const own = side.shownAt(figures)
    return digits === undefined ? own : { ...own, result: digits }
  }
  return { left: shown(left, leftDigits), right: shown(right, rightDigits) }
}

interface Outcome {
  readonly shown: ShownSides
  readonly op: Comparison
  readonly satisfied: boolean
}

/** Raises the operands until both sides close and recomputing them gives the outcome. */
function closed(sides: Sides, { shown, op, satisfied }: Outcome): Omit<CheckDigits, 'satisfied'> {
  const { left, right } = sides
  const isClosed = [raisedUntilClosed(left, shown.left), raisedUntilClosed(right, shown.right)].every(Boolean)
  left.raiseTo(right)
  right.raiseTo(left)
  const same = raisedUntil(sides, () => holds(op, left.recomputed(), right.recomputed()) === satisfied)
  const stillClosed = isClosed || (left.closesOn(shown.left) && right.closesOn(shown.right))
  return { operands: left.digits(), left: shown.left.result, right: shown.right.result, fewer: !(same && stillClosed) }
}

/** Raises both sides together: what one of them needs, the other gets. */
function raisedUntil({ left, right }: Sides, isReached: () => boolean): boolean {
  for (;;) {
    if (isReached()) return true
    const isRaised = [left.raise(), right.raise()].some(Boolean)
    if (!isRaised && ![left.raiseFewest(), right.raiseFewest()].some(Boolean)) return false
    left.raiseTo(right)
    right.raiseTo(left)
  }
}

function holds(op: Comparison, a: number, b: number): boolean {
  switch (op) {
    case '<':
      return isBelow(a, b)
    case '<=':
      return isAtMost(a, b)
    case '>':
      return isBelow(b, a)
    case '>=':
      return isAtMost(b, a)
    case '==':
      return isEqual(a, b)
    case '!=':
      return !isEqual(a, b)
  }
}
