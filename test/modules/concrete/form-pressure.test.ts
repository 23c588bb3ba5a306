import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formPressureAci347 } from '../../../src/modules/concrete/form-pressure-aci-347.ts'
import { formPressureCiria108 } from '../../../src/modules/concrete/form-pressure-ciria-108.ts'
import type { Module } from '../../../src/modules/module.ts'
import type { Shape } from '../../../src/modules/sketch.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type More = Readonly<Record<string, string>>
const runs =
  (module: Module) =>
  (more: More = {}) =>
    runModule(module, { ...module.example, ...more })
const [aci, ciria] = [runs(formPressureAci347), runs(formPressureCiria108)]
const psf = (pascals: number) => (pascals * 0.3048 ** 2) / 4.4482216152605
const rules = (ran: ReturnType<typeof aci>) => ran.errors.map(({ rule }) => rule)

describe.each([
  ['form-pressure-aci-347', formPressureAci347],
  ['form-pressure-ciria-108', formPressureCiria108],
] as const)('%s', (id, module) => {
  const run = runs(module)

  it.each(['SI', 'US'] as const)(`${id}: the example evaluates without a message, in %s`, units => {
    expect(runModule(module, module.example, { units }).diagnostics).toEqual([])
  })

  it(`${id}: pressure never passes that of a liquid, rises with the rate, falls with warmth`, () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), fc.integer({ min: 5, max: 30 }), (tenths, temperature) => {
        const at = (R: number, T: number) => {
          const ran = run({ pour_rate: `${R / 10} m/hr`, temperature: `${T} degC` })
          expect(ran.si('p_max')).toBeLessThanOrEqual(ran.si('p_0') * (1 + 1e-12))
          return ran.si('p_max')
        }
        expect(at(tenths + 1, temperature)).toBeGreaterThanOrEqual(at(tenths, temperature) * (1 - 1e-12))
        expect(at(tenths, temperature + 1)).toBeLessThanOrEqual(at(tenths, temperature) * (1 + 1e-12))
      }),
      { numRuns: 20 },
    )
  })

  it(`${id}: fluid concrete presses as a liquid over its whole height`, () => {
    const ran = run({ placing: 'fluid' })
    expect(ran.si('p_max')).toBeCloseTo(24e3 * 2.6, 6)
    expect(ran.si('z_1')).toBeCloseTo(2.6, 9)
    expect(ran.si('F_h')).toBeCloseTo((24e3 * 2.6 ** 2) / 2, 6)
  })

  it(`${id}: the push is the area of the envelope`, () => {
    const ran = run({ height: '2.8 m', pour_rate: '0.5 m/hr', temperature: '25 degC' })
    const [p, z] = [ran.si('p_max'), ran.si('z_1')]
    expect(z).toBeLessThan(2.8)
    expect(ran.si('F_h')).toBeCloseTo((p * z) / 2 + p * (2.8 - z), 6)
  })

  it(`${id}: both sides of the check, and none where no capacity is given`, () => {
    const p = run().si('p_max')
    expect(run({ form_capacity: `${p} Pa` }).satisfied('forms')).toBe(true)
    expect(run({ form_capacity: `${p * 0.999} Pa` }).satisfied('forms')).toBe(false)
    const { form_capacity: _, ...without } = module.example
    expect(() => runModule(module, without).satisfied('forms')).toThrow(/no check/)
  })

  it.each([
    [{ height: '0 m' }],
    [{ pour_rate: '0 m/hr' }],
    [{ temperature: '41 degC' }],
    [{ unit_weight: '14 kN/m^3' }],
  ])(`${id}: refuses %j`, more => {
    expect(rules(run(more))).toContain('value-outside-range')
  })

  it(`${id}: the envelope is drawn as a triangle on a level part, alone where it is a liquid`, () => {
    const loads = (more: More) =>
      drawingOf(module, { ...module.example, ...more }).shapes.filter(
        (shape): shape is Extract<Shape, { kind: 'load' }> => shape.kind === 'load',
      )
    expect(loads({ pour_rate: '0.4 m/hr', temperature: '30 degC' })).toHaveLength(2)
    expect(loads({ placing: 'fluid' })).toHaveLength(1)
  })
})

describe('form-pressure-aci-347', () => {
  const us = (more: More) =>
    aci({
      unit_weight: '150 pcf',
      height: '20 ft',
      temperature: '70 degF',
      pour_rate: '5 ft/hr',
      mix: 'portland',
      ...more,
    })

  // ACI 347R, wall and column formulas (memory), by hand in psf.
  it.each([
    [{ height: '14 ft' }, 150 + 45000 / 70],
    [{ height: '14.1 ft' }, 150 + 43400 / 70 + 14000 / 70],
    [{ pour_rate: '10 ft/hr' }, 1170],
    [{ pour_rate: '15 ft/hr' }, 1370],
    [{ pour_rate: '15.1 ft/hr' }, 3000],
    [{ pour_rate: '15.1 ft/hr', member: 'column' }, 150 + (9000 * 15.1) / 70],
    [{ member: 'column' }, 150 + 45000 / 70],
    [{ member: 'column', height: '3 ft' }, 450],
    [{ height: '14 ft', mix: 'portland with retarder' }, 1.2 * (150 + 45000 / 70)],
    [{ height: '14 ft', mix: 'blend with retarder' }, 1.4 * (150 + 45000 / 70)],
    [{ height: '14 ft', mix: 'rich blend' }, 1.4 * (150 + 45000 / 70)],
    [{ height: '14 ft', unit_weight: '160 pcf' }, (160 / 145) * (150 + 45000 / 70)],
    [{ height: '14 ft', unit_weight: '120 pcf' }, 0.5 * (1 + 120 / 145) * (150 + 45000 / 70)],
    [{ height: '14 ft', unit_weight: '139.9 pcf' }, 0.5 * (1 + 139.9 / 145) * (150 + 45000 / 70)],
    [{ height: '14 ft', unit_weight: '140 pcf' }, 150 + 45000 / 70],
    [{ pour_rate: '1 ft/hr', height: '10 ft', unit_weight: '160 pcf' }, (600 * 160) / 145],
  ])('form-pressure-aci-347: %j gives %d psf', (more, printed) => {
    expect(psf(us(more).si('p_max'))).toBeCloseTo(printed, 2)
  })

  it('form-pressure-aci-347: the two wall formulas meet at 7 ft in an hour', () => {
    const at = (pour_rate: string) => us({ height: '14 ft', pour_rate }).si('p_max')
    expect(at('6.999999 ft/hr') / at('7 ft/hr')).toBeCloseTo(1, 6)
  })

  it('form-pressure-aci-347: below 40 degF it warns', () => {
    const kept = (temperature: string) => aci({ temperature }).limits[0]?.kept
    expect([kept('40 degF'), kept('39.9 degF')]).toEqual([true, false])
  })
})

describe('form-pressure-ciria-108', () => {
  // CIRIA 108 Eq. 1 (memory), by hand: D [C1 sqrt R + C2 K sqrt(H - C1 sqrt R)].
  it.each([
    [{}, 24 * (1 + 0.45 * (36 / 28) ** 2 * Math.sqrt(1.8))],
    [{ mix: 'portland' }, 24 * (1 + 0.3 * (36 / 28) ** 2 * Math.sqrt(1.8))],
    [{ member: 'column', mix: 'portland', temperature: '25 degC' }, 24 * (1.5 + 0.3 * (36 / 41) ** 2 * Math.sqrt(1.3))],
    [{ mix: 'rich blend', temperature: '25 degC' }, 24 * (1 + 0.6 * (36 / 41) ** 2 * Math.sqrt(1.8))],
    [{ pour_rate: '9 m/hr' }, 24 * 2.6],
    [{ mix: 'blend with retarder', temperature: '5 degC' }, 24 * 2.6],
  ])('form-pressure-ciria-108: %j gives %d kPa', (more, printed) => {
    expect(ciria(more).si('p_max') / 1000).toBeCloseTo(printed, 6)
  })

  it('form-pressure-ciria-108: a form lower than the pour is refused', () => {
    expect(rules(ciria({ form_height: '2.6 m' }))).toEqual([])
    expect(rules(ciria({ form_height: '2.59 m' }))).toEqual(['limit-exceeded'])
  })

  it('form-pressure-ciria-108: below 5 degC it warns', () => {
    const kept = (temperature: string) => ciria({ temperature }).limits[1]?.kept
    expect([kept('5 degC'), kept('4.9 degC')]).toEqual([true, false])
  })
})
