import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gammaSlab } from '../../../src/modules/shielding/gamma-slab.ts'
import { halvingLayers } from '../../../src/modules/shielding/halving-layers.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>

const layer = fc.record({
  material: fc.constantFrom('packed earth', 'concrete'),
  thickness: fc.integer({ min: 60, max: 500 }).map(mm => `${mm} mm`),
})
const stack = fc.array(layer, { minLength: 1, maxLength: 3 })
const energies = ['0.662 MeV', '1 MeV', '1.25 MeV', '2 MeV'] as const

const slab = (layers: readonly Row[], more: Row = {}) =>
  runModule(gammaSlab, { layers, source: 'plane', energy: '1.25 MeV', ...more })
const halvings = (layers: readonly Row[], more: Row = {}) =>
  runModule(halvingLayers, { layers, required_factor: '1', ...more })
const log2 = (value: number): number => Math.log(value) / Math.log(2)
const concrete = (mm: number): readonly Row[] => [{ material: 'concrete', thickness: `${mm} mm` }]

describe('slab and halvings', () => {
  it('gamma-slab: a beam is the second method of halving-layers, whatever the stack and the energy', () => {
    fc.assert(
      fc.property(stack, fc.constantFrom(...energies), (layers, energy) => {
        const beam = slab(layers, { source: 'beam', energy })
        fc.pre(beam.si('b') <= 20)
        expect(halvings(layers, { energy }).si('T_beam') / beam.si('T')).toBeCloseTo(1, 9)
      }),
      { numRuns: 25 },
    )
  })

  it('gamma-slab: within ten halvings a plane is stopped better than the halving rule says, by one to four halvings', () => {
    fc.assert(
      fc.property(stack, fc.constantFrom('1.25 MeV', '2 MeV'), (layers, energy) => {
        const rule = halvings(layers)
        const plane = slab(layers, { energy })
        fc.pre(rule.si('n_all') >= 1.5 && rule.si('n_all') <= 10 && plane.si('b') >= 1 && plane.si('b') <= 10)
        const more = log2(plane.si('P')) - rule.si('n_all')
        expect(more).toBeGreaterThan(1)
        expect(more).toBeLessThan(4)
      }),
      { numRuns: 40 },
    )
  })

  // looked up: halving and tenth-value thicknesses of concrete, broad beams: ASTM E94 (48 and 66 mm; 160 and 220 mm) and technical order
  // 33B-1-1, Table 6-28 (6.2 and 8.1 in). Over their two tenths for cobalt-60, 220 and 205.7 mm, the books themselves differ by 17 % in
  // dose: what the thinner leaves as a tenth the thicker leaves as 10^(-205.7/220), with 220 up to 220.5 before it was rounded.
  it.each([
    ['caesium-137', '0.662 MeV', 48, 2],
    ['caesium-137', '0.662 MeV', 160, 10],
    ['caesium-137', '0.662 MeV', 157.5, 10],
    ['cobalt-60', '1.25 MeV', 66, 2],
    ['cobalt-60', '1.25 MeV', 205.7, 10],
  ])(
    'gamma-slab: deep in concrete a beam of %s, %s, has no less dose behind %d mm more than the published part of %d, and no more than the two books differ by',
    (_, energy, thicker, part) => {
      const at = (mm: number) => slab(concrete(mm), { source: 'beam', energy }).si('T')
      const dose = (at(300 + thicker) / at(300)) * part
      expect(dose).toBeGreaterThan(1)
      expect(dose).toBeLessThan(10 ** (1 - 205.7 / 220.5))
    },
  )

  it('gamma-slab: deep in concrete the tenth-value thickness for cobalt-60 lies between those of the two books', () => {
    const at = (mm: number) => slab(concrete(mm), { source: 'beam', energy: '1.25 MeV' }).si('T')
    expect(at(300) / at(300 + 205.7)).toBeLessThan(10)
    expect(at(300) / at(300 + 220)).toBeGreaterThan(10)
  })
})
