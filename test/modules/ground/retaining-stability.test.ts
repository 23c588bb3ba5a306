import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { retainingStability } from '../../../src/modules/ground/retaining-stability.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = {
  stem: '3 m',
  stem_top: '0.3 m',
  stem_foot: '0.3 m',
  base: '0.4 m',
  toe: '0.5 m',
  heel: '1.7 m',
  gamma_c: '24 kN/m^3',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  phi: '30 deg',
  surcharge: '10 kPa',
  water: '0 m',
  delta_b: '25 deg',
  q_ult: '500 kPa',
  overall: 'checked apart',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(retainingStability, { ...base, ...more }, { units })
const refused = (more: Readonly<Record<string, string>>) => run(more).errors.map(({ rule }) => rule)

describe('free-standing wall', () => {
  it('retaining-stability: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(retainingStability, retainingStability.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('F_o')).toBeCloseTo(run().si('F_o'), 12)
  })

  it('retaining-stability: a dry wall with level fill, worked by hand', () => {
    const at = run()
    const P = (10 * 3.4 + (18 * 3.4 ** 2) / 2) / 3
    const O = ((10 * 3.4 ** 2) / 2 + (18 * 3.4 ** 3) / 6) / 3
    const V = 24 * 0.9 + 24 * 0.4 * 2.5 + 18 * 1.7 * 3
    const R = 24 * 0.9 * 0.65 + 24 * 0.4 * 2.5 * 1.25 + 18 * 1.7 * 3 * 1.65
    for (const [name, value] of [
      ['P_h', P],
      ['M_O', O],
      ['V_b', V],
      ['M_R', R],
    ] as const)
      expect(at.si(name) / 1000, name).toBeCloseTo(value, 8)
    expect(at.si('F_s')).toBeCloseTo((V * Math.tan((25 * Math.PI) / 180)) / P, 9)
    expect(at.si('e')).toBeCloseTo(1.25 - (R - O) / V, 9)
  })

  it('retaining-stability: water behind presses, lifts and overturns, by pressure added up slice by slice', () => {
    const at = run({ water: '1.5 m' })
    let [force, moment] = [0, 0]
    const count = 20000
    for (let i = 0; i < count; i += 1) {
      const y = (3.4 * (i + 0.5)) / count
      const wet = Math.max(0, 1.5 - y)
      const effective = 10 + 18 * (3.4 - Math.max(y, 1.5)) + 10.19 * wet
      const p = effective / 3 + 9.81 * wet
      force += (p * 3.4) / count
      moment += (p * y * 3.4) / count
    }
    const uplift = (9.81 * 1.5 * 2.5) / 2
    expect(at.si('P_h') / 1000).toBeCloseTo(force, 5)
    expect(at.si('M_O') / 1000).toBeCloseTo(moment + (uplift * 2 * 2.5) / 3, 5)
    expect(at.si('W_f') / 1000).toBeCloseTo(1.7 * (18 * 1.9 + 20 * 1.1), 9)
    expect(run().si('V_b') - at.si('V_b')).toBeCloseTo((uplift - 1.7 * 2 * 1.1) * 1000, 5)
  })

  it('retaining-stability: more water or surcharge never helps, a longer heel does', () => {
    for (const name of ['F_o', 'F_s']) {
      for (const worse of [
        { water: '1 m' },
        { surcharge: '20 kPa' },
        { alpha: '10 deg', toe: '0.5 m' },
        { phi: '28 deg' },
      ])
        expect(run(worse).si(name)).toBeLessThan(run().si(name))
      expect(run({ heel: '2 m' }).si(name)).toBeGreaterThan(run().si(name))
    }
    expect(run({ c_a: '10 kPa' }).si('R_s') - run().si('R_s')).toBeCloseTo(25000, 6)
  })

  it('retaining-stability: nothing before the toe counts unless it is said, and then by its force', () => {
    const [none, force] = [run(), run({ front: 'force given', passive: '20 kN/m' })]
    expect((force.si('R_s') - none.si('R_s')) / 1000).toBeCloseTo(20, 9)
    // Rankine at 30 degrees is 3: 3 × 18 × 0.8² / 2, and half of it.
    const soil = { front: 'reckoned', front_depth: '0.8 m', front_phi: '30 deg', front_gamma: '18 kN/m^3' }
    expect((run(soil).si('R_s') - none.si('R_s')) / 1000).toBeCloseTo(17.28 / 2, 9)
    expect((run({ ...soil, front_factor: '1' }).si('R_s') - none.si('R_s')) / 1000).toBeCloseTo(17.28, 9)
    expect(run(soil).si('M_O')).toBe(none.si('M_O'))
  })

  it('retaining-stability: refuses a front that is not given, and one that is given and not counted', () => {
    const soil = { front_depth: '0.8 m', front_phi: '30 deg', front_gamma: '18 kN/m^3' }
    expect(refused({ front: 'force given' })).toEqual(['limit-exceeded'])
    for (const name of ['front_depth', 'front_phi', 'front_gamma'] as const) {
      const { [name]: left, ...others } = soil
      expect(refused({ front: 'reckoned', ...others }), name).toEqual(['limit-exceeded'])
      expect(refused({ [name]: left }), name).toEqual(['limit-exceeded'])
    }
    expect(refused({ passive: '20 kN/m' })).toEqual(['limit-exceeded'])
    expect(refused({ ...soil, front: 'reckoned', passive: '20 kN/m' })).toEqual(['limit-exceeded'])
  })

  it('retaining-stability: overall failure that nobody has looked at casts doubt on every check', () => {
    const answered = (overall: string) => run({ overall }).limits.find(({ says }) => says.includes('overall failure'))
    expect(answered('not checked')).toMatchObject({ kept: false, refuses: false })
    for (const overall of ['checked apart', 'level firm ground']) expect(answered(overall)?.kept, overall).toBe(true)
    expect(refused({ overall: 'level firm ground', alpha: '5 deg' })).toEqual(['limit-exceeded'])
    expect(refused({ alpha: '5 deg' })).toEqual([])
  })

  it('retaining-stability: at rest, the coefficient given takes the place of the active one', () => {
    expect(run({ K_given: '0.5' }).si('P_h') / run().si('P_h')).toBeCloseTo(1.5, 9)
    expect(run().si('K_a')).toBeCloseTo(1 / 3, 12)
  })

  it('retaining-stability: every check turns where its demand meets its capacity', () => {
    const at = run()
    for (const [check, input, name] of [
      ['stands', 'F_over', 'F_o'],
      ['holds', 'F_slide', 'F_s'],
    ] as const) {
      expect(run({ [input]: `${0.9999 * at.si(name)}` }).satisfied(check)).toBe(true)
      expect(run({ [input]: `${1.0001 * at.si(name)}` }).satisfied(check)).toBe(false)
    }
    const needed = 3 * at.si('q_max')
    expect(run({ q_ult: `${1.0001 * needed} Pa` }).satisfied('bears')).toBe(true)
    expect(run({ q_ult: `${0.9999 * needed} Pa` }).satisfied('bears')).toBe(false)
  })

  it('retaining-stability: out of the middle third a gap opens, and the pressure still carries the load', () => {
    const at = run({ surcharge: '40 kPa' })
    expect(at.satisfied('middle_third')).toBe(false)
    expect(at.has('q_min')).toBe(false)
    const pressed = 3 * (1.25 - at.si('e'))
    expect((at.si('q_max') * pressed) / 2).toBeCloseTo(at.si('V_b'), 6)
    const whole = run()
    expect(whole.satisfied('middle_third')).toBe(true)
    expect(((whole.si('q_max') + whole.si('q_min')) / 2) * 2.5).toBeCloseTo(whole.si('V_b'), 6)
  })

  it('retaining-stability: a load behind the middle presses most under the heel, not less than nothing at the toe', () => {
    const at = run({ toe: '2 m', surcharge: '0 kPa', heel: '0.5 m', phi: '45 deg' })
    expect(at.si('e')).toBeGreaterThan(0)
    expect(at.si('x_V')).toBeGreaterThan(at.si('B') / 2)
    expect(at.si('q_max')).toBeGreaterThan(at.si('V_b') / at.si('B'))
  })

  it('retaining-stability: refuses a slope that does not stand, a tapering foot, a flood and a wall that falls', () => {
    expect(refused({ alpha: '29.9 deg' })).not.toContain('limit-exceeded')
    expect(refused({ alpha: '30.1 deg' })).toContain('limit-exceeded')
    expect(refused({ stem_foot: '0.29 m' })).toContain('limit-exceeded')
    expect(refused({ water: '3.41 m' })).toContain('limit-exceeded')
    expect(refused({ heel: '0.2 m', toe: '0 m' })).toContain('limit-exceeded')
    expect(refused({ water: '3.3 m', heel: '0.1 m', toe: '3 m' })).toContain('limit-exceeded')
  })

  it('retaining-stability: strips and slices agree, for any wall that stands', () => {
    const cm = (least: number, most: number) => fc.integer({ min: least, max: most }).map(n => `${n} cm`)
    let compared = 0
    fc.assert(
      fc.property(
        fc.record({
          stem: cm(150, 600),
          stem_foot: cm(30, 90),
          base: cm(30, 90),
          toe: cm(0, 150),
          heel: cm(100, 500),
          water: cm(0, 150),
          alpha: fc.integer({ min: 0, max: 25 }).map(n => `${n} deg`),
          surcharge: fc.integer({ min: 0, max: 20 }).map(n => `${n} kPa`),
        }),
        sizes => {
          const at = run(sizes)
          if (at.limits.some(({ kept }) => kept === false) || at.si('x_V') < 0.1) return
          compared += 1
          expect(at.agrees).toHaveLength(3)
          for (const { difference, band } of at.agrees) expect(difference).toBeLessThanOrEqual(band)
        },
      ),
      { numRuns: 60 },
    )
    expect(compared).toBeGreaterThan(20)
  })

  it('retaining-stability: the sketch is to scale, with water only where there is some, and the pressed width', () => {
    const levels = (water: string) =>
      drawingOf(retainingStability, { ...base, water }).shapes.filter(({ kind }) => kind === 'level').length
    expect([levels('0 m'), levels('0.5 m')]).toEqual([0, 1])
    const load = drawingOf(retainingStability, { ...base, surcharge: '40 kPa' }).shapes.find(
      ({ kind }) => kind === 'load',
    )
    expect(load).toMatchObject({ from: [0, 0], end: 0 })
    expect(drawingOf(retainingStability, base).toScale).toBe(true)
    const soils = (more: Readonly<Record<string, string>>) =>
      drawingOf(retainingStability, { ...base, ...more }).shapes.filter(
        shape => shape.kind === 'polygon' && shape.fill === 'soil',
      ).length
    const front = { front: 'reckoned', front_depth: '0.8 m', front_phi: '30 deg', front_gamma: '18 kN/m^3' }
    expect([soils({}), soils(front)]).toEqual([1, 2])
  })

  it('retaining-stability: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => refused({ gamma_sat })
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
