import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beam } from '../../../src/modules/numerics/beam.ts'
import { continuousBeam } from '../../../src/modules/numerics/continuous-beam.ts'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'

const equal = (count: number) =>
  continuousBeam({ spans: Array.from({ length: count }, () => 1), loads: Array.from({ length: count }, () => 1) })

describe('continuous beam', () => {
  it('continuous-beam: a short span that a long one lifts sags nowhere: its greatest moment is nil, at its end', () => {
    const { supports, spans } = continuousBeam({ spans: [10, 1, 10], loads: [1, 1, 1] })
    const end = continuousBeam({ spans: [10, 1], loads: [1, 1] })
    // three moments: 2 M (10 + 1) = -(10^3 + 1^3) / 4
    expect(end.supports[1]).toBeCloseTo(-1001 / 88, 12)
    expect(end.spans[1]).toMatchObject({ sagging: 0 })
    expect(end.spans[1]?.right).toBeLessThan(0)
    expect(spans[1]?.sagging).toBeCloseTo((supports[1] ?? Number.NaN) + 1 / 8, 12)
  })

  // Handbook coefficients of equal spans, all loaded (standard tables, memory), as printed.
  it.each([
    [2, [0.125], [0.0703], [0.375, 0.625]],
    [3, [0.1], [0.08, 0.025], [0.4, 0.6]],
    [4, [0.1071, 0.0714], [0.0772, 0.0364], [0.393, 0.607]],
    [5, [0.105, 0.079], [0.078, 0.033, 0.046], [0.395, 0.605]],
  ])('continuous-beam: %d equal spans have the coefficients of the handbooks', (count, supports, spans, shears) => {
    const solved = equal(count)
    const near = (ours: number | undefined, printed: number) =>
      expect(Math.abs((ours ?? Number.NaN) - printed)).toBeLessThanOrEqual(0.00051)
    supports.forEach((printed, i) => {
      near(-(solved.supports[i + 1] ?? Number.NaN), printed)
    })
    spans.forEach((printed, i) => {
      near(solved.spans[i]?.sagging, printed)
    })
    near(solved.spans[0]?.left, shears[0] ?? Number.NaN)
    near(solved.spans[0]?.right, shears[1] ?? Number.NaN)
  })

  it('continuous-beam: two equal spans are a propped span and its mirror', () => {
    const { supports, spans } = continuousBeam({ spans: [3, 3], loads: [10, 10] })
    const propped = beam({
      length: 3,
      start: 'pinned',
      end: 'fixed',
      load: [
        [0, 10],
        [3, 10],
      ],
    })
    expect(supports[1]).toBeCloseTo(propped.end.moment, 10)
    expect(spans[0]?.sagging).toBeCloseTo(propped.sagging.moment, 10)
    expect(spans[0]?.right).toBeCloseTo(propped.end.reaction, 10)
  })

  it('continuous-beam: the shears carry the load, and the ends of a span turn the same way as their neighbours', () => {
    const any = fc.array(
      fc.record({ l: fc.double({ min: 1, max: 9, noNaN: true }), w: fc.double({ min: 0, max: 50, noNaN: true }) }),
      {
        minLength: 2,
        maxLength: 8,
      },
    )
    fc.assert(
      fc.property(any, rows => {
        const { supports, spans } = continuousBeam({ spans: rows.map(({ l }) => l), loads: rows.map(({ w }) => w) })
        const at = (i: number) => ({ m: supports[i] ?? 0, ...(rows[i] ?? { l: 1, w: 0 }) })
        rows.forEach(({ l, w }, i) => {
          expect((spans[i]?.left ?? 0) + (spans[i]?.right ?? 0)).toBeCloseTo(w * l, 7)
        })
        for (let i = 1; i < rows.length; i++) {
          const [before, here] = [at(i - 1), at(i)]
          const turn = (l: number, w: number, near: number, far: number) =>
            (w * l ** 3) / 24 + (l * (2 * near + far)) / 6
          const sum = turn(before.l, before.w, here.m, before.m) + turn(here.l, here.w, here.m, at(i + 1).m)
          expect(sum).toBeCloseTo(0, 6)
        }
      }),
      { numRuns: 40 },
    )
  })

  it('continuous-beam: a span without load between loaded ones hogs along its whole length', () => {
    const { spans, supports } = continuousBeam({ spans: [1, 1, 1], loads: [1, 0, 1] })
    expect(spans[1]?.sagging).toBe(Math.max(supports[1] ?? 0, supports[2] ?? 0))
    expect(spans[1]?.sagging).toBeLessThan(0)
  })

  it.each([
    [[1], [1]],
    [
      [1, 0],
      [1, 1],
    ],
    [[1, 1], [1]],
    [
      [1, 1],
      [1, Number.NaN],
    ],
  ])('continuous-beam: refuses %j under %j', (spans, loads) => {
    expect(() => continuousBeam({ spans, loads })).toThrow(NumericRefusal)
  })
})
