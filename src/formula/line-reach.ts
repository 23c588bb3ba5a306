import { digitsOf, lastPlace } from '../quantity/number-print.ts'
import { fromUnit, inUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import type { Compiled } from './types.ts'

/** One number that is put into a line. */
export interface Operand {
  readonly slot: number
  /** The unit it is printed in. */
  readonly unit: Unit
  /** The author's or a table's own characters in that unit: printed as they are and counted as exact. */
  readonly digits?: string
}

export interface LineInput {
  readonly compiled: Compiled
  /** Full values in SI. Not changed. */
  readonly slots: Float64Array
  readonly operands: readonly Operand[]
  /** The unit the result is printed in. */
  readonly resultUnit: Unit
  /** Significant figures of the notebook. */
  readonly figures: number
}

/** A result as it is printed, and one unit in its last figure. */
export interface ShownResult {
  readonly result: string
  readonly place: number
}

/** No operand is printed with more figures than this for the sake of a result. */
const mostFigures = 10

/** A number is written out with so many: an outcome that hangs on them gets them. */
const allFigures = 15

/** Rounding noise of a calculation, relative to the size of what goes into it. */
const noise = 1e-13

/** A printed line while its digits are being chosen: how many figures each operand has, and what that does to the result. */
export class LineReach {
  /** The result in its unit at full precision. */
  readonly result: number
  private readonly input: LineInput
  private readonly slots: Float64Array
  private readonly values: readonly number[]
  private readonly figures: number[]
  /** For each operand the first of the same value in the same unit: what stands twice in a line stands in the same digits. */
  private readonly firsts: readonly number[]

  constructor(input: LineInput) {
    this.input = input
    this.slots = input.slots.slice()
    this.values = input.operands.map(({ slot, unit }) => inUnit(input.slots[slot] ?? Number.NaN, unit))
    this.figures = input.operands.map(() => input.figures)
    this.firsts = this.values.map((_, i) => this.values.findIndex((_, other) => this.isTwin(i, other)))
    this.result = this.evaluated()
  }

  /** The result at so many figures. What is nought within rounding noise is `0`; its place comes from the operands, a whole one at most. */
  shownAt(figures: number): ShownResult {
    if (Math.abs(this.result) <= this.size() * noise) return { result: '0', place: Math.min(1, this.placeOfZero()) }
    const result = digitsOf(this.result, figures)
    return { result, place: lastPlace(result, figures) }
  }

  /** The operands' digits as chosen so far. */
  digits(): readonly string[] {
    return this.values.map((_, i) => this.digitsAt(i))
  }

  /** What half a unit in the last place of every operand can do to the result, added up, in the result's unit. */
  reach(): number {
    return sum(this.contributions())
  }

  /** Gives one more figure to the operand that does most to the result; false where none is left to raise. */
  raise(): boolean {
    const contributions = this.contributions()
    let next: number | undefined
    for (const [i, contribution] of contributions.entries())
      if (this.canRise(i, contribution) && this.goesBefore(i, { next, contributions })) next = i
    if (next !== undefined) this.figures[this.firsts[next] ?? next] = this.figuresOf(next) + 1
    return next !== undefined
  }

  /** Gives one more figure to the operand shown with the fewest, whatever it does by itself; false where all are written out. */
  raiseFewest(): boolean {
    let next: number | undefined
    for (const [i, value] of this.values.entries()) {
      const isWhole = this.exactAt(i) !== undefined || isWritten(this.digitsAt(i), value)
      if (isWhole || this.figuresOf(i) >= allFigures) continue
      if (next === undefined || this.figuresOf(i) < this.figuresOf(next)) next = i
    }
    if (next !== undefined) this.figures[this.firsts[next] ?? next] = this.figuresOf(next) + 1
    return next !== undefined
  }

  /** At least as many figures as another line gives the same operands. */
  raiseTo(other: LineReach): void {
    for (const [i, figures] of other.figures.entries()) this.figures[i] = Math.max(this.figures[i] ?? 0, figures)
  }

  /** The result recomputed from the printed operands, in its unit. */
  recomputed(): number {
    for (const [i, { slot, unit }] of this.input.operands.entries())
      this.slots[slot] = fromUnit(Number(this.digitsAt(i)), unit)
    const again = this.evaluated()
    for (const { slot } of this.input.operands) this.slots[slot] = this.input.slots[slot] ?? Number.NaN
    return again
  }

  /** Whether recomputing from the printed operands gives the printed result within one unit in its last figure. */
  closesOn({ result, place }: ShownResult): boolean {
    return Math.abs(Math.round(this.recomputed() / place) * place - Number(result)) <= place * (1 + 1e-9)
  }

  private evaluated(): number {
    return inUnit(this.input.compiled(this.slots), this.input.resultUnit)
  }

  private canRise(i: number, contribution: number): boolean {
    return contribution > 0 && this.figuresOf(i) < mostFigures
  }

  private goesBefore(
    i: number,
    { next, contributions }: { next: number | undefined; contributions: readonly number[] },
  ): boolean {
    if (next === undefined) return true
    const [a = 0, b = 0] = [contributions[i], contributions[next]]
    return a > b || (a === b && this.figuresOf(i) < this.figuresOf(next))
  }

  private digitsAt(i: number): string {
    return this.exactAt(i) ?? digitsOf(this.values[i] ?? Number.NaN, this.figuresOf(i))
  }

  /** The exact digits of an operand or of its twin. */
  private exactAt(i: number): string | undefined {
    const own = this.input.operands[i]?.digits
    return own ?? this.input.operands.find(({ digits }, other) => digits !== undefined && this.isTwin(i, other))?.digits
  }

  private isTwin(i: number, other: number): boolean {
    const [one, two] = [this.values[i] ?? Number.NaN, this.values[other] ?? Number.NaN]
    const sameUnit = this.input.operands[i]?.unit.text === this.input.operands[other]?.unit.text
    return i === other || (sameUnit && Math.abs(one - two) <= 1e-12 * Math.abs(one))
  }

  private figuresOf(i: number): number {
    return this.figures[this.firsts[i] ?? i] ?? this.input.figures
  }

  private contributions(): readonly number[] {
    return this.values.map((_, i) => this.contribution(i))
  }

  /** The larger change of the result when the operand moves by half a unit of its last printed place. Exact digits do not move. */
  private contribution(i: number): number {
    const digits = this.digitsAt(i)
    if (this.input.operands[i]?.digits !== undefined || isWritten(digits, this.values[i] ?? 0)) return 0
    const half = lastPlace(digits, this.figuresOf(i)) / 2
    return Math.max(this.change(i, half), this.change(i, -half))
  }

  /** How far the result moves with the operand, in the result's unit; infinite where it is lost. */
  private change(i: number, by: number): number {
    const operand = this.input.operands[i]
    if (!operand) return 0
    const before = this.slots[operand.slot] ?? Number.NaN
    this.slots[operand.slot] = before + by * operand.unit.factor
    const change = Math.abs(this.evaluated() - this.result)
    this.slots[operand.slot] = before
    return Number.isNaN(change) ? Number.POSITIVE_INFINITY : change
  }

  /** What the operands amount to in the result, to first order. */
  private size(): number {
    const nudge = 1e-6
    const sizes = this.values.map((value, i) => this.change(i, Math.abs(value) * nudge) / nudge)
    return sum(sizes.filter(Number.isFinite))
  }

  /** One unit of a result of nought: what one unit in the last of its figures does for the operand that does most. */
  private placeOfZero(): number {
    const places = this.values.map((value, i) =>
      this.change(i, lastPlace(digitsOf(value, this.input.figures), this.input.figures)),
    )
    return Math.max(...places.filter(Number.isFinite), 0) || 10 ** -this.input.figures
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((so, each) => so + each, 0)

/** Whether the digits are the value itself. */
const isWritten = (digits: string, value: number): boolean =>
  Math.abs(Number(digits) - value) <= 1e-12 * Math.abs(value)
