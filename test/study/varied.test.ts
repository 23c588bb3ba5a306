import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { varied } from '../../src/study/varied.ts'
import { exampleOf, examples, plainly } from './plainly.ts'

describe.each(examples)('varied, in %s', name => {
  const example = exampleOf(name)
  const { variables } = assumptionsOf(example)

  it('gives the numbers of a plain run, one value after another, refusals and branches among them', () => {
    const prepared = variables.map(({ entity }) => varied(example, [entity]))
    fc.assert(
      fc.property(fc.nat(variables.length - 1), fc.double({ min: 0, max: 3, noNaN: true }), (index, factor) => {
        const slot = variables[index]?.entity.slot ?? Number.NaN
        const si = (example.start[slot] ?? 0) * factor
        expect(prepared[index]?.at([si])).toEqual(plainly(example, new Map([[slot, si]])))
      }),
      { numRuns: 300 },
    )
  })

  it('changes many assumptions at once, and counts the numerical methods on the way', () => {
    const all = varied(
      example,
      variables.map(({ entity }) => entity),
    )
    const values = variables.map(({ entity }) => (example.start[entity.slot] ?? 0) * 1.01)
    const changed = new Map(variables.map(({ entity }, index) => [entity.slot, values[index] ?? 0]))
    expect(all.at(values)).toEqual(plainly(example, changed))
    const resting = example.ops.filter(op => op.solves && !op.second && op.reads.some(all.moved))
    expect(all.solves).toBe(resting.length)
    expect(resting.length > 2).toBe(name !== 'kelder-lock')
    expect(() => all.at([Number.NaN])).toThrow('cannot be NaN')
  })
})
