import fc from 'fast-check'
import { all, create } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { compile, compileNode } from '../../src/formula/compile.ts'
import { shownText } from '../../src/formula/formula-text.ts'
import { prove } from '../../src/formula/prove.ts'
import {
  chooseCheckDigits,
  chooseConditionDigits,
  chooseDigits,
  type Digits,
  type Operand,
} from '../../src/formula/reach.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Comparison, Compiled, Formula } from '../../src/formula/types.ts'
import { displayUnit } from '../../src/quantity/display-unit.ts'
import { digitsOf, figuresOf, lastPlace } from '../../src/quantity/number-print.ts'
import { fromUnit, inUnit } from '../../src/quantity/to-unit.ts'
import type { System, Unit } from '../../src/quantity/types.ts'
import { one, unitOf } from '../../src/quantity/unit.ts'
import { soundFormulas, soundValues } from './random-formula.ts'

const math = create(all ?? {})

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

interface Value {
  readonly value: number
  readonly unit?: string
  readonly digits?: string
}

interface Line {
  readonly formula: Formula
  readonly names: readonly string[]
  readonly operands: readonly Operand[]
  readonly slots: Float64Array
  readonly compiled: Compiled
}

/** A line over named values; `value` in its unit. */
function lineOf(text: string, values: Readonly<Record<string, Value>>): Line {
  const read = formula(text)
  const names = [...read.names]
  const unit = (name: string): Unit => unitOf(values[name]?.unit ?? '')
  const digits = (name: string): { digits?: string } =>
    values[name]?.digits === undefined ? {} : { digits: values[name].digits }
  return {
    formula: read,
    names,
    operands: names.map((name, slot) => ({ slot, unit: unit(name), ...digits(name) })),
    slots: Float64Array.from(names.map(name => fromUnit(values[name]!.value, unit(name)))),
    compiled: compile(read, name => ({ kind: 'slot', slot: names.indexOf(name) })),
  }
}

function choose(
  text: string,
  values: Readonly<Record<string, Value>>,
  { unit = one, figures = 4 }: { unit?: Unit; figures?: number } = {},
): Digits {
  return chooseDigits({ ...lineOf(text, values), resultUnit: unit, figures })
}

/** The result recomputed from the printed characters alone, by another reading of them, in the result's unit. */
function recomputed(line: Line, { operands }: Pick<Digits, 'operands'>, unit: Unit): number {
  const shownOf = (name: string) => {
    const i = line.names.indexOf(name)
    return { digits: operands[i]!, unit: line.operands[i]!.unit, exact: false }
  }
  const printed = formula(shownText(line.formula, shownOf, { bare: false }))
  return inUnit(compile(printed, () => ({ kind: 'slot', slot: 0 }))(new Float64Array()), unit)
}

/** How many units in its last figure the recomputed result, rounded alike, lies from the printed one. */
const unitsOff = (again: number, { result, place }: Pick<Digits, 'result' | 'place'>): number =>
  Math.abs(Math.round(again / place) - Math.round(Number(result) / place))

/** The twelve hard lines of the design, and three easier: toy values, each drawn again within 5 % of its size. */
const hard: readonly (readonly [name: string, text: string, values: Readonly<Record<string, number>>])[] = [
  ['net pressure', 'a - b * c', { a: 98.7654, b: 9.80665, c: 9.98765 }],
  ['flotation margin', 'a - b', { a: 4321.98765, b: 4318.12345 }],
  ['one minus a ratio', '1 - a', { a: 0.998765432 }],
  ['root of a small difference', 'sqrt(0.25 - k / 1.134)', { k: 0.2762 }],
  ['halving layers', '2^n', { n: 27.18 }],
  ['fewer halving layers', '2^n', { n: 10.37 }],
  ['attenuation over two factors', 'exp(-a * b)', { a: 15.23, b: 1.012 }],
  ['attenuation', 'exp(-a)', { a: 15.42 }],
  ['decay', '1000 * t^-1.2', { t: 49.12 }],
  ['logarithm near one', 'log(q)', { q: 1.00123 }],
  ['six factors', 'a * b * c * d * f * k', { a: 1.00044, b: 1.00031, c: 0.99971, d: 1.00012, f: 0.99984, k: 1.00027 }],
  ['deflection', 'w * l^4 / (384 * E * I)', { w: 12.347, l: 5.8123, E: 30.1234, I: 0.0017283 }],
  ['moment', 'alpha * w * l^2', { alpha: 0.0478, w: 52.3, l: 3.4 }],
  ['ratio', 'a / b', { a: 26.0812, b: 31.2456 }],
  ['lever arm', 'd * (1 - 0.59 * r)', { d: 172.341, r: 0.11234 }],
]

/** Lines whose values may vary less, so that they keep being differences of nearly equal numbers inside their domain. */
const spreads: Readonly<Record<string, number>> = {
  'flotation margin': 0.001,
  'one minus a ratio': 0.0005,
  'logarithm near one': 0.0005,
  'root of a small difference': 0.4,
}

describe('chooseDigits: the hard lines', () => {
  test.each(hard)(
    'chooseDigits: %s closes within one unit, recomputed by mathjs from the printed characters',
    (name, text, base) => {
      const names = Object.keys(base)
      let most = 0
      fc.assert(
        fc.property(
          fc.array(fc.double({ min: 0.95, max: 1.05, noNaN: true }), {
            minLength: names.length,
            maxLength: names.length,
          }),
          factors => {
            const spread = spreads[name] ?? 1
            const values = Object.fromEntries(
              names.map((name, i) => [name, { value: base[name]! * (1 + (factors[i]! - 1) * spread) }]),
            )
            const line = lineOf(text, values)
            const exact = line.compiled(line.slots)
            fc.pre(Number.isFinite(exact))
            const digits = chooseDigits({ ...line, resultUnit: one, figures: 4 })
            const scope = Object.fromEntries(line.names.map((name, i) => [name, Number(digits.operands[i])]))
            const again = math.evaluate(text, scope) as number
            expect(digits.fewer, JSON.stringify([values, digits])).toBe(false)
            expect(digits.result).toBe(digitsOf(exact, 4))
            expect(digits.place).toBe(lastPlace(digits.result, 4))
            expect(unitsOff(again, digits), JSON.stringify([values, digits, again])).toBeLessThanOrEqual(1)
            most = Math.max(most, ...digits.operands.map(figuresOf))
          },
        ),
        { numRuns: 200 },
      )
      expect(most).toBeLessThanOrEqual(10)
    },
  )

  test('chooseDigits: the design’s own values need no more figures than it measured', () => {
    const most = (name: string): number => {
      const [, text, base] = hard.find(each => each[0] === name)!
      const digits = choose(text, Object.fromEntries(Object.entries(base).map(([key, value]) => [key, { value }])))
      return Math.max(...digits.operands.map(figuresOf))
    }
    expect(most('flotation margin')).toBeLessThanOrEqual(8)
    expect(most('net pressure')).toBeLessThanOrEqual(7)
    expect(most('logarithm near one')).toBeLessThanOrEqual(7)
    for (const name of ['deflection', 'decay', 'six factors', 'attenuation', 'halving layers'])
      expect(most(name), name).toBeLessThanOrEqual(6)
    expect(most('moment')).toBeLessThanOrEqual(5)
  })

  test('chooseDigits: at fixed figures the same lines would not close, so the test above can fail', () => {
    const off = (text: string, values: Readonly<Record<string, number>>): number => {
      const exact = math.evaluate(text, { ...values }) as number
      const scope = Object.fromEntries(Object.entries(values).map(([key, value]) => [key, Number(digitsOf(value, 4))]))
      const result = digitsOf(exact, 4)
      return unitsOff(math.evaluate(text, scope) as number, { result, place: lastPlace(result, 4) })
    }
    // Units of the last figure by which the line is off at four figures everywhere, as the design measured them: 23, 136, 35, 235
    expect(off('a - b * c', hard[0]![2])).toBe(23)
    expect(off('a - b', hard[1]![2])).toBe(136)
    expect(off('1 - a', hard[2]![2])).toBe(35)
    expect(off('log(q)', hard[9]![2])).toBeGreaterThan(200)
  })
})

describe('chooseDigits: random formulas in units', () => {
  test.each(['SI', 'US'] as const)(
    'chooseDigits: any line in %s closes within one unit when its printed characters are read again',
    (system: System) => {
      const names = Object.keys(soundValues) as (keyof typeof soundValues)[]
      const factors = fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), {
        minLength: names.length,
        maxLength: names.length,
      })
      let lines = 0
      let fewer = 0
      fc.assert(
        fc.property(soundFormulas, factors, fc.constantFrom(3, 4, 5), ({ text }, by, figures) => {
          const values = Object.fromEntries(
            names.map((name, i) => {
              const [number, unit] = soundValues[name]
              const own = displayUnit(unitOf(unit).dimension, system)
              return [name, { value: inUnit(fromUnit(number * by[i]!, unitOf(unit)), own), unit: own.text }]
            }),
          )
          const line = lineOf(text, values)
          const proof = prove(
            line.formula,
            name => ({
              kind: 'value',
              dimension: unitOf(values[name]!.unit).dimension,
            }),
            { system },
          )
          if (!proof.ok || proof.result.kind !== 'value') throw new Error(text)
          fc.pre(Number.isFinite(line.compiled(line.slots)))
          const unit = displayUnit(proof.result.dimension, system)
          const digits = chooseDigits({ ...line, resultUnit: unit, figures })
          lines++
          if (digits.fewer) fewer++
          if (!digits.fewer && digits.result !== '0') expect(digits.place).toBe(lastPlace(digits.result, figures))
          expect(
            unitsOff(recomputed(line, digits, unit), digits),
            JSON.stringify([text, values, digits]),
          ).toBeLessThanOrEqual(1)
        }),
        { numRuns: 400 },
      )
      expect(lines).toBeGreaterThan(300)
      expect(fewer).toBeLessThan(lines / 20)
    },
  )
})

describe('chooseDigits: traps', () => {
  test('chooseDigits: half a unit of the last place of an operand moves the result by one unit of its last place at most', () => {
    let raised = 0
    for (let x = 1.01234; x < 9.9; x += 0.08765) {
      const line = lineOf('x^3', { x: { value: x } })
      const { operands, place } = chooseDigits({ ...line, resultUnit: one, figures: 4 })
      const half = lastPlace(operands[0]!) / 2
      const moved = Math.max((x + half) ** 3 - x ** 3, x ** 3 - (x - half) ** 3)
      expect(moved, `${x}`).toBeLessThanOrEqual(place * (1 + 1e-9))
      if (figuresOf(operands[0]!) > 4) raised++
    }
    expect(raised).toBeGreaterThan(50)
  })

  test('chooseDigits: typed digits are printed as typed and count as exact', () => {
    const digits = choose('a * b', { a: { value: 3.4, digits: '3.40' }, b: { value: 1 / 3 } })
    expect(digits).toEqual({ operands: ['3.40', '0.3333'], result: '1.133', fewer: false, place: 0.001 })
  })

  test('chooseDigits: (a) a repeated name is moved once, not twice', () => {
    const digits = choose('r^4 / (1 + r^4)', { r: { value: 3.1417265 } })
    expect(figuresOf(digits.operands[0]!)).toBe(4)
  })

  test('chooseDigits: one value under two names has one set of digits, the exact one where there is one', () => {
    const same = { h: { value: 4.23456789, unit: 'm' }, z: { value: 4.23456789, unit: 'm' } }
    const [h, z] = choose('h^3 - z', same).operands
    expect(z).toBe(h)
    const exact = { ...same, h: { value: 4.2, unit: 'm', digits: '4.2' }, z: { value: 4.2, unit: 'm' } }
    expect(choose('h * z', exact).operands).toEqual(['4.2', '4.2'])
    const apart = { h: { value: 4.2, unit: 'm', digits: '4.2' }, z: { value: 4.2001, unit: 'm' } }
    expect(choose('h * z', apart).operands).toEqual(['4.2', '4.200'])
  })

  test('chooseDigits: (b) floor and ceil: the printed operand takes the same step', () => {
    for (const value of [2.99996, 3.00004, 7.999951, 1.00049999]) {
      for (const fn of ['floor', 'ceil', 'round']) {
        const text = `${fn}(x * 1)`
        const line = lineOf(text, { x: { value } })
        const digits = choose(text, { x: { value } })
        expect(recomputed(line, digits, one), `${text} ${value} ${digits.operands[0]}`).toBe(line.compiled(line.slots))
      }
    }
  })

  test('chooseDigits: (b) an operand on a kink of max', () => {
    const line = lineOf('max(0, a - b) * 1000', { a: { value: 5.000049 }, b: { value: 5.000001 } })
    const digits = choose('max(0, a - b) * 1000', { a: { value: 5.000049 }, b: { value: 5.000001 } })
    expect(unitsOff(recomputed(line, digits, one), digits)).toBeLessThanOrEqual(1)
    expect(digits.result).toBe('0.04800')
  })

  test('chooseDigits: (c) the half unit is one of the printed unit, a temperature’s and a US unit’s too', () => {
    const values = { T: { value: 77.77, unit: 'degF' }, U: { value: 12.345678, unit: 'degC' } }
    const line = lineOf('T - U', values)
    const digits = chooseDigits({ ...line, resultUnit: unitOf('K'), figures: 4 })
    expect(unitsOff(recomputed(line, digits, unitOf('K')), digits)).toBeLessThanOrEqual(1)
    expect(digits.operands[0]).toMatch(/^77\.77/)
  })

  test('chooseDigits: (d) a result of nought is `0`, its unit that of the operands', () => {
    const nought = choose('a - b', { a: { value: 12.345678 }, b: { value: 12.345678 } })
    expect(nought).toEqual({ operands: ['12.35', '12.35'], result: '0', fewer: false, place: expect.closeTo(0.01, 12) })
    expect(choose('max(0, a - b)', { a: { value: 1.23456 }, b: { value: 9.87654 } }).result).toBe('0')
    expect(choose('0 * 1', {})).toMatchObject({ result: '0', fewer: false })
    const noise = choose('a - b - c', { a: { value: 0.3 }, b: { value: 0.1 }, c: { value: 0.2 } })
    expect(noise.result).toBe('0')
  })

  test('chooseDigits: (e) a result that rounds up a decade has the bigger unit', () => {
    expect(choose('a * 1', { a: { value: 9.99964 } })).toMatchObject({ result: '10.00', place: 0.01 })
  })

  test('chooseDigits: (f) twelve feet in a line of metres is not exact at 3.658 m', () => {
    const values = { h: { value: 12 * 0.3048, unit: 'm' }, k: { value: 3.6575, digits: '3.6575', unit: 'm' } }
    const line = lineOf('h - k', values)
    const digits = chooseDigits({ ...line, resultUnit: unitOf('m'), figures: 4 })
    expect(digits.operands).toEqual(['3.6576', '3.6575'])
    expect(digits.result).toBe('0.0001000')
  })

  test('chooseDigits: a value that its figures write in full is exact, at the edge of a domain too', () => {
    expect(choose('sqrt(1 - a)', { a: { value: 1 } })).toMatchObject({ operands: ['1.000'], result: '0', fewer: false })
    expect(choose('sqrt(a - 2)', { a: { value: 2.25 } })).toMatchObject({
      operands: ['2.250'],
      result: '0.5000',
      fewer: false,
    })
  })

  test('chooseDigits: past ten figures the result has fewer, and says so', () => {
    const values = { a: { value: 1000.123456789 }, b: { value: 1000.12345677 } }
    const line = lineOf('a - b', values)
    const digits = choose('a - b', values)
    expect(digits.fewer).toBe(true)
    expect(Math.max(...digits.operands.map(figuresOf))).toBe(10)
    expect(unitsOff(recomputed(line, digits, one), digits)).toBeLessThanOrEqual(1)
  })

  test('chooseDigits: (h) a sum over a list and an interpolation close as well', () => {
    const read = formula('sum(q) - 9.99')
    const slots = Float64Array.of(1.234567, 3.456789, 5.300042)
    const operands = [0, 1, 2].map(slot => ({ slot, unit: one }))
    const compiled = compile(read, () => ({ kind: 'slots', slots: [0, 1, 2] }))
    const digits = chooseDigits({ compiled, slots, operands, resultUnit: one, figures: 4 })
    const again = digits.operands.reduce((so, each) => so + Number(each), 0) - 9.99
    expect(unitsOff(again, digits)).toBeLessThanOrEqual(1)

    const steep = compile(formula('interpolate(t, x)'), name =>
      name === 't' ? { kind: 'table', x: [0, 1, 1.5], y: [0, 5000, 9000] } : { kind: 'slot', slot: 0 },
    )
    const found = chooseDigits({
      compiled: steep,
      slots: Float64Array.of(1.2345678),
      operands: operands.slice(0, 1),
      resultUnit: one,
      figures: 4,
    })
    expect(unitsOff(steep(Float64Array.of(Number(found.operands[0]))), found)).toBeLessThanOrEqual(1)
  })

  test('chooseDigits: an operand at the end of a table stays inside it', () => {
    const compiled = compile(formula('interpolate(t, x)'), name =>
      name === 't' ? { kind: 'table', x: [0, 1 / 3], y: [0, 50] } : { kind: 'slot', slot: 0 },
    )
    const digits = chooseDigits({
      compiled,
      slots: Float64Array.of(1 / 3),
      operands: [{ slot: 0, unit: one }],
      resultUnit: one,
      figures: 4,
    })
    expect(unitsOff(compiled(Float64Array.of(Number(digits.operands[0]))), digits)).toBeLessThanOrEqual(1)
  })

  test('chooseDigits: leaves the slots as they were, and refuses a line without a finite result', () => {
    const line = lineOf('a / b', { a: { value: 1.23456 }, b: { value: 3.45678 } })
    const before = [...line.slots]
    chooseDigits({ ...line, resultUnit: one, figures: 4 })
    expect([...line.slots]).toEqual(before)
    expect(() => choose('a / 0', { a: { value: 1 } })).toThrow(RangeError)
  })
})

describe('chooseConditionDigits', () => {
  test.each([
    ['a < b', { a: 0.99996, b: 1.00003 }],
    ['a < b and b < 1.0001', { a: 0.99996, b: 1.00003 }],
    ['a >= b', { a: 0.99999999, b: 1.00000001 }],
    ['floor(a) == 2', { a: 2.99999, b: 1 }],
    ['not (a * b > 5.0001)', { a: 2.236089, b: 2.236089 }],
    ['a <= b', { a: 1 / 3, b: 1 / 3 }],
  ])('chooseConditionDigits: `%s` comes out the same from the printed numbers', (text, base) => {
    const line = lineOf(text, Object.fromEntries(Object.entries(base).map(([key, value]) => [key, { value }])))
    const digits = chooseConditionDigits({ ...line, figures: 4 })
    expect(recomputed(line, digits, one)).toBe(line.compiled(line.slots))
  })

  test.each<[string, Record<string, number>]>([
    // No operand turns these by itself: each rounds by four tenths of a unit, and the margin is eleven tenths of it.
    ['a + b + c > d', { a: 1.0004, b: 1.0014, c: 1.0024, d: 3.0031 }],
    ['a + b + c < d', { a: 1.0006, b: 1.0016, c: 1.0026, d: 3.0059 }],
    // Ten figures are too few for these: they lie at the tolerance of comparisons.
    ['a < b', { a: 1.0000000004, b: 1.0000000018 }],
    ['a >= b', { a: 1.0000000012, b: 1.00000000225 }],
  ])('chooseConditionDigits: `%s` gets as many figures as its outcome needs', (text, base) => {
    const line = lineOf(text, Object.fromEntries(Object.entries(base).map(([key, value]) => [key, { value }])))
    expect(recomputed(line, chooseConditionDigits({ ...line, figures: 4 }), one)).toBe(line.compiled(line.slots))
  })

  test('chooseConditionDigits: random sums near the limit come out the same', () => {
    const near = fc.double({ min: -6e-4, max: 6e-4, noNaN: true })
    const tiny = fc.double({ min: -4e-9, max: 4e-9, noNaN: true })
    fc.assert(
      fc.property(fc.oneof(near, tiny), near, near, fc.oneof(near, tiny), (p, q, r, margin) => {
        const [a, b, c] = [1 + p, 1.001 + q, 1.002 + r]
        const values = { a, b, c, d: a + b + c + margin }
        for (const op of ['<', '<=', '>', '>=', '==', '!=']) {
          const line = lineOf(
            `a + b + c ${op} d`,
            Object.fromEntries(Object.entries(values).map(([k, value]) => [k, { value }])),
          )
          const digits = chooseConditionDigits({ ...line, figures: 4 })
          expect(recomputed(line, digits, one)).toBe(line.compiled(line.slots))
        }
      }),
      { numRuns: 300 },
    )
  })

  test('chooseConditionDigits: figures are raised only where the outcome needs them', () => {
    const line = lineOf('a < b', { a: { value: 1.23456 }, b: { value: 9.87654 } })
    expect(chooseConditionDigits({ ...line, figures: 4 }).operands).toEqual(['1.235', '9.877'])
  })
})

describe('chooseCheckDigits', () => {
  function check(
    text: string,
    values: Readonly<Record<string, Value>>,
    options: { unit?: Unit; leftDigits?: string; rightDigits?: string } = {},
  ) {
    const line = lineOf(text, values)
    const { tree } = line.formula
    if (tree.kind !== 'comparison') throw new Error('not a comparison')
    const seat = (name: string) => ({ kind: 'slot', slot: line.names.indexOf(name) }) as const
    const sides = { left: compileNode(tree.left, seat), right: compileNode(tree.right, seat) }
    const { unit = one, ...digits } = options
    return {
      line,
      digits: chooseCheckDigits({ ...line, ...sides, op: tree.op, unit, figures: 4, ...digits }),
      satisfied: line.compiled(line.slots) === 1,
    }
  }

  const compare = (op: Comparison, a: number, b: number): boolean => math.evaluate(`a ${op} b`, { a, b }) as boolean

  test.each([
    ['a <= b', { a: 0.99996, b: 1.00003 }, '1.000', '1.000', true],
    ['a <= b', { a: 1.00003, b: 0.99996 }, '1.0000', '0.99996', false],
    ['a < b', { a: 0.99996, b: 1.00003 }, '0.99996', '1.0000', true],
    ['a >= b', { a: 26.081, b: 26.082 }, '26.081', '26.082', false],
    ['a <= b', { a: 26.081, b: 31.2 }, '26.08', '31.20', true],
    ['a == b', { a: 2.00001, b: 2 }, '2.00001', '2.00000', false],
    ['a != b', { a: 2.00001, b: 2 }, '2.00001', '2.00000', true],
    ['a <= b', { a: 1 / 3, b: 1 / 3 }, '0.3333', '0.3333', true],
    ['a < b', { a: 1 / 3, b: 1 / 3 }, '0.3333', '0.3333', false],
    ['a <= b', { a: 0.30479999999999996, b: 0.3048 }, '0.3048', '0.3048', true],
  ])('chooseCheckDigits: `%s` of %o prints %s and %s', (text, base, left, right, satisfied) => {
    const found = check(text, Object.fromEntries(Object.entries(base).map(([key, value]) => [key, { value }])))
    expect(found.digits).toMatchObject({ left, right, satisfied, fewer: false })
    expect(found.satisfied).toBe(satisfied)
  })

  test('chooseCheckDigits: random checks: printed sides, and sides recomputed from the operands, agree with the outcome', () => {
    const near = fc.tuple(
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.double({ min: -3e-4, max: 3e-4, noNaN: true }),
      fc.double({ min: 0.5, max: 2, noNaN: true }),
    )
    fc.assert(
      fc.property(near, fc.constantFrom('<', '<=', '>', '>='), ([a, off, c], op) => {
        // Sides that differ by no more than the tolerance of comparisons count as equal, whatever is printed
        fc.pre(Math.abs(off) > 1e-8)
        const text = `a * c ${op} b + c`
        const found = check(text, { a: { value: a }, c: { value: c }, b: { value: a * c * (1 + off) - c } })
        const { digits } = found
        expect(digits.satisfied).toBe(found.satisfied)
        if (digits.left !== digits.right)
          expect(compare(op as Comparison, Number(digits.left), Number(digits.right))).toBe(digits.satisfied)
        else expect(digits.satisfied).toBe(op.includes('='))
        expect(recomputed(found.line, digits, one) === 1).toBe(digits.satisfied)
        expect(digits.fewer).toBe(false)
      }),
      { numRuns: 400 },
    )
  })

  test('chooseCheckDigits: a typed side is printed as typed', () => {
    const found = check('P >= R_1', { P: { value: 99.97 }, R_1: { value: 100, digits: '100' } }, { rightDigits: '100' })
    expect(found.digits).toEqual({
      operands: ['99.97', '100'],
      left: '99.97',
      right: '100',
      satisfied: false,
      fewer: false,
    })
  })

  test('chooseCheckDigits: both sides stand in one unit', () => {
    const values = { e: { value: 41.2345, unit: 'mm' }, k: { value: 0.0412346, unit: 'm' } }
    const found = check('e <= k', values, { unit: unitOf('mm') })
    expect(found.digits).toMatchObject({ left: '41.23', right: '41.23', satisfied: true })
    expect(recomputed(found.line, found.digits, one)).toBe(1)
  })
})
