import { defineModule, type Module } from '../../src/modules/module.ts'
import { cite } from '../../src/modules/sources.ts'
import { table } from '../../src/modules/table.ts'
import {
  check,
  choice,
  each,
  label,
  length,
  limit,
  list,
  look,
  quantity,
  ratio,
  solve,
  step,
  when,
} from '../../src/modules/words.ts'

/** Modules of the tests only, each small enough that every answer can be told by hand. */
const bare = { version: '1.0.0', limits: [], cautions: [], published: [], example: {}, results: [] } as const

const source = cite('statics')

/** `area = a * b`: one refusing limit on an input, one on a step, one that only warns. */
export const plot = defineModule({
  ...bare,
  id: 'plot',
  title: 'Plot',
  asks: 'How large is it?',
  inputs: {
    a: length({ says: 'one side', above: '0 m', most: '10 m', usual: ['1 m', '8 m'] }),
    b: length({ says: 'other side', least: '1 m', below: '20 m' }),
    note: label({ says: 'what it is for', optional: true }),
  },
  steps: [
    step('area', 'a * b', { says: 'area' }),
    step('slender', 'b / a', { says: 'slenderness' }),
    step('girth', '2 * (a + b)', { says: 'girth' }),
    check('large', 'area >= 2 m^2', { says: 'large enough' }),
  ],
  limits: [
    limit('a <= b', { says: 'the first side is the shorter', otherwise: 'refuse', on: 'a' }),
    limit('slender <= 4', { says: 'the plot is not too slender', otherwise: 'refuse', on: 'b' }),
    limit('area <= 40 m^2', { says: 'the plot is small', otherwise: 'warn', on: 'b' }),
  ],
})

/** Branches over numbers, over an input given or not, and over a word. */
export const branches = defineModule({
  ...bare,
  id: 'branches',
  title: 'Branches',
  asks: 'Which way?',
  inputs: {
    x: ratio({ says: 'the number' }),
    extra: ratio({ says: 'may be left out', optional: true }),
    way: choice({ says: 'way', words: { plain: 'plain', squared: 'squared' }, default: 'plain' }),
  },
  steps: [
    when(
      { formula: '1 / x <= 2' },
      {
        says: 'x is large',
        yes: [step('big', 'x - 1', { says: 'only for large' }), step('y', '2 * x', { says: 'either way' })],
        no: [step('y', 'sqrt(x + 1)', { says: 'either way' })],
      },
    ),
    when({ given: 'extra' }, { says: 'extra', yes: [step('z', 'y + extra', { says: 'with extra' })] }),
    when(
      { choice: 'way', is: ['squared'] },
      { says: 'squared', yes: [step('w', 'y^2', { says: 'w' })], no: [step('w', 'y', { says: 'w' })] },
    ),
    check('small', 'sqrt(x) <= 100', { says: 'x is small' }),
  ],
})

const heights = table(
  {
    title: 'Heights',
    source,
    status: 'toy',
    unit: 'mm',
    row: { kind: 'numbers', says: 'span', keys: ['1', '2', '4'], unit: 'm', between: 'linear' },
    column: { kind: 'numbers', says: 'count', keys: ['1', '2'], unit: '', between: 'none' },
  },
  `100 110
   200 220
   400 -`,
)

export const looks = defineModule({
  ...bare,
  id: 'looks',
  title: 'Look-ups',
  asks: 'How high?',
  inputs: { span: length({ says: 'span' }), count: ratio({ says: 'count' }) },
  steps: [
    look('height', heights, { row: 'span', column: 'count', says: 'height' }),
    step('twice', '2 * height', { says: 'twice the height' }),
  ],
})

/** A numerical method that refuses negative numbers, and a second method that can be made to disagree or to be absent. */
export const solves = defineModule({
  ...bare,
  id: 'solves',
  title: 'Solves',
  asks: 'What is the root?',
  inputs: { x: ratio({ says: 'the number' }), bias: ratio({ says: 'error of the second method', default: '0' }) },
  steps: [
    solve(
      {
        id: 'root',
        title: 'Square root',
        says: 'closed',
        takes: { x: 'ratio' },
        run: ({ x }) => {
          const number = Number(x)
          return number < 0
            ? { ok: false, says: 'a negative number has none' }
            : { ok: true, values: { root: Math.sqrt(number) }, verified: 'by squaring' }
        },
      },
      { takes: { x: 'x' }, gives: { root: { name: 'r', dimension: 'ratio', says: 'root' } }, says: 'root' },
    ),
    step('double', '2 * r', { says: 'twice the root' }),
  ],
  second: {
    title: 'By a power',
    says: 'x to the half',
    when: { condition: { formula: 'x != 4' }, otherwise: 'not for four' },
    steps: [step('r_2', 'x^0.5 * (1 + bias) + bias', { says: 'root again' })],
    compare: [{ first: 'r', second: 'r_2', band: 0.01, says: 'roots' }],
  },
})

/** Rows, a list in `sum`, and a value for each row. */
export const rows = defineModule({
  ...bare,
  id: 'rows',
  title: 'Rows',
  asks: 'How much in all?',
  inputs: {
    items: list('items', {
      least: 1,
      most: 3,
      fields: {
        item: label({ says: 'name', optional: true }),
        x: length({ says: 'x' }),
        k: ratio({ says: 'k', default: '2' }),
      },
    }),
  },
  steps: [
    each('items', [step('n', 'x * k', { says: 'product' })]),
    step('total', 'sum(items.n)', { says: 'total' }),
    step('least', 'min(items.n)', { says: 'least' }),
  ],
})

/** Temperatures on a scale. */
export const warmth = defineModule({
  ...bare,
  id: 'warmth',
  title: 'Warmth',
  asks: 'How warm?',
  inputs: {
    T: quantity('temperature', {
      says: 'temperature',
      unit: { SI: 'degC', US: 'degF' },
      least: '-20 degC',
      most: '60 degC',
    }),
    rise: quantity('temperature', { says: 'rise' }),
  },
  steps: [
    step('T_end', 'T + rise', { says: 'at the end', unit: { SI: 'degC', US: 'degF' } }),
    step('fall', 'T - 5 degC', { says: 'above five' }),
    check('warm', 'T_end <= 40 degC', { says: 'not too warm' }),
  ],
})

/** A limit, a branch and a check that come to nothing although every number is known. */
export const blind = defineModule({
  ...bare,
  id: 'blind',
  title: 'Blind',
  asks: 'What then?',
  inputs: { x: ratio({ says: 'x' }) },
  steps: [step('y', 'x + 1', { says: 'y' })],
  limits: [limit('1 / x < 2', { says: 'one over x is below two', otherwise: 'refuse', on: 'x' })],
})

export const toys: readonly Module[] = [plot, branches, looks, solves, rows, warmth, blind]
