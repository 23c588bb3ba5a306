import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { asWritten, run } from '../../src/evaluation/evaluate.ts'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { exampleOf, examples, plainly } from '../study/plainly.ts'

describe.each(examples)('a run of %s with changed assumptions', name => {
  const example = exampleOf(name)
  const { variables } = assumptionsOf(example)

  it.each([true, false])('has the numbers of a plain run, second methods: %s', second => {
    const written = plainly(example, new Map(), { second })
    expect(run(example, { second })).toEqual(written)
    const change = fc.tuple(fc.nat(variables.length - 1), fc.double({ min: -0.5, max: 3, noNaN: true }))
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), changes => {
        const put = changes.map(([index, factor]) => {
          const { key = '', slot = 0 } = variables[index]?.entity ?? {}
          return { key, slot, si: (example.start[slot] ?? 0) * factor }
        })
        const found = run(example, { changed: new Map(put.map(({ key, si }) => [key, si])), second })
        const plain = plainly(example, new Map(put.map(({ slot, si }) => [slot, si])), { second })
        expect(found.findIndex((si, slot) => !Object.is(si, plain[slot]))).toBe(-1)
      }),
      { numRuns: 100 },
    )
    // What is kept is left alone by all of them.
    expect(asWritten(example, second)).toEqual(written)
  })

  it('gives an array of its own each time', () => {
    run(example).fill(7)
    expect(run(example)).toEqual(plainly(example, new Map(), { second: true }))
  })
})

// Numbers that nobody would write bring numerical methods to where they refuse. Not the third example, which solves plates for each of them.
describe.each(['marrow-flats', 'kelder-lock'] as const)('a run of %s with absurd numbers', name => {
  const example = exampleOf(name)

  it('breaks off at none, however great or small', () => {
    for (const { entity } of assumptionsOf(example).variables)
      for (const factor of [1e-300, 1e-9, 1e9, 1e100]) {
        const changed = new Map([[entity.key, (example.start[entity.slot] ?? 0) * factor]])
        expect(() => run(example, { changed }), `${entity.key} times ${factor}`).not.toThrow()
      }
  })
})
