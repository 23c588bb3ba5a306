import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { infiniteSlope } from '../../../src/modules/ground/infinite-slope.ts'
import { runModule } from '../run-module.ts'

const base = {
  slope: '20 deg',
  plane_depth: '3 m',
  below: 'stronger',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  phi: '30 deg',
  c: '4 kPa',
  water_height: '1 m',
  surcharge: '0 kPa',
  factor: '1.2',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(infiniteSlope, { ...base, ...more }, { units })
const rules = (more: Readonly<Record<string, string>>) => run(more).errors.map(({ rule }) => rule)
const of = (angle: number) => (angle * Math.PI) / 180

describe('long slope', () => {
  it('infinite-slope: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(infiniteSlope, infiniteSlope.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('F_z')).toBeCloseTo(run().si('F_z'), 12)
  })

  it('infinite-slope: a slice of one metre of slope, worked by hand', () => {
    // Weight 56 kN a metre of level ground; the plane under it is 1 / cos 20 long.
    const [W, b, l] = [56, of(20), 1 / Math.cos(of(20))]
    const U = 9.81 * Math.cos(b) ** 2 * l
    const F = (4 * l + (W * Math.cos(b) - U) * Math.tan(of(30))) / (W * Math.sin(b))
    expect(run().si('F_z')).toBeCloseTo(F, 9)
  })

  it('infinite-slope: dry sand does not care for depth or load, and water, slope and weakness take away', () => {
    const sand = { c: '0 kPa', water_height: '0 m' }
    for (const more of [{ plane_depth: '1 m' }, { plane_depth: '9 m' }, { surcharge: '20 kPa' }])
      expect(run({ ...sand, ...more }).si('F_z')).toBeCloseTo(Math.tan(of(30)) / Math.tan(of(20)), 12)
    for (const more of [{ water_height: '2 m' }, { slope: '22 deg' }, { phi: '28 deg' }, { c: '3 kPa' }])
      expect(run(more).si('F_z'), JSON.stringify(more)).toBeLessThan(run().si('F_z'))
  })

  it('infinite-slope: the check turns at the factor that is required', () => {
    const F = run().si('F_z')
    expect(run({ factor: `${0.9999 * F}` }).satisfied('slope_stands')).toBe(true)
    expect(run({ factor: `${1.0001 * F}` }).satisfied('slope_stands')).toBe(false)
  })

  it('infinite-slope: the skeleton dragged by the seepage gives the same, for any slope', () => {
    const tenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map(n => `${n / 10}`)
    let compared = 0
    fc.assert(
      fc.property(tenths(10, 450), tenths(10, 90), tenths(0, 10), tenths(100, 450), (slope, depth, share, phi) => {
        const water_height = `${Number(share) * Number(depth)} m`
        const at = run({ slope: `${slope} deg`, plane_depth: `${depth} m`, water_height, phi: `${phi} deg` })
        if (at.errors.length > 0) return
        compared += 1
        expect(at.agrees[0]?.difference).toBeLessThan(1e-9)
      }),
      { numRuns: 40 },
    )
    expect(compared).toBeGreaterThan(20)
  })

  it('infinite-slope: refuses water over the ground, level ground and a plane that floats', () => {
    expect(rules({ water_height: '3 m' })).toEqual([])
    expect(rules({ water_height: '3.01 m' })).toEqual(['limit-exceeded'])
    expect(rules({ slope: '0 deg' })).toEqual(['value-outside-range'])
    expect(rules({ slope: '60.1 deg' })).toEqual(['value-outside-range'])
  })

  it('infinite-slope: says where cohesion in ground that goes on below hides a deeper slide', () => {
    const kept = (more: Readonly<Record<string, string>>) =>
      run(more).limits.find(({ says }) => says.includes('goes on below'))?.kept
    expect(kept({})).toBeUndefined()
    expect(kept({ below: 'the same' })).toBe(false)
    expect(kept({ below: 'the same', c: '0 kPa' })).toBe(true)
  })

  it('infinite-slope: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => rules({ gamma_sat })
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
