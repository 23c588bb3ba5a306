import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roofLoad } from '../../../src/modules/concrete/roof-load.ts'
import { runModule } from '../run-module.ts'

const rules = ['IS 456', 'ACI 318', 'EN 1990 6.10', 'EN 1990 6.10a and 6.10b'] as const
const kilo = 1000

const run = (
  combination: string,
  more: { g?: number; q?: number; psi_0?: string; xi?: string; psi_2?: string } = {},
) => {
  const { g = 20, q = 5, ...factors } = more
  return runModule(roofLoad, {
    layers: [{ thickness: '1 m', unit_weight: `${g} kN/m^3` }],
    live_load: `${q} kN/m^2`,
    combination,
    ...factors,
  })
}

describe('roof load', () => {
  it.each(['SI', 'US'] as const)('roof-load: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(roofLoad, roofLoad.example, { units }).diagnostics).toEqual([])
  })

  it('roof-load: layers, other permanent load and both live loads add up', () => {
    const result = runModule(roofLoad, {
      layers: [
        { layer: 'fill', thickness: '1.5 m', unit_weight: '20 kN/m^3' },
        { layer: 'slab', thickness: '350 mm', unit_weight: '25 kN/m^3' },
      ],
      other_permanent: '0.5 kN/m^2',
      live_load: '5 kN/m^2',
      other_live: '2.5 kN/m^2',
      combination: 'IS 456',
    })
    expect(result.errors).toEqual([])
    expect(result.si('g_layer_1')).toBeCloseTo(30 * kilo, 6)
    expect(result.si('g_layer_2')).toBeCloseTo(8.75 * kilo, 6)
    expect(result.si('g_k')).toBeCloseTo(39.25 * kilo, 6)
    expect(result.si('q_k')).toBeCloseTo(7.5 * kilo, 6)
    expect(result.si('w_k')).toBeCloseTo(46.75 * kilo, 6)
    expect(result.si('w_u')).toBeCloseTo(1.5 * 46.75 * kilo, 6)
  })

  it('roof-load: a layer cut in two weighs the same', () => {
    const layers = (thicknesses: readonly string[]) =>
      runModule(roofLoad, {
        layers: thicknesses.map(thickness => ({ thickness, unit_weight: '19 kN/m^3' })),
        live_load: '5 kN/m^2',
        combination: 'IS 456',
      }).si('w_u')
    expect(layers(['0.7 m', '0.5 m'])).toBeCloseTo(layers(['1.2 m']), 6)
  })

  it.each(rules)('roof-load: the parts of the factored load by %s add up to it', rule => {
    const result = run(rule)
    expect(result.si('g_u') + result.si('q_u')).toBeCloseTo(result.si('w_u'), 6)
  })

  it.each(rules)('roof-load: twice the loads by %s give twice the factored load', rule => {
    expect(run(rule, { g: 40, q: 10 }).si('w_u')).toBeCloseTo(2 * run(rule).si('w_u'), 6)
  })

  it('roof-load: 1.4 D governs by ACI 318 exactly where L is under D / 8', () => {
    expect(run('ACI 318', { g: 40, q: 4.99 }).si('w_u')).toBeCloseTo(1.4 * 40 * kilo, 6)
    expect(run('ACI 318', { g: 40, q: 4.99 }).si('q_u')).toBe(0)
    expect(run('ACI 318', { g: 40, q: 5.01 }).si('w_u')).toBeCloseTo((1.2 * 40 + 1.6 * 5.01) * kilo, 6)
    expect(run('ACI 318', { g: 40, q: 5.01 }).si('q_u')).toBeCloseTo(1.6 * 5.01 * kilo, 6)
  })

  it('roof-load: expression 6.10 is never below 6.10a or 6.10b', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 50 }),
        fc.integer({ min: 0, max: 10 }),
        (g, q, tenths) => {
          const pair = run('EN 1990 6.10a and 6.10b', { g, q, psi_0: `${tenths / 10}` })
          expect(pair.si('w_u')).toBeLessThanOrEqual(run('EN 1990 6.10', { g, q }).si('w_u') + 1e-6)
          expect(pair.si('g_u') + pair.si('q_u')).toBeCloseTo(pair.si('w_u'), 6)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('roof-load: 6.10b governs where the live load is heavy', () => {
    const result = run('EN 1990 6.10a and 6.10b', { g: 5, q: 20, psi_0: '0.7' })
    expect(result.si('w_u')).toBeCloseTo((0.85 * 1.35 * 5 + 1.5 * 20) * kilo, 6)
    expect(result.si('g_u')).toBeCloseTo(0.85 * 1.35 * 5 * kilo, 6)
  })

  it('roof-load: the UK value of xi is taken where given', () => {
    expect(run('EN 1990 6.10a and 6.10b', { psi_0: '0.7', xi: '0.925' }).si('w_b')).toBeCloseTo(
      (0.925 * 1.35 * 20 + 7.5) * kilo,
      6,
    )
  })

  it('roof-load: without psi_0 the safe bound is taken, and 6.10a is 6.10', () => {
    expect(run('EN 1990 6.10a and 6.10b').si('w_u')).toBeCloseTo(run('EN 1990 6.10').si('w_u'), 6)
  })

  it('roof-load: the load that stays lies between permanent and characteristic load', () => {
    expect(run('IS 456', { psi_2: '0.3' }).si('w_qp')).toBeCloseTo(21.5 * kilo, 6)
    expect(run('IS 456', { psi_2: '0' }).si('w_qp')).toBeCloseTo(20 * kilo, 6)
    expect(run('IS 456').si('w_qp')).toBeCloseTo(25 * kilo, 6)
  })

  it('roof-load: psf and pcf give the same load', () => {
    const result = runModule(
      roofLoad,
      { layers: [{ thickness: '2 ft', unit_weight: '120 pcf' }], live_load: '100 psf', combination: 'ACI 318' },
      { units: 'US' },
    )
    expect(result.si('g_k')).toBeCloseTo(240 * 47.88025898, 4)
    expect(result.shown('w_u')).toBe('448.0 psf')
  })

  it.each([
    ['live_load', '-0.1 kN/m^2'],
    ['other_permanent', '-0.1 kN/m^2'],
    ['psi_0', '1.01'],
    ['psi_0', '-0.01'],
    ['xi', '0.79'],
    ['psi_2', '1.01'],
  ])('roof-load: refuses %s of %s', (name, value) => {
    const { errors } = runModule(roofLoad, { ...roofLoad.example, [name]: value })
    expect(errors.map(error => error.rule)).toEqual(['value-outside-range'])
  })

  it.each([
    [{ thickness: '0 m', unit_weight: '20 kN/m^3' }],
    [{ thickness: '1 m', unit_weight: '0 kN/m^3' }],
    [{ thickness: '1 m', unit_weight: '121 kN/m^3' }],
    [{ thickness: '31 m', unit_weight: '20 kN/m^3' }],
  ])('roof-load: refuses a layer of %o', layer => {
    const { errors } = runModule(roofLoad, { ...roofLoad.example, layers: [layer] })
    expect(errors.map(error => error.rule)).toEqual(['value-outside-range'])
  })

  it('roof-load: a rule that is none of the four is refused', () => {
    expect(run('BS 8110').errors.map(error => error.rule)).toEqual(['choice-unknown'])
  })

  it('roof-load: says where the live load is large for a buried roof', () => {
    expect(run('IS 456', { g: 20, q: 10 }).limits[0]?.kept).toBe(true)
    expect(run('IS 456', { g: 20, q: 10.1 }).limits[0]?.kept).toBe(false)
  })
})
