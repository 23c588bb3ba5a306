import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracedPit } from '../../../src/modules/ground/braced-pit.ts'
import { loadDown } from '../../../src/modules/ground/envelope-ordinates.ts'
import { noShearLevel } from '../../../src/modules/ground/no-shear-level.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, CaseInput>>

const shared: Inputs = {
  depth: '8 m',
  gamma: '18 kN/m^3',
  surcharge: '0 kPa',
  water_depth: '9 m',
  top_strut: '1 m',
  struts: [{ z: '3.5 m' }, { z: '6 m' }],
  spacing: '3 m',
}
const grounds: Readonly<Record<string, Inputs>> = {
  sand: { ground: 'sand', phi: '30 deg' },
  soft: { ground: 'soft to medium clay', c: '25 kPa' },
  stiff: { ground: 'stiff clay', c: '40 kPa' },
}
const run = (ground: keyof typeof grounds, more: Inputs = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(bracedPit, { ...shared, ...grounds[ground], ...more }, { units })
const refusals = (ground: string, more: Inputs): readonly string[] => run(ground, more).errors.map(({ rule }) => rule)

describe('braced-pit', () => {
  it('braced-pit: the example evaluates without a warning', () => {
    expect(runModule(bracedPit, bracedPit.example).diagnostics).toEqual([])
  })

  it('braced-pit: the three envelopes, and what the load beside the pit adds', () => {
    expect(run('sand').si('p_e')).toBeCloseTo((0.65 * 144_000) / 3, 6)
    expect(run('sand', { surcharge: '12 kPa' }).si('p_e')).toBeCloseTo((0.65 * 144_000 + 12_000) / 3, 6)
    // 144 - 4 x 25 = 44 kPa; 0.3 x 144 = 43.2 kPa
    expect(run('soft').si('p_e')).toBeCloseTo(44_000, 6)
    expect(run('soft', { c: '30 kPa' }).si('p_e')).toBeCloseTo(43_200, 6)
    expect(run('soft', { clay_factor: '0.4' }).si('p_e')).toBeCloseTo(104_000, 6)
    expect(run('stiff').si('p_e')).toBeCloseTo(43_200, 6)
    expect(run('stiff', { stiff_share: '0.4', surcharge: '10 kPa' }).si('p_e')).toBeCloseTo(67_600, 6)
  })

  it('braced-pit: all struts bear the whole envelope and turn with it, wherever they stand', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map(n => n / 10)
    fc.assert(
      fc.property(
        fc.constantFrom('sand', 'soft', 'stiff'),
        tenths(0, 25),
        fc.array(tenths(5, 25), { minLength: 1, maxLength: 4 }),
        tenths(1, 30),
        (ground, top_strut, steps, below) => {
          const levels = steps.map((_, i) => top_strut + steps.slice(0, i + 1).reduce((sum, each) => sum + each, 0))
          const depth = (levels.at(-1) ?? 0) + below
          const at = run(ground, {
            depth: `${depth} m`,
            water_depth: '30 m',
            top_strut: `${top_strut} m`,
            struts: levels.map(z => ({ z: `${z} m` })),
            ...(ground === 'sand' ? {} : { c: `${(18 * depth) / (ground === 'soft' ? 5 : 3)} kPa` }),
          })
          expect(at.errors).toEqual([])
          expect(at.agrees).toHaveLength(2)
          for (const one of at.agrees) expect(one.difference).toBeLessThanOrEqual(1e-4)
          expect(at.si('P_d') / at.si('R_all')).toBeCloseTo(1, 9)
          expect(at.si('M_d') / at.si('M_all')).toBeCloseTo(1, 9)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('braced-pit: stiff clay with struts like a mirror has struts loaded like a mirror', () => {
    const at = run('stiff', { struts: [{ z: '4 m' }, { z: '7 m' }] })
    expect(at.si('N_s_row_1')).toBeCloseTo(at.si('N_low'), 6)
    expect(at.si('M_top')).toBeCloseTo(at.si('M_foot'), 6)
  })

  it('braced-pit: two struts make one beam without a hinge', () => {
    // sand, 31.2 kPa: struts at 1 m and 6 m of 8 m
    const at = run('sand', { struts: [{ z: '6 m' }] })
    expect(at.si('R_low')).toBeCloseTo((31_200 * 8 * 3) / 5, 6)
    expect(at.si('R_s_1')).toBeCloseTo((31_200 * 8 * 2) / 5, 6)
    // no shear where 31.2 z = 99.84: at 3.2 m
    expect(at.si('z_m_1')).toBeCloseTo(3.2, 6)
    expect(at.si('M_s_1')).toBeCloseTo(99_840 * 2.2 - (31_200 * 3.2 ** 2) / 2, 3)
  })

  it('braced-pit: moments at the ends are those of the overhangs, and the largest of all governs', () => {
    const at = run('sand')
    expect(at.si('M_top')).toBeCloseTo(31_200 / 2, 6)
    expect(at.si('M_foot')).toBeCloseTo((31_200 * 2 ** 2) / 2, 6)
    expect(at.si('M_wall')).toBe(Math.max(at.si('M_top'), at.si('M_foot'), at.si('M_s_1'), at.si('M_s_2')))
    const deepTop = run('sand', { top_strut: '3 m', struts: [{ z: '6 m' }] })
    expect(deepTop.si('M_wall')).toBeCloseTo((31_200 * 3 ** 2) / 2, 6)
  })

  it('braced-pit: struts, walers, piles and boards from the most loaded level', () => {
    const at = run('stiff', { pile_spacing: '2 m', lagging_stress: '8 MPa' })
    const R = Math.max(...['N_des_1', 'N_des_2', 'N_des_low'].map(at.si)) / 3
    expect(at.si('N_max')).toBeCloseTo(3 * R, 6)
    expect(at.si('M_waler')).toBeCloseTo((9 * R) / 8, 6)
    expect(at.si('M_pile')).toBeCloseTo(2 * at.si('M_wall'), 6)
    // 0.5 x 43.2 kPa x 4 m2 / 8 = 10.8 kN m on one metre of height; sqrt(6 x 10.8 / 8000) = 90 mm
    expect(at.si('t_lag')).toBeCloseTo(0.09, 9)
    expect(run('stiff', { pile_spacing: '2 m' }).has('t_lag')).toBe(false)
    expect(run('stiff').has('M_pile')).toBe(false)
  })

  it('braced-pit: no strut is made for less than its share of the height', () => {
    // Sand, 31.2 kPa: shares by hand, halfway at 2.25 and 4.75 m of 8 m, 3 m of wall to a strut.
    const at = run('sand')
    const shares = [2.25, 2.5, 3.25].map(height => 3 * 31_200 * height)
    for (const [i, name] of ['N_share_1', 'N_share_2', 'N_share_low'].entries())
      expect(at.si(name)).toBeCloseTo(shares[i] ?? 0, 6)
    // Hinge at 3.5 m: moments about it, and about the lowest strut at 6 m of what is below.
    const top = (3 * 31_200 * 3.5 ** 2) / 2 / 2.5
    expect(at.si('N_des_1')).toBeCloseTo(Math.max(top, shares[0] ?? 0), 6)
    expect(at.si('N_s_row_2')).toBeLessThan(shares[1] ?? 0)
    expect(at.si('N_des_2')).toBeCloseTo(shares[1] ?? 0, 6)
    expect(at.si('N_des_low')).toBe(at.si('N_low'))
    expect(at.si('N_low')).toBeGreaterThan(shares[2] ?? 0)
  })

  it('braced-pit: what lies below the lowest strut does not relieve the top strut', () => {
    // Two struts at 1 and 4 m of 8 m: by moments the top one would bear nothing at all.
    const at = run('sand', { struts: [{ z: '4 m' }] })
    expect(at.si('N_s_row_1')).toBeCloseTo(0, 6)
    expect(at.si('N_des_1')).toBeCloseTo(3 * 31_200 * 2.5, 6)
    expect(at.si('N_max')).toBeCloseTo(3 * 31_200 * 8, 6)
  })

  it('braced-pit: by the hinges the waler is that of Das, 101.7 kN m', () => {
    const { inputs } = bracedPit.published[0] ?? { inputs: {} }
    expect((runModule(bracedPit, inputs).si('N_s_row_2') * 3) / 8 / 1000).toBeCloseTo(101.7, 1)
  })

  it('braced-pit: the shares of all struts are the whole envelope', () => {
    for (const ground of ['sand', 'soft', 'stiff']) {
      const at = run(ground, { top_strut: '0.5 m', struts: [{ z: '2 m' }, { z: '5 m' }, { z: '7.5 m' }] })
      const all = ['N_share_1', 'N_share_2', 'N_share_3', 'N_share_low'].reduce((sum, name) => sum + at.si(name), 0)
      expect(all / 3 / at.si('P_d')).toBeCloseTo(1, 9)
    }
  })

  it('braced-pit: the capacity of a strut is checked on both sides', () => {
    const N = run('soft').si('N_max') / 1000
    expect(run('soft', { strut_capacity: `${N * 1.001} kN` }).satisfied('struts_bear')).toBe(true)
    expect(run('soft', { strut_capacity: `${N * 0.999} kN` }).satisfied('struts_bear')).toBe(false)
  })

  it('braced-pit: heavier, softer, deeper and more loaded never needs smaller struts', () => {
    const N = (ground: string, more: Inputs) => run(ground, more).si('N_max')
    for (const ground of ['sand', 'soft', 'stiff']) {
      expect(N(ground, { gamma: '19 kN/m^3' })).toBeGreaterThan(N(ground, {}))
      expect(N(ground, { surcharge: '10 kPa' })).toBeGreaterThan(N(ground, {}))
      expect(N(ground, { spacing: '4 m' })).toBeGreaterThan(N(ground, {}))
    }
    expect(N('sand', { phi: '28 deg' })).toBeGreaterThan(N('sand', {}))
    expect(N('soft', { c: '20 kPa' })).toBeGreaterThan(N('soft', {}))
  })

  it('braced-pit: no shear stands where load and reactions balance, and at an end where they do not', () => {
    const at = (more: Readonly<Record<string, number>>) =>
      noShearLevel.run(
        { full: 40, depth: 8, upper: 2, lower: 6, borne: 0, reaction: 100, ...more },
        { ground: 'stiff clay' },
      )
    const middle = at({})
    const level = middle.ok ? (middle.values.level ?? 0) : 0
    expect(loadDown('stiff clay', { full: 40, depth: 8 }, level)).toBeCloseTo(100, 6)
    expect(at({ reaction: 1 })).toMatchObject({ values: { level: 2 } })
    expect(at({ reaction: 1000 })).toMatchObject({ values: { level: 6 } })
    expect(at({ upper: 6 }).ok).toBe(false)
  })

  it('braced-pit: each ground has its own strength given, and not the other', () => {
    for (const ground of ['sand', 'soft', 'stiff']) expect(refusals(ground, {})).toEqual([])
    const { phi: _, ...sand } = grounds.sand as Record<string, CaseInput>
    const { c: __, ...clay } = grounds.stiff as Record<string, CaseInput>
    expect(runModule(bracedPit, { ...shared, ...sand }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(runModule(bracedPit, { ...shared, ...clay }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(refusals('sand', { c: '20 kPa' })).toEqual(['limit-exceeded'])
    expect(refusals('stiff', { phi: '30 deg' })).toEqual(['limit-exceeded'])
  })

  it('braced-pit: the stability number parts soft from stiff clay', () => {
    // 18 x 8 / 36 = 4
    expect(refusals('stiff', { c: '36 kPa' })).toEqual([])
    expect(refusals('stiff', { c: '35.9 kPa' })).toEqual(['limit-exceeded'])
    expect(refusals('soft', { c: '35.9 kPa' })).toEqual([])
    expect(refusals('soft', { c: '36 kPa' })).toEqual(['limit-exceeded'])
  })

  it('braced-pit: water behind a wall in sand is refused, and none of the business of the envelope in clay', () => {
    expect(refusals('sand', { water_depth: '8 m' })).toEqual([])
    expect(refusals('sand', { water_depth: '7.99 m' })).toEqual(['limit-exceeded'])
    expect(refusals('stiff', { water_depth: '1 m' })).toEqual([])
  })

  it('braced-pit: struts out of order, too close or below formation are refused', () => {
    expect(refusals('sand', { struts: [{ z: '6 m' }, { z: '3.5 m' }] }).length).toBeGreaterThan(0)
    expect(refusals('sand', { struts: [{ z: '1.5 m' }, { z: '6 m' }] })).toEqual([])
    expect(refusals('sand', { struts: [{ z: '1.49 m' }, { z: '6 m' }] })).toEqual(['limit-exceeded'])
    expect(refusals('sand', { struts: [{ z: '7.99 m' }] })).toEqual([])
    expect(refusals('sand', { struts: [{ z: '8 m' }] })).toEqual(['limit-exceeded'])
  })

  it('braced-pit: half a metre is enough wherever it lies, rounding of the machine or not', () => {
    for (const top of [0.1, 0.7, 1.1, 2.2, 3.3])
      expect(refusals('sand', { top_strut: `${top} m`, struts: [{ z: `${(top + 0.5).toFixed(1)} m` }] })).toEqual([])
  })

  it('braced-pit: a shallow pit is marked', () => {
    const kept = (depth: string) =>
      run('sand', { depth, struts: [{ z: '4 m' }] }).limits.find(({ says }) => says.includes('6 m'))?.kept
    expect(kept('6 m')).toBe(true)
    expect(kept('5.99 m')).toBe(false)
  })

  it('braced-pit: feet and pounds give the same struts', () => {
    for (const ground of ['sand', 'soft', 'stiff']) {
      expect(run(ground, {}, 'US').si('N_max')).toBeCloseTo(run(ground).si('N_max'), 6)
      expect(run(ground, {}, 'US').shown('N_max')).toMatch(/ lbf$/)
    }
  })

  it('braced-pit: every strut is drawn at its depth with its load, and the envelope in its shape', () => {
    const drawing = drawingOf(bracedPit, { ...shared, ...grounds.stiff })
    const arrows = drawing.shapes.filter(({ kind }) => kind === 'arrow').map(shape => pointsOf(shape)[0]?.[1])
    expect(arrows).toEqual([-1, -3.5, -6])
    const outline = drawing.shapes.find(({ kind }) => kind === 'polygon')
    expect(outline ? pointsOf(outline).map(([, y]) => y) : []).toEqual([0, -2, -6, -8])
  })
})
