import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { darcyRings } from '../../../src/modules/ground/darcy-rings.ts'
import { pitInflow } from '../../../src/modules/ground/pit-inflow.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, CaseInput>>

const sand: Inputs = {
  aquifer: 'unconfined',
  k: '5e-5 m/s',
  k_high: '1e-4 m/s',
  ring_length: '10 m',
  ring_width: '8 m',
  equivalent: 'equal area',
  depth: '3.5 m',
  water_depth: '1 m',
  aquifer_base: '9 m',
  outlet_head: '2 m',
  efficiency: '0.5',
}
const confined: Inputs = { aquifer: 'confined', aquifer_top: '5 m' }
const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') => runModule(pitInflow, { ...sand, ...more }, { units })
const refusals = (more: Inputs): readonly string[] => run(more).errors.map(({ rule }) => rule)
const kept = (more: Inputs, words: string) => run(more).limits.find(({ says }) => says.includes(words))?.kept

describe('pit-inflow', () => {
  it('pit-inflow: the example evaluates without a warning', () => {
    expect(runModule(pitInflow, pitInflow.example).diagnostics).toEqual([])
  })

  it('pit-inflow: the margin below formation is checked', () => {
    expect(run({ margin: '0.5 m' }).satisfied('margin_enough')).toBe(true)
    expect(run({ margin: '0.49 m' }).satisfied('margin_enough')).toBe(false)
  })

  it('pit-inflow: pumps are sized for the first days at the highest permeability, and checked where they are given', () => {
    const at = run()
    expect(at.si('Q_pump')).toBeCloseTo(1.3 * at.si('Q_high'), 12)
    // 9.81 kN/m3 x flow x (3.5 + 0.5 + 2) m / 0.5
    expect(at.si('P_pump') / at.si('Q_pump')).toBeCloseTo((9810 * 6) / 0.5, 6)
    const litres = at.si('Q_pump') * 1000
    expect(run({ pump_capacity: `${litres * 1.001} L/s` }).satisfied('pumps_enough')).toBe(true)
    expect(run({ pump_capacity: `${litres * 0.999} L/s` }).satisfied('pumps_enough')).toBe(false)
  })

  it('pit-inflow: with one reach the flow is linear in the permeability', () => {
    const of = (k: string) => run({ k, k_high: '1e-3 m/s', reach: '60 m' }).si('Q')
    expect(of('1e-4 m/s') / of('2e-5 m/s')).toBeCloseTo(5, 9)
  })

  it('pit-inflow: for little lowering in deep water the two formulas meet', () => {
    const deep: Inputs = { aquifer_base: '1001 m', depth: '1.5 m', reach: '80 m' }
    const table = run(deep).si('Q')
    const tight = run({ ...deep, aquifer: 'confined', aquifer_top: '2 m' }).si('Q')
    expect(table / 1000 / (tight / 999)).toBeCloseTo(1 - 0.5 / 1000, 6)
  })

  it('pit-inflow: deeper pit, higher water, larger ring and looser ground never pump less', () => {
    const Q = (more: Inputs) => run(more).si('Q_high')
    expect(Q({ depth: '4 m' })).toBeGreaterThan(Q({}))
    expect(Q({ water_depth: '0.5 m' })).toBeGreaterThan(Q({}))
    expect(Q({ ring_length: '12 m' })).toBeGreaterThan(Q({}))
    expect(Q({ k_high: '2e-4 m/s' })).toBeGreaterThan(Q({}))
    expect(Q({ equivalent: 'equal perimeter' })).toBeGreaterThan(Q({}))
    expect(Q({ reach: '200 m' })).toBeLessThan(Q({ reach: '60 m' }))
  })

  it('pit-inflow: agrees with the rings, with a water table and confined', () => {
    const number = (min: number, max: number) => fc.integer({ min, max }).map(n => n / 10)
    fc.assert(
      fc.property(fc.boolean(), number(20, 60), number(30, 300), number(1, 90), (tight, depth, wide, base) => {
        const at = run({
          depth: `${depth} m`,
          ring_width: `${wide} m`,
          ring_length: `${wide} m`,
          aquifer_base: `${depth + 1 + base} m`,
          ...(tight ? { aquifer: 'confined', aquifer_top: `${depth + 0.6} m` } : {}),
        })
        expect(at.errors).toEqual([])
        expect(at.agrees).toHaveLength(1)
        for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(one.band)
      }),
      { numRuns: 40 },
    )
  })

  it('pit-inflow: the rings give the logarithm of a confined well, and refuse a field without fall', () => {
    const field = { k: 1e-4, inner: 6, outer: 50, low: 8, high: 10, thickness: 5 }
    const answer = darcyRings.run(field, { aquifer: 'confined' })
    expect(answer.ok && answer.values.flow).toBeCloseTo((2 * Math.PI * 1e-4 * 5 * 2) / Math.log(50 / 6), 9)
    expect(darcyRings.run({ ...field, low: 10 }, { aquifer: 'confined' }).ok).toBe(false)
  })

  it('pit-inflow: water that stands low enough is refused, and taken just above', () => {
    expect(refusals({ water_depth: '4 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ water_depth: '3.99 m' })).toEqual([])
  })

  it('pit-inflow: lowering to the base of the aquifer is refused', () => {
    expect(refusals({ aquifer_base: '4 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ aquifer_base: '4.01 m' })).toEqual([])
  })

  it('pit-inflow: a reach inside the ring, and a high permeability below the best, are refused', () => {
    expect(refusals({ reach: '5 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ reach: '5.1 m' })).toEqual([])
    expect(refusals({ k_high: '4.9e-5 m/s' })).toEqual(['limit-exceeded'])
    expect(refusals({ k_high: '5e-5 m/s' })).toEqual([])
  })

  it('pit-inflow: a confined aquifer has its top given, above its base, and stays full', () => {
    expect(refusals(confined)).toEqual([])
    expect(refusals({ aquifer: 'confined' })).toEqual(['limit-exceeded'])
    expect(refusals({ ...confined, aquifer_top: '9 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ ...confined, aquifer_top: '3.99 m' })).toEqual(['limit-exceeded'])
    expect(refusals({ ...confined, aquifer_top: '4 m' })).toEqual([])
    expect(refusals({ aquifer_top: '5 m' })).toEqual(['limit-exceeded'])
  })

  it('pit-inflow: what just touches its bound is taken or refused whatever the rounding of the machine', () => {
    for (const depth of [2.1, 2.9, 3.3, 4.7]) {
      const lowered = `${(depth + 0.5).toFixed(1)} m`
      expect(refusals({ ...confined, depth: `${depth} m`, aquifer_top: lowered })).toEqual([])
      expect(refusals({ depth: `${depth} m`, water_depth: lowered })).toEqual(['limit-exceeded'])
      expect(refusals({ depth: `${depth} m`, aquifer_base: lowered })).toEqual(['limit-exceeded'])
    }
  })

  it('pit-inflow: a long trench is marked', () => {
    expect(kept({ ring_length: '40 m' }, 'five times')).toBe(true)
    expect(kept({ ring_length: '40.1 m' }, 'five times')).toBe(false)
    expect(kept({ ring_length: '1.59 m' }, 'five times')).toBe(false)
  })

  it('pit-inflow: feet and gallons give the same flow', () => {
    expect(run({}, 'US').si('Q_high')).toBeCloseTo(run().si('Q_high'), 12)
    expect(run({}, 'US').shown('Q_pump')).toMatch(/ gpm$/)
  })

  it('pit-inflow: the lowered water is drawn from the ring to the radius of influence', () => {
    for (const more of [{}, confined]) {
      const drawing = drawingOf(pitInflow, { ...sand, ...more })
      const curve = drawing.shapes.find(shape => shape.kind === 'line' && shape.points.length > 10)
      const points = curve ? pointsOf(curve) : []
      expect(points[0]?.[1]).toBeCloseTo(-4, 9)
      expect(points.at(-1)?.[1]).toBeCloseTo(-1, 9)
      expect(points.at(-1)?.[0]).toBeCloseTo(run(more).si('R_0_high'), 6)
    }
  })
})
