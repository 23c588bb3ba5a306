import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { earthPressure } from '../../../src/modules/ground/earth-pressure.ts'
import { soilStress } from '../../../src/modules/ground/soil-stress.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Layer = Readonly<Record<string, string>>

const soil = (thickness: string, more: Layer = {}): Layer => ({
  thickness,
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  ...more,
})
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(
    soilStress,
    { layers: [soil('6 m')], depth: '5 m', surcharge: '10 kPa', water_depth: '2 m', ...more },
    { units },
  )

describe('soil-stress', () => {
  it('soil-stress: the example evaluates without a warning', () => {
    expect(runModule(soilStress, soilStress.example).diagnostics).toEqual([])
  })

  it('soil-stress: weight above, weight below, load and water add up by hand', () => {
    // 10 + 2 x 18 + 3 x 20 = 106 kPa; 3 x 9.81 = 29.43 kPa
    expect(run().si('sigma_v')).toBeCloseTo(106_000, 6)
    expect(run().si('u')).toBeCloseTo(29_430, 6)
    expect(run().si('sigma_eff')).toBeCloseTo(76_570, 6)
  })

  it('soil-stress: below the depth neither layers nor water change anything', () => {
    const dry = run({ water_depth: '5 m' })
    expect(dry.si('u')).toBe(0)
    expect(dry.si('sigma_eff')).toBe(dry.si('sigma_v'))
    expect(run({ water_depth: '30 m' }).si('sigma_v')).toBeCloseTo(dry.si('sigma_v'), 6)
    const deep = run({ layers: [soil('6 m'), soil('4 m', { gamma: '15 kN/m^3' })] })
    expect(deep.si('sigma_v')).toBeCloseTo(run().si('sigma_v'), 6)
  })

  it('soil-stress: in submerged soil effective stress grows by the submerged weight', () => {
    const [at, below] = [run(), run({ depth: '5.5 m' })]
    expect((below.si('sigma_eff') - at.si('sigma_eff')) / 0.5).toBeCloseTo(20_000 - 9_810, 5)
  })

  it('soil-stress: water above the ground loads soil and water alike', () => {
    const [ground, flood] = [run({ water_depth: '0 m' }), run({ water_depth: '-1.5 m' })]
    expect(flood.si('sigma_v') - ground.si('sigma_v')).toBeCloseTo(1.5 * 9_810, 6)
    expect(flood.si('sigma_eff')).toBeCloseTo(ground.si('sigma_eff'), 6)
  })

  it('soil-stress: rising water never raises effective stress; a load raises it in full', () => {
    const depths = [6, 5, 3, 1, 0, -2].map(z => run({ water_depth: `${z} m` }).si('sigma_eff'))
    for (const [i, eff] of depths.entries()) expect(eff).toBeLessThanOrEqual((depths[i - 1] ?? eff) + 1e-6)
    expect(run({ surcharge: '25 kPa' }).si('sigma_eff') - run().si('sigma_eff')).toBeCloseTo(15_000, 6)
  })

  it('soil-stress: is the pressure on a wall whose coefficient is one', () => {
    const tenths = (min: number, max: number, unit: string) =>
      fc.integer({ min, max }).map(n => `${(n / 10).toFixed(1)} ${unit}`)
    const layer = fc.record({
      thickness: tenths(5, 30, 'm'),
      gamma: tenths(150, 190, 'kN/m^3'),
      gamma_sat: tenths(190, 230, 'kN/m^3'),
    })
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 4 }), tenths(-10, 90, 'm'), (drawn, water_depth) => {
        const base = drawn.reduce((sum, { thickness }) => sum + Number.parseFloat(thickness), 0).toFixed(1)
        const shared = { surcharge: '12 kPa', water_depth }
        const stress = run({ ...shared, layers: drawn, depth: `${base} m` })
        // (1 - sin 30) 4^(sin 30) = 1: overconsolidated soil whose coefficient at rest is one
        const wall = runModule(earthPressure, {
          ...shared,
          state: 'at rest',
          layers: drawn.map(each => ({ ...each, phi: '30 deg', OCR: '4' })),
          wall_base: `${base} m`,
        })
        expect(wall.si('K_h_1')).toBeCloseTo(1, 12)
        for (const i of drawn.keys())
          expect(wall.si(`p_lower_${i + 1}`) / stress.si(`sigma_lower_${i + 1}`)).toBeCloseTo(1, 9)
        expect(wall.si('p_base') - wall.si('u_base')).toBeCloseTo(stress.si('sigma_eff'), 4)
      }),
      { numRuns: 60 },
    )
  })

  it('soil-stress: a layer cut in two changes nothing', () => {
    for (const cut of ['1.3 m', '2 m', '3.1 m']) {
      const two = run({ layers: [soil(cut), soil('5 m')] })
      expect(two.si('sigma_v')).toBeCloseTo(run().si('sigma_v'), 6)
      expect(two.si('sigma_eff')).toBeCloseTo(run().si('sigma_eff'), 6)
    }
  })

  it('soil-stress: layers that do not reach the depth are refused, and taken where they just do', () => {
    expect(run({ depth: '6 m' }).errors).toEqual([])
    expect(run({ depth: '6.01 m' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('soil-stress: refuses soil that would float, no depth and no layers', () => {
    const light = (gamma_sat: string) => run({ layers: [soil('6 m', { gamma: '10 kN/m^3', gamma_sat })] }).errors
    expect(light('11 kN/m^3')).toEqual([])
    expect(light('10.9 kN/m^3').map(({ rule }) => rule)).toEqual(['value-outside-range'])
    expect(run({ depth: '0 m' }).errors.length).toBeGreaterThan(0)
    expect(run({ layers: [] }).errors.length).toBeGreaterThan(0)
  })

  it('soil-stress: feet and pounds give the same ground', () => {
    expect(run({}, 'US').si('sigma_eff')).toBeCloseTo(run().si('sigma_eff'), 6)
    expect(run({}, 'US').shown('sigma_eff')).toBe('1599 psf')
  })

  it('soil-stress: three profiles are drawn, the water only where it stands within them', () => {
    const inputs = { layers: [soil('6 m')], depth: '5 m', surcharge: '10 kPa', water_depth: '2 m' }
    const drawing = drawingOf(soilStress, inputs)
    expect(drawing.shapes.filter(({ kind }) => kind === 'polygon')).toHaveLength(3)
    expect(drawing.shapes.some(({ kind }) => kind === 'level')).toBe(true)
    expect(drawing.says).toContain('106.0 kPa, 29.43 kPa and 76.57 kPa')
    const dry = drawingOf(soilStress, { ...inputs, water_depth: '8 m' })
    expect(dry.shapes.some(({ kind }) => kind === 'level')).toBe(false)
  })

  it('soil-stress: refuses a layer that weighs less saturated than moist, and names it', () => {
    const says = (...weights: readonly string[]) =>
      run({ layers: weights.map(gamma_sat => soil('2 m', { gamma_sat })), depth: '3 m' }).errors.map(each => each.says)
    const told = (row: number) =>
      `Vertical stress in the ground: outside the limit that saturated ground weighs no less than the same ground moist, in row ${row} of \`layers\``
    expect(says('18 kN/m^3', '20 kN/m^3', '18 kN/m^3')).toEqual([])
    expect(says('18 kN/m^3', '17.99 kN/m^3', '18 kN/m^3')).toEqual([told(2)])
    expect(says('17.99 kN/m^3', '20 kN/m^3', '17.9 kN/m^3')).toEqual([told(1), told(3)])
  })
})
