import { describe, expect, it } from 'vitest'
import { typedValues } from '../../src/evaluation/typed-values.ts'
import { assume, calc, modelOf, work } from '../sheets/skerry-notebook.ts'

const typedOf = (statements: readonly [string, string, string][]): string[] =>
  typedValues(
    modelOf({
      body: { type: 'root', children: [] },
      blocks: [assume('site', { wall: { value: '300 mm', basis: 'drawing' } }), work('thrust', statements)],
    }).workings.blocks,
  ).map(({ shown }) => `${shown.digits} ${shown.unit.text}`.trim())

describe('typed-values', () => {
  it('a name given to a number, and quantities in a formula', () => {
    expect(typedOf([['gamma', '1.35', 'load factor']])).toEqual(['1.35'])
    expect(typedOf([['b', '0.8 m', 'working space']])).toEqual(['0.8 m'])
    expect(typedOf([['b', 'site.wall + 2 * 75 mm', 'outside']])).toEqual(['75 mm'])
    expect(typedOf([['', 'site.wall >= 250 mm', 'thick enough']])).toEqual(['250 mm'])
  })
  it('not plain factors, nor a nought or a one that only carries a unit, nor values of the register', () => {
    expect(typedOf([['b', 'site.wall / 6', 'middle third']])).toEqual([])
    expect(typedOf([['b', 'max(0 m, site.wall - 1 m)', 'excess']])).toEqual([])
    expect(typedOf([['b', 'site.wall', 'the wall']])).toEqual([])
  })
  it('numbers typed as inputs of a calc block, with the row they stand in; not words, defaults or links', () => {
    const { blocks } = modelOf({
      body: { type: 'root', children: [] },
      blocks: [
        assume('site', { depth: { value: '4.7 m', basis: 'drawing' } }),
        calc('battered-pit', 'pit', {
          soil: 'type B',
          depth: 'site.depth',
          plan_length: '8.6 m',
          plan_width: 'site.depth + 0.5 m',
          working_space: '0.8 m',
          swell: '0.25',
          shrinkage: '0.1',
        }),
      ],
    }).workings
    const typed = typedValues(blocks).map(({ number, says, shown }) => `${number} ${says}: ${shown.digits}`)
    expect(typed).toHaveLength(5)
    expect(typed.filter(text => /: (8\.6|0\.8|0\.25|0\.1)$/.test(text))).toHaveLength(4)
    expect(typed.find(text => text.endsWith(': 0.5'))).toMatch(/^1\.01 /)
  })
})
