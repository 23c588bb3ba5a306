import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Beside, column, isCrowded, pitch } from '../../src/typesetting/sketch-columns.ts'

const beside = (y: number, anchor: 'start' | 'end' = 'start'): Beside => ({
  spot: { x: 50, y, anchor },
  mark: [47, y - 2.7],
})

describe('sketch-columns', () => {
  it('room for every label: not crowded; two within a line: crowded', () => {
    expect(isCrowded([beside(0), beside(10), beside(20)])).toBe(false)
    expect(isCrowded([beside(20), beside(0), beside(12.5)])).toBe(true)
    expect(isCrowded([])).toBe(false)
  })

  it('two labels at one height: move apart by half a line each, the first upwards', () => {
    const [one, two] = column([beside(30), beside(30)])
    expect(one?.spot.y).toBeCloseTo(30 - pitch / 2, 9)
    expect(two?.spot.y).toBeCloseTo(30 + pitch / 2, 9)
  })

  it('a label with room: keeps its height, and the leader is level', () => {
    const [, , far] = column([beside(0), beside(1), beside(100)])
    expect(far?.spot.y).toBe(100)
    expect(far?.leader?.[1][1]).toBe(far?.leader?.[0][1])
  })

  it('left of the marks: the column moves to the left', () => {
    const [left] = column([beside(0, 'end'), beside(1, 'end')])
    expect(left?.spot.x).toBeLessThan(50)
  })

  it('any column: keeps the order, a line between neighbours, and the mean height', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 12 }), heights => {
        const set = column(heights.map(y => beside(y)))
        const pairs = heights.map((y, index) => [y, set[index]?.spot.y ?? Number.NaN] as const)
        const sorted = [...pairs].sort((a, b) => a[0] - b[0] || a[1] - b[1]).map(([, y]) => y)
        for (const [index, y] of sorted.entries())
          if (index > 0) expect(y - (sorted[index - 1] ?? 0)).toBeGreaterThanOrEqual(pitch - 1e-9)
        const mean = (of: readonly number[]): number => of.reduce((sum, y) => sum + y, 0) / of.length
        expect(mean(sorted)).toBeCloseTo(mean(heights), 9)
      }),
    )
  })
})
