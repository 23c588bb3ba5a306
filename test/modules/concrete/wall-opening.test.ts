import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { wallOpening } from '../../../src/modules/concrete/wall-opening.ts'
import type { Shape } from '../../../src/modules/sketch.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type More = Readonly<Record<string, string>>
const run = (more: More = {}) => runModule(wallOpening, { ...wallOpening.example, ...more })
const duct: More = { shape: 'rectangular', width: '600 mm', height: '300 mm' }
const mm2 = (squareMetres: number) => squareMetres * 1e6

describe('wall-opening', () => {
  it.each(['SI', 'US'] as const)('wall-opening: the example evaluates without a message, in %s', units => {
    expect(runModule(wallOpening, wallOpening.example, { units }).diagnostics).toEqual([])
  })

  // Four upright bars at 200 mm can meet 600 mm, two level ones 300 mm: 0, 200, 400, 600 and 50, 250.
  it('wall-opening: upright bars are cut by the width, level bars by the height', () => {
    const ran = run({ ...duct, horizontal_bar: '10 mm' })
    expect(mm2(ran.si('A_cut_v'))).toBeCloseTo(4 * 36 * Math.PI, 6)
    expect(mm2(ran.si('A_cut_h'))).toBeCloseTo(2 * 25 * Math.PI, 6)
    expect(ran.si('L_v')).toBeCloseTo(1.3, 12)
    expect(ran.si('L_h')).toBeCloseTo(1.6, 12)
  })

  it('wall-opening: the bars cut are the most that an opening meets wherever it stands, and more than the mean', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 120, max: 1000 }),
        fc.integer({ min: 75, max: 300 }),
        fc.constantFrom(8, 12, 16, 25),
        (width, spacing, phi) => {
          fc.pre(width + phi + 100 > spacing && (width + phi) % spacing !== 0)
          const steel = ((Math.PI / 4) * phi ** 2 * 1000) / spacing
          const meets = (left: number) =>
            Array.from({ length: 40 }, (_, i) => i * spacing).filter(
              bar => bar + phi / 2 >= left + 1000 && bar - phi / 2 <= left + 1000 + width,
            ).length
          const most = Math.max(...Array.from({ length: spacing }, (_, left) => meets(left)))
          const ran = run({
            shape: 'rectangular',
            width: `${width} mm`,
            vertical_bar: `${phi} mm`,
            vertical_spacing: `${spacing} mm`,
          })
          expect(ran.si('n_cut_v')).toBe(most)
          expect(mm2(ran.si('A_cut_v'))).toBeGreaterThan((steel * width) / 1000)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('wall-opening: an opening that passes between the bars cuts none, and one that would come too near cuts one', () => {
    const cut = (width: string) => mm2(run({ ...duct, width }).si('A_cut_v'))
    expect(cut('87.9 mm')).toBe(0)
    expect(cut('88.1 mm')).toBeCloseTo(36 * Math.PI, 6)
    expect(cut('187.9 mm')).toBeCloseTo(36 * Math.PI, 6)
    expect(cut('188.1 mm')).toBeCloseTo(72 * Math.PI, 6)
    const level = (height: string) => run({ ...duct, height }).si('A_cut_h')
    expect([level('87.9 mm') > 0, level('88.1 mm') > 0]).toEqual([false, true])
  })

  it('wall-opening: both sides of each check of area', () => {
    expect(run({ upright_bars: '2' }).satisfied('replaced_v')).toBe(true)
    expect(run({ upright_bars: '1' }).satisfied('replaced_v')).toBe(false)
    expect(run({ level_bars: '2' }).satisfied('replaced_h')).toBe(true)
    expect(run({ level_bars: '1' }).satisfied('replaced_h')).toBe(false)
  })

  it('wall-opening: both sides of each check of room', () => {
    expect(run({ room_beside: '500 mm' }).satisfied('room_level')).toBe(true)
    expect(run({ room_beside: '499 mm' }).satisfied('room_level')).toBe(false)
    expect(run({ room_above: '500 mm' }).satisfied('room_upright')).toBe(true)
    expect(run({ room_above: '499 mm' }).satisfied('room_upright')).toBe(false)
  })

  it('wall-opening: one No. 5 or one bar of 16 mm is the least by ACI 318, one of 12 mm is not', () => {
    const least = (bar_size: string) =>
      run({ width: '80 mm', height: '80 mm', upright_bars: '1', bar_size, least_rule: 'ACI 318' })
    expect(least('No. 5').satisfied('replaced_v')).toBe(true)
    expect(least('16 mm').satisfied('replaced_v')).toBe(true)
    expect(least('12 mm').satisfied('replaced_v')).toBe(false)
    expect(run({ width: '80 mm', height: '80 mm', upright_bars: '0' }).satisfied('replaced_v')).toBe(true)
  })

  it('wall-opening: one trimming bar of their size each side replaces two bars that are cut, and no more', () => {
    const one = { upright_bars: '1', level_bars: '1' }
    expect(run({ ...one, width: '387.9 mm', height: '387.9 mm' }).satisfied('replaced_v')).toBe(true)
    expect(run({ ...one, width: '388.1 mm', height: '388.1 mm' }).satisfied('replaced_v')).toBe(false)
  })

  it('wall-opening: diagonal bars are for corners only', () => {
    expect(run(duct).si('L_c')).toBeCloseTo(1, 12)
    expect(run().has('L_c')).toBe(false)
  })

  it('wall-opening: a round opening of two sizes is refused', () => {
    expect(run({ height: '450 mm' }).errors).toEqual([])
    expect(run({ height: '451 mm' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('wall-opening: beyond a metre it warns', () => {
    const kept = (more: More) => run({ ...duct, ...more }).limits.find(({ says }) => says.includes('1 m'))?.kept
    expect(kept({ width: '1 m' })).toBe(true)
    expect(kept({ width: '1.01 m' })).toBe(false)
    expect(kept({ height: '1.01 m' })).toBe(false)
  })

  it.each([[{ width: '0 mm' }], [{ width: '3.01 m' }], [{ upright_bars: '-1' }], [{ anchorage: '0 mm' }]])(
    'wall-opening: refuses %j',
    more => {
      expect(run({ shape: 'rectangular', ...more }).errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
    },
  )

  it('wall-opening: the elevation has a bar at each of four sides, and four diagonals at corners', () => {
    const bars = (more: More) =>
      drawingOf(wallOpening, { ...wallOpening.example, ...more }).shapes.filter(
        (shape): shape is Extract<Shape, { kind: 'line' }> => shape.kind === 'line' && shape.weight === 'thick',
      )
    expect(bars({})).toHaveLength(4)
    expect(bars(duct)).toHaveLength(8)
    const lengths = bars(duct).map(({ points: [a = [0, 0], b = [0, 0]] }) => Math.hypot(b[0] - a[0], b[1] - a[1]))
    expect(lengths.map(length => Number(length.toFixed(9)))).toEqual([1.3, 1.3, 1.6, 1.6, 1, 1, 1, 1])
  })
})
