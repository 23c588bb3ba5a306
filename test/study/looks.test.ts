import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { looksOf } from '../../src/study/looks.ts'
import { varied } from '../../src/study/varied.ts'
import { watchOf } from '../../src/study/watch.ts'
import { exampleOf, examples } from './plainly.ts'
import { bodyOf, planOf } from './plan-of.ts'

/** Looks along one assumption of a plan, and how often something was worked out. */
function looksIn(planned: ReturnType<typeof planOf>, key: string) {
  const variable = assumptionsOf(planned).variables.find(({ entity }) => entity.key === key)
  if (!variable) throw new Error(`no assumption ${key}`)
  const runs = varied(planned, [variable.entity])
  const watch = watchOf(runs)
  const counted = { runs: 0 }
  const looks = looksOf(variable.entity, { runs, watch }, () => {
    counted.runs += 1
  })
  return { looks, counted, runs, watch }
}

describe('looks', () => {
  const planned = planOf(
    bodyOf({ x: '{ value: 1, basis: b }' }, [
      'y = sqrt(3 - a.x)',
      'z = sqrt(2 - a.x)',
      'y <= 1.3 # first',
      'z >= 0.5 # second',
    ]),
  )

  it('a place is worked out once, whether it is asked whole or for one check', () => {
    const { looks, counted } = looksIn(planned, 'a.x')
    const first = looks.look(1.5)
    expect(looks.look(1.5)).toBe(first)
    expect(looks.followCheck(1)(1.5)).toEqual({ state: first.states[1], excess: first.excess[1] })
    expect(counted.runs).toBe(1)
    looks.followCheck(0)(1.6)
    looks.look(1.6)
    looks.followCheck(0)(1.6)
    expect(counted.runs).toBe(3)
  })

  it('of what is lost the first written is followed, each by itself', () => {
    const { looks } = looksIn(planned, 'a.x')
    const both = looks.followLost(3.5)
    expect([1, 2.5, 2.9, 3.1, 4].map(both)).toEqual([false, false, false, true, true])
    const second = looks.followLost(2.5)
    expect([1, 1.9, 2.1, 3.1].map(second)).toEqual([false, false, true, true])
    expect(() => looks.followLost(1)).toThrow('nothing is lost')
  })
})

describe.each(examples)('looks, in %s', name => {
  const example = exampleOf(name)
  const { variables } = assumptionsOf(example)

  it('one check followed alone shows what a whole look does, and what is lost first is lost in it', () => {
    let lost = 0
    fc.assert(
      fc.property(
        fc.nat(variables.length - 1),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.nat(10_000),
        (index, factor, other, pick) => {
          const { entity } = variables[index]!
          const { looks, runs, watch } = looksIn(example, entity.key)
          if (watch.checks.length === 0) return
          const [x, y] = [factor, other].map(by => (example.start[entity.slot] ?? 0) * by) as [number, number]
          const check = pick % watch.checks.length
          const alone = looks.followCheck(check)(x)
          const whole = looks.look(x)
          expect(alone).toEqual({ state: whole.states[check], excess: whole.excess[check] })
          if (!whole.lost) return
          lost += 1
          const isLost = looks.followLost(x)
          expect(isLost(x)).toBe(true)
          expect(isLost(example.start[entity.slot] ?? 0)).toBe(false)
          // What is lost by itself is lost in the whole as well.
          if (isLost(y)) expect(watch.isLost(runs.at([y]))).toBe(true)
        },
      ),
      { numRuns: 200, seed: 3 },
    )
    expect(lost).toBeGreaterThan(name === 'kelder-lock' ? 5 : 20)
  })
})
