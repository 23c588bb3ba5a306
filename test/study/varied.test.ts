import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/evaluation/evaluate.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { varied } from '../../src/study/varied.ts'

const path = 'examples/skerry-point/skerry-point.md'
const example = plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue)
const { variables } = assumptionsOf(example)

describe('varied', () => {
  it('gives the numbers of a whole run, one value after another, refusals and branches among them', () => {
    const prepared = variables.map(({ entity }) => varied(example, [entity]))
    fc.assert(
      fc.property(fc.nat(variables.length - 1), fc.double({ min: 0, max: 3, noNaN: true }), (index, factor) => {
        const entity = variables[index]?.entity
        if (!entity) throw new Error('no assumption')
        const si = (example.start[entity.slot] ?? 0) * factor
        const whole = run(example, { changed: new Map([[entity.key, si]]), second: false })
        expect(prepared[index]?.at([si])).toEqual(whole)
      }),
      { numRuns: 400 },
    )
  })

  it('changes many assumptions at once, and counts the numerical methods on the way', () => {
    const all = varied(
      example,
      variables.map(({ entity }) => entity),
    )
    const values = variables.map(({ entity }) => (example.start[entity.slot] ?? 0) * 1.01)
    const changed = new Map(variables.map(({ entity }, index) => [entity.key, values[index] ?? 0]))
    expect(all.at(values)).toEqual(run(example, { changed, second: false }))
    const resting = example.ops.filter(op => op.solves && !op.second && op.reads.some(all.moved))
    expect(resting.length).toBeGreaterThan(10)
    expect(all.solves).toBe(resting.length)
    expect(() => all.at([Number.NaN])).toThrow('cannot be NaN')
  })
})
