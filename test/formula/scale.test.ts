import { describe, expect, test } from 'vitest'
import { shownText } from '../../src/formula/formula-text.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { coherent, coherentCheck } from '../../src/formula/scale.ts'
import { texNumbers } from '../../src/formula/tex.ts'
import type { Formula } from '../../src/formula/types.ts'
import type { Unit } from '../../src/quantity/types.ts'
import { unitOf } from '../../src/quantity/unit.ts'

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

const units: Readonly<Record<string, string>> = {
  w: 'kN/m^2',
  p: 'MPa',
  l: 'm',
  d: 'mm',
  P: 'kN',
  G: 'kip',
  u: 'psf',
  h: 'ft',
  k: '',
  r: 'percent',
  T: 'degC',
  q: 'kN/m^2',
  m_Hg: 'mmHg',
  t_Hg: 'torr',
  t_y: 'yr',
  t_d: 'day',
}
const unitOfName = (name: string): Unit | undefined => (name in units ? unitOf(units[name]!) : undefined)

describe('coherent', () => {
  test.each([
    ['k * w * l^2', 'kN*m/m', true],
    ['k * w * l^2', 'kip*ft/ft', false],
    ['w * l + P / l', 'kN/m', true],
    ['m_Hg + m_Hg', 'mmHg', true],
    ['m_Hg + t_Hg', 'torr', false],
    ['t_y + 365 * t_d', 'yr', false],
    ['w * l + P / d', 'kN/m', false],
    ['l + d', 'm', false],
    ['P / d', 'kN/m', false],
    ['u * h^2', 'lbf', true],
    ['u * h^2', 'kip', false],
    ['l / d', '', false],
    ['l / l', '', true],
    ['sqrt(w * w)', 'kN/m^2', true],
    ['sqrt(p / MPa) * MPa', 'MPa', true],
    ['0.3 * (p / MPa)^(2/3) * MPa', 'MPa', true],
    ['0.3 * (w / MPa)^(2/3) * MPa', 'MPa', false],
    ['0.3 * (p / MPa)^(2/3) * MPa', 'kN/m^2', false],
    ['l^0.5 * l^0.5', 'm', true],
    ['d^2', 'mm^2', true],
    ['d^2', 'm^2', false],
    ['2^k', '', true],
    ['2^r', '', true],
    ['k^r', '', true],
    ['exp(l / l)', '', true],
    ['exp(l / d)', '', false],
    ['sin(30 deg)', '', true],
    ['sin(k)', '', true],
    ['min(l, 2 m)', 'm', true],
    ['min(l, d)', 'm', false],
    ['abs(-l)', 'm', true],
    ['atan2(l, l)', '', true],
    ['atan2(l, d)', '', false],
    ['sum(q) * l', 'kN/m', true],
    ['2 kN/m^2 * l', 'kN/m', true],
    ['2 kPa * l', 'kN/m', true],
    ['2 psf * l', 'kN/m', false],
    ['w + 2 kPa', 'kN/m^2', true],
    ['round(l / m) * m', 'm', true],
    ['round(d / m) * m', 'm', false],
    ['k * r', 'percent', true],
    ['k * r', '', true],
    // a nought fits any unit
    ['max(l - 2 m, 0 ft)', 'm', true],
    ['max(d, 0 m)', 'mm', true],
    ['max(d, 1 m)', 'mm', false],
    ['T', 'degC', false],
    ['T - 5 degC', 'K', false],
    ['(T / degC + 273.15) * K', 'K', true],
    ['(T / degF + 459.67) * K', 'K', false],
    ['interpolate(table, k)', '', false],
    ['missing', '', false],
  ])('coherent: `%s` in %s is %s', (text, unit, expected) => {
    expect(coherent(formula(text), unitOfName, unitOf(unit))).toBe(expected)
  })

  test.each([
    ['w * l <= P / l', true],
    ['l <= d', false],
    ['k < 1 and l > 2 m', true],
    ['k < 1 and l > d', false],
    ['not (l < 2 m)', true],
    ['T > 5 degC', false],
  ])('coherentCheck: `%s` is %s', (text, expected) => {
    expect(coherentCheck(formula(text), unitOfName)).toBe(expected)
  })
})

describe('a bare line', () => {
  const shown = (digits: string, unit: string) => ({ digits, unit: unitOf(unit), exact: true })

  test('keeps degrees and percent with their numbers, and leaves other units away', () => {
    const values: Record<string, ReturnType<typeof shown>> = { w: shown('18', 'kN/m^2'), r: shown('25', 'percent') }
    const value = (name: string) => values[name]!
    expect(shownText(formula('w * (1 + r) * sin(30 deg)'), value, { bare: true })).toBe(
      '18 × (1 + 25 percent) × sin(30 deg)',
    )
    expect(texNumbers(formula('w * sin(30 deg)'), value, { bare: true })).toMatch(/18 \\times .*30.*circ/)
  })

  test('prints a nought without its unit', () => {
    expect(shownText(formula('max(l, 0 ft)'), () => shown('2.5', 'm'), { bare: true })).toBe('max(2.5, 0)')
  })
})
