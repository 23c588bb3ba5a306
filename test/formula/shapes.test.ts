import fc from 'fast-check'
import { expect, test } from 'vitest'
import { compile } from '../../src/formula/compile.ts'
import { productShapes } from '../../src/formula/product-shapes.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { sumShapes } from '../../src/formula/sum-shapes.ts'
import { formulaTexts } from './random-formula.ts'
import { referenceValue } from './reference-value.ts'

const names = ['a', 'b_2', 'roof.M_x', 'γ_w']
const hard = [
  0,
  -0,
  1,
  -1,
  2,
  0.1,
  1e-300,
  5e-324,
  1.7e308,
  -3.5e200,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
]
const numbers = fc.oneof(fc.constantFrom(...hard), fc.double(), fc.double({ min: -1e4, max: 1e4, noNaN: true }))
const slots = fc.tuple(numbers, numbers, numbers, numbers).map(values => Float64Array.from(values))

const slotOf = (name: string): number => names.indexOf(name)

/** Both values of a formula: from the closure, and from its tree one operation after the other. Nothing where the text is refused. */
function bothOf(text: string, values: Float64Array): readonly [closure: number, tree: number] | undefined {
  const read = readFormula(text)
  if (!read.ok) return undefined
  const closure = compile(read.formula, name => ({ kind: 'slot', slot: slotOf(name) }))
  return [closure(values), referenceValue(read.formula.tree, name => values[slotOf(name)] ?? Number.NaN)]
}

test('shapes: random formulas give the bits of their tree read one operation after the other', () => {
  const texts = formulaTexts.map(text => text.replaceAll('sum(q.n)', 'b_2').replaceAll('interpolate(t, a)', 'a'))
  let compared = 0
  fc.assert(
    fc.property(texts, slots, (text, values) => {
      const both = bothOf(text, values)
      if (both) compared++
      return both === undefined || Object.is(both[0], both[1])
    }),
    { numRuns: 2000 },
  )
  expect(compared).toBeGreaterThan(1000)
})

/** A shape as an author would write it: names for slots, a root for a function, a number for a constant. */
function written(shape: string): string {
  const free = [...names]
  return shape.replaceAll(/[skxq]/g, leaf => {
    if (leaf === 'k') return '0.7'
    const name = free.shift() ?? ''
    return leaf === 's' ? name : leaf === 'q' ? `${name}^2` : `abs(${name})`
  })
}

test.each(Object.keys({ ...sumShapes, ...productShapes }))('shapes: `%s` gives the bits of its tree', shape => {
  const text = written(shape)
  expect(bothOf(text, Float64Array.of(3, 5, 7, 11))?.every(Number.isFinite), text).toBe(true)
  fc.assert(
    fc.property(slots, values => {
      const both = bothOf(text, values)
      return both !== undefined && Object.is(both[0], both[1])
    }),
    { numRuns: 200 },
  )
})

test('shapes: every operation has a shape for two functions, so that any two operands join', () => {
  for (const op of '+-*/^') expect({ ...sumShapes, ...productShapes }).toHaveProperty([`x${op}x`])
})

test.each([
  '1/(1/a)',
  '1/(1/(a - a))',
  '1/(b_2/(a - a))',
  'b_2/(1/a)',
  '(1/a)^-1',
  '1/(1/a)^2',
  '0^(1/a)',
  '(1/a)/(1/a)',
])('shapes: a division by nought does not become a number again in `%s`', text => {
  for (const nought of [0, -0]) {
    const both = bothOf(text, Float64Array.of(nought, 2, 1, 1)) ?? [0, 0]
    expect(both.map(Number.isFinite)).toEqual([false, false])
  }
})
