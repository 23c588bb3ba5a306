import fc from 'fast-check'
import katex from 'katex'
import { describe, expect, test } from 'vitest'
import { compile } from '../../src/formula/compile.ts'
import { shownText } from '../../src/formula/formula-text.ts'
import { prove } from '../../src/formula/prove.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { coherent } from '../../src/formula/scale.ts'
import { symbolTex } from '../../src/formula/symbol.ts'
import { texNumbers, texShown, texSymbols } from '../../src/formula/tex.ts'
import type { Formula } from '../../src/formula/types.ts'
import { displayUnit } from '../../src/quantity/display-unit.ts'
import { fromUnit } from '../../src/quantity/to-unit.ts'
import type { Shown } from '../../src/quantity/types.ts'
import { one, unitOf, unitTex } from '../../src/quantity/unit.ts'
import { unitNames } from '../../src/quantity/units.ts'
import { formulaTexts, soundFormulas, soundValues } from './random-formula.ts'
import { evaluateTex } from './read-tex.ts'

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

/** Rendered in KaTeX's strict mode, where anything doubtful throws. */
const render = (tex: string): string =>
  katex.renderToString(tex, { strict: 'error', throwOnError: true, output: 'htmlAndMathml' })

const shown = (digits: string, unit = ''): Shown => ({ digits, unit: unitOf(unit), exact: false })
const symbols = (text: string): string => texSymbols(formula(text), () => undefined)

function numbers(text: string, values: Readonly<Record<string, Shown | readonly Shown[]>>, bare = false): string {
  return texNumbers(formula(text), name => values[name] ?? shown('1'), { bare })
}

describe('symbolTex', () => {
  test.each([
    ['K_0', 'K_{0}'],
    ['K0', 'K_{0}'],
    ["gamma'", "\\gamma'"],
    ["\\gamma'", "\\gamma'"],
    ["gamma'_sat", "\\gamma_{\\mathrm{sat}}'"],
    ['f_ck', 'f_{\\mathrm{ck}}'],
    ['f_{ck}', 'f_{\\mathrm{ck}}'],
    ['alpha_x', '\\alpha_{x}'],
    ['M_support', 'M_{\\mathrm{support}}'],
    ['roof.M_support', 'M_{\\mathrm{support}}'],
    ['A_s_req', 'A_{s,\\mathrm{req}}'],
    ['phi', '\\varphi'],
    ['epsilon_c', '\\varepsilon_{c}'],
    ['γ_w', '\\gamma_{w}'],
    ['µ', '\\mu'],
    ['Delta_p', '\\Delta p'],
    ['Delta_p_f', '\\Delta p_{f}'],
    ['Delta_max', '\\Delta_{\\mathrm{max}}'],
    ['sigma_v0', '\\sigma_{v0}'],
    ['OCR', '\\mathrm{OCR}'],
    ['EI', '\\mathrm{EI}'],
    ['water_depth', '\\mathrm{water\\ depth}'],
    ['wall_2', '\\mathrm{wall}_{2}'],
    ['load_x', '\\mathrm{load}_{x}'],
    ['x_1', 'x_{1}'],
    ['Alpha', '\\mathrm{A}'],
    ['', '?'],
  ])('symbolTex: `%s` is %s', (symbol, tex) => {
    expect(symbolTex(symbol)).toBe(tex)
    render(tex)
  })

  test('symbolTex: whatever stands in a symbol, KaTeX takes it, also under a power', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 12 }),
          fc.string({ unit: fc.constantFrom(..."abKγΔ_'0 {}\\$%&#^~é,.-+*".split('')), maxLength: 10 }),
        ),
        text => {
          render(`${symbolTex(text)}^{2}`)
        },
      ),
      { numRuns: 600 },
    )
  })
})

describe('texSymbols', () => {
  test.each([
    ['alpha_x * w * l_x^2', '\\alpha_{x} \\cdot w \\cdot l_{x}^{2}'],
    ['a - (b + c)', 'a - (b + c)'],
    ['(a + b) - c', 'a + b - c'],
    ['a + (b - c)', 'a + b - c'],
    ['a - (-c)', 'a - (-c)'],
    ['-(-a)', '-(-a)'],
    ['-a + b', '-a + b'],
    ['a + (-b + c)', 'a + (-b + c)'],
    ['a * (-b)', 'a \\cdot (-b)'],
    ['a * (b * c)', 'a \\cdot (b \\cdot c)'],
    ['(a * b) / (c)', '\\frac{a \\cdot b}{c}'],
    ['a / b / c', '\\frac{a}{b \\cdot c}'],
    ['a / (b / c)', '\\frac{a}{\\frac{b}{c}}'],
    ['(a + b)^2', '(a + b)^{2}'],
    ['(a / b)^2', '\\left(\\frac{a}{b}\\right)^{2}'],
    ['a^(2/3)', 'a^{2/3}'],
    ['a^(b + 1)', 'a^{b + 1}'],
    ['a^-1', 'a^{-1}'],
    ['(a^b)^c', '(a^{b})^{c}'],
    ['(-2)^2', '(-2)^{2}'],
    ['-2^2', '-2^{2}'],
    ['sqrt(a)^2', '\\left(\\sqrt{a}\\right)^{2}'],
    ['sin(a)^2', '(\\sin(a))^{2}'],
    ['exp(-a * x)', 'e^{-a \\cdot x}'],
    ['exp(a)^2', '(e^{a})^{2}'],
    ['log(a) + log10(b)', '\\ln(a) + \\log_{10}(b)'],
    ['cbrt(a)', '\\sqrt[3]{a}'],
    ['abs(a - b)', '\\left| a - b \\right|'],
    ['floor(a / b)', '\\left\\lfloor \\frac{a}{b} \\right\\rfloor'],
    ['min(a, b)', '\\min(a,\\ \\allowbreak b)'],
    ['sum(layers.n)', '\\sum_{i} n_{i}'],
    ['2 * sum(q.x_a)', '2 \\cdot (\\sum_{i} x_{a,i})'],
    ['a <= b', 'a \\le b'],
    ['a < b <= c', 'a < b \\le c'],
    ['not (a < b)', '\\text{not }(a < b)'],
    ['1.2e-6 * a', '{1.2 \\times 10^{-6}} \\cdot a'],
    ['a * 1.2e-6', 'a \\cdot ({1.2 \\times 10^{-6}})'],
    ['12500 * a', '12\\,500 \\cdot a'],
    ['2 kN/m^2 * a', '{2\\;{\\mathrm{kN}/\\mathrm{m}^{2}}} \\cdot a'],
    ['(2 m)^2', '({2\\;{\\mathrm{m}}})^{2}'],
    ['max(0 m, a - b)', '\\max(0,\\ \\allowbreak a - b)'],
    ['a > 0.0 kN/m', 'a > 0.0'],
    ['max(0.5 m, a)', '\\max({0.5\\;{\\mathrm{m}}},\\ \\allowbreak a)'],
    ['0 degC - T', '{0\\;{{}^{\\circ}\\mathrm{C}}} - T'],
    ['20 degC - T', '{20\\;{{}^{\\circ}\\mathrm{C}}} - T'],
    ['T / degC + 273.15', 'T/{{}^{\\circ}\\mathrm{C}} + 273.15'],
    ['sin(30 deg)', '\\sin({30{{}^{\\circ}}})'],
    ['0.17 * sqrt(f_ck / MPa) * MPa', '0.17 \\cdot \\sqrt{f_{\\mathrm{ck}}/{\\mathrm{MPa}}} \\cdot {\\mathrm{MPa}}'],
    ['(f_ck / MPa)^(2/3)', '(f_{\\mathrm{ck}}/{\\mathrm{MPa}})^{2/3}'],
    ['f_y / (N/mm^2)', 'f_{y}/({\\mathrm{N}/\\mathrm{mm}^{2}})'],
    ['Delta_p^2', '(\\Delta p)^{2}'],
    ['pi * d^2 / 4', '\\frac{\\pi \\cdot d^{2}}{4}'],
  ])('texSymbols: `%s` is %s', (text, tex) => {
    expect(symbols(text)).toBe(tex)
    render(tex)
  })

  test('texSymbols: a name is printed with the symbol it is given', () => {
    expect(texSymbols(formula('load * roof.span'), name => (name === 'load' ? 'w' : 'l_x'))).toBe('w \\cdot l_{x}')
  })

  test('texSymbols: a wide fraction stands on the line, where KaTeX can break it', () => {
    const wide = symbols(
      '(gamma_a * h_1 + gamma_b * h_2 + gamma_c * h_3 + gamma_d * h_4 + gamma_e * h_5 + q_surcharge) / (2 * b)',
    )
    expect(wide).not.toContain('\\frac')
    expect(wide).toContain('\\mathbin{/}')
    const boxes = render(wide).split('class="katex-base"').length - 1 || render(wide).split('class="base"').length - 1
    expect(boxes).toBeGreaterThan(8)
  })

  test('texSymbols: fractions stand at most two high', () => {
    expect(symbols('a / (b / (c / (d / f)))').match(/\\frac\{[^{}]*\}\{\\frac\{[^{}]*\}\{\\frac/)).toBeNull()
  })

  test('texSymbols: any formula passes KaTeX in strict mode', () => {
    fc.assert(
      fc.property(formulaTexts, text => {
        const read = readFormula(text)
        if (read.ok) render(texSymbols(read.formula, () => undefined))
      }),
      { numRuns: 150 },
    )
  })

  test('unitTex: every unit passes KaTeX in strict mode', () => {
    for (const name of unitNames) render(`${unitTex(unitOf(name))}^{2}`)
    for (const text of ['kN*m/m', 'W/(m^2*K)', '1/m', 'MPa^(1/2)']) render(texShown(shown('3.4', text)))
  })
})

describe('texNumbers', () => {
  const values = {
    alpha_x: shown('0.0478'),
    w: shown('52.30', 'kN/m^2'),
    l_x: shown('3.400', 'm'),
    e: shown('-2.5'),
    n: shown('1.2e5'),
    T: shown('-5', 'degC'),
    f_ck: shown('30', 'MPa'),
    list: [shown('1.5'), shown('-0.25'), shown('3.0')],
  }

  test.each([
    [
      'alpha_x * w * l_x^2',
      '0.0478 \\times {52.30\\;{\\mathrm{kN}/\\mathrm{m}^{2}}} \\times ({3.400\\;{\\mathrm{m}}})^{2}',
    ],
    ['max(0 ft, l_x)', '\\max(0,\\ \\allowbreak {3.400\\;{\\mathrm{m}}})'],
    ['e^2', '(-2.5)^{2}'],
    ['-e', '-(-2.5)'],
    ['3 - e', '3 - (-2.5)'],
    ['3 + e', '3 + (-2.5)'],
    ['e + 3', '-2.5 + 3'],
    ['e * 3', '-2.5 \\times 3'],
    ['2 - e * 3', '2 - (-2.5 \\times 3)'],
    ['3 * e', '3 \\times (-2.5)'],
    ['e / 3', '\\frac{-2.5}{3}'],
    ['3 * n', '3 \\times ({1.2 \\times 10^{5}})'],
    ['n^2', '({1.2 \\times 10^{5}})^{2}'],
    ['T - 3 K', '{-5\\;{{}^{\\circ}\\mathrm{C}}} - {3\\;{\\mathrm{K}}}'],
    ['20 degC - T', '{20\\;{{}^{\\circ}\\mathrm{C}}} - ({-5\\;{{}^{\\circ}\\mathrm{C}}})'],
    ['T / degC + 273.15', '-5 + 273.15'],
    ['sum(list)', '1.5 + (-0.25) + 3.0'],
    ['2 * sum(list)', '2 \\times (1.5 + (-0.25) + 3.0)'],
    ['max(list)', '\\max(1.5,\\ \\allowbreak -0.25,\\ \\allowbreak 3.0)'],
    ['0.17 * sqrt(f_ck / MPa) * MPa', '0.17 \\times \\sqrt{30} \\times {\\mathrm{MPa}}'],
    ['f_ck / (N/mm^2)', '30'],
    ['f_ck / kPa', '\\frac{{30\\;{\\mathrm{MPa}}}}{{\\mathrm{kPa}}}'],
    ['interpolate(table, e)', '\\operatorname{interpolate}(\\mathrm{table},\\ \\allowbreak -2.5)'],
  ])('texNumbers: `%s` with units is %s', (text, tex) => {
    expect(numbers(text, values)).toBe(tex)
    render(tex)
  })

  test.each([
    ['alpha_x * w * l_x^2', '0.0478 \\times 52.30 \\times 3.400^{2}'],
    ['0.17 * sqrt(f_ck / MPa) * MPa', '0.17 \\times \\sqrt{30}'],
    ['0.3 * (f_ck / MPa)^(2/3) * MPa', '0.3 \\times 30^{2/3}'],
    ['2 kN/m^2 * l_x', '2 \\times 3.400'],
    ['MPa * 2', '2'],
    ['1 / MPa', '1'],
  ])('texNumbers: `%s` bare is %s', (text, tex) => {
    expect(numbers(text, values, true)).toBe(tex)
  })

  test('texNumbers: the print of a random formula, read back as TeX, is worth what the formula is worth', () => {
    const names = Object.keys(soundValues) as (keyof typeof soundValues)[]
    const slots = Float64Array.from(names.map(name => fromUnit(soundValues[name][0], unitOf(soundValues[name][1]))))
    const shownOf = (name: string): Shown => {
      const [number, unit] = soundValues[name as keyof typeof soundValues]
      return shown(String(number), unit)
    }
    let compared = 0
    fc.assert(
      fc.property(soundFormulas, ({ text }) => {
        const read = formula(text)
        const value = compile(read, name => ({ kind: 'slot', slot: names.indexOf(name as keyof typeof soundValues) }))(
          slots,
        )
        if (!Number.isFinite(value)) return
        compared++
        const tex = texNumbers(read, shownOf, { bare: false })
        expect(Math.abs(evaluateTex(tex) - value), `${text}\n${tex}`).toBeLessThanOrEqual(
          1e-9 * Math.max(Math.abs(value), 1e-12),
        )
        const again = compile(formula(shownText(read, shownOf, { bare: false })), () => ({ kind: 'slot', slot: 0 }))(
          slots,
        )
        expect(Math.abs(again - value), text).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(value), 1e-12))
      }),
      { numRuns: 300 },
    )
    expect(compared).toBeGreaterThan(200)
  })

  test('texNumbers: where a line is coherent, its bare print is worth the result in its unit', () => {
    const names = Object.keys(soundValues) as (keyof typeof soundValues)[]
    const units: Readonly<Record<string, string>> = {
      L_1: 'm',
      L_2: 'm',
      L_3: 'm',
      F_1: 'kN',
      F_2: 'kN',
      p_1: 'kN/m^2',
      n_1: '',
      n_2: '',
    }
    const shownOf = (name: string): Shown =>
      shown(String(soundValues[name as keyof typeof soundValues][0]), units[name])
    const slots = Float64Array.from(names.map(name => fromUnit(soundValues[name][0], unitOf(units[name]!))))
    let bareLines = 0
    let compared = 0
    fc.assert(
      fc.property(soundFormulas, ({ text }) => {
        const read = formula(text)
        const proof = prove(read, name => ({ kind: 'value', dimension: unitOf(units[name]!).dimension }), {
          system: 'SI',
        })
        if (!proof.ok || proof.result.kind !== 'value') throw new Error(text)
        const unit = displayUnit(proof.result.dimension, 'SI')
        const value = compile(read, name => ({ kind: 'slot', slot: names.indexOf(name as keyof typeof soundValues) }))(
          slots,
        )
        compared++
        if (!Number.isFinite(value) || !coherent(read, name => unitOf(units[name]!), unit)) return
        bareLines++
        const tex = texNumbers(read, shownOf, { bare: true })
        expect(Math.abs(evaluateTex(tex) * unit.factor - value), `${text}\n${tex}`).toBeLessThanOrEqual(
          1e-9 * Math.max(Math.abs(value), 1e-12),
        )
        const plain = compile(formula(shownText(read, shownOf, { bare: true })), () => ({ kind: 'slot', slot: 0 }))(
          slots,
        )
        expect(Math.abs(plain * unit.factor - value), text).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(value), 1e-12))
      }),
      { numRuns: 300 },
    )
    expect(bareLines).toBeGreaterThan(compared / 3)
  })
})

describe('texShown', () => {
  test.each([
    [shown('26.08', 'kN*m/m'), '{26.08\\;{\\mathrm{kN}\\,{\\cdot}\\,\\mathrm{m}/\\mathrm{m}}}'],
    [shown('30', 'deg'), '{30{{}^{\\circ}}}'],
    [shown('5', 'percent'), '{5\\;{\\%}}'],
    [{ digits: '0.71', unit: one, exact: false }, '0.71'],
  ])('texShown: number and unit stay together', (value, tex) => {
    expect(texShown(value)).toBe(tex)
    render(tex)
  })
})
