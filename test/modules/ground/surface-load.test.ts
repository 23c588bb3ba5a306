import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boussinesqCells } from '../../../src/modules/ground/boussinesq-cells.ts'
import { surfaceLoad } from '../../../src/modules/ground/surface-load.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'
import { newmarkFactors } from './newmark-factors.ts'

type Load = Readonly<Record<string, string>>

const wheel = (more: Load = {}): Load => ({ load: '50 kN', long: '0.3 m', wide: '0.5 m', ...more })
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(surfaceLoad, { depth: '1 m', impact: '1', loads: [wheel()], ...more }, { units })
const sigma = (more: Readonly<Record<string, CaseInput>>): number => run(more).si('sigma_z')
/** A patch that has the place asked about under its corner. */
const cornered = (m: number, n: number, load: number): Load => ({
  load: `${load} kN`,
  long: `${m} m`,
  wide: `${n} m`,
  x: `${m / 2} m`,
  y: `${-n / 2} m`,
})

describe('surface-load', () => {
  it('surface-load: the example evaluates without a warning', () => {
    expect(runModule(surfaceLoad, surfaceLoad.example).diagnostics).toEqual([])
  })

  it('surface-load: every influence factor of the printed table, to its last digit', () => {
    // Chapra, Table P20.27, looked up on a page that reprints it. One entry is rounded the other way there: 0.16199 for 0.1619952
    const rounded = newmarkFactors.find(([m, n]) => m === 0.7 && n === 1.4)
    for (const row of newmarkFactors) {
      const [m, n, printed] = row
      const factor = sigma({ loads: [cornered(m, n, 1000 * m * n)] }) / 1e6
      expect(Math.abs(factor - printed)).toBeLessThanOrEqual(row === rounded ? 0.0000053 : 0.000005)
    }
  })

  it('surface-load: length and width, and the two sides, may be exchanged', () => {
    const turned = wheel({ long: '0.5 m', wide: '0.3 m', x: '0.4 m', y: '-0.7 m' })
    expect(sigma({ loads: [turned] })).toBeCloseTo(sigma({ loads: [wheel({ x: '0.7 m', y: '0.4 m' })] }), 6)
  })

  it('surface-load: a very wide load presses in full, half of it half, a quarter a quarter', () => {
    const wide = (x: string, y: string) =>
      sigma({ loads: [{ load: '1e9 kN', long: '10000 m', wide: '10000 m', x, y }] }) / 10_000
    expect(wide('0 m', '0 m')).toBeCloseTo(1, 6)
    expect(wide('5000 m', '0 m')).toBeCloseTo(0.5, 6)
    expect(wide('5000 m', '-5000 m')).toBeCloseTo(0.25, 6)
  })

  it('surface-load: far away a patch is a point', () => {
    const at = run({ depth: '20 m' })
    expect(at.si('sigma_z') / at.si('sigma_point')).toBeCloseTo(1, 3)
  })

  it('surface-load: the stress over the whole plane carries the load', () => {
    // midpoints of squares of 1 m over one quarter of the plane, to 12 m; what lies beyond is the rest of Boussinesq's field
    let force = 0
    for (let i = 0; i < 12; i += 1)
      for (let j = 0; j < 12; j += 1)
        force += sigma({ depth: '3 m', loads: [wheel({ x: `${0.5 + i} m`, y: `${0.5 + j} m` })] })
    expect((4 * force) / 50_000).toBeGreaterThan(0.985)
    expect((4 * force) / 50_000).toBeLessThan(1)
  })

  it('surface-load: two loads are the sum of each, and a load cut in two is the same load', () => {
    const both = sigma({ loads: [wheel(), wheel({ y: '1.8 m' })] })
    expect(both).toBeCloseTo(sigma({}) + sigma({ loads: [wheel({ y: '1.8 m' })] }), 6)
    const half = (x: string) => wheel({ load: '25 kN', long: '0.15 m', x })
    expect(sigma({ loads: [half('0.075 m'), half('-0.075 m')] })).toBeCloseTo(sigma({}), 6)
  })

  it('surface-load: the dynamic allowance multiplies every answer', () => {
    for (const name of ['p_live', 'sigma_z', 'sigma_spread', 'sigma_point'])
      expect(run({ impact: '1.3' }).si(name) / run().si(name)).toBeCloseTo(1.3, 9)
  })

  it('surface-load: the spread load is a mean over its own area, and nothing beside it', () => {
    expect(run().si('sigma_spread')).toBeCloseTo(50_000 / (1.3 * 1.5), 6)
    expect(run({ loads: [wheel({ x: '0.65 m' })] }).si('sigma_spread')).toBeGreaterThan(0)
    expect(run({ loads: [wheel({ x: '0.66 m' })] }).si('sigma_spread')).toBe(0)
    expect(run({ loads: [wheel({ y: '-0.76 m' })] }).si('sigma_spread')).toBe(0)
  })

  it('surface-load: the roof is designed for the larger of patch and spread', () => {
    const shallow = run({ depth: '0.6 m' })
    expect(shallow.si('p_live')).toBe(shallow.si('sigma_z'))
    // at the rim of a wide load the spread of two to one gives more than the patch
    const wide = run({ loads: [{ load: '900 kN', long: '3 m', wide: '3 m', x: '1.9 m' }] })
    expect(wide.si('sigma_spread')).toBeGreaterThan(wide.si('sigma_z'))
    expect(wide.si('p_live')).toBe(wide.si('sigma_spread'))
  })

  it('surface-load: deeper is less, right below the load', () => {
    const depths = ['0.3 m', '0.6 m', '1 m', '2 m', '4 m'].map(depth => sigma({ depth }))
    expect(depths).toEqual([...depths].sort((a, b) => b - a))
  })

  it('surface-load: agrees with point loads added up, wherever the loads stand', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map(n => `${n / 10} m`)
    const load = fc.record({ long: tenths(1, 60), wide: tenths(1, 60), x: tenths(-50, 50), y: tenths(-50, 50) })
    fc.assert(
      fc.property(fc.array(load, { minLength: 1, maxLength: 3 }), tenths(6, 60), (drawn, depth) => {
        const at = run({ depth, loads: drawn.map(each => wheel(each)) })
        expect(at.errors).toEqual([])
        expect(at.agrees).toHaveLength(1)
        for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(one.band)
      }),
      { numRuns: 12 },
    )
  })

  it('surface-load: cells that are coarse for the depth are refused, not believed', () => {
    const patch = { load: [1e6], long: [100], wide: [100], x: [0], y: [0], depth: 0.05 }
    expect(boussinesqCells.run(patch, {}).ok).toBe(false)
    expect(boussinesqCells.run({ ...patch, depth: 50 }, {}).ok).toBe(true)
  })

  it('surface-load: little cover is marked', () => {
    expect(run({ depth: '0.6 m' }).limits[0]?.kept).toBe(true)
    expect(run({ depth: '0.59 m' }).limits[0]?.kept).toBe(false)
  })

  it('surface-load: no cover, no patch and an allowance below one are refused', () => {
    expect(run({ depth: '0 m' }).errors.length).toBeGreaterThan(0)
    expect(run({ loads: [wheel({ long: '0 m' })] }).errors.length).toBeGreaterThan(0)
    expect(run({ impact: '0.99' }).errors.length).toBeGreaterThan(0)
  })

  it('surface-load: feet and pounds give the same stress', () => {
    expect(run({}, 'US').si('sigma_z')).toBeCloseTo(run().si('sigma_z'), 6)
    expect(run({}, 'US').shown('sigma_z')).toMatch(/ psf$/)
  })
})
