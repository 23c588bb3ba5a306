import { describe, expect, it } from 'vitest'
import { bearingTerzaghi } from '../../../src/modules/ground/bearing-terzaghi.ts'
import { terzaghiNc, terzaghiNgamma, terzaghiNq } from '../../../src/modules/ground/terzaghi-factors.ts'
import { drawingOf } from '../drawing-of.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = {
  shape: 'square',
  width: '2 m',
  depth: '1.5 m',
  pressure: '200 kPa',
  strength: 'drained',
  phi: '30 deg',
  c: '10 kPa',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1 m',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(bearingTerzaghi, { ...base, ...more }, { units })
const clay = { strength: 'undrained', c_u: '60 kPa' }
const kPa = 1000

describe('bearing by Terzaghi', () => {
  it('bearing-terzaghi: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(bearingTerzaghi, bearingTerzaghi.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('q_all')).toBeCloseTo(run().si('q_all'), 6)
  })

  it('bearing-terzaghi: every factor is as published, put right where it disagrees with its own formula', () => {
    // Kumbhojkar 1993 as reprinted in Das (memory); closed forms and least log-spiral thrust computed apart
    const rows = publishedTable('ground-terzaghi-factors', 'ground')
    expect(rows).toHaveLength(51)
    for (const [i, row] of rows.entries()) {
      const [c, q, g] = [terzaghiNc, terzaghiNq, terzaghiNgamma].map(({ cells }) => cells[i]?.[0])
      expect([q, g]).toEqual([row.Nq_printed, row.Ngamma_printed])
      if (!['0', '17', '18', '37'].includes(row.phi ?? '')) expect(c).toBe(row.Nc_printed)
      expect(Math.abs(Number(c) - Number(row.Nc_computed)), `cohesion at ${row.phi}`).toBeLessThanOrEqual(0.011)
      expect(Math.abs(Number(q) - Number(row.Nq_computed)), `overburden at ${row.phi}`).toBeLessThanOrEqual(0.011)
      expect(Math.abs(Number(g) - Number(row.Ngamma_computed)), `weight at ${row.phi}`).toBeLessThanOrEqual(0.011)
    }
  })

  it('bearing-terzaghi: the three shapes, worked by hand from the printed factors', () => {
    const q = 18 + 10.19 * 0.5
    const weight = 10.19 * 2 * 19.13
    for (const [shape, cohesion, half] of [
      ['strip', 1, 0.5],
      ['square', 1.3, 0.4],
      ['circle', 1.3, 0.3],
    ] as const) {
      const at = run({ shape })
      expect(at.si('q_R') / kPa).toBeCloseTo(cohesion * 10 * 37.16 + q * 22.46 + half * weight, 6)
      expect((at.si('q_gross') - at.si('q_R')) / kPa).toBeCloseTo(9.81 * 0.5, 6)
      expect((at.si('q_R') - at.si('q_net')) / kPa).toBeCloseTo(q, 6)
    }
  })

  it('bearing-terzaghi: local shear counts two thirds of the strength', () => {
    const at = run({ shear: 'local' })
    const phi_s = Math.atan((2 / 3) * Math.tan(Math.PI / 6))
    expect(at.si('phi_s')).toBeCloseTo(phi_s, 12)
    const plain = run({ phi: `${phi_s} rad`, c: `${20 / 3} kPa` })
    expect(at.si('q_R')).toBeCloseTo(plain.si('q_R'), 6)
    expect(run({ ...clay, shear: 'local' }).si('q_net')).toBeCloseTo((2 / 3) * run(clay).si('q_net'), 6)
  })

  it('bearing-terzaghi: clay without friction, worked by hand', () => {
    expect(run({ ...clay, shape: 'strip' }).si('q_net') / kPa).toBeCloseTo((1.5 * Math.PI + 1) * 60, 9)
    expect(run(clay).si('q_gross') / kPa).toBeCloseTo(1.3 * (1.5 * Math.PI + 1) * 60 + 18 + 20 * 0.5, 9)
  })

  it('bearing-terzaghi: the check turns where the net pressure is the net resistance over the factor', () => {
    for (const more of [{}, clay]) {
      const at = run(more)
      const before = at.si('q_gross') - at.si('q_net')
      const most = at.si('q_net') / 3 + before
      expect(run({ ...more, pressure: `${0.9999 * most} Pa` }).satisfied('bears')).toBe(true)
      expect(run({ ...more, pressure: `${1.0001 * most} Pa` }).satisfied('bears')).toBe(false)
      expect(run({ ...more, pressure: `${0.5 * before} Pa` }).si('p_net')).toBe(0)
    }
  })

  it('bearing-terzaghi: more friction or depth bears more, higher water less', () => {
    const plain = run().si('q_net')
    for (const more of [{ phi: '31 deg' }, { depth: '1.8 m' }, { c: '11 kPa' }, { water_depth: '1.4 m' }])
      expect(run(more).si('q_net')).toBeGreaterThan(plain)
    expect(run({ water_depth: '3.5 m' }).si('q_net')).toBeCloseTo(run({ water_depth: '30 m' }).si('q_net'), 6)
  })

  it('bearing-terzaghi: Annex D of EN 1997-1 stays within the bands for every shape, strength and angle', () => {
    for (const shape of ['strip', 'square', 'circle'])
      for (const phi of ['10 deg', '20 deg', '30 deg', '40 deg', '45 deg'])
        for (const more of [{}, { c: '0 kPa' }, { c: '0 kPa', depth: '0 m' }, { shear: 'local' }, clay]) {
          const at = run({ shape, phi, ...more })
          expect(at.agrees).toHaveLength(1)
          for (const { difference, band } of at.agrees)
            expect(difference, `${shape} ${phi} ${JSON.stringify(more)}`).toBeLessThanOrEqual(band)
        }
  })

  it('bearing-terzaghi: refuses a missing strength, warns of a deep base', () => {
    const { phi: _, ...unsaid } = base
    expect(runModule(bearingTerzaghi, unsaid).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(run({ strength: 'undrained' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    const shallow = (depth: string) => run({ depth }).limits.find(({ says }) => says.includes('no deeper'))?.kept
    expect([shallow('2 m'), shallow('2.01 m')]).toEqual([true, false])
    expect(run({ F: '1.4' }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })

  it('bearing-terzaghi: the sketch says what presses and what resists', () => {
    expect(drawingOf(bearingTerzaghi, base).says).toMatch(/load 200(\.0)? kPa, resistance \d/)
  })

  it('bearing-terzaghi: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => run({ gamma_sat }).errors.map(({ rule }) => rule)
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
