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

export interface DigitsInput {
  readonly compiled: Compiled
  /** Full values in SI. Not changed. */
  readonly slots: Float64Array
  readonly operands: readonly Operand[]
  readonly resultUnit: Unit
  /** Significant figures of the notebook. */
  readonly figures: number
}

export interface Digits {
  /** What to print for each operand in this line, in the order given. */
  readonly operands: readonly string[]
  readonly result: string
  /** True where the result is shown with fewer figures: a difference of nearly equal numbers. */
  readonly fewer: boolean
  /** One unit in the result's last figure, in the result's unit: what recomputing may differ by. */
  readonly place: number
}

/** No operand is printed with more figures than this. */
export const mostFigures = 10

/**
 * The digits to print in a line so that recomputing it from the printed characters gives the printed result within one unit in its
 * last figure. Operands start at the notebook's figures; while the line's reach (what half a unit in the last place of each operand
 * can do to the result) exceeds that unit, the operand that contributes most gets one more figure, in this line only. Past ten
 * figures the result is shown with fewer instead. Throws where the line itself has no finite result.
 */
export function chooseDigits(input: DigitsInput): Digits {
  const line = new Line(input)
  const exact = line.result()
  if (!Number.isFinite(exact)) throw new RangeError('The line has no finite result')
  for (let figures = input.figures; figures > 0; figures--) {
    const shown = line.shownAs(exact, figures)
    if (line.raise(shown)) return { ...shown, operands: line.operands(), fewer: figures < input.figures }
  }
  return { operands: line.operands(), result: '0', fewer: true, place: line.reach() }
}

interface ShownResult {
  readonly result: string
  readonly place: number
}

class Line {
  private readonly input: DigitsInput
  private readonly slots: Float64Array
  private readonly figures: number[]

  constructor(input: DigitsInput) {
    this.input = input
    this.slots = Float64Array.from(input.slots)
    this.figures = input.operands.map(() => input.figures)
  }

  /** The result in its unit at full precision. */
  result(): number {
    return inUnit(this.input.compiled(this.input.slots), this.input.resultUnit)
  }

  /** The result at so many figures. What is nought within rounding noise is `0`, its place that of the operands' own figures. */
  shownAs(exact: number, figures: number): ShownResult {
    const noise = this.size() * 1e-13
    if (Math.abs(exact) <= noise || exact === 0) return { result: '0', place: this.placeOfZero() }
    const result = digitsOf(exact, figures)
    return { result, place: lastPlace(result, figures) }
  }

  operands(): readonly string[] {
    return this.input.operands.map((_, i) => this.digits(i))
  }

  /** Raises figures until the line closes on `shown`; false where ten figures do not do. */
  raise(shown: ShownResult): boolean {
    for (;;) {
      const contributions = this.input.operands.map((_, i) => this.contribution(i))
      const reach = sum(contributions)
      const isClosed = this.closesOn(shown)
      if (reach <= shown.place && isClosed) return true
      const next = this.largest(contributions)
      if (next === undefined) return isClosed && reach <= shown.place
      this.figures[next] = (this.figures[next] ?? 0) + 1
    }
  }

  reach(): number {
    return sum(this.input.operands.map((_, i) => this.contribution(i)))
  }

  /** Whether recomputing from the printed operands gives the printed result within one unit in its last figure. */
  private closesOn({ result, place }: ShownResult): boolean {
    const again = this.recomputed()
    return Math.abs(Math.round(again / place) * place - Number(result)) <= place * (1 + 1e-9)
  }

  private recomputed(): number {
    this.input.operands.forEach((operand, i) => {
      this.slots[operand.slot] = fromUnit(Number(this.digits(i)), operand.unit)
    })
    const again = inUnit(this.input.compiled(this.slots), this.input.resultUnit)
    for (const { slot } of this.input.operands) this.slots[slot] = this.input.slots[slot] ?? Number.NaN
    return again
  }

  private digits(i: number): string {
    const operand = this.input.operands[i]
    return operand?.digits ?? digitsOf(this.value(i), this.figures[i] ?? this.input.figures)
  }

  /** The operand in its unit. */
  private value(i: number): number {
    const operand = this.input.operands[i]
    return operand ? inUnit(this.input.slots[operand.slot] ?? Number.NaN, operand.unit) : Number.NaN
  }

  /** The larger change of the result when the operand moves by half a unit of its last printed place. Exact digits do not move. */
  private contribution(i: number): number {
    const digits = this.digits(i)
    const value = this.value(i)
    if (this.input.operands[i]?.digits !== undefined || isWritten(digits, value)) return 0
    const half = lastPlace(digits, this.figures[i]) / 2
    return Math.max(this.change(i, half), this.change(i, -half))
  }

  /** How far the result moves with the operand, in the result's unit; infinite where it is lost. */
  private change(i: number, by: number): number {
    const operand = this.input.operands[i]
    if (!operand) return 0
    const before = this.slots[operand.slot] ?? Number.NaN
    this.slots[operand.slot] = before + by * operand.unit.factor
    const moved = inUnit(this.input.compiled(this.slots), this.input.resultUnit)
    this.slots[operand.slot] = before
    const change = Math.abs(moved - this.result())
    return Number.isNaN(change) ? Number.POSITIVE_INFINITY : change
  }

  /** The operand that contributes most and can still be raised. */
  private largest(contributions: readonly number[]): number | undefined {
    let found: number | undefined
    contributions.forEach((contribution, i) => {
      const canRise = contribution > 0 && (this.figures[i] ?? mostFigures) < mostFigures
      if (canRise && contribution > (found === undefined ? 0 : (contributions[found] ?? 0))) found = i
    })
    return found
  }

  /** What the operands amount to in the result: the change it would make to take each one away, to first order. */
  private size(): number {
    return sum(
      this.input.operands.map((_, i) => {
        const nudge = Math.abs(this.value(i)) * 1e-6
        const change = nudge === 0 ? 0 : this.change(i, nudge) * 1e6
        return Number.isFinite(change) ? change : 0
      }),
    )
  }

  /** One unit of a result of nought: what one unit in the last of its figures does for the operand that does most. */
  private placeOfZero(): number {
    const places = this.input.operands.map((_, i) => {
      const digits = digitsOf(this.value(i), this.input.figures)
      return this.change(i, lastPlace(digits, this.input.figures))
    })
    return Math.max(0, ...places.filter(Number.isFinite))
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((so, each) => so + each, 0)

/** Whether the digits are the value itself. */
const isWritten = (digits: string, value: number): boolean =>
  Math.abs(Number(digits) - value) <= 1e-12 * Math.abs(value)
