import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { punchingShearEn1992 } from '../../../src/modules/concrete/punching-shear-en-1992.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = {
  load: '100 kN',
  place: 'inside',
  side_1: '300 mm',
  side_2: '300 mm',
  depth_1: '210 mm',
  depth_2: '190 mm',
  steel_1: '0.5 percent',
  steel_2: '0.5 percent',
  f_ck: '30 MPa',
}
type More = Readonly<Record<string, string>>
const run = (more: More = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(punchingShearEn1992, { ...base, ...more }, { units })

describe('punching shear by EN 1992', () => {
  it.each(['SI', 'US'] as const)('punching-shear-en-1992: the example evaluates without a message, in %s', units => {
    expect(runModule(punchingShearEn1992, punchingShearEn1992.example, { units }).diagnostics).toEqual([])
  })

  // EN 1992-1-1 6.4.3(6), recommended (memory).
  it.each([
    ['inside, no moment', 1],
    ['inside', 1.15],
    ['edge', 1.4],
    ['corner', 1.5],
  ])('punching-shear-en-1992: %s has %d for uneven shear', (place, beta) => {
    expect(run({ place }).si('beta')).toBe(beta)
  })

  // EN 1992-1-1 6.4.5(3) (memory): c_2 + 3 d but not past c_2 + 2 c_1; 3 d but not past c_1 + c_2.
  it.each([
    ['edge', '300 mm', 0.9],
    ['edge', '250 mm', 0.8],
    ['edge', '400 mm', 0.9],
    ['corner', '300 mm', 0.6],
    ['corner', '250 mm', 0.55],
    ['corner', '400 mm', 0.6],
  ])('punching-shear-en-1992: %s, side 1 of %s: %d m round the loaded area', (place, side_1, metres) => {
    expect(run({ place, side_1 }).si('u_0')).toBeCloseTo(metres, 9)
  })

  it('punching-shear-en-1992: an edge shortens the perimeter until it is far enough away', () => {
    const at = (edge_1: string) => run({ place: 'edge', edge_1 }).si('u_1')
    const whole = run().si('u_1')
    expect(at('100 mm') - at('0 mm')).toBeCloseTo(0.2, 9)
    // 2 a = 0.3 + 2 pi d less nothing: equal lengths at a = (0.3 + 2 pi 0.2) / 2
    const far = 500 * (0.3 + 2 * Math.PI * 0.2)
    expect(at(`${far - 1} mm`)).toBeLessThan(whole)
    expect(at(`${far + 1} mm`)).toBeCloseTo(whole, 9)
  })

  it('punching-shear-en-1992: a corner with one edge far away is an edge', () => {
    expect(run({ place: 'corner', edge_2: '5 m' }).si('u_1')).toBeCloseTo(run({ place: 'edge' }).si('u_1'), 9)
    expect(run({ place: 'corner', edge_1: '5 m', edge_2: '5 m' }).si('u_1')).toBeCloseTo(run().si('u_1'), 9)
  })

  it('punching-shear-en-1992: each check turns where the largest load is reached', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('inside, no moment', 'inside', 'edge', 'corner'),
        fc.integer({ min: 20, max: 800 }),
        fc.integer({ min: 80, max: 400 }),
        (place, side, depth) => {
          const sizes = { place, side_1: `${side} mm`, side_2: `${side} mm`, depth_1: `${depth} mm` }
          const slab = { ...sizes, depth_2: `${depth} mm` }
          const most = run(slab).si('F_Rd')
          const both = (share: number) => {
            const at = run({ ...slab, load: `${share * most} N` })
            return at.satisfied('crushing') === true && at.satisfied('no_links') === true
          }
          expect(both(0.9999)).toBe(true)
          expect(both(1.0001)).toBe(false)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('punching-shear-en-1992: a small hard area crushes first, a wide one punches first', () => {
    const small = run({ side_1: '20 mm', side_2: '20 mm', depth_1: '400 mm', depth_2: '400 mm', load: '250 kN' })
    expect([small.satisfied('crushing'), small.satisfied('no_links')]).toEqual([false, true])
    const wide = run({ load: '450 kN' })
    expect([wide.satisfied('crushing'), wide.satisfied('no_links')]).toEqual([true, false])
  })

  it('punching-shear-en-1992: more area, depth, steel or strength never lessens the load', () => {
    const most = (more: More = {}) => run(more).si('F_Rd')
    for (const more of [
      { side_1: '310 mm' },
      { depth_1: '220 mm' },
      { steel_1: '0.6 percent' },
      { f_ck: '35 MPa' },
      { place: 'inside, no moment' },
    ] as const)
      expect(most(more), JSON.stringify(more)).toBeGreaterThan(most())
    expect(most({ steel_1: '2.5 percent', steel_2: '2.5 percent' })).toBeCloseTo(
      most({ steel_1: '2 percent', steel_2: '2 percent' }),
      6,
    )
  })

  it('punching-shear-en-1992: says where the area is long or the layers lie far apart', () => {
    const kept = (more: More, which: number) => run(more).limits[which]?.kept
    expect(kept({ side_1: '600 mm' }, 0)).toBe(true)
    expect(kept({ side_1: '601 mm' }, 0)).toBe(false)
    expect(kept({ depth_2: '168 mm' }, 1)).toBe(true)
    expect(kept({ depth_2: '167.9 mm' }, 1)).toBe(false)
  })

  it.each([
    [{ load: '-1 kN' }, 'value-outside-range'],
    [{ side_1: '0 mm' }, 'value-outside-range'],
    [{ depth_1: '0 mm' }, 'value-outside-range'],
    [{ steel_1: '0 percent' }, 'value-outside-range'],
    [{ steel_2: '6.1 percent' }, 'value-outside-range'],
    [{ place: 'edge', edge_1: '-1 mm' }, 'value-outside-range'],
    [{ f_ck: '91 MPa' }, 'value-outside-range'],
    [{ load: '10 kN/m' }, 'dimension-mismatch'],
  ])('punching-shear-en-1992: %j is refused (%s)', (more, rule) => {
    expect(run(more).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('punching-shear-en-1992: the perimeter that is drawn has the length that counts', () => {
    for (const more of [
      { place: 'inside' },
      { place: 'edge', edge_1: '120 mm' },
      { place: 'edge', edge_1: '3 m' },
      { place: 'corner', edge_1: '100 mm', edge_2: '50 mm' },
      { place: 'corner', edge_1: '3 m', edge_2: '50 mm' },
      { place: 'corner', edge_1: '50 mm', edge_2: '3 m' },
    ]) {
      const drawing = drawingOf(punchingShearEn1992, { ...base, ...more })
      const line = drawing.shapes.find(shape => shape.kind === 'line' && shape.weight === 'medium')
      const points = line?.kind === 'line' ? line.points : []
      const drawn = points
        .slice(1)
        .reduce((sum, [x, y], i) => sum + Math.hypot(x - (points[i]?.[0] ?? 0), y - (points[i]?.[1] ?? 0)), 0)
      expect(drawn / run(more).si('u_1'), JSON.stringify(more)).toBeCloseTo(1, 2)
    }
  })
})
