import { describe, expect, it } from 'vitest'
import { soilTreatment } from '../../../src/modules/ground/soil-treatment.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'

const base = {
  areas: [
    { area: '48 m^2', rate: '5 L/m^2' },
    { area: '60 m^2', rate: '7.5 L/m^2' },
  ],
  edges: [{ run: '28 m', edge_rate: '2.25 L/m' }],
  dose: '5 percent',
  spare: '10 percent',
  nearest: '40 m',
  keep_away: '30 m',
  ground: 'moist',
}
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(soilTreatment, { ...base, ...more }, { units })

describe('soil treatment', () => {
  it('soil-treatment: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(soilTreatment, soilTreatment.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('V_mix')).toBeCloseTo(run().si('V_mix'), 12)
  })

  it('soil-treatment: emulsion and product, worked by hand', () => {
    expect(run().si('V_mix')).toBeCloseTo(((240 + 450 + 63) * 1.1) / 1000, 12)
    expect(run().si('V_product')).toBeCloseTo((753 * 1.1 * 0.05) / 1000, 12)
  })

  it('soil-treatment: the schedule lists the surfaces alone, so that the emulsion in all goes to the drawings', () => {
    expect(soilTreatment.drawing).toContain('V_mix')
    expect(soilTreatment.schedule?.title).toContain('without the edges')
  })

  it('soil-treatment: 7.5 litres a square metre to a depth of 0.3 m are the 2.25 litres a metre of the edge', () => {
    const edge = run({ edges: [{ run: '10 m', edge_rate: '7.5 L/m^2 * 0.3 m' }] })
    expect(edge.si('V_edge_1')).toBeCloseTo(0.0225, 12)
  })

  it('soil-treatment: the record of the work is checked where it is given', () => {
    const used = (area: string, edge: string) =>
      run({
        areas: [{ area: '48 m^2', rate: '5 L/m^2', used_area: area }],
        edges: [{ run: '28 m', edge_rate: '2.25 L/m', used_edge: edge }],
      })
    const of = (at: ReturnType<typeof run>) =>
      at.diagnostics.filter(({ rule }) => rule === 'check-not-satisfied').length
    expect(of(used('240 L', '63 L'))).toBe(0)
    expect(of(used('239 L', '63 L'))).toBe(1)
    expect(of(used('239 L', '62.9 L'))).toBe(2)
    expect(of(run())).toBe(0)
  })

  it('soil-treatment: well and intake are kept away from', () => {
    expect(run({ nearest: '30 m' }).satisfied('far_enough')).toBe(true)
    expect(run({ nearest: '29.9 m' }).satisfied('far_enough')).toBe(false)
  })

  it('soil-treatment: refuses wet ground and a dose without a product', () => {
    expect(run({ ground: 'wet' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(run({ dose: '0' }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
    expect(run({ dose: '20 percent' }).errors).toEqual([])
    expect(run({ dose: '21 percent' }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })
})
