import { describe, expect, it } from 'vitest'
import { bearingMeyerhof } from '../../../src/modules/ground/bearing-meyerhof.ts'
import { drawingOf } from '../drawing-of.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = {
  width: '2 m',
  length: '3 m',
  depth: '1.5 m',
  load: '1500 kN',
  above: 'left out',
  strength: 'drained',
  phi: '30 deg',
  c: '5 kPa',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1 m',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(bearingMeyerhof, { ...base, ...more }, { units })
const clay = { strength: 'undrained', c_u: '60 kPa' }
const kPa = 1000

describe('bearing by Meyerhof', () => {
  it('bearing-meyerhof: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(bearingMeyerhof, bearingMeyerhof.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('q_all')).toBeCloseTo(run().si('q_all'), 6)
  })

  it('bearing-meyerhof: the factors are those of the table at every angle it takes', () => {
    // Closed forms, tabulated apart from this program
    const rows = publishedTable('ground-prandtl-factors', 'ground').filter(
      ({ phi }) => Number(phi) >= 10 && Number(phi) <= 45,
    )
    expect(rows).toHaveLength(36)
    for (const { phi, Nq, Nc, Ngamma_meyerhof } of rows) {
      const at = run({ phi: `${phi} deg` })
      for (const [name, printed] of [
        ['N_q', Nq],
        ['N_c', Nc],
        ['N_gamma', Ngamma_meyerhof],
      ] as const)
        expect(Math.abs(at.si(name) - Number(printed)), `${name} at ${phi}`).toBeLessThanOrEqual(0.5001e-4)
    }
  })

  it('bearing-meyerhof: depth counted multiplies by the factors of depth, worked by hand', () => {
    const [plain, deep] = [run({ c: '0 kPa' }), run({ c: '0 kPa', above: 'counted' })]
    expect(deep.si('q_R') / plain.si('q_R')).toBeCloseTo(1 + 0.1 * Math.sqrt(3) * 0.75, 9)
    const [soft, deeper] = [run(clay), run({ ...clay, above: 'counted' })]
    expect(deeper.si('q_net') / soft.si('q_net')).toBeCloseTo(1.15, 9)
    expect(soft.si('q_net') / kPa).toBeCloseTo((Math.PI + 2) * 60 * (1 + 0.4 / 3), 9)
  })

  it('bearing-meyerhof: the check turns where the net pressure is the net resistance over the factor', () => {
    const at = run()
    const most = (at.si('q_net') / 3 + at.si('q_eff') + at.si('u')) * 6
    expect(run({ load: `${0.9999 * most} N` }).satisfied('bears')).toBe(true)
    expect(run({ load: `${1.0001 * most} N` }).satisfied('bears')).toBe(false)
    const soft = run(clay)
    const load = (soft.si('q_net') / 3 + soft.si('q_tot')) * 6
    expect(run({ ...clay, load: `${0.9999 * load} N` }).satisfied('bears')).toBe(true)
    expect(run({ ...clay, load: `${1.0001 * load} N` }).satisfied('bears')).toBe(false)
  })

  it('bearing-meyerhof: moment, horizontal load and water take away; friction, cohesion and length tell', () => {
    const plain = run()
    for (const less of [{ M_B: '200 kN*m' }, { H: '100 kN' }, { water_depth: '0 m' }, { length: '6 m' }])
      expect(run(less).si('q_net')).toBeLessThan(plain.si('q_net'))
    for (const more of [{ phi: '31 deg' }, { c: '6 kPa' }, { water_depth: '2 m' }])
      expect(run(more).si('q_net')).toBeGreaterThan(plain.si('q_net'))
    for (const more of [{}, clay])
      expect(run({ ...more, H: '0.001 kN' }).si('q_net') / run(more).si('q_net')).toBeCloseTo(1, 4)
  })

  it('bearing-meyerhof: the other theory stays within the bands up to 40 degrees', () => {
    for (const phi of ['15 deg', '25 deg', '35 deg', '40 deg'])
      for (const more of [
        {},
        { above: 'counted' },
        { H: '100 kN' },
        { above: 'counted', H: '100 kN' },
        { length: '2 m' },
      ])
        for (const soil of [{ phi }, clay]) {
          const at = run({ ...more, ...soil })
          expect(at.agrees).toHaveLength(2)
          for (const { difference, band } of at.agrees)
            expect(difference, JSON.stringify({ ...more, ...soil })).toBeLessThanOrEqual(band)
        }
  })

  it('bearing-meyerhof: depth in the other theory goes by the angle where the base is deeper than wide', () => {
    const k = (depth: string) => run({ above: 'counted', depth }).si('k_D')
    expect(k('2 m')).toBeCloseTo(1, 12)
    expect(k('3 m')).toBeCloseTo(Math.atan(1.5), 12)
  })

  it('bearing-meyerhof: a clay that slides leaves the other theory out and stops nothing else', () => {
    const at = run({ ...clay, H: '361 kN' })
    expect(at.has('q_net')).toBe(true)
    expect(at.has('q_net_V')).toBe(false)
    expect(run({ ...clay, H: '359 kN' }).has('q_net_V')).toBe(true)
  })

  it('bearing-meyerhof: refuses a load that slides, a missing strength and a base that floats', () => {
    const slides = (tangent: number) => run({ H: `${tangent * run().si('V_eff')} N` }).errors.map(({ rule }) => rule)
    expect(slides(0.99 * Math.tan(Math.PI / 6))).not.toContain('limit-exceeded')
    expect(slides(1.01 * Math.tan(Math.PI / 6))).toContain('limit-exceeded')
    const { phi: _, ...unsaid } = base
    expect(runModule(bearingMeyerhof, unsaid).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(run({ load: '29 kN' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(run({ load: '30 kN' }).errors).toEqual([])
    expect(run({ length: '1.9 m' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
  })

  it('bearing-meyerhof: warns of a deep base only where its depth is counted', () => {
    const shallow = (depth: string, above = 'counted') =>
      run({ depth, above, load: '1500 kN' }).limits.find(({ says }) => says.includes('no deeper'))?.kept
    expect([shallow('2 m'), shallow('2.01 m'), shallow('2.01 m', 'left out')]).toEqual([true, false, undefined])
  })

  it('bearing-meyerhof: the sketch says what presses and what resists', () => {
    expect(drawingOf(bearingMeyerhof, base).says).toMatch(/load 1500 kN, resistance \d/)
  })

  it('bearing-meyerhof: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => run({ gamma_sat }).errors.map(({ rule }) => rule)
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
