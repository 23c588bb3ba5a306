import fc from 'fast-check'
import { all, create, type MathNode, type Unit as MathUnit } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { compile, compileNode } from '../../src/formula/compile.ts'
import { prove } from '../../src/formula/prove.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Compiled, Formula, Seat } from '../../src/formula/types.ts'
import { fromUnit } from '../../src/quantity/to-unit.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { soundFormulas, soundValues } from './random-formula.ts'

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

const seats: Readonly<Record<string, Seat>> = {
  a: { kind: 'slot', slot: 0 },
  b: { kind: 'slot', slot: 1 },
  c: { kind: 'slot', slot: 2 },
  q: { kind: 'slots', slots: [0, 1, 2] },
  none: { kind: 'slots', slots: [] },
  t: { kind: 'table', x: [0, 1, 4], y: [10, 20, 50] },
}
const seatOf = (name: string): Seat => seats[name]!
const run = (text: string, ...values: number[]): number => compile(formula(text), seatOf)(Float64Array.from(values))

describe('compile: values', () => {
  test.each([
    ['2 + 3 * 4', 14],
    ['-2^2', -4],
    ['2^3^2', 512],
    ['2^-2', 0.25],
    ['6 / 2 / 3', 1],
    ['10 - 4 - 3', 3],
    ['12 in/ft', 1],
    ['20 degC', 293.15],
    ['-5 degC', 268.15],
    ['20 degC - 5 degC', 15],
    ['(20 degC) / degC', 20],
    ['(20 degC) / degF', 68],
    ['2 kN/m^2 * 3 m', 6000],
    ['180 deg', Math.PI],
    ['sqrt(16) + cbrt(27) + abs(-2)', 9],
    ['min(3, 1, 2) + max(3, 1, 2)', 4],
    ['exp(1)', Math.E],
    ['log(exp(2)) + log10(1000)', 5],
    ['sin(30 deg) + cos(60 deg) + tan(45 deg)', 2],
    ['asin(1) + acos(1) + atan(1) + atan2(1, 1)', Math.PI],
    ['floor(2.7) + ceil(2.2) + round(2.5)', 8],
    ['0.17 * sqrt(30 MPa / MPa) * MPa', 931_128.3477587826],
  ])('compile: `%s` is %d', (text, expected) => {
    expect(run(text)).toBeCloseTo(expected, 9)
  })

  test('compile: the special shapes give what the plain ones give', () => {
    const shapes = [
      'a+b',
      'a-b',
      'a*b',
      'a/b',
      'a^b',
      'a+2',
      '2-a',
      'a*2',
      '2/a',
      'a/2',
      '2^a',
      'a^2',
      'a^3',
      'a^4',
      'a^0.5',
      'a^-1',
      'a^1',
      'a^1.7',
    ]
    const inner = ['(a+b)', '(a*c)', 'sqrt(b)']
    const math = create(all ?? {})
    for (const shape of shapes)
      for (const by of ['a', ...inner]) {
        const text = shape.replaceAll('a', by)
        const expected = math.evaluate(text, { a: 1.7, b: 2.3, c: 0.9 }) as number
        expect(run(text, 1.7, 2.3, 0.9), text).toBeCloseTo(expected, 12)
      }
  })

  test('compile: lists in sum, min and max; tables in interpolate', () => {
    expect(run('sum(q)', 1, 2, 4)).toBe(7)
    expect(run('max(q) - min(q, 0.5)', 1, 2, 4)).toBe(3.5)
    expect(run('sum(none)')).toBe(0)
    expect(run('max(none)')).toBeNaN()
    expect(run('interpolate(t, a)', 0)).toBe(10)
    expect(run('interpolate(t, a)', 0.5)).toBe(15)
    expect(run('interpolate(t, a)', 1)).toBe(20)
    expect(run('interpolate(t, a)', 2.5)).toBe(35)
    expect(run('interpolate(t, a)', 4)).toBe(50)
  })

  test('compile: outside a table there is no value; its end counts within rounding', () => {
    expect(run('interpolate(t, a)', 4.001)).toBeNaN()
    expect(run('interpolate(t, a)', -0.001)).toBeNaN()
    expect(run('interpolate(t, a)', 4 + 1e-12)).toBe(50)
    expect(run('interpolate(t, a)', Number.NaN)).toBeNaN()
    const table = (x: number[], y: number[]): Compiled =>
      compile(formula('interpolate(t, a)'), name => (name === 't' ? { kind: 'table', x, y } : seatOf(name)))
    const above = table([1, 2], [5, 6])
    expect(above(Float64Array.of(1 - 1e-12))).toBe(5)
    expect(above(Float64Array.of(0.999))).toBeNaN()
    expect(() => table([1, 1], [2, 3])).toThrow(RangeError)
    expect(() => table([2, 1], [2, 3])).toThrow(RangeError)
    expect(() => table([1, 2], [2])).toThrow(RangeError)
    expect(() => table([], [])).toThrow(RangeError)
  })

  test('compile: a seat of another kind is our own mistake and throws', () => {
    expect(() => compile(formula('q + 1'), seatOf)).toThrow(TypeError)
    expect(() => compile(formula('interpolate(a, b)'), seatOf)).toThrow(TypeError)
  })

  test('compileNode: one side of a check by itself', () => {
    const { tree } = formula('a + b <= c')
    if (tree.kind !== 'comparison') throw new Error('not a comparison')
    expect(compileNode(tree.left, seatOf)(Float64Array.of(1, 2, 9))).toBe(3)
    expect(compileNode(tree.right, seatOf)(Float64Array.of(1, 2, 9))).toBe(9)
  })
})

describe('compile: tolerance', () => {
  test.each([
    ['12 * 0.0254 m >= 1 ft', 1],
    ['12 * 0.0254 m < 1 ft', 0],
    ['0.1 m + 0.2 m <= 0.3 m', 1],
    ['0.1 m + 0.2 m > 0.3 m', 0],
    ['0.1 + 0.2 == 0.3', 1],
    ['0.1 + 0.2 != 0.3', 0],
    ['1 <= 0.999999998', 0],
    ['1 <= 0.9999999995', 1],
    ['1 < 1.0000000005', 0],
    ['1 < 1.000000002', 1],
    ['0 <= 0', 1],
    ['0 < 1e-300', 1],
    ['floor(0.6/0.2)', 3],
    ['floor(0.3/0.1)', 3],
    ['ceil(0.1 * 3 / 0.1)', 3],
    ['floor(2.999999)', 2],
    ['ceil(3.000001)', 4],
    ['floor(-0.5)', -1],
    ['floor(1234567890.7)', 1_234_567_890],
    ['round(2.5)', 3],
    ['round(-2.5)', -3],
    ['round(0.285 * 100)', 29],
    ['round(2.4)', 2],
  ])('compile: `%s` is %d', (text, expected) => {
    expect(run(text)).toBe(expected)
  })
})

describe('compile: what is not a number stays visible', () => {
  const everywhere = [
    'a + 1', '1 - a', 'a * 0', 'a / 2', '2 / a', 'a^0', 'a^2', '1^a', '0^a', 'min(a, 1)', 'max(1, a)', 'abs(a)', 'sqrt(a)', 'cbrt(a)',
    'exp(a)', 'log(a)', 'log10(a)', 'sin(a)', 'cos(a)', 'tan(a)', 'asin(a)', 'acos(a)', 'atan(a)', 'atan2(a, 1)', 'atan2(1, a)', 'floor(a)',
    'ceil(a)', 'round(a)', 'a < 1', 'a <= 1', '1 > a', '1 >= a', 'a == a', 'a != 1', 'not (a < 1)', 'a < 1 and 1 < 2', '1 < 2 or a < 1',
    '2 < 1 and a < 1', 'sum(q)', 'max(q)', 'interpolate(t, a)', '-a', 'a - a',
  ] // biome-ignore format: a list

  test.each(everywhere)('compile: a NaN gives NaN in `%s`', text => {
    expect(run(text, Number.NaN, 1, 2)).toBeNaN()
  })

  test.each(everywhere)('compile: an infinity is not lost in `%s`', text => {
    for (const infinity of [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(Number.isFinite(run(text, infinity, 1, 2))).toBe(false)
  })

  test.each([
    '1/0',
    '0/0',
    '1/(1/0)',
    'min(1/0, 3)',
    '3 < 1/0',
    'sqrt(-1)',
    '(-8)^(1/3)',
    'log(0)',
    'log(-1)',
    'asin(2)',
    'acos(2)',
    '9^9^9',
    '1/9^9^9',
    'exp(-9^9^9)',
    'atan(9^9^9)',
    '0^-1',
    'exp(1000)',
    '2^exp(1000)',
  ])('compile: `%s` is no finite number', text => {
    expect(Number.isFinite(run(text))).toBe(false)
  })

  test('compile: a slot that is missing is NaN', () => {
    expect(run('a')).toBeNaN()
    expect(run('a + b', 1)).toBeNaN()
  })
})

describe('compile against mathjs', () => {
  const math = create(all ?? {})
  const names = Object.keys(soundValues) as (keyof typeof soundValues)[]
  const scope = Object.fromEntries(
    names.map(name => {
      const [number, unit] = soundValues[name]
      return [name, unit ? math.unit(number, unit) : number]
    }),
  )
  const slots = Float64Array.from(names.map(name => fromUnit(soundValues[name][0], unitOf(soundValues[name][1]))))
  const seat = (name: string): Seat => ({ kind: 'slot', slot: names.indexOf(name as keyof typeof soundValues) })

  function theirs(node: MathNode): number {
    const value = node.compile().evaluate({ ...scope }) as number | MathUnit
    return typeof value === 'number' ? value : (value.toSI() as unknown as { value: number }).value
  }

  test('compile: random formulas whose dimensions fit are proved, and give what mathjs gives with units', () => {
    let compared = 0
    fc.assert(
      fc.property(soundFormulas, ({ text, length, force }) => {
        const ours = formula(text)
        const proof = prove(
          ours,
          name => {
            const unit = unitOf(soundValues[name as keyof typeof soundValues][1])
            return { kind: 'value', dimension: unit.dimension }
          },
          { system: 'SI' },
        )
        expect(proof.ok, text).toBe(true)
        const bare = `(1 m)^(${length}) * (1 kN)^(${force})`
        const expected = prove(formula(bare), () => undefined, { system: 'SI' })
        expect(proof.ok && expected.ok && proof.result).toEqual(expected.ok && expected.result)
        const value = compile(ours, seat)(slots)
        const other = theirs(math.parse(text))
        if (!Number.isFinite(value) || !Number.isFinite(other)) return
        compared++
        expect(Math.abs(value - other), text).toBeLessThanOrEqual(1e-6 * Math.max(Math.abs(value), 1e-9))
      }),
      { numRuns: 500 },
    )
    expect(compared).toBeGreaterThan(350)
  })
})
