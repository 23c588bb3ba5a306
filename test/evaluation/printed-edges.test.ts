import { describe, expect, it } from 'vitest'
import { defineModule } from '../../src/modules/module.ts'
import { cite } from '../../src/modules/sources.ts'
import { table } from '../../src/modules/table.ts'
import { each, length, list, look, ratio, step } from '../../src/modules/words.ts'
import { fence, runText, said } from './run-text.ts'

const bare = { version: '1.0.0', limits: [], cautions: [], published: [], example: {}, results: [] } as const

describe('ratios of checks', () => {
  const ratios = (...checks: readonly string[]) => {
    const ran = runText(fence('assume site', 'T: 12 degC') + fence('work v', checks.join('\n')))
    expect(said(ran.errors)).toEqual([])
    return ran.block('v')?.checks.map(({ ratio }) => ratio?.shown.digits)
  }
  it('ratio: only of amounts from nought: none of a demand or a capacity below it, and none of temperatures', () => {
    expect(ratios('2 kN <= 4 kN', '0 kN <= 4 kN')).toEqual(['0.500', '0'])
    expect(ratios('-2 kN <= 4 kN', '-4 kN <= -2 kN', '0 kN <= 0 kN')).toEqual([undefined, undefined, undefined])
    expect(ratios('site.T <= 30 degC', '5 degC <= site.T')).toEqual([undefined, undefined])
  })
})

describe('rows and tables in print', () => {
  const many = defineModule({
    ...bare,
    id: 'many',
    title: 'Many',
    asks: 'How many?',
    inputs: { rows: list('rows', { fields: { x: ratio({ says: 'number' }) }, least: 1, most: 60 }) },
    steps: [each('rows', [step('y', '2 * x', { says: 'twice' })])],
  })
  it('numbers: past the twenty-sixth row a step goes on with two letters, each once', () => {
    const rows = Array.from({ length: 54 }, (_, index) => `{ x: ${index + 1} }`).join(', ')
    const ran = runText(fence('calc many m', `rows: [${rows}]`), { modules: [many] })
    const block = ran.block('m')
    const numbers = block?.kind === 'calc' ? block.lines.map(({ number }) => number.replace('1.01', '')) : []
    expect(numbers.slice(24, 29)).toEqual(['y', 'z', 'aa', 'ab', 'ac'])
    expect(numbers.slice(50)).toEqual(['ay', 'az', 'ba', 'bb'])
    expect(new Set(numbers).size).toBe(54)
  })

  const both = table(
    {
      title: 'Both ways',
      source: cite('statics'),
      status: 'toy',
      unit: 'mm',
      row: { kind: 'numbers', says: 'span', keys: ['1', '2'], unit: 'm', between: 'linear' },
      column: { kind: 'numbers', says: 'count', keys: ['10', '20'], unit: '', between: 'linear' },
    },
    '100 200\n300 500',
  )
  const looked = defineModule({
    ...bare,
    id: 'looked',
    title: 'Looked up',
    asks: 'How high?',
    inputs: { span: length({ says: 'span' }), count: ratio({ says: 'count' }) },
    steps: [look('h_t', both, { row: 'span', column: 'count', says: 'height' })],
  })
  it('look-up: between rows and columns each row is interpolated under its own key, then the two', () => {
    const ran = runText(fence('calc looked t', 'span: 1.25 m\ncount: 14'), { modules: [looked] })
    const line = ran.line('t', 'h_t')
    if (line?.kind !== 'look') throw new Error('no look-up')
    expect(line.interpolations.map(({ says, result }) => [says, result.digits])).toEqual([
      ['in the row 1', '140.0'],
      ['in the row 2', '380.0'],
      ['between the rows', '200.0'],
    ])
    expect(ran.si('t.h_t')).toBeCloseTo(0.2, 12)
  })
})
