import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formulaText } from '../../src/formula/formula-text.ts'
import { childrenOf } from '../../src/formula/names-of.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import type { Formula, Node } from '../../src/formula/types.ts'
import { formulaTexts, shapeOf } from './random-formula.ts'

function formula(text: string): Formula {
  const read = readFormula(text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.says}`)
  return read.formula
}

function everyNode(node: Node, visit: (node: Node) => void): void {
  visit(node)
  for (const child of childrenOf(node)) everyNode(child, visit)
}

const signs: Readonly<Record<string, readonly string[]>> = {
  '*': ['*', '·', '×'],
  '-': ['-', '−'],
  '^': ['^', '³', '²'],
  '<=': ['<=', '≤'],
  '>=': ['>=', '≥'],
}

describe('formula text', () => {
  test('formula text: text -> tree -> canonical text -> the same tree, and canonical text is a fixed point', () => {
    let tried = 0
    fc.assert(
      fc.property(formulaTexts, text => {
        const read = readFormula(text)
        if (!read.ok) {
          // Only quantities behind a sign whose reach is in doubt, or too long a formula, may be refused
          expect(
            read.fault.rule === 'formula-limit' || /two ways|exponent of a unit/.test(read.fault.says),
            `${text}: ${read.fault.says}`,
          ).toBe(true)
          return
        }
        tried++
        const canonical = formulaText(read.formula)
        const again = formula(canonical)
        expect(shapeOf(again.tree)).toEqual(shapeOf(read.formula.tree))
        expect(again.to?.text).toBe(read.formula.to?.text)
        expect(formulaText(again)).toBe(canonical)
      }),
      { numRuns: 1500 },
    )
    expect(tried).toBeGreaterThan(1200)
  })

  test.each([
    ['a*(b*c)', 'a * (b * c)'],
    ['((a))+(b-c)', 'a + (b - c)'],
    ['a-(b-c)', 'a - (b - c)'],
    ['-(-a)', '-(-a)'],
    ['a - -b', 'a - (-b)'],
    ['(-2)^2', '(-2)^2'],
    ['-2^2', '-2^2'],
    ['(2 m)^2', '(2 m)^2'],
    ['a/(2 m)', 'a / (2 m)'],
    ['(2 kN) * m', '(2 kN) * m'],
    ['2 kN * x', '2 kN * x'],
    ['(1.5 W/m)/((N/mm^2)^a)', '(1.5 W/m) / (N/mm^2)^a'],
    ['-(5 degC)', '-(5 degC)'],
    ['-5 degC', '-5 degC'],
    ['x/(N/mm²)', 'x / (N/mm^2)'],
    ['x*m^-1', 'x * (m^-1)'],
    ['a<b<c', 'a < b and b < c'],
    ['(a or b) and c', '(a or b) and c'],
    ['x to  kN·m/m', 'x to kN*m/m'],
    ['1E3 + .5', '1e3 + 0.5'],
    ['min(a,b)*sum(q.n)', 'min(a, b) * sum(q.n)'],
  ])('formula text: `%s` is `%s`', (typed, canonical) => {
    expect(formulaText(formula(typed))).toBe(canonical)
  })
})

describe('spans', () => {
  test('spans: the text under every node reads as that node, and every sign is where it is said to be', () => {
    let nodes = 0
    fc.assert(
      fc.property(formulaTexts, text => {
        const read = readFormula(text)
        if (!read.ok) return
        everyNode(read.formula.tree, node => {
          nodes++
          const under = text.slice(node.span.start, node.span.end)
          expect(shapeOf(formula(under).tree), under).toEqual(shapeOf(node))
          if (node.kind === 'arithmetic' || node.kind === 'comparison') {
            const sign = text.slice(node.at.start, node.at.end)
            expect(signs[node.op] ?? [node.op], text).toContain(sign)
          }
        })
      }),
      { numRuns: 300 },
    )
    expect(nodes).toBeGreaterThan(1000)
  })

  test('spans: a mismatch stands at the operator, an argument at the argument', () => {
    const { tree } = formula('sqrt(4 m) + exp(2 m)')
    expect(tree.kind === 'arithmetic' && tree.at).toEqual({ start: 10, end: 11 })
    expect(tree.kind === 'arithmetic' && tree.right.kind === 'call' && tree.right.args[0]?.span).toEqual({
      start: 16,
      end: 19,
    })
  })
})

describe('hostile text', () => {
  const alphabet = [
    ...'abmskNW0123456789.eE+-*/^()<>=!%,;:\'"[]{}#$_&|?\\@~` \t\n\u00a0',
    ...'·×−≤≥≠²³⁻µμγΩ°√′\u0000\u200b\ud800é💥',
    ...[
      'sqrt(',
      'min(',
      ' to ',
      ' and ',
      ' not ',
      'kN',
      'degC',
      'pi',
      '1e400',
      'true',
      '__proto__',
      'constructor',
      '5 ft 6 in',
      '<=',
    ],
  ]

  test('hostile text: never throws, and its fault lies in the text', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...alphabet), { maxLength: 60 }), parts => {
        const text = parts.join('')
        const read = readFormula(text)
        if (read.ok) return
        const { span, says } = read.fault
        expect(span.start).toBeGreaterThanOrEqual(0)
        expect(span.end).toBeGreaterThanOrEqual(span.start)
        expect(span.end).toBeLessThanOrEqual(text.length)
        expect(says.endsWith('.')).toBe(false)
      }),
      { numRuns: 3000 },
    )
  })

  test('hostile text: any text at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), text => {
        expect(typeof readFormula(text).ok).toBe('boolean')
      }),
      { numRuns: 2000 },
    )
  })

  test('hostile text: what nests or repeats without end meets a limit', () => {
    const endless = [
      '(',
      '-',
      'sqrt(',
      'a^',
      'a*',
      '1 %(',
      'not (',
      'min(a,',
      '2 a/',
      'm^',
      'a<',
      '1,',
      "a'",
      '((',
      'a+(',
    ]
    for (const part of endless) {
      const read = readFormula(part.repeat(20_000))
      expect(read.ok).toBe(false)
      const short = readFormula(part.repeat(Math.floor(999 / part.length)))
      expect(short.ok).toBe(false)
    }
  })
})
