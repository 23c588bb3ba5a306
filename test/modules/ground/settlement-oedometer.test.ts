import { describe, expect, it } from 'vitest'
import { settlementOedometer } from '../../../src/modules/ground/settlement-oedometer.ts'
import type { CaseInput } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'

const clay = { thickness: '4 m', gamma_layer: '18 kN/m^3', C_c: '0.27', C_r: '0.045', e_0: '0.8' }
const base = {
  width: '4 m',
  length: '6 m',
  depth: '2 m',
  pressure: '140 kPa',
  s_allow: '75 mm',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1 m',
  heave: 'no time to swell',
  layers: [clay],
}
const run = (more: Readonly<Record<string, CaseInput>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(settlementOedometer, { ...base, ...more }, { units })
const pressed = (sigma_p: string) => run({ layers: [{ ...clay, sigma_p }] })

describe('consolidation', () => {
  it('settlement-oedometer: the example is evaluated without a warning, in both systems of units', () => {
    for (const units of ['SI', 'US'] as const)
      expect(runModule(settlementOedometer, settlementOedometer.example, { units }).diagnostics).toEqual([])
    expect(run({}, 'US').si('s_all')).toBeCloseTo(run().si('s_all'), 12)
  })

  it('settlement-oedometer: stresses in the middle of the layer, worked by hand', () => {
    const at = run()
    expect(at.si('s_0_1') / 1000).toBeCloseTo(18 + 20 + 36 - 9.81 * 3, 9)
    expect(at.si('I_z_1')).toBeCloseTo(24 / (6 * 8), 9)
    expect((at.si('s_1_1') - at.si('s_0_1')) / 1000).toBeCloseTo((102 * 24) / (6 * 8), 9)
  })

  it('settlement-oedometer: water that rises from below the clay lightens it', () => {
    const [dry, wet] = [run({ water_depth: '10 m' }), run({ water_depth: '3 m' })]
    expect((dry.si('s_0_1') - wet.si('s_0_1')) / 1000).toBeCloseTo(9.81, 9)
  })

  it('settlement-oedometer: a past stress at the present one is no past stress, one above the end is recompression alone', () => {
    const [s_0, s_1] = [run().si('s_0_1'), run().si('s_1_1')]
    expect(pressed(`${s_0} Pa`).si('s_all')).toBeCloseTo(run().si('s_all'), 9)
    expect(pressed(`${s_1} Pa`).si('s_all')).toBeCloseTo((run().si('s_all') * 0.045) / 0.27, 9)
    const between = pressed(`${(s_0 + s_1) / 2} Pa`).si('s_all')
    expect(between).toBeGreaterThan(pressed(`${s_1} Pa`).si('s_all'))
    expect(between).toBeLessThan(run().si('s_all'))
  })

  it('settlement-oedometer: a ratio and the stress borne before are one statement, and the stress counts before the ratio', () => {
    const s_0 = run().si('s_0_1')
    const ratio = run({ layers: [{ ...clay, OCR: '1.3' }] })
    expect(ratio.si('s_all')).toBeCloseTo(pressed(`${1.3 * s_0} Pa`).si('s_all'), 9)
    expect(ratio.si('s_all')).toBeLessThan(run().si('s_all'))
    expect(run({ layers: [{ ...clay, OCR: '1.3', sigma_p: `${1.2 * s_0} Pa` }] }).si('r_p_1')).toBeCloseTo(1.2, 9)
    expect(run({ layers: [{ ...clay, OCR: '0.99' }] }).errors).not.toEqual([])
  })

  it('settlement-oedometer: refuses a stress borne before that is less than the present one', () => {
    const s_0 = run().si('s_0_1')
    expect(pressed(`${1.0001 * s_0} Pa`).errors).toEqual([])
    expect(pressed(`${0.999 * s_0} Pa`).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    const late = run({ layers: [clay, { ...clay, sigma_p: '60 kPa' }] })
    expect(late.errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('settlement-oedometer: swollen clay goes down by what it heaved before it is pressed anew', () => {
    const swollen = (more: Readonly<Record<string, CaseInput>> = {}) => run({ heave: 'swollen', layers: cut, ...more })
    const heights = [0.1, 0.2, 0.3, 0.4, 0.5, 0.5, 1, 1]
    const cut = heights.map(height => ({ ...clay, thickness: `${height} m`, OCR: '1.5' }))
    const soon = run({ layers: cut })
    const heaved = heights.reduce((sum, height, i) => {
      const [before, open] = [swollen().si(`s_0_${i + 1}`), swollen().si(`s_open_${i + 1}`)]
      return sum + (height / 1.8) * 0.045 * Math.log10(before / open)
    }, 0)
    expect(swollen().si('s_all') - soon.si('s_all')).toBeCloseTo(heaved, 9)
    expect((swollen().si('s_0_1') - swollen().si('s_open_1')) / 1000).toBeCloseTo(((38 - 9.81) * 24) / (4.05 * 6.05), 9)
    // As much as was dug out: what heaved comes back, and no more.
    const even = swollen({ pressure: '38 kPa' })
    expect(even.si('p_net')).toBeCloseTo(0, 6)
    expect(even.si('s_all')).toBeCloseTo(heaved, 9)
    expect(even.errors).toEqual([])
    for (const pressure of ['12 kPa', '25 kPa', '38 kPa', '90 kPa', '300 kPa'])
      expect(swollen({ pressure }).agrees[0]?.difference, pressure).toBeLessThan(0.1)
  })

  it('settlement-oedometer: refuses a box on swollen clay that the water lifts', () => {
    const lifted = (pressure: string, heave = 'swollen') =>
      run({ heave, pressure }).limits.find(({ says }) => says.includes('lifts'))?.kept
    expect([lifted('9.82 kPa'), lifted('9.8 kPa')]).toEqual([true, false])
    expect(run({ heave: 'swollen', pressure: '9.8 kPa' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
    expect(lifted('9.8 kPa', 'no time to swell')).toBeUndefined()
  })

  it('settlement-oedometer: cut layers come to what the slices find, and sand adds nothing', () => {
    const cut = Array.from({ length: 8 }, () => ({ ...clay, thickness: '0.5 m' }))
    const [whole, fine] = [run(), run({ layers: cut })]
    const off = (at: ReturnType<typeof run>) => at.agrees[0]?.difference ?? Number.NaN
    expect(fine.si('s_slices')).toBeCloseTo(whole.si('s_slices'), 5)
    expect(off(fine)).toBeLessThan(0.005)
    expect(off(whole)).toBeGreaterThan(off(fine))
    const sand = { ...clay, C_c: '0', C_r: '0' }
    expect(run({ layers: [clay, sand] }).si('s_all')).toBeCloseTo(whole.si('s_all'), 12)
    expect(run({ layers: [sand] }).si('s_all')).toBe(0)
  })

  it('settlement-oedometer: the check turns at the settlement that is allowed', () => {
    const s = run().si('s_all')
    expect(run({ s_allow: `${1.0001 * s} m` }).satisfied('settles_little')).toBe(true)
    expect(run({ s_allow: `${0.9999 * s} m` }).satisfied('settles_little')).toBe(false)
  })

  it('settlement-oedometer: says where nothing is pressed, and where clay may go on below', () => {
    const kept = (more: Readonly<Record<string, CaseInput>>, words: string) =>
      run(more).limits.find(({ says }) => says.includes(words))?.kept
    expect([kept({ pressure: '38.1 kPa' }, 'dug out'), kept({ pressure: '37.9 kPa' }, 'dug out')]).toEqual([
      true,
      false,
    ])
    expect(run({ pressure: '37.9 kPa' }).si('s_all')).toBe(0)
    const deep = (thickness: string) => kept({ layers: [{ ...clay, thickness }] }, 'one and a half')
    expect([deep('6 m'), deep('5.9 m')]).toEqual([true, false])
  })

  it('settlement-oedometer: refuses a length less than the width', () => {
    expect(run({ length: '3.9 m' }).errors.map(({ rule }) => rule)).toContain('limit-exceeded')
  })

  it('settlement-oedometer: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => run({ gamma_sat }).errors.map(({ rule }) => rule)
    expect(rulesAt('18 kN/m^3')).toEqual([])
    expect(rulesAt('17.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
