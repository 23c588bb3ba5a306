import { describe, expect, it } from 'vitest'
import { pipeStreaming } from '../../../src/modules/shielding/pipe-streaming.ts'
import { runModule } from '../run-module.ts'

const run = (more: Readonly<Record<string, string>> = {}) =>
  runModule(pipeStreaming, { diameter: '100 mm', run: '0.6 m', field: 'isotropic', required_factor: '1', ...more })

describe('pipe-streaming', () => {
  it.each(['SI', 'US'] as const)('pipe-streaming: the example evaluates without a fault, in %s', units => {
    expect(runModule(pipeStreaming, pipeStreaming.example, { units }).diagnostics).toEqual([])
  })

  it.each([
    ['isotropic', 0.5],
    ['cosine', 1],
    ['emitters', 0.5],
  ])(
    'pipe-streaming: far down the share of the %s field is %d of the radius over the length squared',
    (field, share) => {
      expect(run({ field, run: '2.5 m' }).si('k_1') / 0.02 ** 2 / share).toBeCloseTo(1, 3)
    },
  )

  it('pipe-streaming: longer or narrower lets less through, a second leg less again, and the margin counts', () => {
    const k = run().si('K_p')
    expect(run({ run: '0.7 m' }).si('K_p')).toBeLessThan(k)
    expect(run({ diameter: '90 mm' }).si('K_p')).toBeLessThan(k)
    expect(run({ margin: '4' }).si('K_p')).toBeCloseTo(2 * k, 12)
    // 0.0372 x pi x 0.05^2 x sqrt 2 / 0.5^2, by hand
    expect(run({ second_leg: '0.5 m' }).si('K_p') / k).toBeCloseTo((0.0372 * Math.PI * 0.0025 * Math.SQRT2) / 0.25, 9)
  })

  it('pipe-streaming: the albedo is that of concrete at the energy, or the one given', () => {
    const second_leg = '0.5 m'
    expect(run({ second_leg }).si('alpha_c')).toBe(0.0372)
    expect(run({ second_leg, energy: '0.662 MeV' }).si('alpha_c')).toBe(0.0165)
    expect(run({ second_leg, albedo: '0.02' }).si('alpha_c')).toBe(0.02)
    expect(run({ energy: '2 MeV' }).has('alpha_c')).toBe(false)
  })

  it('pipe-streaming: an offset of a diameter lets no straight line pass', () => {
    expect(run({ second_leg: '100 mm' }).satisfied('no_straight_line')).toBe(true)
    expect(run({ second_leg: '99 mm' }).satisfied('no_straight_line')).toBe(false)
  })

  it('pipe-streaming: a pipe shorter than three radii is warned of, one that lets all through refused', () => {
    expect(run({ run: '150 mm' }).limits[0]?.kept).toBe(true)
    expect(run({ run: '149 mm' }).limits[0]?.kept).toBe(false)
    expect(run({ run: '20 mm', field: 'cosine' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(run({ run: '51 mm', field: 'cosine' }).errors).toEqual([])
  })

  it.each([
    ['diameter', '0 mm'],
    ['diameter', '2.01 m'],
    ['run', '0 m'],
    ['run', '50.1 m'],
    ['margin', '1.9'],
    ['margin', '101'],
    ['albedo', '0'],
    ['albedo', '0.11'],
    ['energy', '0.24 MeV'],
    ['energy', '2.1 MeV'],
    ['second_leg', '0 m'],
    ['second_leg', '50.1 m'],
    ['required_factor', '0.9'],
  ])('pipe-streaming: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('pipe-streaming: a factor just met is met, just missed is not', () => {
    const P = run().si('P')
    expect(run({ required_factor: `${P * 0.999}` }).satisfied('protection')).toBe(true)
    expect(run({ required_factor: `${P * 1.001}` }).satisfied('protection')).toBe(false)
  })
})
