import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { sharesFrom, valueAt } from '../../src/study/draw.ts'
import { sectionMeasures } from '../../src/study/measure.ts'
import { preparedSamples, sample } from '../../src/study/sample.ts'
import { watchOf } from '../../src/study/watch.ts'
import { exampleOf, examples, plainly } from './plainly.ts'

// How many: two chunks and a part of one where no numerical method makes it slow. One range in so many is stretched, so that methods refuse.
const how = {
  'skerry-point': { samples: 40, stretched: 12 },
  'marrow-flats': { samples: 140, stretched: 12 },
  'kelder-lock': { samples: 300, stretched: 2 },
}

describe.each(examples)('samples of %s', name => {
  const example = exampleOf(name)
  const { samples, stretched } = how[name]
  const prepared = preparedSamples(example)
  const variables = prepared.variables.map((variable, at) =>
    at % stretched === 5 % stretched
      ? { ...variable, range: { from: variable.range.from * 0.5, to: variable.range.to * 1.5 } }
      : variable,
  )
  const measures = sectionMeasures(evaluate(example))

  it('count what plain runs of the same draws come to, refused ones among them', () => {
    const done = sample({ ...prepared, variables }, { samples, seed: 3, spread: 'uniform', latin: false, measures })
    const watch = watchOf(prepared.runs)
    const shares = sharesFrom(3)
    const plain = Array.from({ length: samples }, () =>
      plainly(
        example,
        new Map(
          variables.map(each => [each.entity.slot, valueAt(each, { share: shares(), spread: 'uniform', mode: 0 })]),
        ),
      ),
    )
    const kept = plain.filter(slots => !watch.isLost(slots))
    expect(done.lost).toBe(samples - kept.length)
    expect(kept.length).toBeGreaterThan(0)
    expect(kept.length).toBeLessThan(samples)
    expect(done.checks).toEqual(
      watch.checks.map(check => {
        const states = kept.map(slots => watch.state(check, slots))
        const asked = states.filter(state => state !== 'not asked')
        return { check, asked: asked.length, satisfied: asked.filter(state => state === 'satisfied').length }
      }),
    )
    for (const { measure, count, quantiles } of done.measures) {
      const values = kept
        .map(measure.read)
        .filter(Number.isFinite)
        .sort((a, b) => a - b)
      expect(count).toBe(values.length)
      // The middle one of the values, where there is one.
      if (count % 2 === 1) expect(quantiles[2]?.value).toBe(values[count >> 1])
    }
  })
})
