import { expect, it } from 'vitest'
import type { Printed } from '../../src/evaluation/workings.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { one } from '../../src/quantity/unit.ts'
import { numbersOf, symbolsOf } from '../../src/typesetting/substitution-tex.ts'

const printed = (symbol: string, digits: string): Printed => ({ symbol, shown: { digits, unit: one, exact: true } })

it('symbolsOf: a sum over rows runs over the index, not over the index of its first row', () => {
  const read = readFormula('sum(layers.n)')
  if (!read.ok) throw new Error(read.fault.says)
  const operands = new Map([['layers.n', [printed('n_1', '3'), printed('n_2', '4')]]])
  const working = { formula: read.formula, operands, bare: true }
  expect(symbolsOf(working).tex).toMatch(/\\sum_\{i\} .*n_\{?i\}?/)
  expect(symbolsOf(working).tex).not.toContain('1')
  expect(numbersOf(working).tex).toMatch(/3 *\+ *4/)
})

it('symbolsOf: values of one symbol from several blocks each have the name of their block in words below', () => {
  const read = readFormula('roof_load.w_u + floor.w_u')
  if (!read.ok) throw new Error(read.fault.says)
  const operands = new Map([
    ['roof_load.w_u', { ...printed('w_u', '60'), to: 'v-roof_load-w_u' }],
    ['floor.w_u', { ...printed('w_u', '12'), to: 'v-floor-w_u' }],
  ])
  const { tex, spoken } = symbolsOf({ formula: read.formula, operands, bare: true })
  expect(tex).toBe('w_{u,\\mathrm{roof\\ load}} + w_{u,\\mathrm{floor}}')
  expect(spoken).toBe('w u roof load plus w u floor')
})
