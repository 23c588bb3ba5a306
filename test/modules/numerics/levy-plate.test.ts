import { describe, expect, it } from 'vitest'
import type { EdgeKind } from '../../../src/modules/numerics/plate-axis.ts'
import { plateStateAt } from '../../../src/modules/numerics/plate-state.ts'
import { thinPlate } from '../../../src/modules/numerics/thin-plate.ts'
import { levyPlate } from './levy-plate.ts'

const kinds: readonly EdgeKind[] = ['fixed', 'simple', 'free']
const pairs = kinds
  .flatMap(bottom => kinds.map(top => ({ bottom, top })))
  .filter(({ bottom, top }) => bottom !== 'free' || top !== 'free')

// A second method that shares nothing with the Ritz solution: exact but for the number of terms.
describe('thin plate: Levy series with two simple sides', () => {
  it.each(pairs)('bottom $bottom, top $top', ({ bottom, top }) => {
    for (const ratio of [0.25, 0.6, 1, 1.7, 4]) {
      for (const nu of [0, 0.2, 0.3]) {
        const panel = {
          ratio,
          nu,
          edges: { left: 'simple', right: 'simple', bottom, top },
          load: { uniform: 1 },
        } as const
        const { field, sagging, edges } = thinPlate(panel)
        const largest = Math.max(sagging.x.value, sagging.y.value, -(edges.bottom.hogging?.value ?? 0))
        for (const [x, y] of [
          [0.5, 0.5],
          [0.5, 0],
          [0.5, 1],
          [0.2, 0.7],
        ] as const) {
          const [got, exact] = [plateStateAt(field, x, y), levyPlate({ ratio, nu, bottom, top }, x, y * ratio)]
          expect(Math.abs(got.deflection - exact.w)).toBeLessThanOrEqual(5e-5 * largest)
          expect(Math.abs(got.mx - exact.mx)).toBeLessThanOrEqual(1e-3 * largest)
          expect(Math.abs(got.my - exact.my)).toBeLessThanOrEqual(1e-3 * largest)
        }
      }
    }
  })

  it('the series itself: square, three simple edges and one free, 0.01286 (Timoshenko art. 48, memory)', () => {
    const { w } = levyPlate({ ratio: 1, nu: 0.3, bottom: 'simple', top: 'free' }, 0.5, 1)
    expect(Math.abs(w - 0.01286)).toBeLessThanOrEqual(0.001 * 0.01286)
  })

  it('the series itself: square, fixed edge opposite the free one, 0.01124', () => {
    const { w } = levyPlate({ ratio: 1, nu: 0.3, bottom: 'fixed', top: 'free' }, 0.5, 1)
    expect(w).toBeCloseTo(0.011236, 6)
  })
})
