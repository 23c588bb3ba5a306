import { describe, expect, it } from 'vitest'
import { baseHeave } from '../../../src/modules/ground/base-heave.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(
    baseHeave,
    {
      depth: '5 m',
      pit_width: '6 m',
      pit_length: '9 m',
      gamma: '18 kN/m^3',
      surcharge: '10 kPa',
      c_below: '30 kPa',
      c_side: '20 kPa',
      ...more,
    },
    { units },
  )
const refusals = (more: Inputs): readonly string[] => run(more).errors.map(({ rule }) => rule)

describe('base-heave', () => {
  it('base-heave: the example evaluates without a warning', () => {
    expect(runModule(baseHeave, baseHeave.example).diagnostics).toEqual([])
  })

  it('base-heave: each check on both sides of its own factor', () => {
    for (const [factor, name] of [
      ['F_T', 'no_heave'],
      ['F_B', 'no_heave_deep'],
    ] as const) {
      const value = run().si(factor)
      expect(run({ factor: `${value * 0.999}` }).satisfied(name)).toBe(true)
      expect(run({ factor: `${value * 1.001}` }).satisfied(name)).toBe(false)
    }
  })

  it('base-heave: without shear beside the pit Terzaghi is a footing of factor 5.7', () => {
    const at = run({ c_side: '0 kPa' })
    expect(at.si('F_T')).toBeCloseTo((5.7 * 30) / (18 * 5 + 10), 9)
    expect(at.si('F_T') / at.si('F_B')).toBeCloseTo(5.7 / at.si('N_c'), 9)
  })

  it('base-heave: ground that hangs in its own strength has no factor of Terzaghi, and still one of Bjerrum and Eide', () => {
    // the strip is 4.2 m wide: 100 kPa are borne by 84 kPa of strength over 5 m
    expect(run({ c_side: '83.9 kPa' }).has('F_T')).toBe(true)
    const at = run({ c_side: '84.1 kPa' })
    expect(at.errors).toEqual([])
    expect(at.has('F_T')).toBe(false)
    expect(at.si('F_B')).toBeCloseTo(run().si('F_B'), 12)
    expect(at.satisfied('no_heave')).toBeUndefined()
    expect(at.satisfied('no_heave_deep')).toBe(true)
  })

  it('base-heave: firm ground counts only where it is nearer than seven tenths of the width', () => {
    const F = (clay_below: string) => run({ clay_below }).si('F_T')
    expect(F('4.2 m')).toBeCloseTo(run().si('F_T'), 12)
    expect(F('9 m')).toBeCloseTo(run().si('F_T'), 12)
    expect(F('4 m')).toBeGreaterThan(F('4.2 m'))
  })

  it('base-heave: the chart agrees with the factor of Skempton within a tenth', () => {
    // Skempton 1951: 5 (1 + 0.2 B/L) (1 + 0.2 D/B), to D/B = 2.5 (from memory)
    for (const depth of [0.5, 3, 6, 9, 12, 15]) {
      for (const length of [6, 12, 60]) {
        const at = run({ depth: `${depth} m`, pit_length: `${length} m` })
        const skempton = 5 * (1 + (0.2 * 6) / length) * (1 + (0.2 * depth) / 6)
        expect(Math.abs(at.si('N_c') / skempton - 1)).toBeLessThan(0.1)
      }
    }
  })

  it('base-heave: the printed entries of the table, and no more beyond a depth of four widths', () => {
    for (const [ratio, entry] of [6.3, 7.8, 8.4, 8.8, 9].entries())
      if (ratio > 0) expect(run({ depth: `${ratio * 6} m` }).si('N_sq')).toBeCloseTo(entry, 12)
    expect(run({ depth: '60 m' }).si('N_sq')).toBe(9)
  })

  it('base-heave: deeper, heavier, more loaded and softer is never safer', () => {
    for (const F of ['F_T', 'F_B']) {
      const of = (more: Inputs) => run(more).si(F)
      expect(of({ depth: '5.5 m' })).toBeLessThan(of({}))
      expect(of({ gamma: '19 kN/m^3' })).toBeLessThan(of({}))
      expect(of({ surcharge: '20 kPa' })).toBeLessThan(of({}))
      expect(of({ c_below: '28 kPa' })).toBeLessThan(of({}))
    }
    expect(run({ c_side: '10 kPa' }).si('F_T')).toBeLessThan(run().si('F_T'))
  })

  it('base-heave: a width that is the longer side is refused', () => {
    expect(refusals({ pit_length: '6 m' })).toEqual([])
    expect(refusals({ pit_length: '5.99 m' })).toEqual(['limit-exceeded'])
  })

  it('base-heave: a stability number above six is marked', () => {
    const kept = (more: Inputs) => run(more).limits.find(({ says }) => says.includes('stability number'))?.kept
    expect(kept({ c_below: '16.7 kPa' })).toBe(true)
    expect(kept({ c_below: '16.6 kPa' })).toBe(false)
  })

  it('base-heave: the two methods are compared, and part where much hangs beside the pit', () => {
    const [near, far] = [run({ c_side: '0 kPa' }), run({ c_side: '70 kPa' })]
    expect(near.agrees[0]?.difference).toBeLessThan(0.35)
    expect(far.agrees[0]?.difference).toBeGreaterThan(0.35)
  })

  it('base-heave: feet and pounds give the same factors', () => {
    const [si, us] = [run(), run({}, 'US')]
    for (const F of ['F_T', 'F_B']) expect(us.si(F)).toBeCloseTo(si.si(F), 9)
    expect(us.shown('p_v')).toMatch(/ psf$/)
  })
})
