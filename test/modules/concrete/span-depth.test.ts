import { describe, expect, it } from 'vitest'
import { spanDepthAci318 } from '../../../src/modules/concrete/span-depth-aci-318.ts'
import { spanDepthEn1992 } from '../../../src/modules/concrete/span-depth-en-1992.ts'
import { spanDepthIs456 } from '../../../src/modules/concrete/span-depth-is-456.ts'
import type { Module } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'

type Changes = Readonly<Record<string, string>>
const runner =
  (module: Module, base: Changes) =>
  (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
    runModule(module, { ...base, ...changes }, { units })
const depth = { span: '4 m', effective_depth: '200 mm', steel_required: '800 mm^2', steel_provided: '1000 mm^2' }
const is = runner(spanDepthIs456, { ...depth, support: 'simple', steel: 'Fe 415' })
const en = runner(spanDepthEn1992, { ...depth, support: 'simple', f_ck: '30 MPa', f_yk: '500 MPa' })
const aci = runner(spanDepthAci318, { span: '4 m', support: 'simple', f_y: '60000 psi', thickness: '200 mm' })
const rules = (result: ReturnType<typeof is>) => result.errors.map(fault => fault.rule)

describe('span to depth by IS 456', () => {
  it('span-depth-is-456: the example is deep enough', () => {
    const result = runModule(spanDepthIs456, spanDepthIs456.example)
    expect(result.diagnostics).toEqual([])
    expect(result.satisfied('deflection')).toBe(true)
  })

  // IS 456 cl. 23.2.1 (memory): 7, 20 and 26.
  it.each([
    ['cantilever', 7],
    ['simple', 20],
    ['continuous', 26],
  ])('span-depth-is-456: the basic ratio of a %s member is %d', (support, ratio) => {
    expect(is({ support }).si('r_all') / is({ support }).si('k_t')).toBeCloseTo(ratio, 9)
  })

  it('span-depth-is-456: the check turns at the allowed ratio', () => {
    const least = is().si('d_min')
    expect(least).toBeCloseTo(4 / is().si('r_all'), 12)
    // The steel ratio moves with the depth, so the span is moved instead.
    const span = is().si('r_all') * 0.2
    expect(is({ span: `${0.9999 * span} m` }).satisfied('deflection')).toBe(true)
    expect(is({ span: `${1.0001 * span} m` }).satisfied('deflection')).toBe(false)
  })

  // Fig. 4 (looked up as a fit): the factor is at most 2, however little steel and stress there is.
  it('span-depth-is-456: little steel under little stress has the factor 2 and no more', () => {
    expect(is({ steel_required: '10 mm^2', steel_provided: '240 mm^2' }).si('k_t')).toBe(2)
    expect(is({ steel_required: '240 mm^2', steel_provided: '240 mm^2' }).si('k_t')).toBeLessThanOrEqual(2)
  })

  it('span-depth-is-456: more stress or more steel lower the factor', () => {
    expect(is({ steel_required: '900 mm^2' }).si('k_t')).toBeLessThan(is().si('k_t'))
    const same = is({ steel_required: '1600 mm^2', steel_provided: '2000 mm^2' })
    expect(same.si('f_s')).toBeCloseTo(is().si('f_s'), 3)
    expect(same.si('k_t')).toBeLessThan(is().si('k_t'))
  })

  it('span-depth-is-456: past 10 m the ratio falls with the span', () => {
    expect(is({ span: '10 m' }).si('k_l')).toBe(1)
    expect(is({ span: '12.5 m' }).si('k_l')).toBeCloseTo(0.8, 12)
  })

  it('span-depth-is-456: refuses steel and stress outside the figure, and says where there is hardly any', () => {
    expect(rules(is({ steel_provided: '6000 mm^2' }))).toEqual([])
    expect(rules(is({ steel_provided: '6001 mm^2' }))).toContain('limit-exceeded')
    expect(rules(is({ steel: 'Fe 500', steel_required: '1000 mm^2' }))).toEqual([])
    expect(rules(is({ steel: 'Fe 500', steel_required: '1001 mm^2' }))).toContain('limit-exceeded')
    expect(is({ steel_required: '200 mm^2', steel_provided: '240 mm^2' }).limits.at(-1)?.kept).toBe(true)
    expect(is({ steel_required: '200 mm^2', steel_provided: '239 mm^2' }).limits.at(-1)?.kept).toBe(false)
  })

  it('span-depth-is-456: American units give the same depth', () => {
    expect(is({}, 'US').si('d_min')).toBeCloseTo(is().si('d_min'), 12)
    expect(is({}, 'US').shown('d_min')).toMatch(/ in$/)
  })
})

describe('span to depth by EN 1992', () => {
  it('span-depth-en-1992: the example is deep enough', () => {
    const result = runModule(spanDepthEn1992, spanDepthEn1992.example)
    expect(result.diagnostics).toEqual([])
    expect(result.satisfied('deflection')).toBe(true)
  })

  it('span-depth-en-1992: both branches meet at the reference ratio', () => {
    const at = (share: number) =>
      en({ steel_required: `${share * 200 * Math.sqrt(30)} mm^2`, steel_provided: '3000 mm^2' })
    expect(at(1).si('r_0')).toBeCloseTo(11 + 1.5 * Math.sqrt(30), 6)
    expect(at(1.000001).si('r_0')).toBeCloseTo(at(0.999999).si('r_0'), 3)
    expect(at(0.5).si('r_0')).toBeCloseTo(11 + 3 * Math.sqrt(30) + 3.2 * Math.sqrt(30), 6)
  })

  it('span-depth-en-1992: the check turns at the allowed ratio', () => {
    const span = en().si('r_all') * 0.2
    expect(en({ span: `${0.9999 * span} m` }).satisfied('deflection')).toBe(true)
    expect(en({ span: `${1.0001 * span} m` }).satisfied('deflection')).toBe(false)
  })

  it('span-depth-en-1992: more steel than needed helps, up to half as much again', () => {
    expect(en({ steel_provided: '800 mm^2' }).si('k_s')).toBe(1)
    expect(en().si('k_s')).toBeCloseTo(1.25, 12)
    expect(en({ steel_provided: '2000 mm^2' }).si('k_s')).toBe(1.5)
    expect(en({ f_yk: '600 MPa', steel_provided: '800 mm^2' }).si('k_s')).toBeCloseTo(500 / 600, 12)
  })

  it('span-depth-en-1992: the limits turn where they stand', () => {
    expect(rules(en({ steel_provided: '800 mm^2' }))).toEqual([])
    expect(rules(en({ steel_provided: '799 mm^2' }))).toContain('limit-exceeded')
    const much = (steel: string) => rules(en({ steel_required: steel, steel_provided: '9000 mm^2' }))
    expect(much('8000 mm^2')).toEqual([])
    expect(much('8001 mm^2')).toContain('limit-exceeded')
    expect(en({ span: '7 m' }).limits.at(-1)?.kept).toBe(true)
    expect(en({ span: '7.01 m' }).limits.at(-1)?.kept).toBe(false)
    // The formula gives 39.2 and 41.2 for 600 and 580 mm2 on 200 mm, C30, a simple span.
    const little = (steel: string) => en({ steel_required: steel }).limits.at(-2)?.kept
    expect(little('600 mm^2')).toBe(true)
    expect(little('580 mm^2')).toBe(false)
    expect(rules(en({ f_ck: '11 MPa' }))).toContain('value-outside-range')
    expect(rules(en({ f_yk: '399 MPa' }))).toContain('value-outside-range')
  })

  it('span-depth-en-1992: American units give the same depth', () => {
    expect(en({}, 'US').si('d_min')).toBeCloseTo(en().si('d_min'), 12)
  })
})

describe('least thickness by ACI 318', () => {
  // ACI 318-19 Table 7.3.1.1 (memory): l/10, l/20, l/24, l/28.
  it.each([
    ['cantilever', 10],
    ['simple', 20],
    ['one end continuous', 24],
    ['both ends continuous', 28],
  ])('span-depth-aci-318: a slab held %s has one part in %d of its span', (support, part) => {
    expect(aci({ support }).si('h_min')).toBeCloseTo(4 / part, 12)
  })

  it('span-depth-aci-318: the check turns at the least thickness', () => {
    expect(aci().satisfied('deflection')).toBe(true)
    expect(aci({ thickness: '199.9 mm' }).satisfied('deflection')).toBe(false)
  })

  it('span-depth-aci-318: other steel has its factor: 0.8 for 40,000 psi, 1.2 for 80,000', () => {
    expect(aci({ f_y: '40000 psi' }).si('k_y')).toBeCloseTo(0.8, 12)
    expect(aci({ f_y: '80000 psi' }).si('k_y')).toBeCloseTo(1.2, 12)
    expect(rules(aci({ f_y: '39999 psi' }))).toContain('value-outside-range')
    expect(rules(aci({ f_y: '100001 psi' }))).toContain('value-outside-range')
  })

  it('span-depth-aci-318: a span beyond solid slabs is said', () => {
    expect(aci({ span: '40 ft' }).limits.at(-1)?.kept).toBe(true)
    expect(aci({ span: '40.1 ft' }).limits.at(-1)?.kept).toBe(false)
  })

  it('span-depth-aci-318: American units give the same thickness', () => {
    expect(aci({}, 'US').si('h_min')).toBeCloseTo(0.2, 12)
    expect(aci({}, 'US').shown('h_min')).toBe('7.874 in')
  })
})
