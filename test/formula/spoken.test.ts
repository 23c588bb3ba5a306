import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readFormula } from '../../src/formula/read-formula.ts'
import { spokenNumbers, spokenShown, spokenSymbols } from '../../src/formula/spoken.ts'
import { symbolSpoken } from '../../src/formula/symbol.ts'
import type { Formula } from '../../src/formula/types.ts'
import type { Shown } from '../../src/quantity/types.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { formulaTexts } from './random-formula.ts'

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

const shown = (digits: string, unit = ''): Shown => ({ digits, unit: unitOf(unit), exact: false })

describe('spoken', () => {
  test.each([
    ['alpha_x * w * l_x^2', 'alpha x times w times l x squared'],
    ['a / b', 'a over b'],
    ['a / (b * c)', 'a over open bracket b times c close bracket'],
    ['(a + b) / c', 'open bracket a plus b close bracket over c'],
    ['a + b / c', 'a plus b over c'],
    ['a - (b - c)', 'a minus open bracket b minus c close bracket'],
    ['a - (-b)', 'a minus open bracket minus b close bracket'],
    ['(a * b)^3', 'open bracket a times b close bracket cubed'],
    ['a^(2/3)', 'a to the power open bracket 2 over 3 close bracket'],
    ['a^-1', 'a to the power open bracket minus 1 close bracket'],
    ['sqrt(a)', 'the square root of a'],
    ['sqrt(a + b)', 'the square root of open bracket a plus b close bracket'],
    ['max(0 m, a)', 'the greatest of open bracket 0, a close bracket'],
    ['min(a, 2 m)', 'the least of open bracket a, 2 metres close bracket'],
    ['sum(layers.n)', 'the sum of all n'],
    ['a <= b', 'a is at most b'],
    ['a < b and not (c == d)', 'a is less than b and not open bracket c equals d close bracket'],
    [
      '(a < b or c < d) and a > 1',
      'open bracket a is less than b or c is less than d close bracket and a is greater than 1',
    ],
    ['1.2e-6 * pi', '1.2 times 10 to the minus 6 times pi'],
    ['f_ck / MPa', 'f ck over megapascals'],
  ])('spokenSymbols: `%s` is `%s`', (text, words) => {
    expect(spokenSymbols(formula(text), () => undefined)).toBe(words)
  })

  const values: Readonly<Record<string, Shown | readonly Shown[]>> = {
    a: shown('-2.5', 'm'),
    w: shown('52.3', 'kN/m^2'),
    n: [shown('1.5'), shown('2.0')],
  }
  const shownOf = (name: string): Shown | readonly Shown[] => values[name] ?? shown('1')

  test.each([
    ['w * a^2', false, '52.3 kilonewtons per square metre times minus 2.5 metres squared'],
    ['w * a^2', true, '52.3 times minus 2.5 squared'],
    ['sum(n) * 2', true, 'open bracket 1.5 plus 2.0 close bracket times 2'],
    ['0.17 * sqrt(w / MPa) * MPa', true, '0.17 times the square root of open bracket 52.3 close bracket'],
  ])('spokenNumbers: `%s` bare %s is `%s`', (text, bare, words) => {
    expect(spokenNumbers(formula(text), shownOf, { bare })).toBe(words)
  })

  test('spokenShown: a number and its unit', () => {
    expect(spokenShown(shown('26.08', 'kN*m/m'))).toBe('26.08 kilonewton metres per metre')
    expect(spokenShown(shown('-0.71'))).toBe('minus 0.71')
  })

  test.each([
    ['M_x', 'M x'],
    ["gamma'_sat", 'gamma prime sat'],
    ['γ_w', 'gamma w'],
    ['water_depth', 'water depth'],
    ['roof.f_ck', 'f ck'],
  ])('symbolSpoken: `%s` is `%s`', (symbol, words) => {
    expect(symbolSpoken(symbol)).toBe(words)
  })

  test('spoken: any formula has words, and no TeX or typed sign is left in them', () => {
    fc.assert(
      fc.property(formulaTexts, text => {
        const read = readFormula(text)
        if (!read.ok) return
        const words = spokenSymbols(read.formula, () => undefined)
        expect(words).toMatch(/[a-z0-9]/)
        expect(words).not.toMatch(/[\\{}^*<>=_]/)
      }),
      { numRuns: 300 },
    )
  })
})
