import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cableDrop } from '../../../src/modules/power/cable-drop.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, string>>

const base: Inputs = {
  conductor: 'plain copper, class 1 or 2',
  area: '6 mm^2',
  current: '10 A',
  run: '10 m',
  voltage: '12 V',
  drop_limit: '10 percent',
  conductor_temperature: '20 degC',
  fuse: '15 A',
  ampacity: '25 A',
}
const run = (more: Inputs = {}) => runModule(cableDrop, { ...base, ...more })
const rules = (more: Inputs) => run(more).errors.map(({ rule }) => rule)

describe('cable drop', () => {
  it.each(['SI', 'US'] as const)('cable-drop: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(cableDrop, cableDrop.example, { units }).diagnostics).toEqual([])
  })

  // (234.5 + t)/254.5 for copper and (228.1 + t)/248.1 for aluminium: the same line, memory
  it.each([
    ['plain copper, class 1 or 2', '10 mm^2', 234.5, 1.83],
    ['aluminium', '10 mm^2', 228.1, 3.08],
  ])('cable-drop: %s warms along its own line', (conductor, area, zero, cold) => {
    for (const theta of [-20, 20, 75, 100]) {
      const warm = run({ conductor, area, conductor_temperature: `${theta} degC`, drop_limit: '20 percent' })
      const expected = (cold * (zero + theta)) / (zero + 20) / 1000
      expect(Math.abs(warm.si('R_t') / expected - 1)).toBeLessThan(1e-3)
    }
  })

  it('cable-drop: the warm copper agrees with the factors of IEC 60228 (printed, looked up; they use 0.004)', () => {
    const printed = { 30: 0.962, 45: 0.909, 60: 0.862, 75: 0.82, 90: 0.781 }
    for (const [theta, factor] of Object.entries(printed)) {
      const ran = run({ conductor_temperature: `${theta} degC` })
      expect(Math.abs(ran.si('R_20') / ran.si('R_t') / factor - 1)).toBeLessThan(0.005)
    }
  })

  it('cable-drop: the drop grows with length and current, the loss with the square of the current', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 }), (metres, amperes) => {
        const long = { voltage: '48 V', run: `${metres} m`, current: `${amperes} A` }
        const [once, twice] = [run(long), run({ ...long, current: `${2 * amperes} A` })]
        expect(twice.si('V_drop')).toBeCloseTo(2 * once.si('V_drop'), 9)
        expect(twice.si('P_loss')).toBeCloseTo(4 * once.si('P_loss'), 6)
        expect(once.si('V_drop')).toBeCloseTo((2 * metres * amperes * 3.08) / 1000, 9)
      }),
      { numRuns: 20 },
    )
  })

  it('cable-drop: a run of just the longest keeps the drop, and a longer one does not', () => {
    const longest = run().si('l_most')
    expect(run({ run: `${longest} m` }).satisfied('drop')).toBe(true)
    expect(run({ run: `${longest * 1.001} m` }).satisfied('drop')).toBe(false)
    expect(run({ run: `${longest} m` }).si('R_most')).toBeCloseTo(0.00308, 9)
  })

  it('cable-drop: the fuse carries the load and protects the cable', () => {
    expect(run({ fuse: '10 A' }).satisfied('fuse_carries')).toBe(true)
    expect(run({ fuse: '9.9 A' }).satisfied('fuse_carries')).toBe(false)
    expect(run({ fuse: '25 A' }).satisfied('fuse_protects')).toBe(true)
    expect(run({ fuse: '25.1 A' }).satisfied('fuse_protects')).toBe(false)
  })

  // NFPA 70, 690.9: 1.25 times the current that flows on; a regulator of 60 A wants a fuse of 75 A or more (memory)
  it('cable-drop: a fuse that is charged through has a quarter over the charging current', () => {
    const charged = (fuse: string) => run({ charging_current: '60 A', fuse, ampacity: '125 A', area: '35 mm^2' })
    expect(charged('75 A').errors).toEqual([])
    expect(charged('75 A').shown('I_cont')).toBe('75.00 A')
    expect(charged('75 A').satisfied('fuse_holds')).toBe(true)
    expect(charged('74.9 A').satisfied('fuse_holds')).toBe(false)
    expect(run().has('I_cont')).toBe(false)
    expect(rules({ charging_current: '0 A' })).toEqual(['value-outside-range'])
    expect(rules({ charging_current: '1000 A' })).toEqual([])
    expect(rules({ charging_current: '1001 A' })).toEqual(['value-outside-range'])
  })

  // IEC 60364-4-43, 433.1: I_2 at most 1.45 I_z; IEC 60269-1: I_2 is 1.6 I_n from 16 A, 1.9 from 4 A to 16 A, 2.1 to 4 A (memory)
  it.each([
    ['fuse', 16, 1.6],
    ['fuse', 15.9, 1.9],
    ['fuse', 4.1, 1.9],
    ['fuse', 4, 2.1],
    ['circuit breaker', 16, 1.45],
  ])('cable-drop: a %s of %f A is sure to open at %f times that', (device, amperes, times) => {
    const laid = (ampacity: number) => run({ device, fuse: `${amperes} A`, ampacity: `${ampacity} A`, current: '1 A' })
    const least = (times * amperes) / 1.45
    expect(laid(30).si('I_2')).toBeCloseTo(times * amperes, 9)
    expect(laid(least * 1.0001).satisfied('fuse_opens')).toBe(true)
    expect(laid(least * 0.9999).satisfied('fuse_opens')).toBe(false)
  })

  it('cable-drop: sizes between printed ones, and aluminium under 10 mm², are refused', () => {
    expect(rules({ area: '5 mm^2' })).toEqual(['lookup-outside-table'])
    expect(rules({ conductor: 'aluminium' })).toEqual(['lookup-outside-table'])
    expect(rules({ conductor: 'aluminium', area: '10 mm^2' })).toEqual([])
  })

  it('cable-drop: a cable that takes the whole voltage is refused', () => {
    const most = 12 / (2 * 10 * 0.00308)
    expect(rules({ run: `${most * 0.999} m` })).toEqual([])
    expect(rules({ run: `${most * 1.001} m` })).toEqual(['limit-exceeded'])
  })

  it('cable-drop: says where a conductor is thin', () => {
    const thin = (area: string) => run({ area, current: '1 A' }).limits.find(({ says }) => /fixed conductor/.test(says))
    expect(thin('1.5 mm^2')?.kept).toBe(true)
    expect(thin('1 mm^2')?.kept).toBe(false)
  })

  it.each([
    ['area', '0.4 mm^2'],
    ['area', '150 mm^2'],
    ['current', '0 A'],
    ['run', '0 m'],
    ['drop_limit', '21 percent'],
    ['conductor_temperature', '101 degC'],
    ['conductor_temperature', '-21 degC'],
    ['voltage', '4 V'],
  ])('cable-drop: refuses %s of %s', (name, value) => {
    expect(rules({ [name]: value })).toContain('value-outside-range')
  })
})
