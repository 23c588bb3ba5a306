import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beam } from '../../../src/modules/numerics/beam.ts'
import { beamDifferences } from '../../../src/modules/numerics/beam-differences.ts'
import type { BeamEnd } from '../../../src/modules/numerics/beam-solution.ts'
import { anySpan } from './any-span.ts'

const triangular = (start: BeamEnd, end: BeamEnd) => ({
  length: 1,
  start,
  end,
  load: [
    [0, 0],
    [1, 1],
  ] as const,
})

// Published check values for a wall strip (standard beam tables), triangular load nil at the start.
describe('beam differences: table of wall strips', () => {
  it.each([
    ['pinned', 'pinned', 0, 0, 0.06415, 1 / 6, 1 / 3],
    ['pinned', 'fixed', 0, -1 / 15, 0.02981, 1 / 10, 2 / 5],
    ['fixed', 'fixed', -1 / 30, -1 / 20, 0.02144, 3 / 20, 7 / 20],
    ['free', 'fixed', 0, -1 / 6, 0, 0, 1 / 2],
  ] as const)('%s and %s', (from, to, first, last, span, rFirst, rLast) => {
    const result = beamDifferences(triangular(from, to))
    expect(result.start.moment).toBeCloseTo(first, 5)
    expect(result.end.moment).toBeCloseTo(last, 5)
    expect(result.sagging.moment).toBeCloseTo(span, 5)
    expect(result.start.reaction).toBeCloseTo(rFirst, 4)
    expect(result.end.reaction).toBeCloseTo(rLast, 4)
    expect(result.change).toBeLessThanOrEqual(0.0001)
  })
})

describe('beam differences: a second method for the exact beam', () => {
  it('agrees on any span within 0.05 % of the largest moment and the load', () => {
    fc.assert(
      fc.property(anySpan, span => {
        const [exact, second] = [beam(span), beamDifferences(span)]
        const load = exact.start.reaction + exact.end.reaction
        const largest = Math.max(exact.sagging.moment, -exact.hogging.moment)
        for (const end of ['start', 'end'] as const) {
          expect(Math.abs(exact[end].moment - second[end].moment)).toBeLessThanOrEqual(5e-4 * largest)
          expect(Math.abs(exact[end].reaction - second[end].reaction)).toBeLessThanOrEqual(5e-4 * load)
        }
        expect(Math.abs(exact.sagging.moment - second.sagging.moment)).toBeLessThanOrEqual(5e-4 * largest)
      }),
      { numRuns: 60, seed: 11 },
    )
  })

  it('errors fall with the square of the cell', () => {
    const error = (cells: number) => Math.abs(beamDifferences(triangular('fixed', 'fixed'), cells).end.moment + 1 / 20)
    expect(error(20) / error(40)).toBeGreaterThan(3.8)
    expect(error(20) / error(40)).toBeLessThan(4.2)
  })
})

describe('beam differences: refusals', () => {
  it.each([7, 6, 1002, 9, Number.NaN])('%d cells', cells => {
    expect(() => beamDifferences(triangular('fixed', 'fixed'), cells)).toThrow('Expected a whole number')
  })

  it('ends on which no beam stands', () => {
    expect(() => beamDifferences(triangular('free', 'pinned'))).toThrow('Expected ends on which a beam stands')
  })
})
