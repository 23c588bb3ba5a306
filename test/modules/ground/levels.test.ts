import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { levels } from '../../../src/modules/ground/levels.ts'
import { runModule } from '../run-module.ts'

const stack = {
  cover: '1.0 m',
  cover_required: '1.0 m',
  roof: '0.4 m',
  clear: '2.4 m',
  raft: '0.4 m',
  blinding: '0.05 m',
  working_layer: '0.15 m',
  water_depth: '2.0 m',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(levels, { ...stack, ...more }, { units })

describe('levels', () => {
  it('example: evaluates without a warning', () => {
    expect(runModule(levels, levels.example).diagnostics).toEqual([])
  })

  it('every level: stands below the one above it by its own layer', () => {
    const at = run()
    const depths = ['z_roof', 'z_ceiling', 'z_floor', 'z_raft_top', 'z_raft', 'z_blinding', 'z_formation'].map(at.si)
    const expected = [1.0, 1.4, 3.8, 3.8, 4.2, 4.25, 4.4]
    for (const [i, depth] of depths.entries()) expect(depth).toBeCloseTo(expected[i] ?? Number.NaN, 12)
    expect(at.si('box_height')).toBeCloseTo(3.2, 12)
    expect(at.si('wall_height')).toBeCloseTo(2.8, 12)
    expect(at.si('z_raft_mid') - at.si('z_roof_mid')).toBeCloseTo(at.si('wall_height'), 12)
  })

  it('topping and finish: lower everything under them by their thickness', () => {
    const bare = run()
    const dressed = run({ topping: '0.12 m', finish: '0.08 m' })
    expect(dressed.si('z_roof') - bare.si('z_roof')).toBeCloseTo(0.12, 12)
    expect(dressed.si('z_floor') - bare.si('z_floor')).toBeCloseTo(0.12, 12)
    expect(dressed.si('z_formation') - bare.si('z_formation')).toBeCloseTo(0.2, 12)
    expect(dressed.si('wall_height') - bare.si('wall_height')).toBeCloseTo(0.08, 12)
  })

  it('water: gives a head against each level below it and none against those above', () => {
    const at = run()
    expect(at.si('head_roof')).toBe(0)
    expect(at.si('head_floor')).toBeCloseTo(1.8, 12)
    expect(at.si('head_raft')).toBeCloseTo(2.2, 12)
    expect(at.si('head_formation')).toBeCloseTo(2.4, 12)
    expect(at.si('u_raft')).toBeCloseTo(9810 * 2.2, 6)
  })

  it('water above ground: presses on the roof as well', () => {
    const at = run({ water_depth: '-0.5 m' })
    expect(at.si('head_roof')).toBeCloseTo(1.5, 12)
    expect(at.diagnostics.map(fault => fault.rule)).toContain('value-unusual')
  })

  it('drawdown: none where the water stands below formation less the margin', () => {
    expect(run({ water_depth: '4.9 m' }).si('drawdown')).toBe(0)
    expect(run({ water_depth: '4.8 m' }).si('drawdown')).toBeCloseTo(0.1, 12)
    expect(run({ water_depth: '9 m' }).si('drawdown')).toBe(0)
  })

  it('cover: the check holds at the cover required and fails just under it', () => {
    expect(run().satisfied('cover_enough')).toBe(true)
    expect(run({ cover: '0.999 m' }).satisfied('cover_enough')).toBe(false)
  })

  it('planned drawdown: checked only where it is given', () => {
    expect(() => run().satisfied('drawdown_enough')).toThrow()
    expect(run({ drawdown_planned: '2.9 m' }).satisfied('drawdown_enough')).toBe(true)
    expect(run({ drawdown_planned: '2.89 m' }).satisfied('drawdown_enough')).toBe(false)
  })

  it('ground level: reduces every level to the datum, and only where it is given', () => {
    const at = run({ ground_level: '12.3 m' })
    expect(at.si('RL_formation')).toBeCloseTo(12.3 - 4.4, 12)
    expect(at.si('RL_water')).toBeCloseTo(10.3, 12)
    expect(run().has('RL_formation')).toBe(false)
  })

  it('thin cover and deep formation: are warned of, and the answer is still given', () => {
    const thin = run({ cover: '0.59 m', cover_required: '0.5 m' })
    expect(thin.limits[0]?.kept).toBe(false)
    expect(thin.errors).toEqual([])
    expect(run({ cover: '0.6 m', cover_required: '0.5 m' }).limits[0]?.kept).toBe(true)
    expect(run({ clear: '4.096 m' }).limits[1]?.kept).toBe(false)
    expect(run({ clear: '4.095 m' }).limits[1]?.kept).toBe(true)
  })

  it('a slab without thickness, a negative layer, a wrong dimension: refused', () => {
    for (const wrong of [
      { roof: '0 m' },
      { raft: '0 mm' },
      { blinding: '-1 mm' },
      { cover: '-0.1 m' },
      { cover: '1 kPa' },
    ]) {
      const at = run(wrong)
      expect(at.errors.length).toBeGreaterThan(0)
      expect(at.has('z_formation')).toBe(false)
    }
  })

  it('feet and inches: give the same levels, shown in feet', () => {
    const at = run(
      {
        cover: '4 ft',
        cover_required: '3 ft',
        roof: '14 in',
        clear: '8 ft',
        raft: '14 in',
        blinding: '2 in',
        working_layer: '6 in',
        water_depth: '9 ft',
      },
      'US',
    )
    expect(at.shown('z_formation')).toBe('15.00 ft')
    expect(at.shown('head_raft')).toBe('5.333 ft')
  })

  it('any stack: formation is the sum of its layers', () => {
    const size = fc.integer({ min: 1, max: 900 })
    fc.assert(
      fc.property(fc.array(size, { minLength: 6, maxLength: 6 }), sizes => {
        const [cover = 0, roof = 0, clear = 0, raft = 0, blinding = 0, working = 0] = sizes
        const at = run({
          cover: `${cover} cm`,
          roof: `${roof} mm`,
          clear: `${clear} cm`,
          raft: `${raft} mm`,
          blinding: `${blinding} mm`,
          working_layer: `${working} mm`,
        })
        const sum = (cover + clear) / 100 + (roof + raft + blinding + working) / 1000
        expect(at.si('z_formation')).toBeCloseTo(sum, 9)
      }),
      { numRuns: 40 },
    )
  })
})
