import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { baseUplift } from '../../../src/modules/ground/base-uplift.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(
    baseUplift,
    {
      depth: '5 m',
      aquifer_top: '8 m',
      water_depth: '3 m',
      gamma_sat: '19.62 kN/m^3',
      factor: '1.2',
      factor_gradient: '1.5',
      ...more,
    },
    { units },
  )
const refusals = (more: Inputs): readonly string[] => run(more).errors.map(({ rule }) => rule)

describe('base-uplift', () => {
  it('base-uplift: the example evaluates without a warning', () => {
    expect(runModule(baseUplift, baseUplift.example).diagnostics).toEqual([])
  })

  it('base-uplift: 3 m of ground twice as heavy as water against 5 m of head', () => {
    expect(run().si('F_u')).toBeCloseTo(6 / 5, 9)
    expect(run().si('i_c')).toBeCloseTo(1, 9)
    expect(run().si('i')).toBeCloseTo(2 / 3, 9)
  })

  it('base-uplift: both checks on both sides', () => {
    expect(run().satisfied('stays_down')).toBe(true)
    expect(run({ factor: '1.21' }).satisfied('stays_down')).toBe(false)
    expect(run().satisfied('no_piping')).toBe(true)
    expect(run({ factor_gradient: '1.51' }).satisfied('no_piping')).toBe(false)
  })

  it('base-uplift: the total stresses balance exactly where the gradient is critical', () => {
    const whole = (min: number, max: number) => fc.integer({ min, max })
    fc.assert(
      fc.property(whole(10, 60), whole(5, 60), whole(120, 230), (depth, plug, weight) => {
        const [d, t, gamma] = [depth / 10, plug / 10, weight / 10]
        const aquifer = d + t
        const head = (gamma * t) / 9.81
        const at = run({
          depth: `${d} m`,
          aquifer_top: `${aquifer} m`,
          water_depth: `${aquifer - head} m`,
          gamma_sat: `${gamma} kN/m^3`,
        })
        expect(at.si('F_u')).toBeCloseTo(1, 9)
        expect(at.si('i') / at.si('i_c')).toBeCloseTo(1, 9)
      }),
      { numRuns: 40 },
    )
  })

  it('base-uplift: each remedy by itself gives just the required factor', () => {
    const poor = { factor: '1.4' }
    const at = run(poor)
    expect(at.satisfied('stays_down')).toBe(false)
    const shallower = run({ ...poor, depth: `${at.si('depth_most')} m` })
    const flooded = run({ ...poor, water_in_pit: `${at.si('flood')} m` })
    const relieved = run({ ...poor, water_depth: `${3 + at.si('relief')} m` })
    for (const one of [shallower, flooded, relieved]) expect(one.si('F_u')).toBeCloseTo(1.4, 9)
  })

  it('base-uplift: a safe pit needs no remedy, and one that nothing saves has no depth', () => {
    const safe = run({ factor: '1.1' })
    expect([safe.si('relief'), safe.si('flood')]).toEqual([0, 0])
    expect(safe.si('depth_most')).toBeGreaterThan(5)
    expect(run({ water_depth: '-12 m' }).si('depth_most')).toBe(0)
  })

  it('base-uplift: water below formation does not seep up', () => {
    const at = run({ water_depth: '6 m' })
    expect(at.si('i')).toBe(0)
    expect(at.satisfied('no_piping')).toBe(true)
  })

  it('base-uplift: deeper pit and higher water are never safer', () => {
    const F = (more: Inputs) => run(more).si('F_u')
    expect(F({ depth: '5.5 m' })).toBeLessThan(F({}))
    expect(F({ water_depth: '2 m' })).toBeLessThan(F({}))
    expect(F({ water_in_pit: '1 m' })).toBeGreaterThan(F({}))
  })

  it('base-uplift: a pit into the aquifer, and water without pressure, are refused', () => {
    expect(refusals({ depth: '8 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ depth: '7.99 m' })).toEqual([])
    expect(refusals({ water_depth: '8 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ water_depth: '7.99 m' })).toEqual([])
  })

  it('base-uplift: refuses a factor below one', () => {
    expect(refusals({ factor: '0.99' })).toEqual(['value-outside-range'])
    expect(refusals({ factor_gradient: '0.99' })).toEqual(['value-outside-range'])
  })

  it('base-uplift: feet and pounds give the same factor', () => {
    expect(run({}, 'US').si('F_u')).toBeCloseTo(run().si('F_u'), 12)
    expect(run({}, 'US').shown('u_a')).toMatch(/ psf$/)
  })
})
