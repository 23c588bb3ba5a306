import { describe, expect, it } from 'vitest'
import { bearingEn1997 } from '../../../src/modules/ground/bearing-en-1997.ts'
import { drawingOf } from '../drawing-of.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = {
  approach: 'DA1-1',
  width: '2 m',
  length: '3 m',
  depth: '1.5 m',
  load: '1500 kN',
  strength: 'drained',
  phi: '32 deg',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '5 m',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(bearingEn1997, { ...base, ...more }, { units })
const clay = { strength: 'undrained', c_u: '60 kPa' }
const refused = (more: Readonly<Record<string, string>>) => run(more).errors.map(({ rule }) => rule)
const kPa = 1000

describe('bearing by EN 1997-1', () => {
  it('bearing-en-1997: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(bearingEn1997, bearingEn1997.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('R_d')).toBeCloseTo(run().si('R_d'), 3)
  })

  it('bearing-en-1997: the factors are those of the table at every angle it takes', () => {
    // Closed forms of Prandtl and Reissner and of Annex D, tabulated apart from this program
    const rows = publishedTable('ground-prandtl-factors', 'ground').filter(
      ({ phi }) => Number(phi) >= 10 && Number(phi) <= 45,
    )
    expect(rows).toHaveLength(36)
    for (const { phi, Nq, Nc, Ngamma_en1997 } of rows) {
      const at = run({ phi: `${phi} deg` })
      for (const [name, printed] of [
        ['N_q', Nq],
        ['N_c', Nc],
        ['N_gamma', Ngamma_en1997],
      ] as const)
        expect(Math.abs(at.si(name) - Number(printed)), `${name} at ${phi}`).toBeLessThanOrEqual(0.5001e-4)
    }
  })

  it('bearing-en-1997: the partial factors are those recommended in Tables A.4 and A.5', () => {
    // EN 1997-1:2004, Tables A.4 and A.5 (memory)
    for (const [approach, gamma_phi, gamma_cu, gamma_R] of [
      ['DA1-1', 1, 1, 1],
      ['DA1-2', 1.25, 1.4, 1],
      ['DA2', 1, 1, 1.4],
      ['DA3', 1.25, 1.4, 1],
    ] as const) {
      expect([run({ approach }).si('gamma_phi'), run({ approach }).si('gamma_R')]).toEqual([gamma_phi, gamma_R])
      expect(run({ approach, ...clay }).si('gamma_cu')).toBe(gamma_cu)
    }
  })

  it('bearing-en-1997: clay under a horizontal load, worked apart', () => {
    const at = run({ ...clay, approach: 'DA1-2', H: '120 kN', water_depth: '1 m' })
    expect(at.si('q_gross') / kPa).toBeCloseTo(244.057396, 5)
    expect(at.si('q_net') / kPa).toBeCloseTo(244.057396 - 18 - 20 * 0.5, 5)
  })

  it('bearing-en-1997: the check turns at the resistance', () => {
    const R = run().si('R_d')
    expect(run({ load: `${0.999 * R} N` }).satisfied('bears')).toBe(true)
    expect(run({ load: `${1.001 * R} N` }).satisfied('bears')).toBe(false)
    const C = run(clay).si('R_d')
    expect(run({ ...clay, load: `${1.001 * C} N` }).satisfied('bears')).toBe(false)
    expect(run({ ...clay, load: `${0.999 * C} N` }).satisfied('bears')).toBe(true)
  })

  it('bearing-en-1997: water a width below the base changes nothing, and higher water never helps', () => {
    expect(run({ water_depth: '3.5 m' }).si('q_R')).toBeCloseTo(run({ water_depth: '30 m' }).si('q_R'), 6)
    const depths = ['3.5 m', '2.5 m', '1.5 m', '0.7 m', '0 m']
    const spare = depths.map(water_depth => {
      const at = run({ water_depth })
      return at.si('q_R') * at.si('A_e') - at.si('V_eff')
    })
    for (const [i, one] of spare.entries()) if (i > 0) expect(one).toBeLessThan(spare[i - 1] ?? Number.NaN)
    expect(run({ water_depth: '1.5 m' }).si('gamma_below') / kPa).toBeCloseTo(20 - 9.81, 9)
    expect(run({ water_depth: '2.5 m' }).si('gamma_below') / kPa).toBeCloseTo((18 + 20 - 9.81) / 2, 9)
  })

  it('bearing-en-1997: water over the ground leaves the effective overburden as it is', () => {
    const [at, over] = [run({ water_depth: '0 m' }), run({ water_depth: '-1 m' })]
    expect(over.si('q_eff')).toBeCloseTo(at.si('q_eff'), 6)
    expect((over.si('u') - at.si('u')) / kPa).toBeCloseTo(9.81, 9)
  })

  it('bearing-en-1997: moment and horizontal load take away, cohesion and depth add', () => {
    const plain = run()
    for (const less of [{ M_B: '200 kN*m' }, { M_L: '200 kN*m' }, { H: '100 kN' }])
      expect(run(less).si('R_d')).toBeLessThan(plain.si('R_d'))
    for (const more of [{ c: '5 kPa' }, { depth: '2 m' }, { phi: '33 deg' }])
      expect(run(more).si('q_R')).toBeGreaterThan(plain.si('q_R'))
    expect(run({ H: '0.001 kN' }).si('R_d') / plain.si('R_d')).toBeCloseTo(1, 4)
    expect(run({ ...clay, H: '0.001 kN' }).si('R_d') / run(clay).si('R_d')).toBeCloseTo(1, 4)
  })

  it('bearing-en-1997: refuses a missing strength, a floating base, a load off the base and one that slides', () => {
    const { phi: _, ...unsaid } = base
    expect(runModule(bearingEn1997, unsaid).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(refused({ strength: 'undrained' })).toContain('limit-exceeded')
    expect(refused({ water_depth: '0 m', load: '88.2 kN' })).toContain('limit-exceeded')
    expect(refused({ water_depth: '0 m', load: '88.4 kN' })).toEqual([])
    expect(refused({ M_B: '1501 kN*m' })).toContain('limit-exceeded')
    expect(refused({ M_L: '2251 kN*m' })).toContain('limit-exceeded')
    expect(refused({ M_L: '751 kN*m' })).toContain('limit-exceeded')
    expect(refused({ M_L: '749 kN*m' })).toEqual([])
    expect(refused({ length: '1.99 m' })).toContain('limit-exceeded')
    expect(refused({ ...clay, H: '361 kN' })).toContain('limit-exceeded')
    expect(refused({ ...clay, H: '359 kN' })).not.toContain('limit-exceeded')
    expect(refused({ H: '1501 kN' })).toContain('limit-exceeded')
    expect(refused({ phi: '9.9 deg' })).toEqual(['value-outside-range'])
    expect(refused({ phi: '45.1 deg' })).toEqual(['value-outside-range'])
  })

  it('bearing-en-1997: warns where the eccentricity is more than a third of the side', () => {
    const kept = (more: Readonly<Record<string, string>>, side: string) =>
      run(more).limits.find(({ says }) => says.startsWith(`the eccentricity along the ${side}`))?.kept
    expect(kept({ M_B: '999 kN*m' }, 'width')).toBe(true)
    expect(kept({ M_B: '1001 kN*m' }, 'width')).toBe(false)
    expect(kept({ M_L: '1499 kN*m', M_B: '800 kN*m', length: '3 m' }, 'length')).toBe(true)
    expect(kept({ M_L: '1501 kN*m', M_B: '800 kN*m', length: '3 m' }, 'length')).toBe(false)
  })

  it('bearing-en-1997: Hansen is below Annex D without cohesion, and Skempton agrees in clay', () => {
    for (const phi of ['20 deg', '30 deg', '40 deg']) {
      const at = run({ phi })
      expect(at.si('q_net_H')).toBeLessThan(at.si('q_net'))
      expect(at.agrees.every(({ difference, band }) => difference <= band)).toBe(true)
    }
    const at = run(clay)
    expect(at.si('q_net_H') / at.si('q_net')).toBeCloseTo(5 / (Math.PI + 2), 9)
    for (const H of ['50 kN', '150 kN', '300 kN'])
      for (const more of [{ H }, { ...clay, H }])
        expect(
          run(more).agrees.every(({ difference, band }) => difference <= band),
          H,
        ).toBe(true)
  })

  it('bearing-en-1997: the sketch shows depth and water, and leaves deep water out', () => {
    const marks = (more: Readonly<Record<string, string>>) =>
      drawingOf(bearingEn1997, { ...base, ...more }).shapes.filter(({ kind }) => kind === 'level').length
    expect(marks({ water_depth: '1 m' })).toBe(1)
    expect(marks({ water_depth: '9 m' })).toBe(0)
    expect(drawingOf(bearingEn1997, { ...base, depth: '0 m' }).says).toContain('0')
  })

  it('bearing-en-1997: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => refused({ gamma_sat })
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
