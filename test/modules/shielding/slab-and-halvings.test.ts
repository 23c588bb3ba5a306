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

  // Halving and tenth-value thicknesses of concrete, broad beams: ASTM E94 (48 and 66 mm) and technical order 33B-1-1, Table 6-28
  // (6.2 and 8.1 in), all looked up. The two books differ by 7 % themselves (220 and 205.7 mm for a tenth of cobalt-60), so a tenth of
  // the halvings is as near as they allow. In dose ours lets through up to 14 % more over a tenth-value thickness: the safe side.
  it.each([
    ['caesium-137', '0.662 MeV', 48, 2],
    ['caesium-137', '0.662 MeV', 157.5, 10],
    ['cobalt-60', '1.25 MeV', 66, 2],
    ['cobalt-60', '1.25 MeV', 205.7, 10],
  ])(
    'gamma-slab: deep in concrete a beam of %s, %s, is halved over %d mm as often as published for a factor of %d, within a tenth',
    (_, energy, more, factor) => {
      const at = (mm: number) => slab(concrete(mm), { source: 'beam', energy }).si('T')
      const halved = log2(at(300) / at(300 + more)) / log2(factor)
      expect(halved).toBeGreaterThan(0.9)
      expect(halved).toBeLessThan(1.1)
    },
  )
})
