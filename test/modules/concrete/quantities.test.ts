import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { quantities } from '../../../src/modules/concrete/quantities.ts'
import { integrate } from '../../../src/modules/numerics/integrate.ts'
import { runModule } from '../run-module.ts'

type More = Readonly<Record<string, string>>
const run = (more: More = {}) => runModule(quantities, { ...quantities.example, ...more })
const sides = fc.integer({ min: 18, max: 90 }).map(tenths => tenths / 10)

describe('quantities', () => {
  it.each(['SI', 'US'] as const)('quantities: the example evaluates without a message, in %s', units => {
    expect(runModule(quantities, quantities.example, { units }).diagnostics).toEqual([])
  })

  it('quantities: walls, roof, raft and the room make the outside of the box', () => {
    fc.assert(
      fc.property(sides, sides, (length, width) => {
        const ran = run({ length: `${length} m`, width: `${width} m`, blinding: '0 m' })
        const solid = ran.si('V_w') + ran.si('V_r') + ran.si('V_b')
        expect((solid + length * width * 2.4) / ran.si('V_s')).toBeCloseTo(1, 10)
      }),
      { numRuns: 15 },
    )
  })

  it('quantities: what is dug is what the box takes and what goes back', () => {
    const ran = run()
    expect(ran.si('V_s') + ran.si('V_fill')).toBeCloseTo(ran.si('V_ex'), 9)
  })

  it('quantities: the prismoid is the area of the pit added up over its depth', () => {
    fc.assert(
      fc.property(sides, sides, fc.double({ min: 0, max: 3, noNaN: true }), (length, width, batter) => {
        const ran = run({ length: `${length} m`, width: `${width} m`, batter: `${batter}` })
        const [depth, a, b] = [ran.si('z_f'), ran.si('L_r') + 1.6, ran.si('W_r') + 1.6]
        const { value } = integrate(z => (a + 2 * batter * z) * (b + 2 * batter * z), { from: 0, to: depth })
        expect(ran.si('V_ex') / value).toBeCloseTo(1, 8)
      }),
      { numRuns: 15 },
    )
  })

  it('quantities: a working layer deepens the pit, and takes its room in it', () => {
    const [bare, ran] = [run(), run({ working_layer: '0.15 m' })]
    expect(ran.si('z_f') - bare.si('z_f')).toBeCloseTo(0.15, 12)
    expect(ran.si('V_wl')).toBeCloseTo(6.4 * 4.6 * 0.15, 9)
    expect(ran.si('V_s') - bare.si('V_s')).toBeCloseTo(ran.si('V_wl'), 9)
    expect(bare.si('V_wl')).toBe(0)
    expect(run({ working_layer: '-0.01 m' }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })

  // Worked by hand from the example: 6.0 by 4.2 m outside, raft 6.4 by 4.6 m.
  it('quantities: faces of the example by hand', () => {
    const ran = run({ waste_sheet: '0' })
    expect(ran.si('A_in')).toBeCloseTo(18 * 2.4, 9)
    expect(ran.si('A_out')).toBeCloseTo(20.4 * 2.8 + 22 * 0.4, 9)
    expect(ran.si('A_so')).toBeCloseTo(5.4 * 3.6, 9)
    expect(ran.si('A_p')).toBeCloseTo(20.4 * 2.8 + 25.2, 9)
    expect(ran.si('A_m')).toBeCloseTo(20.4 * 2.8 + 25.2 + 29.44 + 22 * 0.4 + (29.44 - 25.2), 9)
    expect(ran.si('z_f')).toBeCloseTo(0.9 + 0.4 + 2.4 + 0.4 + 0.075, 12)
  })

  it('quantities: each allowance lengthens its own lines and no other', () => {
    const bare = run({ waste_concrete: '0', waste_steel: '0', waste_sheet: '0' })
    const part = (more: More, name: string) =>
      run({ waste_concrete: '0', waste_steel: '0', waste_sheet: '0', ...more }).si(name) / bare.si(name)
    for (const name of ['V_c', 'V_bl', 'V_sc']) expect(part({ waste_concrete: '5 percent' }, name)).toBeCloseTo(1.05, 9)
    expect(part({ waste_concrete: '5 percent' }, 'm_s')).toBe(1)
    expect(part({ waste_steel: '7 percent' }, 'm_s')).toBeCloseTo(1.07, 9)
    for (const name of ['A_m', 'A_p']) expect(part({ waste_sheet: '12 percent' }, name)).toBeCloseTo(1.12, 9)
    expect(part({ waste_sheet: '12 percent' }, 'V_c')).toBe(1)
  })

  it('quantities: steel is the rate on the concrete without its allowance', () => {
    const ran = run({ waste_steel: '0' })
    expect(ran.si('m_s')).toBeCloseTo(110 * (ran.si('V_w') + ran.si('V_r') + ran.si('V_b')), 6)
  })

  it('quantities: a room narrower than two walls is a warning', () => {
    const kept = (wall: string) => run({ wall }).limits[0]?.kept
    expect([kept('1.8 m'), kept('1.81 m')]).toEqual([true, false])
  })

  it.each([
    [{ wall: '0 m' }],
    [{ raft: '3.1 m' }],
    [{ toe: '-0.1 m' }],
    [{ batter: '3.1' }],
    [{ waste_concrete: '51 percent' }],
    [{ waste_steel: '-1 percent' }],
  ])('quantities: refuses %j', more => {
    expect(run(more).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
  })
})
