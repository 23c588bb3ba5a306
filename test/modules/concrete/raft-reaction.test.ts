import { describe, expect, it } from 'vitest'
import { raftReaction } from '../../../src/modules/concrete/raft-reaction.ts'
import { runModule } from '../run-module.ts'

const kilo = 1000

const raft = {
  raft_length: '6 m',
  raft_width: '4 m',
  raft_thickness: '0.5 m',
  concrete_weight: '25 kN/m^3',
  combination: 'EN 1990 6.10',
}
const run = (loads: readonly Readonly<Record<string, string>>[], more: Readonly<Record<string, string>> = {}) =>
  runModule(raftReaction, { loads, ...raft, ...more })

describe('raft reaction', () => {
  it.each(['SI', 'US'] as const)('raft-reaction: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(raftReaction, raftReaction.example, { units }).diagnostics).toEqual([])
  })

  it('raft-reaction: the upward pressure times the area carries what stands on the raft', () => {
    const result = run([{ permanent: '900 kN', live: '60 kN' }, { permanent: '300 kN' }])
    expect(result.errors).toEqual([])
    expect(result.si('w_k') * 24).toBeCloseTo(1260 * kilo, 3)
    expect(result.si('p_gross') * 24).toBeCloseTo((1260 + 300) * kilo, 3)
  })

  it('raft-reaction: a thicker raft presses harder on the ground and bends no more', () => {
    const thin = run([{ permanent: '1200 kN' }])
    const thick = run([{ permanent: '1200 kN' }], { raft_thickness: '0.8 m' })
    expect(thick.si('w_u')).toBeCloseTo(thin.si('w_u'), 3)
    expect(thick.si('p_gross') - thin.si('p_gross')).toBeCloseTo(0.3 * 25 * kilo, 3)
  })

  it('raft-reaction: loads are factored like those of the roof', () => {
    const result = run([{ permanent: '1200 kN', live: '120 kN' }])
    expect(result.si('w_u')).toBeCloseTo((1.35 * 50 + 1.5 * 5) * kilo, 3)
  })

  it('raft-reaction: loads that balance about the centre have no eccentricity', () => {
    const result = run([
      { permanent: '400 kN', x: '2.8 m', y: '0 m' },
      { permanent: '400 kN', x: '-2.8 m', y: '0 m' },
    ])
    expect(result.si('e_x')).toBeCloseTo(0, 9)
    expect(result.limits[1]?.kept).toBe(true)
  })

  // 300 kN of raft and 900 kN on it: e = 900 x / 1200; one tenth above the mean at e = L / 60 = 0.1 m, kern at e = L / 6 = 1 m
  it.each([
    ['0.133 m', true, 0],
    ['0.134 m', false, 0],
    ['1.333 m', false, 0],
    ['1.334 m', undefined, 1],
  ])('raft-reaction: a load %s off the centre', (x, central, refused) => {
    const result = run([{ permanent: '900 kN', x }])
    expect(result.limits[1]?.kept).toBe(central)
    expect(result.errors.map(error => error.rule)).toEqual(Array(refused).fill('limit-exceeded'))
  })

  it('raft-reaction: eccentricity on both axes adds', () => {
    const result = run([{ permanent: '900 kN', x: '0.1 m', y: '-0.1 m' }])
    expect(result.si('k_e')).toBeCloseTo((6 * 0.075) / 6 + (6 * 0.075) / 4, 9)
  })

  it('raft-reaction: shows psf in US units', () => {
    const result = runModule(
      raftReaction,
      {
        loads: [{ permanent: '240 kip' }],
        raft_length: '30 ft',
        raft_width: '16 ft',
        raft_thickness: '1.5 ft',
        concrete_weight: '150 pcf',
        combination: 'ACI 318',
      },
      { units: 'US' },
    )
    expect(result.shown('g_k')).toBe('500.0 psf')
    expect(result.shown('p_gross')).toBe('725.0 psf')
    expect(result.shown('w_u')).toBe('700.0 psf')
  })

  it('raft-reaction: refuses a raft without thickness', () => {
    expect(run([{ permanent: '900 kN' }], { raft_thickness: '0 m' }).errors.map(error => error.rule)).toEqual([
      'value-outside-range',
    ])
  })
})
