import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { protectionSummary } from '../../../src/modules/shielding/protection-summary.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const paths = (factors: readonly number[]) => factors.map(factor => ({ factor: String(factor) }))
const inputs = (factors: readonly number[], more: Readonly<Record<string, string>> = {}) => ({
  ...protectionSummary.example,
  paths: paths(factors),
  ...more,
})
const run = (factors: readonly number[], more: Readonly<Record<string, string>> = {}) =>
  runModule(protectionSummary, inputs(factors, more))
const someFactors = fc.array(fc.integer({ min: 50, max: 9000 }), { minLength: 2, maxLength: 8 })

describe('protection-summary', () => {
  it.each(['SI', 'US'] as const)('protection-summary: the example evaluates without a fault, in %s', units => {
    expect(runModule(protectionSummary, protectionSummary.example, { units }).diagnostics).toEqual([])
  })

  it('protection-summary: the whole is below the least path, and better without any one of them', () => {
    fc.assert(
      fc.property(someFactors, factors => {
        const whole = run(factors).si('P')
        expect(whole).toBeLessThan(Math.min(...factors))
        expect(run(factors.slice(1)).si('P')).toBeGreaterThan(whole)
      }),
      { numRuns: 15 },
    )
  })

  it('protection-summary: shares add up to 1 and the largest is that of the least factor', () => {
    fc.assert(
      fc.property(someFactors, factors => {
        const ran = run(factors)
        const shares = factors.map((_, i) => ran.si(`s_path_${i + 1}`))
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
        expect(ran.si('s_max')).toBeCloseTo(ran.si('P') / Math.min(...factors), 12)
      }),
      { numRuns: 15 },
    )
  })

  it.each([
    ['protection', { required_factor: '99.99' }, { required_factor: '100.1' }],
    ['dose', { dose_limit: '200.1 mSv' }, { dose_limit: '199.9 mSv' }],
    ['protection_published', { published_factor: 'marked shelter' }, { published_factor: 'ten halvings' }],
    ['dose_published', { published_dose: 'life saving' }, { published_dose: 'valuable property' }],
  ])('protection-summary: the check of %s is kept inside %j and missed outside %j', (check, kept, missed) => {
    expect(run([100], kept).satisfied(check)).toBe(true)
    expect(run([100], missed).satisfied(check)).toBe(false)
  })

  // EPA-400-R-92-001, Table 2-2 (quoted); 10 CFR 835.208 and 20.1201(a) (looked up)
  it.each([
    ['public, one year', 1],
    ['emergency worker', 50],
    ['valuable property', 100],
    ['life saving', 250],
    ['worker, one year', 50],
  ])('protection-summary: the published dose of %s is %d mSv', (published_dose, printed) => {
    expect(run([100], { published_dose }).si('D_pub') * 1000).toBeCloseTo(printed, 9)
  })

  // memory: National shelter programme 40, planning guidance 10; Kearny ten halvings (quoted)
  it.each([
    ['adequate shelter', 10],
    ['marked shelter', 40],
    ['ten halvings', 1000],
  ])('protection-summary: the published factor of %s is %d', (published_factor, printed) => {
    expect(run([100], { published_factor }).si('P_pub')).toBe(printed)
  })

  it('protection-summary: paths that let through more than there is are refused', () => {
    expect(run([2, 2]).errors).toEqual([])
    expect(run([2, 2, 1000]).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it.each(['0.99', '1.1e12'])('protection-summary: refuses a path of factor %s', factor => {
    const ran = runModule(protectionSummary, { ...protectionSummary.example, paths: [{ factor }] })
    expect(ran.errors[0]?.rule).toBe('value-outside-range')
  })

  it.each([
    ['required_factor', '0.99'],
    ['dose_outside', '0 mSv'],
    ['dose_limit', '0 mSv'],
  ])('protection-summary: refuses %s of %s', (name, value) => {
    expect(run([100], { [name]: value }).errors[0]?.rule).toBe('value-outside-range')
  })

  it('protection-summary: the chart names its paths, those without a name by their place', () => {
    const drawing = drawingOf(protectionSummary, {
      ...protectionSummary.example,
      paths: [{ path: 'roof', factor: '1000' }, { factor: '250' }],
    })
    expect(drawing.shapes.flatMap(shape => (shape.kind === 'label' ? (shape.label.text ?? []) : []))).toEqual([
      'roof',
      'path 2',
    ])
  })

  it('protection-summary: the chart has a bar as long as the share of each path', () => {
    const drawing = drawingOf(protectionSummary, inputs([1000, 250]))
    const bars = drawing.shapes.filter(({ kind }) => kind === 'polygon').map(shape => pointsOf(shape)[1]?.[0] ?? 0)
    expect(bars).toHaveLength(2)
    expect((bars[0] ?? 0) / (bars[1] ?? 1)).toBeCloseTo(0.2 / 0.8, 12)
  })
})
