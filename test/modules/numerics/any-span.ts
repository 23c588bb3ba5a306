import fc from 'fast-check'
import type { BeamEnd, BeamSpan } from '../../../src/modules/numerics/beam-solution.ts'

const ends = fc.constantFrom<readonly [BeamEnd, BeamEnd]>(
  ['pinned', 'pinned'],
  ['fixed', 'pinned'],
  ['pinned', 'fixed'],
  ['fixed', 'fixed'],
  ['fixed', 'free'],
  ['free', 'fixed'],
)

/** Spans of 0.5 to 12 m on any ends that stand, loads not negative with one to five stretches and jumps. */
export const anySpan: fc.Arbitrary<BeamSpan> = fc
  .record({
    length: fc.double({ min: 0.5, max: 12, noNaN: true }),
    ends,
    cuts: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 6 }),
    intensities: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 12, maxLength: 12 }),
    jumps: fc.boolean(),
  })
  .map(({ length, ends: [start, end], cuts, intensities, jumps }) => {
    const places = [...new Set(cuts)].sort((a, b) => a - b).map(cut => (cut * length) / 20)
    const points = places.flatMap((at, i) => {
      const one = [at, intensities[2 * i] ?? 0] as const
      return jumps && i > 0 && i < places.length - 1 ? [one, [at, intensities[2 * i + 1] ?? 0] as const] : [one]
    })
    return { length, start, end, load: points }
  })
  .filter(({ load }) => load.length > 1 && load.some(([, p]) => p > 0))
