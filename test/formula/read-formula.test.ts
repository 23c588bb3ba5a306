import { describe, expect, test } from 'vitest'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Fault, Node } from '../../src/formula/types.ts'

/** The tree in brackets: `{2 kN}` is a quantity, `<MPa>` a bare unit. */
function tree(node: Node): string {
  switch (node.kind) {
    case 'number':
      return node.text
    case 'quantity':
      return `{${node.text} ${node.unit.text}}`
    case 'unit':
      return `<${node.unit.text}>`
    case 'name':
      return node.name
    case 'pi':
      return 'pi'
    case 'negative':
      return `(- ${tree(node.of)})`
    case 'not':
      return `(not ${tree(node.of)})`
    case 'call':
      return `${node.fn}(${node.args.map(tree).join(', ')})`
    default:
      return `(${tree(node.left)} ${node.op} ${tree(node.right)})`
  }
}

function read(text: string): string {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return tree(read.formula.tree) + (read.formula.to ? ` to ${read.formula.to.text}` : '')
}

function faultOf(text: string): Fault {
  const read = readFormula(text)
  if (read.ok) throw new Error(`${text} was read`)
  return read.fault
}

describe('readFormula: what is read', () => {
  test.each([
    ['20 kN / 4 m', '({20 kN} / {4 m})'],
    ['20 kN / (4 kN/m)', '({20 kN} / {4 kN/m})'],
    ['-2^2', '(- (2 ^ 2))'],
    ['2^3^2', '(2 ^ (3 ^ 2))'],
    ['2^-2', '(2 ^ (- 2))'],
    ['a / b * c', '((a / b) * c)'],
    ['a - b - c', '((a - b) - c)'],
    ['not (1 < 2) and a < b', '((not (1 < 2)) and (a < b))'],
    ['a or b and c', '(a or (b and c))'],
    ['a < b < c', '((a < b) and (b < c))'],
    ['a < b <= c == d', '(((a < b) and (b <= c)) and (c == d))'],
    ['m²', '<m^2>'],
    ['x²', '(x ^ 2)'],
    ['x⁻²', '(x ^ (- 2))'],
    ['2·3', '(2 * 3)'],
    ['2 × 3', '(2 * 3)'],
    ['6 ÷ 3', '(6 / 3)'],
    ['3 ≤ 4', '(3 <= 4)'],
    ['3 ≥ 4', '(3 >= 4)'],
    ['3 ≠ 4', '(3 != 4)'],
    ['2 − 3', '(2 - 3)'],
    ['2 – 3', '(2 - 3)'],
    ['5 µm', '{5 um}'],
    ['5 μm', '{5 um}'],
    ['γ_w * 2', '(γ_w * 2)'],
    ['µ * N_u', '(μ * N_u)'],
    ['f / (N/mm²)', '(f / <N/mm^2>)'],
    ['0.17 * sqrt(f_ck/MPa) * MPa', '((0.17 * sqrt((f_ck / <MPa>))) * <MPa>)'],
    ['5 min', '{5 min}'],
    ['min(a, b)', 'min(a, b)'],
    ['max(1, 234)', 'max(1, 234)'],
    ['2 m^(1/2)', '{2 m^(1/2)}'],
    ['2 m^-1', '{2 1/m}'],
    ['2 W/(m^2*K) * 3', '({2 W/(m^2*K)} * 3)'],
    ['2 kN/(m + x)', '({2 kN} / (<m> + x))'],
    ['2 kN / (m - 2)', '({2 kN} / (<m> - 2))'],
    ['2 kN / (m^-2)', '{2 kN*m^2}'],
    ['2 kN*m / m * x', '({2 kN*m/m} * x)'],
    ['2 kN * x', '({2 kN} * x)'],
    ['3 * m', '(3 * <m>)'],
    ['30°', '{30 deg}'],
    ['20 °C', '{20 degC}'],
    ['5 Ω', '{5 ohm}'],
    ['-5 degC', '{-5 degC}'],
    ['a - -5 degC', '(a - {-5 degC})'],
    ['-(5 degC)', '(- {5 degC})'],
    ['-5 kN', '(- {5 kN})'],
    ['pi * d^2 / 4', '((pi * (d ^ 2)) / 4)'],
    ['π', 'pi'],
    ['roof.M_support / walls.N', '(roof.M_support / walls.N)'],
    ['bar.d * 2', '(bar.d * 2)'],
    ['sum(layers.n)', 'sum(layers.n)'],
    ['interpolate(t, x)', 'interpolate(t, x)'],
    ['e * 2 to mm', '(e * 2) to mm'],
    ['  x   to  kN * m / m ', 'x to kN*m/m'],
    ['x to W/(m²·K)', 'x to W/(m^2*K)'],
    ['.5 + 5. + 1e3 + 1.2E-6', '(((.5 + 5.) + 1e3) + 1.2E-6)'],
    ['2m', '{2 m}'],
    ['2e3m', '{2e3 m}'],
    ['8 in', '{8 in}'],
    ['exp(1)', 'exp(1)'],
    ['e + i', '(e + i)'],
    ['8 in to mm', '{8 in} to mm'],
  ])('readFormula: `%s` is %s', (text, expected) => {
    expect(read(text)).toBe(expected)
  })

  test('readFormula: names come in order of first use, without repeats and without units', () => {
    const found = readFormula('b * a + b / MPa + roof.c * sum(q.n) + min(a, d)')
    expect(found.ok && found.formula.names).toEqual(['b', 'a', 'roof.c', 'q.n', 'd'])
  })

  test('readFormula: `to` keeps its place', () => {
    const found = readFormula('a to  kN*m ')
    expect(found.ok && found.formula.toSpan).toEqual({ start: 6, end: 10 })
  })
})

describe('readFormula: what is refused, with its own sentence and column', () => {
  test.each([
    // text, column (from 1), sentence
    ['1/2 m', 3, 'The `/` before `2 m` can be read in two ways'],
    ['w/2 m', 3, 'The `/` before `2 m` can be read in two ways'],
    ['M / 2 kN/m', 5, 'The `/` before `2 kN/m` can be read in two ways'],
    ['20 kN / 4 kN/m', 9, 'The `/` before `4 kN/m` can be read in two ways'],
    ['2^3 m', 3, 'The `^` before `3 m` can be read in two ways'],
    ['5 kN/m m', 8, 'The unit `m` stands beside another'],
    ['6 kN m / 2 m', 6, 'The unit `m` stands beside another'],
    ['8 in in mm', 6, 'The unit `in` stands beside another'],
    ['5 ft 6 in', 6, 'Two quantities stand side by side, `5 ft` and `6 in`'],
    ['2 m 3', 5, 'Two quantities stand side by side, `2 m` and `3`'],
    ['2 3', 3, 'Two numbers stand side by side, `2` and `3`'],
    ['1 000', 1, 'A number has no blank in it'],
    ['1,000', 1, 'A number has no comma in it'],
    ['max(1,234)', 5, 'A number has no comma in it'],
    ['1_000', 1, 'A number has no `_` in it'],
    ['010', 1, '`010` starts with 0'],
    ['1e400', 1, '`1e400` is too large a number'],
    ['1e-400', 1, '`1e-400` is too small a number'],
    ['0x10', 2, 'No unit is named `x10`'],
    ['1e', 2, 'No unit is named `e`'],
    ['2 e', 3, 'No unit is named `e`'],
    ['2 i', 3, 'No unit is named `i`'],
    ['1 e-3 m', 3, 'No unit is named `e`'],
    ['5 h', 3, 'No unit is named `h`'],
    ['5 kPaa', 3, 'No unit is named `kPaa`'],
    ['x to kPaa', 6, 'No unit is named `kPaa`'],
    ['a (3)', 1, 'There is no function `a`'],
    ['ln(x)', 1, 'There is no function `ln`'],
    ['f(x)=x', 5, 'One `=` gives a name to a value and does not stand inside a formula'],
    ['m(3)', 2, 'A sign is missing between `m` and `(`'],
    ['2 (3)', 3, 'A sign is missing between `2` and `(`'],
    ['(a) (b)', 5, 'A sign is missing between `)` and `(`'],
    ['(a) b', 5, 'A sign is missing between `)` and `b`'],
    ['a b', 3, 'A sign is missing between `a` and `b`'],
    ['a not (b)', 3, 'A sign is missing between `a` and `not`'],
    ['sqrt x', 1, '`sqrt` is a function'],
    ['sqrt()', 6, 'Nothing stands in these brackets'],
    ['sqrt(1, 2)', 1, '`sqrt` takes one argument, got 2'],
    ['atan2(1)', 1, '`atan2` takes two arguments, got 1'],
    ['sum(3)', 5, '`sum` takes the name of a list'],
    ['interpolate(2, 3)', 13, '`interpolate` takes the name of a table first'],
    ['5% + 2', 2, '`%` is not a sign of formulas'],
    ['not 1 < 2', 1, '`not` needs brackets'],
    ["3'", 2, 'A prime is not a sign of formulas'],
    ["f'_c", 1, 'A name has no prime in it'],
    ['5!', 2, 'Formulas have no factorial'],
    ['x = 4', 3, 'One `=` gives a name to a value and does not stand inside a formula'],
    ['1;2', 2, 'A formula is one expression'],
    ['1:3', 2, 'Formulas have no ranges'],
    ['[1,2]', 1, 'Formulas have no lists in square brackets'],
    ['{a:1}', 1, 'Formulas have no braces'],
    ['"s"', 1, 'Formulas have no text in quotation marks'],
    ['a?b:c', 2, 'Formulas have no choices with `?`'],
    ['a ?? b', 3, 'Formulas have no choices with `?`'],
    ['a & b', 3, '`&` is not a sign of formulas'],
    ['a | b', 3, '`|` is not a sign of formulas'],
    ['√2', 1, '`√` is not a sign of formulas'],
    ['x**2', 2, '`**` is not a sign of formulas'],
    ['a <> b', 3, '`<>` is not a sign of formulas'],
    ['a =< b', 3, 'One `=` gives a name to a value and does not stand inside a formula'],
    ['true', 1, '`true` is not part of formulas'],
    ['null', 1, '`null` is not part of formulas'],
    ['undefined', 1, '`undefined` is not part of formulas'],
    ['NaN', 1, '`NaN` is not part of formulas'],
    ['Infinity', 1, '`Infinity` is not part of formulas'],
    ['5 mod 3', 3, '`mod` is not part of formulas'],
    ['_x', 1, 'A name does not start with `_`'],
    ['$x', 1, '`$` is not a sign of formulas'],
    ['.a', 1, 'A name does not start with a dot'],
    ['a.b.c', 4, '`a.b` already names a block and a value; a name has one dot at most'],
    ['a.', 2, 'Nothing stands behind the dot of `a.`'],
    ['a?.b', 2, 'Formulas have no choices with `?`'],
    ['é', 1, 'Names are of Latin and Greek letters, not `é`'],
    ['Ж + 1', 1, 'Names are of Latin and Greek letters, not `Ж`'],
    ['a\u0000', 2, 'The character U+0000 is not a sign of formulas'],
    ['a + 💥', 5, '`💥` is not a sign of formulas'],
    ['# note', 1, 'A remark does not stand inside a formula'],
    ['', 1, 'A formula is expected here'],
    ['   ', 1, 'A formula is expected here'],
    ['+5', 1, 'A plus sign stands only between two values'],
    ['a +', 3, 'Nothing stands behind `+`'],
    ['* a', 1, 'A value is expected before `*`'],
    ['a + * b', 5, 'A value is expected before `*`'],
    ['a and', 3, 'Nothing stands behind `and`'],
    ['and a', 1, 'A value is expected, not `and`'],
    ['(a', 1, 'This bracket is not closed'],
    ['sqrt(a', 5, 'This bracket is not closed'],
    ['a)', 2, 'This bracket has no opening one'],
    ['()', 2, 'Nothing stands in these brackets'],
    ['a, b', 2, 'A comma stands only between the arguments of a function'],
    ['(a, b)', 3, 'A comma stands only between the arguments of a function'],
    ['min(a,)', 7, 'A value is expected behind `,`, not `)`'],
    ['2 m^0.5', 4, 'The exponent of a unit is a whole number'],
    ['2 m^x', 4, 'The exponent of a unit is a whole number'],
    ['12 degC / s', 4, '`degC` is a temperature on a scale and stands only by itself'],
    ['2 W/(m^2*degC)', 10, '`degC` is a temperature on a scale and stands only by itself'],
    ['degC', 1, '`degC` stands only behind a number, `/` or `to`'],
    ['T / degC^2', 5, '`degC` stands only behind a number, `/` or `to`'],
    ['x to', 3, 'A unit is expected behind `to`'],
    ['to m', 1, 'A formula is expected here'],
    ['(x to m)', 4, '`to` stands only at the end of a formula, not in brackets'],
    ['x to m to ft', 6, '`to` stands once, at the end of a formula'],
    ['2 m to ft * 2', 13, 'A unit holds no number but 1 and exponents'],
    ['20 degC to degF + 1 degF', 17, '`+` has no meaning in a unit'],
    ['-----a', 5, 'At most 4 minus signs stand in a row'],
    ['2^2^2^2^2^2^2^2^2^2', 18, 'At most 8 powers stand in a row'],
    ['constructor(1)', 1, 'There is no function `constructor`'],
    ['toString()', 1, 'There is no function `toString`'],
    ['evaluate("1")', 10, 'Formulas have no text in quotation marks'],
  ])('readFormula: `%s` at column %i: %s', (text, column, says) => {
    const fault = faultOf(text)
    expect(fault.says).toBe(says)
    expect(fault.span.start + 1).toBe(column)
    expect(fault.span.end).toBeLessThanOrEqual(text.length)
  })

  test.each([
    ['5 h', 'Write `hr`'],
    ['5 t', 'Write `tonne`'],
    ['5 l', 'Write `L`'],
    ['ln(x)', 'The natural logarithm is `log`'],
    ['5%', 'Write the unit `percent`, as in `5 percent`'],
    ['1,000', 'Write `1000`, or `1.000` where the comma is a decimal point'],
    ['1,000,000', 'Write `1000000`'],
    ['0,500 m', 'Write the decimal point, as in `0.500`'],
    ['max(2,500)', 'Write `2500`, or a blank behind a comma between two arguments'],
    ['max(a, (b + c) * 2,500)', 'Write `2500`, or a blank behind a comma between two arguments'],
    ['max(a, b) * (2,500 m)', 'Write `2500`, or `2.500` where the comma is a decimal point'],
    ['2,5 kPa', 'Write the decimal point, as in `2.5`'],
    ['a * 2,5', 'Write the decimal point, as in `2.5`'],
    ['max(a, (2,55 m))', 'Write the decimal point, as in `2.55`'],
    ['max(1, 2) + 0,25 m', 'Write the decimal point, as in `0.25`'],
    ['(2, 5)', undefined],
    ['2,5,3', undefined],
    ['a,5', undefined],
    ['1.5,2', undefined],
    ['2 m,5 m', undefined],
    ['1 000', 'Write `1000`'],
    ['1_000', 'Write `1000`'],
    ['5 ft 6 in', 'Write `5 ft + 6 in` for a sum'],
    ['M / 2 kN/m', 'Put brackets round `2 kN/m`, or round what stands before it'],
    ['a (3)', 'Write `a * (...)` if a product is meant'],
    ['degF', 'Write `delta_degF` for a temperature difference'],
    ['5 foo', 'Write `5 * foo` if `foo` is the name of a value'],
    ['30 dge', 'Did you mean `deg`? Write `30 * dge` if `dge` is the name of a value'],
    ['x to dge', 'Did you mean `deg`?'],
    ['2 kN/m to kN/ttr', undefined],
    ['8 in in mm', 'Write `8 in*in` for a product, `to in` to change the unit'],
  ])('readFormula: `%s` is helped: %s', (text, help) => {
    expect(faultOf(text).help).toBe(help)
  })

  test('readFormula: a comma between two arguments needs no blank', () => {
    for (const text of ['max(2,5)', 'max(2,5 + 1,3)', 'max((2),5)']) expect(readFormula(text).ok, text).toBe(true)
  })

  test('readFormula: an unknown unit carries its name, so that the caller can offer the nearest', () => {
    expect(faultOf('5 foo')).toMatchObject({ rule: 'unit-unknown', name: 'foo' })
    expect(faultOf('x to foo')).toMatchObject({ rule: 'unit-unknown', name: 'foo' })
  })

  test('readFormula: a fault is a limit, a syntax or a refusal by its rule', () => {
    expect(faultOf('((a').rule).toBe('formula-syntax')
    expect(faultOf('5!').rule).toBe('formula-refused')
    expect(faultOf('-----a').rule).toBe('formula-limit')
  })
})

describe('readFormula: limits', () => {
  const nested = (depth: number): string => `${'('.repeat(depth)}a${')'.repeat(depth)}`

  test('readFormula: brackets stand 50 deep and no deeper', () => {
    expect(readFormula(nested(50)).ok).toBe(true)
    expect(faultOf(nested(51))).toMatchObject({ rule: 'formula-limit', says: 'Brackets stand at most 50 deep' })
  })

  test('readFormula: ten thousand brackets are refused by length before anything reads them', () => {
    expect(faultOf(nested(10_000))).toMatchObject({ rule: 'formula-limit', span: { start: 1000, end: 20_001 } })
  })

  test('readFormula: 1000 characters and no more', () => {
    const long = `a${' + a'.repeat(199)}`
    expect(readFormula(long.padEnd(1000)).ok).toBe(true)
    expect(faultOf(long.padEnd(1001)).says).toBe('A formula is at most 1000 characters long')
  })

  test('readFormula: 400 tokens and no more', () => {
    expect(readFormula(`-a${'+a'.repeat(199)}`).ok).toBe(true)
    expect(faultOf(`a${'+a'.repeat(200)}`).says).toBe('A formula has at most 400 numbers, names and signs')
  })

  test('readFormula: 8 powers and 4 minus signs are read', () => {
    expect(readFormula('2^2^2^2^2^2^2^2^2').ok).toBe(true)
    expect(readFormula('----a').ok).toBe(true)
  })
})
