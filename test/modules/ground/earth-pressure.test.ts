import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { earthPressure } from '../../../src/modules/ground/earth-pressure.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'
import { coulombActive } from './coulomb-active.ts'

type Layer = Readonly<Record<string, string>>

const sand = (more: Layer = {}): Layer => ({
  thickness: '6 m',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  phi: '30 deg',
  ...more,
})
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(
    earthPressure,
    { state: 'at rest', layers: [sand()], wall_base: '5 m', surcharge: '10 kPa', ...more },
    { units },
  )
const refusals = (more: Readonly<Record<string, CaseInput>>): readonly string[] =>
  run(more)
    .errors.filter(fault => fault.rule === 'limit-exceeded')
    .map(fault => fault.says)

describe('earth-pressure: coefficients', () => {
  it('example: evaluates without a warning', () => {
    expect(runModule(earthPressure, earthPressure.example).diagnostics).toEqual([])
  })

  it('Coulomb: the published table, to its last digit', () => {
    // Das, Principles of Foundation Engineering (memory), extended by the closed form; see the table's own note
    for (const [phi, row] of Object.entries(coulombActive)) {
      for (const [i, printed] of row.entries()) {
        const at = run({ state: 'active Coulomb', layers: [sand({ phi: `${phi} deg` })], delta: `${5 * i} deg` })
        expect(Math.abs(at.si('K_a_1') - printed)).toBeLessThanOrEqual(0.00005 * (1 + 1e-9))
      }
    }
  })

  it('Coulomb without wall friction on level ground: is Rankine', () => {
    for (const phi of ['20 deg', '33 deg', '45 deg']) {
      const layers = [sand({ phi })]
      const [wedge, rankine] = [run({ state: 'active Coulomb', layers }), run({ state: 'active', layers })]
      expect(wedge.si('K_h_1')).toBeCloseTo(rankine.si('K_h_1'), 12)
      expect(wedge.si('P')).toBeCloseTo(rankine.si('P'), 6)
    }
  })

  it('active times passive: is one', () => {
    expect(run({ state: 'active' }).si('K_h_1') * run({ state: 'passive' }).si('K_h_1')).toBeCloseTo(1, 12)
  })

  it('at rest: Jaky, and the overconsolidated form up to the passive coefficient', () => {
    expect(run().si('K_h_1')).toBeCloseTo(0.5, 12)
    const over = (OCR: string) => run({ layers: [sand({ OCR })] }).si('K_h_1')
    expect(over('1')).toBeCloseTo(0.5, 12)
    expect(over('4')).toBeCloseTo(1, 12)
    expect(over('30')).toBeCloseTo(0.5 * Math.sqrt(30), 12)
    expect(run({ layers: [sand({ phi: '45 deg', OCR: '30' })] }).si('K_h_1')).toBeCloseTo(
      (1 - Math.SQRT1_2) * 30 ** Math.SQRT1_2,
      9,
    )
    expect(run({ layers: [sand({ phi: '10 deg', OCR: '30' })] }).si('K_h_1')).toBeCloseTo(
      Math.tan((50 * Math.PI) / 180) ** 2,
      9,
    )
  })

  it('sloping ground: presses harder the steeper it is, and a flat slope changes nothing', () => {
    for (const state of ['at rest', 'active', 'active Coulomb']) {
      const at = (alpha: string) => run({ state, alpha, surcharge: '0 kPa' }).si('P')
      expect(at('0 deg')).toBeCloseTo(run({ state, surcharge: '0 kPa' }).si('P'), 6)
      expect(at('10 deg')).toBeGreaterThan(at('0 deg'))
      expect(at('20 deg')).toBeGreaterThan(at('10 deg'))
    }
  })
})

describe('earth-pressure: diagram and resultant', () => {
  it('dry, at rest: trapezium of surcharge and weight, worked by hand', () => {
    const at = run()
    expect(at.si('p_top')).toBeCloseTo(5000, 6)
    expect(at.si('p_base')).toBeCloseTo(0.5 * (10 + 18 * 5) * 1000, 6)
    expect(at.si('P')).toBeCloseTo(((5 + 50) / 2) * 5 * 1000, 5)
    expect(at.si('y_P')).toBeCloseTo((5 / 3) * ((2 * 5 + 50) / (5 + 50)), 9)
  })

  it('water: once and in full, on top of the earth pressure of the submerged soil', () => {
    const at = run({ water_depth: '2 m' })
    expect(at.si('p_base')).toBeCloseTo((0.5 * (10 + 18 * 2 + (20 - 9.81) * 3) + 9.81 * 3) * 1000, 5)
    expect(at.si('P_water')).toBeCloseTo((9.81 * 9 * 1000) / 2, 5)
    expect(at.si('p_water_1')).toBeCloseTo(0.5 * (10 + 36) * 1000, 6)
    expect(at.si('d_water')).toBeCloseTo(2, 12)
  })

  it('no groundwater given: the wall is dry, and that is warned of', () => {
    const at = run()
    expect(at.diagnostics.map(fault => [fault.severity, fault.rule])).toEqual([['warning', 'limit-exceeded']])
    expect(at.diagnostics[0]?.says).toContain('the wall is not taken as dry')
    expect(run({ water_depth: '5 m' }).diagnostics).toEqual([])
  })

  it('water stated to be below the wall: no water, no warning, and refused where the depth given contradicts it', () => {
    const groundwater = 'below the wall'
    const [stated, silent] = [run({ groundwater }), run()]
    expect(stated.diagnostics).toEqual([])
    expect(stated.si('P')).toBe(silent.si('P'))
    expect(run({ groundwater, water_depth: '5 m' }).si('P')).toBe(silent.si('P'))
    expect(run({ groundwater, water_depth: '5 m' }).has('P_water')).toBe(false)
    expect(refusals({ groundwater, water_depth: '4.99 m' }).length).toBe(1)
    expect(refusals({ groundwater, water_depth: '5 m' })).toEqual([])
  })

  it('water below the base: is the dry wall', () => {
    const [wet, dry] = [run({ water_depth: '5 m' }), run()]
    expect(wet.si('P')).toBeCloseTo(dry.si('P'), 6)
    expect(wet.si('P_water')).toBe(0)
  })

  it('water above ground: adds its depth to the water pressure and nothing to the soil', () => {
    const [flood, full] = [run({ water_depth: '-1 m' }), run({ water_depth: '0 m' })]
    expect(flood.si('P_soil')).toBeCloseTo(full.si('P_soil'), 6)
    expect(flood.si('p_base') - full.si('p_base')).toBeCloseTo(9810, 6)
  })

  it('a strip of the wall: has the pressure that the whole wall has there', () => {
    const [whole, strip] = [run({ water_depth: '2 m' }), run({ water_depth: '2 m', wall_top: '1.4 m' })]
    expect(strip.si('p_base')).toBeCloseTo(whole.si('p_base'), 6)
    expect(strip.si('p_top')).toBeCloseTo(0.5 * (10 + 18 * 1.4) * 1000, 6)
    const under = run({ water_depth: '0.5 m', wall_top: '1.4 m' })
    expect(under.si('p_top')).toBeCloseTo((0.5 * (10 + 18 * 0.5 + (20 - 9.81) * 0.9) + 9.81 * 0.9) * 1000, 5)
    expect(under.si('d_water')).toBe(0)
  })

  it('cohesion: Rankine crack to 2c/(gamma sqrt(K_a)), force of the triangle below it', () => {
    const at = run({ state: 'active', layers: [sand({ c: '10 kPa' })], surcharge: '0 kPa' })
    const root = Math.sqrt(1 / 3)
    const crack = (2 * 10) / (18 * root)
    expect(at.si('z_kink_above_1')).toBeCloseTo(crack, 9)
    expect(at.si('p_top')).toBe(0)
    expect(at.si('P') / 1000).toBeCloseTo((((1 / 3) * 18 * 5 - 2 * 10 * root) * (5 - crack)) / 2, 9)
    expect(at.si('y_P')).toBeCloseTo((5 - crack) / 3, 9)
  })

  it('cohesion that holds the whole wall: no force and no failure', () => {
    const at = run({ state: 'active', layers: [sand({ c: '200 kPa' })], surcharge: '0 kPa' })
    expect(at.si('P')).toBe(0)
    expect(at.has('y_P')).toBe(false)
    expect(at.errors).toEqual([])
  })

  it('passive cohesion: adds 2c sqrt(K_p)', () => {
    const [with_, without] = [run({ state: 'passive', layers: [sand({ c: '10 kPa' })] }), run({ state: 'passive' })]
    expect(with_.si('p_top') - without.si('p_top')).toBeCloseTo(2 * 10 * Math.sqrt(3) * 1000, 6)
  })

  it('compaction: no pressure below it, and it meets K_a gamma z at the depth h_c', () => {
    const at = run({ state: 'active', surcharge: '0 kPa', roller: '50 kN/m' })
    const least = at.si('p_least_1')
    expect(at.si('p_top')).toBeCloseTo(least, 6)
    // Ingold 1979: h_c = sqrt(2 p / (pi gamma)) / K_a (memory)
    expect(at.si('z_kink_above_1')).toBeCloseTo(Math.sqrt((2 * 50) / (Math.PI * 18)) / (1 / 3), 9)
    expect(at.si('z_kink_above_1')).toBeCloseTo(least / (18000 / 3), 9)
    expect(at.si('P')).toBeGreaterThan(run({ state: 'active', surcharge: '0 kPa' }).si('P'))
  })

  it('a heavier roller: moves the kink down from the top of the layer, and every point of the diagram stays known', () => {
    const points = ['upper', 'kink_above', 'water', 'kink_below', 'lower']
    const rolled = (roller: string) => run({ wall_top: '1.4 m', water_depth: '2.8 m', roller })
    const kinks = ['1 kN/m', '10 kN/m', '40 kN/m', '80 kN/m', '200 kN/m'].map(roller => {
      const at = rolled(roller)
      expect(at.errors).toEqual([])
      const depths = points.map(point => at.si(`z_${point}_1`))
      expect([...depths].sort((a, b) => a - b)).toEqual(depths)
      for (const point of points) expect(at.si(`p_${point}_1`)).toBeGreaterThanOrEqual(at.si('p_least_1') * (1 - 1e-12))
      return [at.si('z_kink_above_1'), at.si('z_kink_below_1')] as const
    })
    expect(kinks[0]).toEqual([1.4, 2.8])
    expect(kinks.at(-1)?.[1]).toBeGreaterThan(2.8)
    expect(kinks.map(([above]) => above)).toEqual([...kinks.map(([above]) => above)].sort((a, b) => a - b))
    const light = rolled('1 kN/m')
    expect([light.si('p_kink_above_1'), light.si('p_kink_below_1')]).toEqual([
      light.si('p_upper_1'),
      light.si('p_water_1'),
    ])
  })

  it('the points of the diagram: straight between them, the force on the wall is theirs', () => {
    const points = ['upper', 'kink_above', 'water', 'kink_below', 'lower']
    for (const roller of ['1 kN/m', '30 kN/m', '120 kN/m']) {
      const layers = [sand({ thickness: '2 m', phi: '34 deg' }), sand()]
      const at = run({ layers, wall_top: '1.2 m', water_depth: '2.6 m', roller })
      const all = [1, 2].flatMap(row => points.map(p => [at.si(`z_${p}_${row}`), at.si(`p_${p}_${row}`)] as const))
      const area = all
        .slice(1)
        .reduce((sum, [z, p], i) => sum + (((all[i]?.[1] ?? 0) + p) / 2) * (z - (all[i]?.[0] ?? 0)), 0)
      expect(area / at.si('P')).toBeCloseTo(1, 9)
    }
  })

  it('a layer cut in two: changes nothing', () => {
    const cut = [sand({ thickness: '2.3 m' }), sand({ thickness: '4 m' })]
    for (const state of ['at rest', 'active', 'active Coulomb', 'passive']) {
      for (const more of [{}, { water_depth: '1.7 m' }, { water_depth: '2.3 m' }, { water_depth: '4 m' }]) {
        const [one, two] = [run({ state, ...more }), run({ state, layers: cut, ...more })]
        expect(two.si('P') / one.si('P')).toBeCloseTo(1, 9)
        expect(two.si('p_base') / one.si('p_base')).toBeCloseTo(1, 9)
        expect(two.si('y_P') / one.si('y_P')).toBeCloseTo(1, 9)
      }
    }
  })

  it('at a boundary: pressure jumps with the coefficient, stress does not', () => {
    const at = run({ layers: [sand({ thickness: '2 m' }), sand({ phi: '40 deg' })] })
    expect(at.si('sv_upper_2')).toBeCloseTo(at.si('sv_lower_1'), 9)
    expect(at.si('p_upper_2') / at.si('p_lower_1')).toBeCloseTo(at.si('K_h_2') / at.si('K_h_1'), 12)
  })

  it('every kind of working: agrees with the slices, in force and in moment', () => {
    const number = (min: number, max: number) => fc.integer({ min, max })
    const layer = fc.record({
      thickness: number(5, 30).map(n => `${n / 10} m`),
      gamma: number(140, 190).map(n => `${n / 10} kN/m^3`),
      gamma_sat: number(190, 230).map(n => `${n / 10} kN/m^3`),
      phi: number(15, 45).map(n => `${n} deg`),
      c: number(0, 20).map(n => `${n} kPa`),
    })
    const states = fc.constantFrom('at rest', 'active', 'active Coulomb', 'passive')
    const last = fc.tuple(fc.array(layer, { minLength: 0, maxLength: 2 }), layer)
    fc.assert(
      fc.property(
        states,
        last,
        fc.option(number(-10, 70)),
        fc.boolean(),
        number(0, 4),
        (state, of, water, rolled, top) => {
          const [above, below] = of
          const layers = [...above, { ...below, thickness: '9 m' }]
          const over = above.reduce((sum, { thickness }) => sum + Number.parseFloat(thickness), 0)
          const at = run({
            state,
            layers,
            wall_top: `${top / 10} m`,
            wall_base: `${over + 2} m`,
            ...(water === null ? {} : { water_depth: `${water / 10} m` }),
            ...(rolled && state !== 'passive' ? { roller: '40 kN/m' } : {}),
          })
          expect(at.errors).toEqual([])
          expect(at.agrees).toHaveLength(2)
          for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(one.band)
        },
      ),
      { numRuns: 120 },
    )
  })

  it('more surcharge, higher water, looser soil: never press less at rest', () => {
    const P = (more: Readonly<Record<string, CaseInput>>) => run(more).si('P')
    expect(P({ surcharge: '20 kPa' })).toBeGreaterThan(P({}))
    expect(P({ layers: [sand({ phi: '28 deg' })] })).toBeGreaterThan(P({}))
    const depths = [6, 5, 4, 3, 2, 1, 0, -1].map(depth => P({ water_depth: `${depth} m` }))
    for (const [i, force] of depths.entries()) expect(force).toBeGreaterThanOrEqual((depths[i - 1] ?? 0) - 1e-6)
  })

  it('feet and pounds: the same wall has the same force', () => {
    const [si, us] = [run({ water_depth: '2 m' }), run({ water_depth: '2 m' }, 'US')]
    expect(us.si('P')).toBeCloseTo(si.si('P'), 9)
    expect(us.shown('p_base')).toMatch(/ psf$/)
  })
})

describe('earth-pressure: refusals', () => {
  it('layers that do not reach the base: refused, and taken where they just do', () => {
    expect(refusals({ wall_base: '6.01 m' })).toHaveLength(1)
    expect(refusals({ wall_base: '6 m' })).toEqual([])
  })

  it("a first layer wholly above the wall's top: refused", () => {
    const layers = [sand({ thickness: '1 m' }), sand()]
    expect(refusals({ layers, wall_top: '1.2 m' })).toHaveLength(1)
    expect(refusals({ layers, wall_top: '0.99 m' })).toEqual([])
  })

  it('a layer wholly below the base: refused', () => {
    const layers = [sand({ thickness: '5 m' }), sand()]
    expect(refusals({ layers })).toHaveLength(1)
    expect(refusals({ layers, wall_base: '5.01 m' })).toEqual([])
  })

  it('base not below the top: refused', () => {
    expect(refusals({ wall_top: '5 m' }).length).toBeGreaterThan(0)
    expect(run({ wall_top: '5 m' }).has('P')).toBe(false)
  })

  it('sloping ground over cohesive, loaded or wet soil: refused', () => {
    const slope = { state: 'active', alpha: '10 deg', surcharge: '0 kPa' }
    expect(refusals(slope)).toEqual([])
    expect(refusals({ ...slope, surcharge: '1 kPa' })).toHaveLength(1)
    expect(refusals({ ...slope, layers: [sand({ c: '1 kPa' })] })).toHaveLength(1)
    expect(refusals({ ...slope, water_depth: '4.9 m' })).toHaveLength(1)
    expect(refusals({ ...slope, water_depth: '5 m' })).toEqual([])
  })

  it('ground or wall friction steeper than the soil: refused', () => {
    for (const state of ['at rest', 'active', 'active Coulomb', 'passive']) {
      expect(refusals({ state, alpha: '30 deg', surcharge: '0 kPa' })).toEqual([])
      expect(refusals({ state, alpha: '30.1 deg', surcharge: '0 kPa' })).toHaveLength(1)
    }
    expect(refusals({ state: 'active Coulomb', delta: '30 deg' })).toEqual([])
    expect(refusals({ state: 'active Coulomb', delta: '30.1 deg' })).toHaveLength(1)
  })

  it('wall friction outside the Coulomb wedge, compaction as resistance: refused', () => {
    for (const state of ['at rest', 'active', 'passive']) expect(refusals({ state, delta: '10 deg' })).toHaveLength(1)
    expect(refusals({ state: 'passive', roller: '20 kN/m' })).toHaveLength(1)
    expect(refusals({ state: 'at rest', roller: '20 kN/m' })).toEqual([])
  })

  it('no friction, too much of it, no layers, no thickness: refused', () => {
    expect(run({ layers: [sand({ phi: '0 deg' })] }).errors.length).toBeGreaterThan(0)
    expect(run({ layers: [sand({ phi: '50.1 deg' })] }).errors.length).toBeGreaterThan(0)
    expect(run({ layers: [] }).errors.length).toBeGreaterThan(0)
    expect(run({ layers: [sand({ thickness: '0 m' })] }).errors.length).toBeGreaterThan(0)
  })

  it('earth-pressure: refuses a layer that weighs less saturated than moist, in whatever state and water', () => {
    const at = (gamma_sat: string) => [sand({ thickness: '3 m' }), sand({ thickness: '3 m', gamma_sat })]
    for (const state of ['at rest', 'active', 'active Coulomb', 'passive'])
      for (const water of [{ water_depth: '2 m' }, { groundwater: 'below the wall' }, {}]) {
        expect(refusals({ state, ...water, layers: at('18 kN/m^3') })).toEqual([])
        expect(refusals({ state, ...water, layers: at('17.99 kN/m^3') })).toEqual([
          'Earth and water pressure on a wall: outside the limit that saturated ground weighs no less than the same ground moist, in row 2 of `layers`',
        ])
      }
  })
})
