import fc from 'fast-check'
import type { Node } from '../../src/formula/types.ts'

/** Text of a formula of any kind the language has, with brackets and blanks where a hand might put them. */
export const formulaTexts: fc.Arbitrary<string> = fc
  .letrec<{ value: string; truth: string; formula: string }>(tie => {
    const value = tie('value')
    const blank = fc.constantFrom('', ' ')
    const leaf = fc.constantFrom(
      ...['a', 'b_2', 'roof.M_x', 'γ_w', 'pi', '2', '0.5', '1.2e-6', '3.40', '.5'],
      ...[
        '(2 kN)',
        '(3.4 m)',
        '(2 kN/m^2)',
        '(18.5 kN/m³)',
        '(5 m^-1)',
        'MPa',
        '(N/mm^2)',
        'm',
        '(1.5 W/(m^2*K))',
        '(30 deg)',
      ],
    )
    const sign = fc.constantFrom('+', '-', '*', '/', '^', '·', '×', '−')
    return {
      value: fc.oneof(
        { maxDepth: 4, depthSize: 'small' },
        leaf,
        fc.tuple(value, blank, sign, blank, value).map(([a, p, op, q, b]) => `(${a}${p}${op}${q}${b})`),
        fc
          .tuple(value, sign, value)
          .map(([a, op, b]) => `${bare(a)} ${op} ${b}`)
          .map(text => `(${text})`),
        value.map(a => `(-${a})`),
        fc
          .tuple(fc.constantFrom('sqrt', 'abs', 'exp', 'log', 'floor', 'cbrt', 'atan'), value)
          .map(([fn, a]) => `${fn}(${a})`),
        fc.tuple(fc.constantFrom('min', 'max', 'atan2'), value, value).map(([fn, a, b]) => `${fn}(${a}, ${b})`),
        fc.constantFrom('sum(q.n)', 'interpolate(t, a)'),
      ),
      truth: fc.oneof(
        { maxDepth: 3, depthSize: 'small' },
        fc
          .tuple(value, fc.constantFrom('<', '<=', '>', '>=', '==', '!=', '≤', '≥'), value)
          .map(([a, op, b]) => `(${a} ${op} ${b})`),
        fc.tuple(value, value, value).map(([a, b, c]) => `(${a} < ${b} <= ${c})`),
        fc.tuple(tie('truth'), fc.constantFrom('and', 'or'), tie('truth')).map(([a, op, b]) => `(${a} ${op} ${b})`),
        tie('truth').map(a => `(not (${a}))`),
      ),
      formula: fc
        .tuple(fc.oneof(value, tie('truth')), fc.constantFrom('', ' to kN*m/m', ' to mm'))
        .map(([text, to]) => bare(text) + to),
    }
  })
  .formula.filter(text => text.length < 900)

/** Without the outermost brackets, where they are one pair round the whole. */
function bare(text: string): string {
  if (!text.startsWith('(')) return text
  let depth = 0
  for (const [i, c] of [...text].entries()) {
    if (c === '(') depth++
    if (c === ')') depth--
    if (depth === 0 && i < text.length - 1) return text
  }
  return text.slice(1, -1)
}

/** The tree without places. */
export function shapeOf(node: Node): unknown {
  switch (node.kind) {
    case 'number':
      return node.value
    case 'quantity':
      return [node.value, node.unit.text]
    case 'unit':
      return [node.unit.text]
    case 'name':
      return { name: node.name }
    case 'pi':
      return 'pi'
    case 'negative':
      return ['-', shapeOf(node.of)]
    case 'not':
      return ['not', shapeOf(node.of)]
    case 'call':
      return [node.fn, ...node.args.map(shapeOf)]
    default:
      return [shapeOf(node.left), node.op, shapeOf(node.right)]
  }
}

/** A formula whose dimensions fit, its names and their values, in the syntax that mathjs also reads. */
export interface Sound {
  readonly text: string
  /** Exponents of length and force. */
  readonly length: number
  readonly force: number
}

/** Names of sound formulas, with number and unit. */
export const soundValues = {
  L_1: [3.4, 'm'],
  L_2: [215, 'mm'],
  L_3: [11.5, 'ft'],
  F_1: [26.08, 'kN'],
  F_2: [812, 'lbf'],
  p_1: [18.75, 'kPa'],
  n_1: [0.0478, ''],
  n_2: [2.25, ''],
} as const

const dimensionOfName: Readonly<Record<keyof typeof soundValues, readonly [number, number]>> = {
  L_1: [1, 0],
  L_2: [1, 0],
  L_3: [1, 0],
  F_1: [0, 1],
  F_2: [0, 1],
  p_1: [-2, 1],
  n_1: [0, 0],
  n_2: [0, 0],
}

const soundLeaf: fc.Arbitrary<Sound> = fc.oneof(
  fc.constantFrom(...(Object.keys(soundValues) as (keyof typeof soundValues)[])).map(name => {
    const [length, force] = dimensionOfName[name]
    return { text: name, length, force }
  }),
  fc.constantFrom<Sound>(
    { text: '3', length: 0, force: 0 },
    { text: '0.75', length: 0, force: 0 },
    { text: '(2 m)', length: 1, force: 0 },
    { text: '(40 kN)', length: 0, force: 1 },
    { text: '(1.6 kN/m^2)', length: -2, force: 1 },
  ),
)

/** Brings a formula to the dimension of another by units. */
function matched(of: Sound, to: Sound): string {
  const length = to.length - of.length
  const force = to.force - of.force
  return `(${of.text} * (1 m)^(${length}) * (1 kN)^(${force}))`
}

const ofNumber = (of: Sound): string => matched(of, { text: '', length: 0, force: 0 })

export const soundFormulas: fc.Arbitrary<Sound> = fc
  .letrec<{ node: Sound }>(tie => {
    const node = tie('node')
    const pair = fc.tuple(node, node)
    return {
      node: fc.oneof(
        { maxDepth: 4, depthSize: 'small' },
        soundLeaf,
        pair.map(([a, b]) => ({
          text: `(${a.text} * ${b.text})`,
          length: a.length + b.length,
          force: a.force + b.force,
        })),
        pair.map(([a, b]) => ({
          text: `(${a.text} / ${b.text})`,
          length: a.length - b.length,
          force: a.force - b.force,
        })),
        pair.map(([a, b]) => ({ ...a, text: `(${a.text} + ${matched(b, a)})` })),
        pair.map(([a, b]) => ({ ...a, text: `(${a.text} - ${matched(b, a)})` })),
        pair.map(([a, b]) => ({ ...a, text: `max(${a.text}, ${matched(b, a)})` })),
        node.map(a => ({ text: `(${a.text}^2)`, length: 2 * a.length, force: 2 * a.force })),
        node.map(a => ({ text: `sqrt(abs(${a.text}))`, length: a.length / 2, force: a.force / 2 })),
        node.map(a => ({ text: `exp(-abs(${ofNumber(a)}) / 1e4)`, length: 0, force: 0 })),
        node.map(a => ({ ...a, text: `(-${a.text})` })),
        node.map(a => ({ text: `atan(${ofNumber(a)})`, length: 0, force: 0 })),
      ),
    }
  })
  .node.filter(({ text, length, force }) => text.length < 700 && Math.abs(length) <= 8 && Math.abs(force) <= 8)
