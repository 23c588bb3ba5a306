import { describe, expect, test } from 'vitest'
import { prove } from '../../src/formula/prove.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Fault, Formula, Kind } from '../../src/formula/types.ts'
import { dimensionByName } from '../../src/quantity/dimension-names.ts'
import type { Dimension } from '../../src/quantity/types.ts'
import { unitOf } from '../../src/quantity/unit.ts'

const dimension = (name: string): Dimension => dimensionByName(name)!
const value = (name: string): Kind => ({ kind: 'value', dimension: dimension(name) })
const point: Kind = { kind: 'value', dimension: dimension('temperature'), point: true }

const kinds: Readonly<Record<string, Kind>> = {
  a: value('length'),
  b: value('length'),
  w: value('pressure'),
  f_ck: value('pressure'),
  k: value('ratio'),
  D: value('dose'),
  G: value('absorbed_dose'),
  T: point,
  U: point,
  dT: value('temperature'),
  n: { kind: 'list', dimension: dimension('ratio') },
  q: { kind: 'list', dimension: dimension('pressure') },
  Ts: { kind: 'list', dimension: dimension('temperature'), point: true },
  t: { kind: 'table', from: dimension('ratio'), to: dimension('length') },
  tT: { kind: 'table', from: dimension('temperature'), to: dimension('temperature'), fromPoint: true, toPoint: true },
  is: { kind: 'truth' },
}
const kindOf = (name: string): Kind | undefined => (Object.hasOwn(kinds, name) ? kinds[name] : undefined)

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

function result(text: string): string {
  const proof = prove(formula(text), kindOf, { system: 'SI' })
  if (!proof.ok) throw new Error(`${text}: ${proof.faults.map(fault => fault.says).join('; ')}`)
  const kind = proof.result
  return kind.kind === 'value' ? `${kind.point ? 'point ' : ''}${kind.dimension.key}` : kind.kind
}

const faults = (text: string): readonly Fault[] => {
  const proof = prove(formula(text), kindOf, { system: 'SI' })
  return proof.ok ? [] : proof.faults
}

const key = (unit: string): string => unitOf(unit).dimension.key

describe('prove: what holds', () => {
  test.each([
    ['3 m + 2 ft', 'm'],
    ['w * a^2 / 8', 'kN'],
    ['w * 1 m * a^4 / (384 * 30 GPa * 1 m^4)', 'm'],
    ['0.17 * sqrt(f_ck/MPa) * MPa', 'Pa'],
    ['0.3 * (f_ck/MPa)^(2/3) * MPa', 'Pa'],
    ['a^(1/3) * a^(2/3)', 'm'],
    ['a^0.5 * sqrt(b)', 'm'],
    ['a^-1 * a', ''],
    ['cbrt(a^3)', 'm'],
    ['k^k', ''],
    ['2^(50 percent)', ''],
    ['1 rad + 1', ''],
    ['sin(30 deg) + exp(a/b)', ''],
    ['atan2(a, b)', ''],
    ['min(a, b, 3 ft)', 'm'],
    ['max(q)', 'Pa'],
    ['max(q, w)', 'Pa'],
    ['abs(-a)', 'm'],
    ['round(a / mm) * mm', 'm'],
    ['sum(q) * a', 'Pa*m'],
    ['interpolate(t, k)', 'm'],
    ['12 in/ft', ''],
    ['pi * a^2', 'm^2'],
    ['G * 1 Sv/Gy + D', 'Sv'],
    ['T - U', 'K'],
    ['T - U to delta_degF', 'K'],
    ['T - (-273.15 degC)', 'K'],
    ['(T / degC + 273.15) * K', 'K'],
    ['(T / degF - 32) / 1.8', ''],
    ['(T - U) * 1 W/K', 'W'],
  ])('prove: `%s` has the dimension of %s', (text, unit) => {
    expect(result(text)).toBe(key(unit))
  })

  test.each([
    ['T + dT', `point ${key('K')}`],
    ['dT + T', `point ${key('K')}`],
    ['T - dT', `point ${key('K')}`],
    ['-5 degC + 3 K', `point ${key('K')}`],
    ['min(T, U, 20 degC)', `point ${key('K')}`],
    ['T to degF', `point ${key('K')}`],
    ['T to K', `point ${key('K')}`],
    ['max(Ts)', `point ${key('K')}`],
    ['min(Ts, T)', `point ${key('K')}`],
    ['max(Ts) - T', key('K')],
    ['interpolate(tT, T)', `point ${key('K')}`],
    ['a < b', 'truth'],
    ['a < b <= 3 m', 'truth'],
    ['T > 20 degC', 'truth'],
    ['not (a < b) and (k == 1 or w >= 2 kPa)', 'truth'],
    ['is and a < b', 'truth'],
    ['is', 'truth'],
    ['q', 'list'],
  ])('prove: `%s` is %s', (text, expected) => {
    expect(result(text)).toBe(expected)
  })
})

describe('prove: what does not hold, with its place', () => {
  test.each([
    // text, column (from 1), sentence
    ['3 m + 2 kPa', 5, '`+` needs two alike, got a length (m) and a pressure (kN/m^2)'],
    ['a - w', 3, '`-` needs two alike, got a length (m) and a pressure (kN/m^2)'],
    ['a + 0', 3, '`+` needs two alike, got a length (m) and a plain number'],
    ['sqrt(4 m) + exp(2 m)', 17, 'What `exp` takes must be a plain number, not a length (m)'],
    ['log(a)', 5, 'What `log` takes must be a plain number, not a length (m)'],
    ['log10(a)', 7, 'What `log10` takes must be a plain number, not a length (m)'],
    ['sin(a)', 5, 'What `sin` takes must be a plain number, not a length (m)'],
    ['asin(a)', 6, 'What `asin` takes must be a plain number, not a length (m)'],
    ['floor(a)', 7, 'What `floor` takes must be a plain number, not a length (m)'],
    ['round(w)', 7, 'What `round` takes must be a plain number, not a pressure (kN/m^2)'],
    ['a^k', 3, 'The exponent of a length (m) must be written in numbers, as `2` or `(2/3)`'],
    ['2^a', 3, 'The exponent must be a plain number, not a length (m)'],
    ['a^0.333', 3, 'The exponent of a length (m) is a decimal that is nearly 1/3'],
    ['a^0.67', 3, 'The exponent of a length (m) is a decimal that is nearly 2/3'],
    ['a^(1/0)', 4, 'The exponent of a length (m) must be written in numbers, as `2` or `(2/3)`'],
    ['a^65', 3, 'The exponent of a unit passes 64, or its fraction is too fine'],
    ['a^60 * a^60', 6, 'The exponent of a unit passes 64, or its fraction is too fine'],
    ['min(a, w)', 8, '`min` needs all alike, got a length (m) and a pressure (kN/m^2)'],
    ['max(a, 0)', 8, '`max` needs all alike, got a length (m) and a plain number'],
    ['atan2(a, w)', 10, '`atan2` needs all alike, got a length (m) and a pressure (kN/m^2)'],
    ['a < w', 3, '`<` needs two alike, got a length (m) and a pressure (kN/m^2)'],
    ['a < b < w', 7, '`<` needs two alike, got a length (m) and a pressure (kN/m^2)'],
    ['D + G', 3, '`+` needs two alike, got a dose equivalent (mSv) and an energy per mass (J/kg)'],
    ['5 lb + 3 lbf', 6, '`+` needs two alike, got a mass (kg) and a force (kN)'],
    ['a and a < b', 1, 'A condition is expected here, not a length (m)'],
    ['not (a)', 6, 'A condition is expected here, not a length (m)'],
    ['q and a < b', 1, 'A condition is expected here, not a list'],
    ['(a < b) + 1', 2, 'A condition stands where one value is expected'],
    ['q * 2', 1, 'A list stands where one value is expected'],
    ['t + 1', 1, 'A table stands where one value is expected'],
    ['min(t, a)', 5, 'A table stands where one value is expected'],
    ['sum(a)', 5, '`sum` takes a list, and this is none'],
    ['sum(Ts)', 5, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['max(Ts, dT)', 9, '`max` mixes a temperature on a scale with a temperature difference'],
    ['interpolate(a, k)', 13, '`interpolate` takes a table first, and this is none'],
    ['interpolate(t, a)', 16, 'The table goes by a plain number, not by a length (m)'],
    ['interpolate(tT, dT)', 17, 'The table mixes a temperature on a scale with a temperature difference'],
    ['x', 1, 'Nothing here is named `x`'],
    ['a to kPa', 6, 'The result is a length (m), the unit `kPa` is that of a pressure (kN/m^2)'],
    ['a < b to m', 10, 'A condition has no unit'],
    ['T + U', 3, 'Two temperatures on a scale cannot be added'],
    ['dT - T', 4, 'A temperature on a scale cannot be taken away from a difference'],
    ['T * 2', 1, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['2 / T', 5, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['T^4', 1, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['abs(T)', 5, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['sqrt(T)', 6, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['-T', 2, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['-(5 degC)', 3, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['exp(T)', 5, 'A temperature on a scale can only be compared, or have a difference added or taken away'],
    ['T > dT', 3, '`>` mixes a temperature on a scale with a temperature difference'],
    ['max(T, dT)', 8, '`max` mixes a temperature on a scale with a temperature difference'],
    ['dT / degC', 1, 'Only a temperature on a scale is read in `degC`, by its name'],
    ['max(T, U) / degC', 1, 'Only a temperature on a scale is read in `degC`, by its name'],
    ['T - U to degC', 10, 'The result is a temperature difference, which `degC` cannot show'],
  ])('prove: `%s` at column %i: %s', (text, column, says) => {
    const found = faults(text)
    expect(found.map(fault => fault.says)).toEqual([says])
    expect(found[0]!.span.start + 1).toBe(column)
  })

  test.each([
    ['a + 0', 'Write `0 m`'],
    ['0 + w', 'Write `0 kN/m^2`'],
    ['max(0, w)', 'Write `0 kN/m^2`'],
    ['a > 0', 'Write `0 m`'],
    ['a^0.333', 'Write `(1/3)` or `cbrt(...)`'],
    ['a^0.67', 'Write `(2/3)`'],
    ['exp(w)', 'Divide by a unit: `... / (kN/m^2)`'],
    ['sin(a)', 'Divide by a unit: `... / m`'],
    ['T * 2', 'Write `K` for a difference; `T - (-273.15 degC)` is the absolute temperature'],
    ['q * 2', 'Write `sum(...)`, `min(...)` or `max(...)` of the list'],
  ])('prove: `%s` is helped: %s', (text, help) => {
    expect(faults(text)[0]!.help).toBe(help)
  })

  test('prove: faults are collected over the tree, without follow-on noise', () => {
    expect(faults('(a + w) * (D - G) + x').map(fault => fault.span.start + 1)).toEqual([4, 14, 21])
    expect(faults('sqrt(a + w) + exp(x) + min(a + w, b)').map(fault => fault.span.start + 1)).toEqual([8, 19, 30])
  })

  test('prove: an unknown name carries the name; each place of it is a fault, a repeated reading of one place is not', () => {
    expect(faults('x + x')).toMatchObject([
      { rule: 'name-unknown', name: 'x', span: { start: 0 } },
      { rule: 'name-unknown', name: 'x', span: { start: 4 } },
    ])
    expect(faults('a < x < b')).toHaveLength(1)
    expect(faults('a < exp(b) < 2').map(fault => fault.span.start)).toEqual([8])
  })

  test('prove: messages speak the system of the notebook', () => {
    const proof = prove(formula('a + w'), kindOf, { system: 'US' })
    expect(proof.ok === false && proof.faults[0]!.says).toBe(
      '`+` needs two alike, got a length (ft) and a pressure (psf)',
    )
  })
})
