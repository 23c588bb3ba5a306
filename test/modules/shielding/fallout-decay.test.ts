import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { integrate } from '../../../src/modules/numerics/integrate.ts'
import { falloutDecay } from '../../../src/modules/shielding/fallout-decay.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = {
  rate: '1 Sv/hr',
  measured_at: '1 hr',
  enter_at: '2 hr',
  leave_at: '336 hr',
  protection_factor: '100',
  dose_limit: '250 mSv',
}
const run = (more: Readonly<Record<string, string>> = {}) => runModule(falloutDecay, { ...base, ...more })
const rules = (ran: ReturnType<typeof run>) =>
  ran.diagnostics
    .filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const hours = (value: number) => `${value} hr`

describe('fallout-decay', () => {
  it.each(['SI', 'US'] as const)('fallout-decay: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(falloutDecay, falloutDecay.example, { units }).diagnostics).toEqual([])
  })

  it('fallout-decay: the dose equals the rate added up by quadrature, whatever the times and the exponent', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1, max: 230 }),
        fc.double({ min: 1.05, max: 1.9, noNaN: true }),
        (from, length, n) => {
          const ran = run({ enter_at: hours(from), leave_at: hours(from + length), exponent: n.toFixed(4) })
          const { value } = integrate(t => t ** -Number(n.toFixed(4)), { from, to: from + length })
          expect(ran.si('D_out') / value).toBeCloseTo(1, 8)
          expect(ran.agrees[0]?.difference).toBeLessThan(1e-8)
        },
      ),
      { numRuns: 20 },
    )
  })

  it('fallout-decay: doses of two stays one after the other add up', () => {
    const dose = (from: number, to: number) => run({ enter_at: hours(from), leave_at: hours(to) }).si('D_out')
    expect((dose(2, 30) + dose(30, 300)) / dose(2, 300)).toBeCloseTo(1, 12)
  })

  it('fallout-decay: the dose from one hour on is five times the rate at one hour', () => {
    expect(run({ enter_at: '1 hr' }).si('D_end')).toBeCloseTo(5, 9)
  })

  it('fallout-decay: dose and rate grow with the measured rate', () => {
    expect(run({ rate: '3 Sv/hr' }).si('D_in') / run().si('D_in')).toBeCloseTo(3, 12)
  })

  it('fallout-decay: a short stay has the dose of its rate', () => {
    const ran = run({ enter_at: '10 hr', leave_at: '10.001 hr' })
    expect(ran.si('D_out') / (ran.si('R_a') * 3.6)).toBeCloseTo(1, 3)
  })

  it('fallout-decay: the rate is the same from whichever reading on the curve', () => {
    const later = run({ rate: `${1000 * 24 ** -1.2} mSv/hr`, measured_at: '24 hr' })
    expect(later.si('R_1') / run().si('R_1')).toBeCloseTo(1, 9)
  })

  // memory: The Effects of Nuclear Weapons, 1977, relative rates read off a decay curve; they lie within 16 % of the law
  it.each([
    [2, 400],
    [5, 130],
    [24, 23],
    [48, 10],
    [72, 6.2],
    [200, 1.7],
  ])('fallout-decay: at %d h the law stands within 16 % of the table read off a curve', (time, printed) => {
    const rate = run({ rate: '1000 mSv/hr', enter_at: '1 hr', leave_at: hours(time) }).si('R_b') * 3600 * 1000
    expect(Math.abs(rate / printed - 1)).toBeLessThan(0.16)
  })

  it('fallout-decay: a stay to the time at which the limit is reached brings just the limit', () => {
    const short = run({ protection_factor: '5' })
    expect(short.satisfied('dose')).toBe(false)
    const reached = run({ protection_factor: '5', leave_at: `${short.si('t_stay')} s` })
    expect(reached.si('D_in')).toBeCloseTo(0.25, 9)
    expect(run({ protection_factor: '5', leave_at: `${short.si('t_stay') * 0.99} s` }).satisfied('dose')).toBe(true)
    expect(run({ protection_factor: '5', leave_at: `${short.si('t_stay') * 1.01} s` }).satisfied('dose')).toBe(false)
  })

  it('fallout-decay: where the limit is never reached no time for it is given', () => {
    expect(run().has('t_stay')).toBe(false)
    expect(run({ protection_factor: '17' }).has('u_stay')).toBe(true)
    expect(run({ protection_factor: '18' }).has('u_stay')).toBe(false)
  })

  // by hand: 5 Sv * (2^-0.2 - 4400^-0.2) = 3.419 Sv by half a year, so 250 mSv are reached by then behind less than 13.68; a rest of
  // 5 Sv * 4400^-0.2 = 0.9339 Sv is left from half a year on; the rate is then 1 Sv/h * 4400^-1.2 = 0.04245 mSv/h
  it('fallout-decay: past half a year, where the law ends, no time is given', () => {
    const stay = (P: number) => run({ protection_factor: `${P}` })
    expect(stay(13.67).si('t_stay') / 3600).toBeLessThan(4400)
    expect(stay(13.69).has('t_stay')).toBe(false)
    const leave = (limit: number) => run({ dose_limit: `${limit} Sv` })
    expect(leave(0.9683).si('t_leave') / 3600).toBeLessThan(4400)
    expect(leave(0.9679).has('t_leave')).toBe(false)
    expect(leave(0.9679).errors).toEqual([])
    expect(rules(run({ rate_wanted: '0.0425 mSv/hr' }))).toEqual([])
    expect(rules(run({ rate_wanted: '0.0424 mSv/hr' }))).toEqual(['warning limit-exceeded'])
  })

  it('fallout-decay: leaving at the time given, all later life in the open included, brings just the limit', () => {
    const ran = run({ dose_limit: '2 Sv' })
    const left = ran.si('t_leave') / 3600
    const inside = (5 * (2 ** -0.2 - left ** -0.2)) / 100
    expect(inside + 5 * left ** -0.2).toBeCloseTo(2, 9)
  })

  it('fallout-decay: people may leave at once where the open keeps the limit, and never where the place does not', () => {
    expect(run({ dose_limit: '5 Sv' }).si('t_leave')).toBe(7200)
    expect(run({ dose_limit: '5 Sv', protection_factor: '1' }).si('t_leave')).toBe(7200)
    expect(run({ protection_factor: '10' }).has('t_leave')).toBe(false)
    expect(run({ protection_factor: '1' }).has('t_leave')).toBe(false)
    expect(run({ protection_factor: '1' }).errors).toEqual([])
  })

  it('fallout-decay: more protection never asks for a later leaving', () => {
    const left = (P: number) => run({ dose_limit: '2 Sv', protection_factor: `${P}` }).si('t_leave')
    expect(left(1000)).toBeLessThan(left(100))
    expect(left(100)).toBeLessThan(left(5))
  })

  it.each([
    [336, []],
    [336.1, ['warning limit-exceeded']],
    [4400, ['warning limit-exceeded']],
    [4401, ['warning limit-exceeded', 'warning limit-exceeded']],
  ])('fallout-decay: a stay to %d h says %j', (end, said) => {
    expect(rules(run({ leave_at: hours(end) }))).toEqual(said)
  })

  it.each([
    [{ leave_at: '2 hr' }, 1],
    [{ leave_at: '2.001 hr' }, 0],
    [{ deposit_at: '1 hr' }, 0],
    [{ deposit_at: '1.1 hr' }, 1],
    [{ deposit_at: '2 hr', measured_at: '3 hr' }, 0],
    [{ deposit_at: '2.1 hr', measured_at: '3 hr' }, 1],
  ])('fallout-decay: %j is refused %d times', (more, count) => {
    expect(run(more).errors.map(({ rule }) => rule)).toEqual(Array(count).fill('limit-exceeded'))
  })

  it.each([
    ['measured_at', '0.49 hr'],
    ['enter_at', '0.49 hr'],
    ['protection_factor', '0.99'],
    ['dose_limit', '0 mSv'],
    ['rate', '0 mSv/hr'],
    ['exponent', '1'],
    ['exponent', '2.01'],
  ])('fallout-decay: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it.each([
    ['measured_at', '0.5 hr'],
    ['enter_at', '0.5 hr'],
    ['protection_factor', '1'],
    ['exponent', '2'],
  ])('fallout-decay: takes %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors).toEqual([])
  })

  it('fallout-decay: roentgen is no dose equivalent and is refused', () => {
    expect(run({ rate: '100 roentgen/hr' }).errors.length).toBeGreaterThan(0)
  })

  it('fallout-decay: rem are shown in US units', () => {
    const ran = runModule(
      falloutDecay,
      { ...base, rate: '100 rem/hr', enter_at: '1 hr', leave_at: '48 hr' },
      { units: 'US' },
    )
    expect(ran.shown('D_out')).toBe('269.5 rem')
  })

  it('fallout-decay: the chart falls along a straight line of the slope of the law', () => {
    const drawing = drawingOf(falloutDecay, base)
    const curve = drawing.shapes.find(shape => shape.kind === 'line' && shape.weight === 'thick')
    const [[x0 = 0, y0 = 0] = [], [x1 = 0, y1 = 0] = []] = curve ? pointsOf(curve) : []
    expect((y1 - y0) / (x1 - x0)).toBeCloseTo(-1.2, 9)
    expect(drawing.shapes.flatMap(shape => (shape.kind === 'label' ? [shape.label.text] : []))).toEqual(
      expect.arrayContaining(['10 h', '100 h']),
    )
    // the rate inside runs below it, two powers of ten down behind a factor of 100
    const inside = drawing.shapes.filter(shape => shape.kind === 'line' && shape.weight === 'thick')[1]
    const [[, below = 0] = []] = inside ? pointsOf(inside) : []
    expect(below).toBeCloseTo(-2, 9)
  })

  it('fallout-decay: in the open there is one line only', () => {
    const drawing = drawingOf(falloutDecay, { ...base, protection_factor: '1' })
    expect(drawing.shapes.filter(shape => shape.kind === 'line' && shape.weight === 'thick')).toHaveLength(1)
  })
})
