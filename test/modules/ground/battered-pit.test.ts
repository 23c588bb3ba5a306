import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { batteredPit } from '../../../src/modules/ground/battered-pit.ts'
import { runModule } from '../run-module.ts'

const pit = {
  soil: 'type B',
  depth: '5 m',
  plan_length: '6 m',
  plan_width: '4 m',
  working_space: '0 m',
  swell: '0.25',
  shrinkage: '0.1',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(batteredPit, { ...pit, ...more }, { units })

describe('battered-pit', () => {
  it('example: evaluates without a warning', () => {
    expect(runModule(batteredPit, batteredPit.example).diagnostics).toEqual([])
  })

  it('slopes: are those of Table B-1, horizontal for one vertical', () => {
    // 29 CFR 1926 Subpart P App. B, Table B-1, read on a page that restates it; short term 1/2:1 from memory
    const printed = { 'stable rock': 0, 'type A': 0.75, 'type A short term': 0.5, 'type B': 1, 'type C': 1.5 }
    for (const [soil, slope] of Object.entries(printed)) expect(run({ soil, depth: '3 m' }).si('slope')).toBe(slope)
  })

  it('rock: upright sides, so the pit is base times depth', () => {
    const at = run({ soil: 'stable rock' })
    expect(at.si('V_dig')).toBeCloseTo(6 * 4 * 5, 9)
    expect(at.si('batter_angle')).toBeCloseTo(Math.PI / 2, 12)
    expect(at.si('top_length')).toBe(6)
  })

  it('working space: goes round the structure on both sides', () => {
    const at = run({ working_space: '0.8 m' })
    expect(at.si('base_length')).toBeCloseTo(7.6, 12)
    expect(at.si('top_width')).toBeCloseTo(5.6 + 10, 12)
  })

  it('prismoidal volume: never above the mean of the end areas', () => {
    const at = run()
    expect(at.si('V_dig')).toBeLessThan((5 * (at.si('A_base') + at.si('A_top'))) / 2)
  })

  it('any pit: volume is abd + (a+b)sd^2 + (4/3)s^2d^3, and slices agree', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 0, max: 50 }),
        (a, b, d, s) => {
          const at = run({
            soil: 'type C',
            plan_length: `${a / 10} m`,
            plan_width: `${b / 10} m`,
            depth: `${d / 10} m`,
            slope_chosen: `${s / 10}`,
          })
          const [l, w, h, k] = [a / 10, b / 10, d / 10, s / 10]
          const exact = l * w * h + (l + w) * k * h ** 2 + (4 / 3) * k ** 2 * h ** 3
          expect(at.si('V_dig') / exact).toBeCloseTo(1, 9)
          expect(at.agrees.every(one => one.difference <= one.band)).toBe(true)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('spoil and backfill: swell and shrinkage go the right way', () => {
    const at = run({ structure_volume: '100 m^3' })
    const dug = at.si('V_dig')
    expect(at.si('V_spoil')).toBeCloseTo(dug * 1.25, 9)
    expect(at.si('V_fill')).toBeCloseTo(dug - 100, 9)
    expect(at.si('V_bank')).toBeCloseTo((dug - 100) / 0.9, 9)
    expect(at.si('V_away') + at.si('V_keep')).toBeCloseTo(at.si('V_spoil'), 9)
    expect(at.satisfied('structure_fits')).toBe(true)
    expect(run({ structure_volume: '540 m^3' }).satisfied('structure_fits')).toBe(false)
    expect(run().has('V_fill')).toBe(false)
  })

  it('chosen slope: checked against the table, not refused', () => {
    expect(run({ slope_chosen: '1' }).satisfied('slope_flat_enough')).toBe(true)
    expect(run({ slope_chosen: '0.99' }).satisfied('slope_flat_enough')).toBe(false)
    expect(run({ slope_chosen: '1.5' }).si('top_length')).toBeCloseTo(21, 12)
  })

  it('room on site: checked where it is given', () => {
    const at = run({ site_length: '16 m', site_width: '13.9 m' })
    expect(at.satisfied('fits_along')).toBe(true)
    expect(at.satisfied('fits_across')).toBe(false)
  })

  it('depth: refused at 20 ft, taken just under it', () => {
    expect(run({ depth: '19.99 ft' }).errors).toEqual([])
    for (const depth of ['20 ft', '6.096 m', '21 ft']) {
      const at = run({ depth })
      expect(at.errors.map(fault => fault.rule)).toContain('limit-exceeded')
      expect(at.has('V_dig')).toBe(false)
    }
  })

  it('short-term slope: taken to 12 ft, refused below', () => {
    expect(run({ soil: 'type A short term', depth: '12 ft' }).errors).toEqual([])
    const at = run({ soil: 'type A short term', depth: '12.01 ft' })
    expect(at.errors.map(fault => fault.rule)).toContain('limit-exceeded')
    expect(at.has('top_length')).toBe(false)
  })

  it('no depth, no plan, an unknown soil, shrinkage of a half: refused', () => {
    const wrong = [{ depth: '0 m' }, { plan_width: '0 m' }, { soil: 'type D' }, { shrinkage: '0.5' }, { swell: '-0.1' }]
    for (const more of wrong) expect(run(more).errors.length).toBeGreaterThan(0)
    expect(run({ shrinkage: '0.49' }).errors).toEqual([])
  })

  const warned = (more: Readonly<Record<string, string>>): readonly string[] =>
    run({ working_space: '0.8 m', ...more })
      .diagnostics.filter(fault => fault.severity === 'warning')
      .map(fault => fault.says)

  it('no groundwater given: is warned of, and the limit stands exceeded', () => {
    expect(warned({}).join()).toContain('the pit is not taken as dry')
    expect(run().limits.find(({ says }) => says.includes('not taken as dry'))?.kept).toBe(false)
    expect(warned({ water_depth: '9 m' })).toEqual([])
  })

  it('formation below the groundwater: is warned of, just inside and just outside', () => {
    const soil = 'type C'
    expect(warned({ soil, water_depth: '5 m' })).toEqual([])
    expect(warned({ soil, water_depth: '4.99 m' }).join()).toContain('the formation lies above the groundwater')
    expect(run({ soil, water_depth: '3.8 m' }).si('head_formation')).toBeCloseTo(1.2, 12)
    expect(run({ soil, water_depth: '-1 m' }).si('head_formation')).toBeCloseTo(6, 12)
    expect(run({ soil, water_depth: '-1 m' }).si('side_below_water')).toBeCloseTo(5, 12)
  })

  it('water held by pumps: is checked against formation instead', () => {
    const held = (water_held: string) => run({ soil: 'type C', water_depth: '3 m', working_space: '0.8 m', water_held })
    expect(held('5 m').satisfied('formation_dry')).toBe(true)
    expect(held('4.99 m').satisfied('formation_dry')).toBe(false)
    expect(held('5 m').diagnostics).toEqual([])
    expect(held('5 m').has('head_formation')).toBe(false)
  })

  it('soil type: a side in the water is type C, stable rock aside', () => {
    // 29 CFR 1926 Subpart P App. A (memory): submerged soil or soil from which water is freely seeping is type C
    const soils = ['stable rock', 'type A', 'type B', 'type C']
    const says = 'no side that stands in the groundwater is classed better than type C'
    const faults = (water_depth: string) =>
      soils.filter(soil => warned({ soil, water_depth, water_held: '6 m' }).join().includes(says))
    expect(faults('4.99 m')).toEqual(['type A', 'type B'])
    expect(faults('5 m')).toEqual([])
  })

  it('feet: the same pit has the same volume', () => {
    const at = run({ depth: '10 ft', plan_length: '20 ft', plan_width: '15 ft' }, 'US')
    expect(at.shown('top_length')).toBe('40.00 ft')
    // 10/6 (300 + 4 x 30 x 25 + 40 x 35), by hand
    expect(at.shown('V_dig')).toBe('7833 ft^3')
  })
})
