import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { strengthAge } from '../../../src/modules/concrete/strength-age.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = { readonly strength_needed: string; readonly planned_age: string }
const base = { f_ck: '30 MPa', cement: 'class N', temperature: '20 degC' }
const run = (row: Partial<Row> = {}, more: Partial<typeof base> = {}) =>
  runModule(strengthAge, {
    ...base,
    ...more,
    works: [{ strength_needed: '20 MPa', planned_age: '28 day', ...row }],
  })
const days = (ran: ReturnType<typeof run>, name: string) => ran.si(name) / 86400

describe('strength-age', () => {
  it.each(['SI', 'US'] as const)('strength-age: the example evaluates without a message, in %s', units => {
    expect(runModule(strengthAge, strengthAge.example, { units }).diagnostics).toEqual([])
  })

  // EN 1992-1-1 Eq. 3.2, computed apart to three decimals; CEB-FIP Model Code 1990 has the same coefficients.
  it.each([
    ['class R', 3, 0.663],
    ['class R', 7, 0.819],
    ['class R', 14, 0.92],
    ['class N', 3, 0.598],
    ['class N', 7, 0.779],
    ['class N', 14, 0.902],
    ['class S', 3, 0.458],
    ['class S', 7, 0.684],
    ['class S', 14, 0.854],
  ])('strength-age: %s at %d adjusted days has %d of the mean strength', (cement, t, printed) => {
    const k = run().si('k_T')
    const ran = run({ planned_age: `${t / k} day` }, { cement })
    expect(Math.abs((ran.si('f_age_1') / 1e6 + 8) / 38 - printed)).toBeLessThan(0.0006)
  })

  it('strength-age: at the age given the strength is just what was needed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 30 }),
        fc.constantFrom('class R', 'class N', 'class S'),
        fc.integer({ min: 5, max: 35 }),
        (need, cement, temperature) => {
          const asked = { strength_needed: `${need} MPa` }
          const more = { cement, temperature: `${temperature} degC` }
          const t = run(asked, more).si('t_need_1')
          const ran = run({ ...asked, planned_age: `${t} s` }, more)
          expect(ran.si('f_age_1') / 1e6).toBeCloseTo(need, 6)
          expect(ran.satisfied('old_enough')).toBe(true)
          expect(run({ ...asked, planned_age: `${t * 0.99} s` }, more).satisfied('old_enough')).toBe(false)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('strength-age: at 28 adjusted days the strength is that of 28 days, and no more is counted later', () => {
    const ran = run({ strength_needed: '30 MPa' })
    expect(days(ran, 't_T_need_1')).toBeCloseTo(28, 9)
    expect(run({ planned_age: '90 day' }).si('f_age_1')).toBe(30e6)
  })

  it('strength-age: what is needed early still waits three adjusted days', () => {
    const ran = run({ strength_needed: '2 MPa' }, { temperature: '10 degC' })
    expect(days(ran, 't_T_need_1')).toBe(3)
    expect(days(ran, 't_need_1')).toBeCloseTo(3 / 0.6156, 2)
  })

  it('strength-age: cold, slow cement and more strength all ask for more time', () => {
    const t = (row: Partial<Row>, more: Partial<typeof base> = {}) => run(row, more).si('t_need_1')
    expect(t({}, { temperature: '10 degC' })).toBeGreaterThan(t({}))
    expect(t({}, { cement: 'class S' })).toBeGreaterThan(t({}))
    expect(t({ strength_needed: '25 MPa' })).toBeGreaterThan(t({}))
    expect(t({}, { f_ck: '40 MPa' })).toBeLessThan(t({}))
  })

  // EN 1992-1-1 Eq. B.10 is Arrhenius' law with 4000 K; 20 degC is its reference.
  it('strength-age: a warm day counts as much more as the law of Arrhenius says', () => {
    const k = (temperature: string) => run({}, { temperature }).si('k_T')
    expect(Math.log(k('30 degC') / k('10 degC'))).toBeCloseTo(4000 * (1 / 283 - 1 / 303), 9)
    expect(k('68 degF')).toBeCloseTo(k('20 degC'), 9)
  })

  // EN 1992-1-1 Eq. B.10 by hand: 0.998 at 20, 0.616 at 10, 0.478 at 5 degC.
  it.each([
    [20, 0.998],
    [10, 0.616],
    [5, 0.478],
  ])('strength-age: a day at %d degC counts as %d', (T, printed) => {
    expect(Math.abs(run({}, { temperature: `${T} degC` }).si('k_T') - printed)).toBeLessThanOrEqual(0.0005)
  })

  // ACI 209R-92, Eq. 2-1 and its table (memory): moist-cured concrete of type I cement has 0.46, 0.70 and 0.88 of its strength.
  it.each([
    [3, 0.46],
    [7, 0.7],
    [14, 0.88],
  ])('strength-age: normal cement of C30/37 at %d days comes to %d of its strength, within 0.04', (t, printed) => {
    const k = run().si('k_T')
    expect(Math.abs(run({ planned_age: `${t / k} day` }).si('f_age_1') / 30e6 - printed)).toBeLessThan(0.04)
  })

  // Two other rules for the cold (memory): Nurse and Saul, (T + 10)/30, and Sadgrove in CIRIA Report 136, ((T + 16)/36)^2.
  it.each([5, 10, 15])('strength-age: a day at %d degC lies between the rules of Sadgrove and of Nurse and Saul', T => {
    const k = run({}, { temperature: `${T} degC` }).si('k_T')
    expect(k).toBeGreaterThan(((T + 16) / 36) ** 2)
    expect(k).toBeLessThan((T + 10) / 30)
  })

  it('strength-age: more than the strength of 28 days is refused', () => {
    expect(run({ strength_needed: '30 MPa' }).errors).toEqual([])
    expect(run({ strength_needed: '30.1 MPa' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('strength-age: below 5 degC it warns', () => {
    const warm = (temperature: string) => run({}, { temperature }).limits[1]?.kept
    expect([warm('5 degC'), warm('4.9 degC')]).toEqual([true, false])
  })

  it.each([
    [{}, { temperature: '-0.1 degC' }],
    [{}, { temperature: '80.1 degC' }],
    [{}, { f_ck: '11.9 MPa' }],
    [{}, { f_ck: '50.1 MPa' }],
    [{ strength_needed: '1.9 MPa' }, {}],
    [{ planned_age: '0 day' }, {}],
    [{ planned_age: '366 day' }, {}],
  ])('strength-age: refuses %j %j', (row, more) => {
    expect(run(row, more).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })

  it('strength-age: the curve rises to the strength of 28 days, and a line stands at each age', () => {
    const drawing = drawingOf(strengthAge, strengthAge.example)
    const curve = drawing.shapes.find(shape => shape.kind === 'line' && shape.weight === 'thick')
    const heights = curve ? pointsOf(curve).map(([, y]) => y) : []
    expect(heights.every((y, i) => i === 0 || y >= (heights[i - 1] ?? 0))).toBe(true)
    expect(heights.at(-1)).toBe(30)
    expect(
      drawing.shapes.filter(shape => shape.kind === 'line' && shape.dashed && shape.points[0]?.[1] === 0),
    ).toHaveLength(3)
  })
})
