import { describe, expect, it } from 'vitest'
import { oneWayShearAci318 } from '../../../src/modules/concrete/one-way-shear-aci-318.ts'
import { runModule } from '../run-module.ts'

const base = {
  shear: '5000 plf',
  thickness: '10 in',
  effective_depth: '8.5 in',
  steel_ratio: '0.0055',
  f_c: '4000 psi',
}
type Changes = Partial<typeof base> & { thrust?: string; lambda?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'US') =>
  runModule(oneWayShearAci318, { ...base, ...changes }, { units })

describe('one-way shear by ACI 318', () => {
  it('one-way-shear-aci-318: the example evaluates without a message', () => {
    expect(runModule(oneWayShearAci318, oneWayShearAci318.example).diagnostics).toEqual([])
  })

  it('one-way-shear-aci-318: the check turns at three quarters of what the concrete carries', () => {
    const most = run().si('V_d')
    expect(most / run().si('V_c')).toBeCloseTo(0.75, 12)
    expect(run({ shear: `${0.9999 * most} N/m` }).satisfied('no_stirrups')).toBe(true)
    expect(run({ shear: `${1.0001 * most} N/m` }).satisfied('no_stirrups')).toBe(false)
    expect(run({ shear: `-${1.0001 * most} N/m` }).satisfied('no_stirrups')).toBe(false)
  })

  // M. P. Collins and D. Kuchma, How safe are our large, lightly reinforced concrete beams, slabs and footings?, ACI Structural
  // Journal 96 (1999), series BN of Podgorniak-Stanik (memory): 300 mm wide, 37.2 MPa, no stirrups; depth, steel, failing shear.
  const beams = [
    [110, 0.0091, 40.1],
    [225, 0.0089, 73],
    [450, 0.0081, 131.9],
    [925, 0.0076, 192.1],
  ] as const
  it.each(beams)(
    'one-way-shear-aci-318: beam %d mm deep with %d of steel failed at %d kN, above the code',
    (d, rho, V) => {
      const { si } = run({
        effective_depth: `${d} mm`,
        thickness: `${1.08 * d + 8} mm`,
        steel_ratio: `${rho}`,
        f_c: '37.2 MPa',
      })
      const safety = V / (0.3 * (si('V_c') / 1000))
      expect(safety).toBeGreaterThan(1)
      expect(safety).toBeLessThan(1.5)
      if (d > 900) expect(safety * si('lambda_s'), 'without the factor for size').toBeLessThan(1)
    },
  )

  // ACI 318-19 Table 22.5.5.1: (c) falls below (a), 2 sqrt(f'c), where lambda_s rho^(1/3) < 1/4: 1.56 % in thin members.
  it('one-way-shear-aci-318: below 1.56 % of steel a thin slab has less than the older rule', () => {
    const older = 2 * Math.sqrt(4000) * 6894.757293168361
    expect(run({ steel_ratio: '0.0156' }).si('v_a') / older).toBeLessThan(1)
    expect(run({ steel_ratio: '0.0157' }).si('v_a') / older).toBeGreaterThan(1)
  })

  // ACI 318M-19 Table 22.5.5.1 (looked up in a published guide): 0.66 in N and mm, rounded from 0.664.
  it('one-way-shear-aci-318: the metric form of the code gives the same within its rounding', () => {
    const { si } = run({ effective_depth: '400 mm', thickness: '450 mm', f_c: '30 MPa' })
    const metric = 0.66 * Math.sqrt(2 / (1 + 0.004 * 400)) * Math.cbrt(0.0055) * Math.sqrt(30) * 1e6
    expect(Math.abs(si('v_a') / metric - 1)).toBeLessThanOrEqual(0.012)
  })

  it('one-way-shear-aci-318: thrust adds a sixth of its stress, at most one twentieth of the strength', () => {
    const more = (thrust: string) => run({ thrust }).si('v_a') - run().si('v_a')
    expect(more('12000 plf') / 6894.757293168361).toBeCloseTo(100 / 6, 6)
    expect(more('900000 plf') / 6894.757293168361).toBeCloseTo(200, 6)
  })

  it('one-way-shear-aci-318: five times the root of the strength is the most', () => {
    const { si } = run({ steel_ratio: '0.06', thrust: '144000 plf' })
    expect(si('V_c')).toBeCloseTo(si('v_b') * si('effective_depth'), 6)
    expect(si('v_a')).toBeGreaterThan(si('v_b'))
  })

  it('one-way-shear-aci-318: past 10,000 psi a strength counts as 10,000', () => {
    expect(run({ f_c: '10000 psi' }).si('r_c')).toBeCloseTo(100, 9)
    expect(run({ f_c: '12000 psi' }).si('V_c')).toBeCloseTo(run({ f_c: '10000 psi' }).si('V_c'), 6)
  })

  it('one-way-shear-aci-318: twice the depth carries less than twice the shear', () => {
    const thick = run({ effective_depth: '30 in', thickness: '33 in' }).si('V_c')
    const thin = run({ effective_depth: '15 in', thickness: '17 in' }).si('V_c')
    expect(thick).toBeGreaterThan(thin)
    expect(thick).toBeLessThan(2 * thin)
  })

  it('one-way-shear-aci-318: lightweight concrete carries less', () => {
    expect(run({ lambda: '0.75' }).si('V_c') / run().si('V_c')).toBeCloseTo(0.75, 12)
  })

  it('one-way-shear-aci-318: little steel is said', () => {
    const kept = (steel_ratio: string) => run({ steel_ratio }).limits.at(-1)?.kept
    expect(kept('0.00212')).toBe(true)
    expect(kept('0.00211')).toBe(false)
  })

  it.each([
    [{ effective_depth: '10 in' }, 'limit-exceeded'],
    [{ f_c: '2499 psi' }, 'value-outside-range'],
    [{ lambda: '1.01' }, 'value-outside-range'],
    [{ lambda: '0.74' }, 'value-outside-range'],
    [{ thrust: '-1 plf' }, 'value-outside-range'],
  ])('one-way-shear-aci-318: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('one-way-shear-aci-318: metric units give the same shear', () => {
    expect(run({}, 'SI').si('V_d')).toBeCloseTo(run().si('V_d'), 6)
    expect(run({}, 'SI').shown('V_d')).toMatch(/ kN\/m$/)
  })
})
