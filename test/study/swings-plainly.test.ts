import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { isRanged } from '../../src/study/drawn.ts'
import { type Measure, measureOf, readIn, sectionMeasures } from '../../src/study/measure.ts'
import { swingsOf } from '../../src/study/swings.ts'
import { stateIn } from '../../src/study/watch.ts'
import { exampleOf, examples, plainly } from './plainly.ts'

describe.each(examples)('swings of %s', name => {
  const example = exampleOf(name)
  const results = evaluate(example)
  const values = [...example.names.values()].filter(named => named.kind === 'number' && named.origin === 'step')
  // A few values out of all blocks, each asked for by itself, and the sections together.
  const alone = values
    .filter((_, at) => at % Math.ceil(values.length / 12) === 5)
    .map(({ key }) => [measureOf(results, key) as Measure])
  const state = stateIn(example)
  const ranged = assumptionsOf(example).variables.filter(isRanged)

  it.each([sectionMeasures(results), ...alone].map(measures => [measures.map(each => each.name).join(', '), measures]))(
    'both ends of every range are those of plain runs: %s',
    (_, measures) => {
      const found = swingsOf(example, measures as readonly Measure[])
      expect(found.length).toBeGreaterThan(0)
      for (const { measure, base, swings, still } of found) {
        const at = (slot: number, si: number): number =>
          readIn(measure, plainly(example, new Map([[slot, si]])), { state })
        for (const { variable, atFrom, atTo } of swings) {
          const { entity, range } = variable
          expect([atFrom, atTo], entity.key).toEqual([at(entity.slot, range.from), at(entity.slot, range.to)])
        }
        for (const { entity, range } of ranged.filter(each => still.includes(each.entity.key)))
          expect([at(entity.slot, range.from), at(entity.slot, range.to)], entity.key).toEqual([base, base])
      }
    },
  )
})
