import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { measureOf } from '../../src/study/measure.ts'
import { preparedSamples, type SampleOptions, sample } from '../../src/study/sample.ts'
import { bodyOf, planOf } from './plan-of.ts'

const root3 = Math.sqrt(3)

/** `Y = X_1 + X_2 + X_3 + X_4`, each even over ± half. */
const additive = (halves: readonly number[]) =>
  planOf(
    bodyOf(
      Object.fromEntries(
        halves.map((half, at) => [`X_${at + 1}`, `{ value: 0, basis: b, range: ${-half} to ${half} }`]),
      ),
      ['Y = a.X_1 + a.X_2 + a.X_3 + a.X_4'],
    ),
  )

function sampled(planned: ReturnType<typeof planOf>, more: Partial<SampleOptions> = {}, name = 'w.Y') {
  const measure = measureOf(evaluate(planned), name)
  if (!measure) throw new Error(`nothing is called ${name}`)
  const options = { samples: 200_000, seed: 1, spread: 'uniform', latin: false, measures: [measure], ...more } as const
  const done = sample(preparedSamples(planned), options)
  const [spread] = done.measures
  if (!spread) throw new Error('nothing was measured')
  const at = (share: number) => spread.quantiles.find(each => each.share === share)?.value ?? Number.NaN
  return { done, spread, low: at(0.025), high: at(0.975) }
}

describe('samples', () => {
  // JCGM 101:2008, 9.2.3, table 3: u(y) = 2.0, shortest and symmetric 95 % interval [-3.88, 3.88] (memory); there ± 2√3 (2 - (3/5)^(1/4)).
  it('GUM supplement 1, additive model, four equal rectangles: standard uncertainty 2.00, 95 % within ± 3.88', () => {
    const { spread, low, high } = sampled(additive([root3, root3, root3, root3]))
    expect(2 * root3 * (2 - 0.6 ** 0.25)).toBeCloseTo(3.88, 2)
    // Five standard errors of each statistic from 200,000 draws.
    expect(Math.abs(spread.mean)).toBeLessThan((5 * 2) / Math.sqrt(200_000))
    expect(Math.abs(spread.deviation - 2)).toBeLessThan(0.02)
    expect(Math.abs(low + 3.88)).toBeLessThan(0.05)
    expect(Math.abs(high - 3.88)).toBeLessThan(0.05)
  })

  // JCGM 101:2008, 9.2.4, table 4: the fourth rectangle ten times as wide: u(y) = 10.1, 95 % interval [-17.0, 17.0] (memory).
  it('GUM supplement 1, additive model, one rectangle ten times as wide: 10.1, and 95 % within ± 17.0', () => {
    const { spread, low, high } = sampled(additive([root3, root3, root3, 10 * root3]))
    expect(Math.abs(spread.deviation - 10.1)).toBeLessThan(0.1)
    expect(Math.abs(low + 17)).toBeLessThan(0.15)
    expect(Math.abs(high - 17)).toBeLessThan(0.15)
  })

  // JCGM 101:2008, 9.2.2, table 2: four standard normal inputs, u(y) = 2.0, 95 % interval [-3.92, 3.92] (memory).
  it('GUM supplement 1, additive model, four normal inputs: standard uncertainty 2.00, 95 % within ± 3.92', () => {
    const planned = additive([1.96, 1.96, 1.96, 1.96])
    const { spread, low, high } = sampled(planned, { spread: 'normal', coverage: 0.95 })
    expect(Math.abs(spread.mean)).toBeLessThan((5 * 2) / Math.sqrt(200_000))
    expect(Math.abs(spread.deviation - 2)).toBeLessThan(0.02)
    expect(Math.abs(low + 3.92)).toBeLessThan(0.05)
    expect(Math.abs(high - 3.92)).toBeLessThan(0.05)
  })

  it('the same as a Latin hypercube of normal inputs, whose ranges are stated to hold two standard deviations', () => {
    const twoDeviations = 0.9544997361036416
    const planned = additive([2, 2, 2, 2])
    const { spread } = sampled(planned, { spread: 'normal', coverage: twoDeviations, latin: true, samples: 50_000 })
    expect(Math.abs(spread.mean)).toBeLessThan(1e-3)
    expect(Math.abs(spread.deviation - 2)).toBeLessThan(0.03)
  })

  it('triangular: the variance is (a² + b² + c² - ab - ac - bc) / 18', () => {
    const planned = planOf(bodyOf({ x: '{ value: 3, basis: b, range: 2 to 8 }' }, ['Y = a.x']))
    const { spread } = sampled(planned, { spread: 'triangular' })
    const [a, b, c] = [2, 8, 3]
    expect(spread.deviation ** 2).toBeCloseTo((a * a + b * b + c * c - a * b - a * c - b * c) / 18, 1)
    expect(spread.mean).toBeCloseTo((a + b + c) / 3, 1)
  })

  it('a Latin hypercube comes nearer to the mean of a sum with a hundredth of the samples', () => {
    const planned = additive([root3, root3, root3, root3])
    const errors = [1, 2, 3, 4, 5].map(seed =>
      Math.abs(sampled(planned, { samples: 2000, seed, latin: true }).spread.mean),
    )
    expect(Math.max(...errors)).toBeLessThan(1e-3)
  })

  it('counts the share of a check as geometry gives it: x + y <= 1 over the unit square is a half', () => {
    const planned = planOf(
      bodyOf({ x: '{ value: 0.5, basis: b, range: 0 to 1 }', y: '{ value: 0.5, basis: b, range: 0 to 1 }' }, [
        'Y = a.x + a.y',
        'Y <= 1 # half',
        'a.x^2 + a.y^2 <= 1 # quarter circle',
      ]),
    )
    const { done } = sampled(planned, { samples: 100_000 })
    const shares = done.checks.map(({ satisfied, asked }) => satisfied / asked)
    expect(shares[0]).toBeCloseTo(0.5, 2)
    expect(shares[1]).toBeCloseTo(Math.PI / 4, 2)
    expect(done.lost).toBe(0)
    // Both hold where the first does: the triangle lies inside the circle.
    expect(done.allSatisfied).toBe(done.checks[0]?.satisfied)
  })

  it('a sample in which a formula has no value counts as lost, for no check and no measure', () => {
    const planned = planOf(bodyOf({ x: '{ value: 3, basis: b, range: -1 to 3 }' }, ['Y = sqrt(a.x)', 'Y <= 5 # root']))
    const { done, spread } = sampled(planned, { samples: 100_000 })
    expect(done.lost / 100_000).toBeCloseTo(0.25, 2)
    expect(done.checks[0]).toMatchObject({ asked: 100_000 - done.lost, satisfied: 100_000 - done.lost })
    expect(spread.count).toBe(100_000 - done.lost)
  })

  it('a value that no range moves has no spread at all', () => {
    const planned = planOf(bodyOf({ x: '{ value: 3, basis: b, range: 1 to 4 }' }, ['Z = a.x', 'Y = 742.512345']))
    expect(sampled(planned, { samples: 1000 }).spread).toMatchObject({ mean: 742.512345, deviation: 0 })
  })

  it('the same seed gives the same numbers, another seed others', () => {
    const planned = additive([1, 1, 1, 1])
    const [a, b, c] = [4, 4, 5].map(seed => sampled(planned, { samples: 50, seed }).spread.mean)
    expect(a).toBe(b)
    expect(a).not.toBe(c)
  })
})
