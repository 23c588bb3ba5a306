import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exponentialIntegral } from '../../../src/modules/numerics/exponential-integral.ts'
import { gammaSlab } from '../../../src/modules/shielding/gamma-slab.ts'
import { halvingLayers } from '../../../src/modules/shielding/halving-layers.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const layer = (material: string, thickness: string, more: Row = {}): Row => ({ material, thickness, ...more })
const run = (layers: readonly Row[], more: Row = {}) => runModule(gammaSlab, { layers, energy: '1 MeV', ...more })

// A mean free path of concrete is 1 / (0.06495 cm^2/g * 2.3 g/cm^3) = 66.94 mm at 1 MeV, by hand.
const path = 10 / (0.06495 * 2.3)
const paths = (count: number, more: Row = {}) => run([layer('concrete', `${count * path} mm`)], more)
const rules = (ran: ReturnType<typeof run>) => ran.diagnostics.map(({ rule, severity }) => `${severity} ${rule}`)

describe('gamma-slab', () => {
  it.each(['SI', 'US'] as const)('gamma-slab: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(gammaSlab, gammaSlab.example, { units }).diagnostics).toEqual([])
  })

  it.each(['plane', 'point', 'beam'])('gamma-slab: the order of layers does not matter under a %s', source => {
    const stack = [layer('steel', '50 mm'), layer('water', '400 mm'), layer('concrete', '200 mm')]
    expect(run(stack, { source }).si('P')).toBeCloseTo(run([...stack].reverse(), { source }).si('P'), 6)
  })

  it('gamma-slab: double density in half the thickness is the same slab', () => {
    const thin = run([layer('concrete', '200 mm', { density: '4600 kg/m^3' })])
    expect(thin.si('P')).toBeCloseTo(run([layer('concrete', '400 mm')]).si('P'), 6)
  })

  it('gamma-slab: a disc grows into the plane, and shrinks into a point of its own strength', () => {
    const plane = paths(4).si('f_slab')
    expect(paths(4, { radius: '1e5 m' }).si('f_slab') / plane).toBeCloseTo(1, 9)
    const small = paths(4, { radius: '0.5 mm', build_up: 'none' })
    const point = (0.0005 / small.si('d')) ** 2 * Math.exp(-4) * 0.25
    expect(small.si('f_slab') / point).toBeCloseTo(1, 4)
  })

  it('gamma-slab: a wider disc never lets less through, air beside it never more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (radius, wider) => {
        const share = (R: number, gap = 0) => paths(3, { radius: `${R} m`, gap: `${gap} m` }).si('T')
        expect(share(radius + wider)).toBeGreaterThanOrEqual(share(radius))
        expect(share(radius, wider)).toBeLessThanOrEqual(share(radius))
      }),
      { numRuns: 10 },
    )
  })

  it('gamma-slab: build-up lets more through than a narrow beam, the more the deeper', () => {
    const more = (count: number) => paths(count).si('f_slab') / paths(count, { build_up: 'none' }).si('f_slab')
    expect(more(2)).toBeGreaterThan(1.5)
    expect(more(8)).toBeGreaterThan(more(2))
  })

  it('gamma-slab: the narrow beam falls by the exponential integral from depth to depth', () => {
    const f = (count: number) => paths(count, { build_up: 'none' }).si('f_slab')
    expect((f(3.001) - f(2.999)) / 0.002 / (-Math.exp(-3) / 3 / 2)).toBeCloseTo(1, 5)
    expect(f(3) / (exponentialIntegral(3) / 2)).toBeCloseTo(1, 12)
  })

  // memory: build-up of water, moments method (Eisenhauer and Simmons); of iron, Goldstein and Wilkins 1954. The fits miss the
  // computed factors by up to 6.9 % (water) and 2.4 % (iron), and those agree with memory within 3 % and 2 %.
  it.each([
    ['water', 0.07072, 1000, 0.099, [1, 2, 4, 7, 10], [2.08, 3.62, 7.68, 15.8, 26.1]],
    ['iron', 0.05995, 7850, 0.044, [1, 2, 7, 10], [1.87, 2.89, 10.2, 16.2]],
  ] as const)('gamma-slab: build-up of %s stands near the older tables', (medium, mu, density, band, depths, older) => {
    for (const [index, depth] of depths.entries()) {
      const material = medium === 'iron' ? 'steel' : medium
      const ran = run([layer(material, `${depth / ((mu * density) / 10)} m`)], { build_up: medium, source: 'beam' })
      expect(ran.si('b')).toBeCloseTo(depth, 9)
      expect(Math.abs(ran.si('B') / (older[index] ?? 0) - 1)).toBeLessThan(band)
    }
  })

  it.each([1, 4, 9])('gamma-slab: rings added up agree with the closed form at %d mean free paths', count => {
    for (const more of [{}, { radius: '0.3 m' }, { build_up: 'none' }]) {
      const [agreed] = paths(count, more).agrees
      expect(agreed?.difference).toBeLessThan(1e-6)
    }
  })

  it('gamma-slab: a point or a beam has no second method, and that is said', () => {
    for (const source of ['point', 'beam']) {
      const ran = paths(4, { source })
      expect(ran.agrees).toEqual([])
      expect(ran.errors).toEqual([])
      expect(ran.si('T')).toBeCloseTo((1 + 4 * 1.0278 * Math.exp(4 * 0.0661)) * Math.exp(-4), 9)
    }
  })

  it('gamma-slab: a beam is the second method of halving-layers, whatever the stack', () => {
    const metal = fc.constantFrom('packed earth', 'concrete', 'steel', 'lead', 'water')
    fc.assert(
      fc.property(metal, fc.integer({ min: 100, max: 500 }), (material, t) => {
        const layers = [layer(material, `${t / (material === 'lead' ? 3 : 1)} mm`)]
        const halving = runModule(halvingLayers, { layers, energy: '1 MeV', required_factor: '10' })
        fc.pre(halving.has('T_beam'))
        expect(run(layers, { source: 'beam' }).si('T') / halving.si('T_beam')).toBeCloseTo(1, 9)
      }),
      { numRuns: 15 },
    )
  })

  it('gamma-slab: from five to ten halvings the halving rule for fallout stays under the plane at 1.25 MeV, by less than six halvings', () => {
    fc.assert(
      fc.property(fc.integer({ min: 305, max: 605 }), t => {
        const layers = [layer('concrete', `${t} mm`)]
        const halvings = runModule(halvingLayers, { layers, required_factor: '10' }).si('n_all')
        const more = Math.log2(run(layers, { energy: '1.25 MeV' }).si('P')) - halvings
        expect(more).toBeGreaterThan(0)
        expect(more).toBeLessThan(6)
      }),
      { numRuns: 12 },
    )
  })

  it('gamma-slab: the air kerma rate of a plane is its fluence by energy and absorption', () => {
    const ran = paths(2, { strength: '1e6 Bq/cm^2' })
    // 1.608649e-8 Gy/h for each photon per cm^2 and second at 1 MeV (computed)
    expect((ran.si('K_air') * 3600) / (ran.si('f_slab') * 1e6 * 1.608649e-8)).toBeCloseTo(1, 5)
    expect(paths(2, { strength: '1e6 Bq/cm^2', source: 'beam' }).si('K_air')).toBeGreaterThan(0)
  })

  it.each([
    [0.999, ['warning limit-exceeded']],
    [1.001, []],
    [19.999, []],
  ])('gamma-slab: at %d mean free paths it says %j', (count, said) => {
    expect(rules(paths(count))).toEqual(said)
    expect(paths(count).has('P')).toBe(true)
  })

  it('gamma-slab: past 20 mean free paths it is refused', () => {
    expect(paths(20.001).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(paths(20.001).has('P')).toBe(false)
  })

  it('gamma-slab: nothing on a plane without end is refused, in a beam it is all let through', () => {
    expect(run([layer('concrete', '0 mm')]).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(run([layer('concrete', '0 mm')], { source: 'beam' }).si('T')).toBe(1)
  })

  it.each([
    [{ radius: '5 m', source: 'beam' }, 1],
    [{ radius: '5 m', source: 'point' }, 1],
    [{ radius: '5 m', source: 'plane' }, 0],
    [{ strength: '5 Bq/cm^2', source: 'point' }, 1],
    [{ strength: '5 Bq/cm^2', source: 'beam' }, 0],
  ] as const)('gamma-slab: %j is refused %d times', (more, count) => {
    expect(paths(4, more).errors.map(({ rule }) => rule)).toEqual(Array(count).fill('limit-exceeded'))
  })

  it('gamma-slab: a narrow beam is warned of', () => {
    expect(rules(paths(4, { build_up: 'none' }))).toEqual(['warning limit-exceeded'])
  })

  it.each([
    ['radius', '0 m'],
    ['gap', '-0.01 m'],
    ['gap', '100.1 m'],
    ['required_factor', '0.99'],
    ['strength', '-1 Bq/cm^2'],
  ])('gamma-slab: refuses %s of %s', (name, value) => {
    expect(paths(4, { [name]: value }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })

  it.each(['99 kg/m^3', '23001 kg/m^3'])('gamma-slab: refuses a density of %s', density => {
    expect(run([layer('concrete', '1 mm', { density })]).errors[0]?.rule).toBe('value-outside-range')
  })

  it('gamma-slab: a factor just met is met, just missed is not', () => {
    const P = paths(4).si('P')
    expect(paths(4, { required_factor: `${P * 0.9999}` }).satisfied('protection')).toBe(true)
    expect(paths(4, { required_factor: `${P * 1.0001}` }).satisfied('protection')).toBe(false)
  })

  it.each(['plane', 'point', 'beam'])('gamma-slab: the sketch of a %s has its layers and finite places', source => {
    const drawing = drawingOf(gammaSlab, {
      layers: [layer('packed earth', '0.5 m'), layer('steel', '0 mm'), layer('concrete', '0.3 m')],
      energy: '1 MeV',
      source,
    })
    expect(drawing.shapes.filter(({ kind }) => kind === 'polygon')).toHaveLength(2)
    expect(drawing.shapes.filter(({ kind }) => kind === 'arrow')).toHaveLength(source === 'plane' ? 3 : 1)
    for (const shape of drawing.shapes)
      for (const [x, y] of pointsOf(shape)) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
    expect(drawing.says).toContain('3 layers')
  })
})
