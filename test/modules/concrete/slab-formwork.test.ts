import { describe, expect, it } from 'vitest'
import { slabFormwork } from '../../../src/modules/concrete/slab-formwork.ts'
import { beam } from '../../../src/modules/numerics/beam.ts'
import { beamActionsAt } from '../../../src/modules/numerics/beam-solution.ts'
import { runModule } from '../run-module.ts'

const row = {
  span: '1.2 m',
  spacing: '0.5 m',
  spans: 'one or two',
  moment_capacity: '5 kN*m',
  shear_capacity: '11 kN',
  stiffness: '450 kN*m^2',
}
const bearer = { ...row, spacing: '1.2 m', span: '1 m', moment_capacity: '50 kN*m', shear_capacity: '99 kN' }
const run = (more: Readonly<Record<string, string>> = {}, of: Partial<typeof row> = {}) =>
  runModule(slabFormwork, { ...slabFormwork.example, ...more, beams: [{ ...row, ...of }, bearer] })

describe('slab-formwork', () => {
  it.each(['SI', 'US'] as const)('slab-formwork: the example evaluates without a message, in %s', units => {
    expect(runModule(slabFormwork, slabFormwork.example, { units }).diagnostics).toEqual([])
  })

  it('slab-formwork: one span agrees with the beam solver in moment, and lies above it in shear', () => {
    const ran = run()
    const q = ran.si('q_1')
    const single = beam({
      length: 1.2,
      start: 'pinned',
      end: 'pinned',
      load: [
        [0, q],
        [1.2, q],
      ],
    })
    expect(ran.si('M_b_1')).toBeCloseTo(single.sagging.moment, 6)
    expect(ran.si('V_b_1')).toBeGreaterThan(beamActionsAt(single.solution, 0).shear)
  })

  // Two equal spans (handbook): moment over the middle q l^2 / 8, shear 5/8 q l, prop 1.25 q l: a propped cantilever each.
  it('slab-formwork: two spans agree with the propped cantilever in moment and shear', () => {
    const ran = run()
    const q = ran.si('q_1')
    const half = beam({
      length: 1.2,
      start: 'fixed',
      end: 'pinned',
      load: [
        [0, q],
        [1.2, q],
      ],
    })
    expect(ran.si('M_b_1')).toBeCloseTo(-half.hogging.moment, 6)
    expect(ran.si('V_b_1')).toBeCloseTo(half.start.reaction, 6)
    expect(ran.si('P')).toBeCloseTo(((2 * half.start.reaction) / (0.5 * 1.2)) * 1.2 * 1, 6)
  })

  // Handbook of three equal spans: moment 0.100 q l^2, deflection 0.0069 q l^4 / EI; of one span 0.01302.
  it('slab-formwork: three spans bend and sink by the factors of the handbook', () => {
    const [one, three] = [run(), run({}, { spans: 'three or more' })]
    const q = one.si('q_1')
    expect(three.si('M_b_1') / (q * 1.2 ** 2)).toBeCloseTo(0.1, 9)
    expect((three.si('y_b_1') * 450e3) / (q * 1.2 ** 4)).toBeCloseTo(0.0069, 5)
    expect((one.si('y_b_1') * 450e3) / (q * 1.2 ** 4)).toBeCloseTo(0.01302, 5)
  })

  it('slab-formwork: both sides of each check', () => {
    const ran = run()
    const at = (name: string, share: number) => `${ran.si(name) * share}`
    const said = (of: Partial<typeof row>, name: string) => run({}, of).satisfied(name)
    expect(said({ moment_capacity: `${at('M_b_1', 1)} N*m` }, 'bending')).toBe(true)
    expect(said({ moment_capacity: `${at('M_b_1', 0.999)} N*m` }, 'bending')).toBe(false)
    expect(said({ shear_capacity: `${at('V_b_1', 1)} N` }, 'shear')).toBe(true)
    expect(said({ shear_capacity: `${at('V_b_1', 0.999)} N` }, 'shear')).toBe(false)
    const just = (ran.si('y_b_1') * 450 * 360) / 1.2
    expect(said({ stiffness: `${just} kN*m^2` }, 'deflection')).toBe(true)
    expect(said({ stiffness: `${just * 0.999} kN*m^2` }, 'deflection')).toBe(false)
    expect(run({ prop_capacity: `${at('P', 1)} N` }).satisfied('props')).toBe(true)
    expect(run({ prop_capacity: `${at('P', 0.999)} N` }).satisfied('props')).toBe(false)
  })

  it('slab-formwork: beams wider apart than what lies on them spans are found', () => {
    const pair = (spacing: string) =>
      runModule(slabFormwork, { ...slabFormwork.example, beams: [row, { ...bearer, spacing }] })
    expect(pair('1.2 m').satisfied('carried')).toBe(true)
    expect(pair('1.21 m').satisfied('carried')).toBe(false)
    expect(pair('1.2 m').si('P')).toBeCloseTo(1.25 * pair('1.2 m').si('w_f') * 1.2 * 1, 6)
  })

  it('slab-formwork: a thin slab has the least load, a thick one its own', () => {
    const kPa = (more: Readonly<Record<string, string>>) => run(more).si('w_f') / 1000
    expect(kPa({ thickness: '60 mm' })).toBeCloseTo(4.788, 3)
    expect(kPa({ thickness: '60 mm', carting: 'motor carts' })).toBeCloseTo(5.985, 3)
    expect(kPa({})).toBeCloseTo(26 * 0.35 + 0.5 + 2.394, 3)
    expect(kPa({ carting: 'motor carts' })).toBeCloseTo(26 * 0.35 + 0.5 + 3.591, 3)
  })

  it('slab-formwork: the level force is 2 % of the dead load behind the edge, or its floor', () => {
    expect(run({ panel_width: '20 m' }).si('h_b')).toBeCloseTo(0.02 * 9600 * 20, 6)
    expect(run({ panel_width: '4 m' }).si('h_b')).toBeCloseTo(1459.39, 1)
  })

  it('slab-formwork: beyond a metre it warns', () => {
    const kept = (thickness: string) => run({ thickness }).limits[0]?.kept
    expect([kept('1 m'), kept('1.01 m')]).toEqual([true, false])
  })

  it.each([[{ span: '0 m' }], [{ span: '6.1 m' }], [{ stiffness: '0 kN*m^2' }], [{ moment_capacity: '0 kN*m' }]])(
    'slab-formwork: refuses %j',
    of => {
      expect(run({}, of).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
    },
  )
})
