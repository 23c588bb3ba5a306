import fc from 'fast-check'
import { expect, test } from 'vitest'
import { columned, type Sheet } from '../../src/formula/columns.ts'
import { compile } from '../../src/formula/compile.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Formula, Seat } from '../../src/formula/types.ts'
import { formulaTexts } from './random-formula.ts'

const names = ['a', 'b_2', 'roof.M_x', 'γ_w']
const seats: Readonly<Record<string, Seat>> = {
  ...Object.fromEntries(names.map((name, slot) => [name, { kind: 'slot', slot }])),
  'q.n': { kind: 'slots', slots: [0, 1, 2, 3] },
  t: { kind: 'table', x: [0, 1, 4], y: [10, 20, 50] },
}
const seatOf = (name: string): Seat => seats[name] as Seat

const hard = [0, -0, 1, 2, 0.1, 1e-300, 1.7e308, -3.5e200, Number.NaN, Number.POSITIVE_INFINITY, -Infinity]
const numbers = fc.oneof(fc.constantFrom(...hard), fc.double({ min: -1e4, max: 1e4, noNaN: true }))

/** A formula over rows at once, in columns that are longer than the rows. */
function byColumns(formula: Formula, rows: readonly Float64Array[]): number[] {
  const length = rows.length + 3
  const filled = (value: number): Float64Array => new Float64Array(length).fill(value)
  const slots = names.map((_, slot) => Float64Array.from({ length }, (__, row) => rows[row]?.[slot] ?? 7))
  const spare: Float64Array[] = []
  const sheet: Sheet = {
    slot: at => slots[at] as Float64Array,
    constant: filled,
    spare: depth => {
      spare[depth] ??= filled(Number.NaN)
      return spare[depth]
    },
  }
  const { works, values } = columned(formula, seatOf, sheet)
  for (const work of works) work(rows.length)
  return Array.from(values.subarray(0, rows.length))
}

test('columns: random formulas give the bits of their closure in every row, and leave the operands alone', () => {
  const rows = fc.array(
    fc.tuple(numbers, numbers, numbers, numbers).map(row => Float64Array.from(row)),
    { minLength: 1, maxLength: 9 },
  )
  let compared = 0
  fc.assert(
    fc.property(formulaTexts, rows, (text, values) => {
      const read = readFormula(text)
      if (!read.ok) return
      compared += 1
      const closure = compile(read.formula, seatOf)
      expect(byColumns(read.formula, values)).toEqual(values.map(closure))
    }),
    { numRuns: 2000 },
  )
  expect(compared).toBeGreaterThan(1000)
})

test.each([
  ['a^2 + b_2^3 - γ_w^4', [3, 2, 0, 1]],
  ['a^-1 * b_2^0.5 + a^1.7', [4, 9, 0, 0]],
  ['-cbrt(a) / sqrt(b_2) + abs(γ_w)', [27, 16, 0, -2]],
  ['sum(q.n) * interpolate(t, b_2)', [1, 2.5, 3, -4]],
  ['min(a, b_2, γ_w) - max(a, b_2, γ_w)', [5, 2, 0, 9]],
  ['(a + b_2) * (a - b_2) / ((γ_w + a) * (γ_w - b_2))', [5, 2, 0, 9]],
  ['not (a < b_2) and (γ_w >= 3 or a == 5)', [5, 2, 0, 9]],
  ['a / 0', [5, 2, 0, 9]],
  ['2 + 3', [0, 0, 0, 0]],
  ['a', [1.25, 0, 0, 0]],
])('columns: `%s`', (text, row) => {
  const read = readFormula(text)
  if (!read.ok) throw new Error(read.fault.says)
  const slots = Float64Array.from(row)
  expect(byColumns(read.formula, [slots, slots])).toEqual([0, 1].map(() => compile(read.formula, seatOf)(slots)))
})
