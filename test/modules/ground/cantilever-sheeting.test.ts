import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cantileverSheeting } from '../../../src/modules/ground/cantilever-sheeting.ts'
import { quarticEmbedment } from '../../../src/modules/ground/quartic-embedment.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, CaseInput>>

const shared: Inputs = {
  water: 'level on both sides',
  depth: '4 m',
  water_depth: '2 m',
  surcharge: '5 kPa',
  gamma: '17 kN/m^3',
  gamma_sat: '20 kN/m^3',
  phi: '32 deg',
}
const grounds: Readonly<Record<string, Inputs>> = {
  sand: { below: 'sand' },
  clay: { below: 'clay', c_below: '50 kPa' },
}
const run = (ground: 'sand' | 'clay', more: Inputs = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(cantileverSheeting, { ...shared, ...grounds[ground], ...more }, { units })
const refusals = (ground: 'sand' | 'clay', more: Inputs): readonly string[] =>
  run(ground, more).errors.map(({ rule }) => rule)
const dry: Inputs = { water: 'below the toe', water_depth: '30 m' }

describe('cantilever-sheeting', () => {
  it('cantilever-sheeting: the example evaluates without a warning', () => {
    expect(runModule(cantileverSheeting, cantileverSheeting.example).diagnostics).toEqual([])
  })

  it('cantilever-sheeting: force and moment about the toe close on the net pressure of the working', () => {
    const at = run('sand')
    const [n, L_4, L_5, P, y_P] = ['n', 'L_4', 'L_5', 'P', 'y_P'].map(name => at.si(name)) as [
      number,
      number,
      number,
      number,
      number,
    ]
    // the triangle before the wall, and over the turned toe the triangle that brings it to the pressure behind
    const [whole, back] = [(n * L_4 ** 2) / 2, ((at.si('sigma_3') + at.si('sigma_4')) * L_5) / 2]
    expect((P - whole + back) / P).toBeCloseTo(0, 9)
    expect((P * (L_4 + y_P) - (whole * L_4) / 3 + (back * L_5) / 3) / (P * L_4)).toBeCloseTo(0, 9)
  })

  it('cantilever-sheeting: the same in clay', () => {
    const at = run('clay')
    const [P, y_P, D, L_5, front] = ['P', 'y_P', 'D_0', 'L_5', 'sigma_6'].map(name => at.si(name)) as [
      number,
      number,
      number,
      number,
      number,
    ]
    const back = ((front + at.si('sigma_7')) * L_5) / 2
    expect((P - front * D + back) / P).toBeCloseTo(0, 9)
    expect((P * (D + y_P) - (front * D ** 2) / 2 + (back * L_5) / 3) / (P * D)).toBeCloseTo(0, 9)
  })

  it('cantilever-sheeting: without a load the printed equation for clay has the same root', () => {
    // Das: D2 (4c - Q) - 2 D P - P (P + 12 c y) / (Q + 2c) = 0
    const at = run('clay', { surcharge: '0 kPa' })
    const [D, P, y, Q, c] = [at.si('D_0'), at.si('P'), at.si('y_P'), at.si('Q_o'), 50_000]
    expect((D ** 2 * (4 * c - Q) - 2 * D * P - (P * (P + 12 * c * y)) / (Q + 2 * c)) / (D * P)).toBeCloseTo(0, 9)
  })

  it('cantilever-sheeting: stands between the simplified method and its fifth more embedment', () => {
    // moments about the toe without the turned part, uniform dry sand of 30 degrees, 4 m: 3.703 m, to which the rule adds a fifth
    const at = run('sand', { ...dry, surcharge: '0 kPa', phi: '30 deg' })
    const simplified = 4 / (9 ** (1 / 3) - 1)
    expect(simplified).toBeCloseTo(3.703, 3)
    expect(at.si('D_0')).toBeGreaterThan(simplified)
    expect(at.si('D_0')).toBeLessThan(1.2 * simplified)
  })

  it('cantilever-sheeting: agrees with the balance by slices in every ground and water', () => {
    const tenths = (min: number, max: number, unit: string) => fc.integer({ min, max }).map(n => `${n / 10} ${unit}`)
    fc.assert(
      fc.property(
        fc.constantFrom('sand' as const, 'clay' as const),
        fc.boolean(),
        tenths(10, 50, 'm'),
        tenths(0, 60, 'm'),
        tenths(0, 200, 'kPa'),
        tenths(250, 400, 'deg'),
        tenths(10, 15, ''),
        (ground, wet, depth, water_depth, surcharge, phi, passive_factor) => {
          const at = run(ground, {
            depth,
            surcharge,
            phi,
            passive_factor,
            ...(wet ? { water_depth } : { ...dry, water_depth: '100 m' }),
            ...(ground === 'clay' ? { c_below: '70 kPa' } : {}),
          })
          expect(at.errors).toEqual([])
          expect(at.agrees).toHaveLength(2)
          for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(one.band)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('cantilever-sheeting: dimensions scale: twice the height of dry sand, twice the embedment and eight times the moment', () => {
    const [one, two] = ['2 m', '4 m'].map(depth => run('sand', { ...dry, depth, surcharge: '0 kPa' })) as [
      ReturnType<typeof run>,
      ReturnType<typeof run>,
    ]
    expect(two.si('D_0') / one.si('D_0')).toBeCloseTo(2, 9)
    expect(two.si('M_max') / one.si('M_max')).toBeCloseTo(8, 9)
  })

  it('cantilever-sheeting: higher, looser, more loaded and weaker never needs less', () => {
    for (const name of ['D_0', 'M_max']) {
      const of = (ground: 'sand' | 'clay', more: Inputs = {}) => run(ground, more).si(name)
      for (const ground of ['sand', 'clay'] as const) {
        expect(of(ground, { depth: '4.5 m' })).toBeGreaterThan(of(ground))
        expect(of(ground, { phi: '30 deg' })).toBeGreaterThan(of(ground))
        expect(of(ground, { surcharge: '15 kPa' })).toBeGreaterThan(of(ground))
        expect(of(ground, { passive_factor: '1.5' })).toBeGreaterThan(of(ground))
      }
      expect(of('clay', { c_below: '40 kPa' })).toBeGreaterThan(of('clay'))
    }
  })

  it('cantilever-sheeting: water lowered to formation leaves the soil below submerged', () => {
    const [at, lower] = [run('sand', { water_depth: '4 m' }), run('sand', { water_depth: '5 m' })]
    expect(lower.si('D_0')).toBeCloseTo(at.si('D_0'), 9)
    expect(run('sand', dry).si('D_0')).toBeLessThan(at.si('D_0'))
    expect(run('sand', { water_depth: '-1 m' }).si('D_0')).toBeCloseTo(run('sand', { water_depth: '0 m' }).si('D_0'), 9)
  })

  it('cantilever-sheeting: what is driven is longer, is checked where it is given, and the section follows the moment', () => {
    const at = run('sand', { steel_stress: '160 MPa' })
    expect(at.si('D_d')).toBeCloseTo(1.3 * at.si('D_0'), 9)
    expect(at.si('W_req')).toBeCloseTo(at.si('M_max') / 160e6, 12)
    const D = at.si('D_d')
    expect(run('sand', { driven: `${D * 1.001} m` }).satisfied('deep_enough')).toBe(true)
    expect(run('sand', { driven: `${D * 0.999} m` }).satisfied('deep_enough')).toBe(false)
  })

  it('cantilever-sheeting: clay that presses as hard as it resists holds no wall', () => {
    // 5 + 2 x 17 + 2 x 10.19 = 59.38 kPa of overburden: four strengths must be more
    expect(refusals('clay', { c_below: '14.9 kPa' })).toEqual([])
    expect(refusals('clay', { c_below: '14.84 kPa' })).toEqual(['limit-exceeded'])
    expect(refusals('clay', { c_below: '29 kPa', passive_factor: '2' })).toEqual(['limit-exceeded'])
  })

  it('cantilever-sheeting: the weakest sand with the largest passive factor still balances, very deep', () => {
    // at 20 degrees passive and active coefficients are as 4.16 to 1
    const at = run('sand', { phi: '20 deg', passive_factor: '3' })
    expect(at.errors).toEqual([])
    expect(at.si('D_0')).toBeGreaterThan(10 * 4)
    for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(one.band)
    expect(refusals('sand', { passive_factor: '3.01' })).toEqual(['value-outside-range'])
  })

  it('cantilever-sheeting: strength goes with clay, and clay with its strength', () => {
    expect(refusals('sand', { c_below: '50 kPa' })).toEqual(['limit-exceeded'])
    expect(runModule(cantileverSheeting, { ...shared, below: 'clay' }).errors.map(({ rule }) => rule)).toEqual([
      'limit-exceeded',
    ])
  })

  it('cantilever-sheeting: a dry wall has the water below its toe', () => {
    const L = run('sand', dry).si('L_w')
    expect(refusals('sand', { ...dry, water_depth: `${L + 0.001} m` })).toEqual([])
    expect(refusals('sand', { ...dry, water_depth: `${L - 0.001} m` })).toEqual(['limit-exceeded'])
  })

  it('cantilever-sheeting: a wall without reserve and a high wall are marked', () => {
    const kept = (more: Inputs, words: string) =>
      run('sand', more).limits.find(({ says }) => says.includes(words))?.kept
    expect(kept({ longer: '0.2' }, 'reserve')).toBe(true)
    expect(kept({ longer: '0.19' }, 'reserve')).toBe(false)
    expect(kept({ longer: '0', passive_factor: '1.5' }, 'reserve')).toBe(true)
    expect(kept({ depth: '5 m' }, '5 m')).toBe(true)
    expect(kept({ depth: '5.01 m' }, '5 m')).toBe(false)
  })

  it('cantilever-sheeting: the equation of balance is refused without the signs of a wall', () => {
    expect(quarticEmbedment.run({ A_1: 1, A_2: 1, A_3: 1, A_4: 0 }, {}).ok).toBe(false)
    // (x - 2)(x + 1)(x2 + 2x + 3) = x4 + x3 - x2 - 7x - 6
    const answer = quarticEmbedment.run({ A_1: 1, A_2: 1, A_3: 7, A_4: 6 }, {})
    expect(answer.ok && answer.values.depth).toBeCloseTo(2, 9)
  })

  it('cantilever-sheeting: feet and pounds give the same wall', () => {
    for (const ground of ['sand', 'clay'] as const) {
      expect(run(ground, {}, 'US').si('D_0')).toBeCloseTo(run(ground).si('D_0'), 9)
      expect(run(ground, {}, 'US').shown('M_max')).toMatch(/lbf/)
    }
  })

  it('cantilever-sheeting: the net pressure is drawn from the ground to the toe and crosses the wall where it is nil', () => {
    for (const ground of ['sand', 'clay'] as const) {
      const drawing = drawingOf(cantileverSheeting, { ...shared, ...grounds[ground] })
      const diagrams = drawing.shapes.filter(({ kind }) => kind === 'polygon').map(pointsOf)
      expect(diagrams).toHaveLength(3)
      expect(diagrams[2]?.at(-1)?.[1]).toBeCloseTo(-4 - run(ground).si('D_0'), 9)
      const crossing = diagrams[1]?.at(-1)?.[1] ?? 0
      expect(crossing).toBeLessThan(-4)
      expect(crossing).toBeGreaterThan(-4 - run(ground).si('D_0'))
    }
  })

  it('cantilever-sheeting: refuses saturated ground that weighs less than the same ground moist', () => {
    for (const ground of ['sand', 'clay'] as const) {
      expect(refusals(ground, { gamma_sat: '17 kN/m^3' })).toEqual([])
      expect(refusals(ground, { gamma_sat: '16.99 kN/m^3' })).toEqual(['limit-exceeded'])
    }
  })
})
