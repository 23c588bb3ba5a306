import { describe, expect, it } from 'vitest'
import { panelWords } from '../../../src/modules/concrete/is456-table-26.ts'
import { twoWaySlab } from '../../../src/modules/concrete/two-way-slab.ts'
import { twoWaySlabPlate } from '../../../src/modules/concrete/two-way-slab-plate.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const words = Object.keys(panelWords)
const run = (edges: string, r: number, poisson = '0') =>
  runModule(twoWaySlab, {
    short_span: '3 m',
    long_span: `${r} * 3 m`,
    load: '50 kN/m^2',
    edges,
    corners: 'held down',
    poisson,
  })

const plate = (edges: string, r: number, nu: number) => {
  const solved = twoWaySlabPlate.run({ ratio: r, nu }, { edges })
  if (!solved.ok) throw new Error(solved.says)
  return solved.values
}

describe('two-way slab, second methods', () => {
  it.each(words)('two-way-slab: yield lines and plate keep inside their bands for %s', edges => {
    for (const r of [1, 1.05, 1.37, 1.62, 1.9, 2]) {
      const result = run(edges, r)
      expect(result.errors).toEqual([])
      expect(result.agrees.length).toBe(3)
      for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
      expect(result.diagnostics.filter(fault => fault.rule === 'methods-disagree')).toEqual([])
    }
  })

  // Johansen, Yield-line theory (memory): isotropic square, m = w L^2/24 simply supported; m + i = w L^2/24 fixed.
  it('two-way-slab: the yield-line load of a square is 24 m/L^2, times the 3/4 of the middle strips', () => {
    const simple = run('all discontinuous', 1)
    expect(simple.si('w_c')).toBeCloseTo(((24 * simple.si('M_x_mid')) / 9) * 0.75, 3)
    const fixed = run('all continuous', 1)
    expect(fixed.si('w_c')).toBeCloseTo(((24 * (fixed.si('M_x_mid') + fixed.si('M_x_sup'))) / 9) * 0.75, 3)
  })

  it('two-way-slab: whichever way the ridge lies, the yield-line load is the least over both patterns', () => {
    for (const edges of words) {
      const result = run(edges, 1.1)
      const [lx, ly] = [3, 3.3]
      const [sx, sy] = [result.si('S_x'), result.si('S_y')]
      const along = (e: number) => (0.75 * ((sx * ly) / lx + (sy * lx) / e)) / ((lx * ly) / 2 - (lx * e) / 6)
      const across = (e: number) => (0.75 * ((sy * lx) / ly + (sx * ly) / e)) / ((lx * ly) / 2 - (ly * e) / 6)
      const tried = Array.from({ length: 2000 }, (_, i) => (i + 1) / 2000)
      const least = Math.min(...tried.map(share => along(share * ly)), ...tried.map(share => across(share * lx)))
      expect(result.si('w_c') / least).toBeCloseTo(1, 5)
    }
  })

  // Table computed apart from this code (Ritz, other shapes), numbered as ACI 318-63 Method 3, moments over the own span;
  // its largest values are those of a grid and may be 0.00015 too low (tolerance as for the plate itself).
  it.each([
    ['all continuous', '2'],
    ['one short edge discontinuous', '9'],
    ['one long edge discontinuous', '8'],
    ['two adjacent edges discontinuous', '4'],
    ['two short edges discontinuous', '5'],
    ['two long edges discontinuous', '3'],
    ['one long edge continuous', '6'],
    ['one short edge continuous', '7'],
    ['all discontinuous', '1'],
  ])('two-way-slab: the plate of %s agrees with the computed table, case %s', (edges, number) => {
    for (const row of publishedTable('concrete-plate-elastic-nine-cases').filter(each => each.case === number)) {
      const r = 1 / Number(row.m)
      const got = plate(edges, r, Number(row.nu))
      const near = (ours: number | undefined, printed: string | undefined) =>
        expect(Math.abs((ours ?? Number.NaN) - Number(printed || 0))).toBeLessThanOrEqual(0.00015)
      near(got.x_mid, row.Ca_pos_max)
      near((got.y_mid ?? Number.NaN) / r ** 2, row.Cb_pos_max)
      near(got.x_peak, row.Ca_neg_max)
      near((got.y_peak ?? Number.NaN) / r ** 2, row.Cb_neg_max)
    }
  })

  it('two-way-slab: a strip mean is below its peak and nil on an edge without moment', () => {
    const got = plate('one long edge discontinuous', 1.4, 0)
    expect(got.x_strip).toBeLessThan(got.x_peak ?? 0)
    expect(got.y_strip).toBeLessThan(got.y_peak ?? 0)
    expect(plate('all discontinuous', 1.4, 0).x_strip).toBe(0)
  })

  it('two-way-slab: a plate outside the reach of the solution is refused, not guessed', () => {
    const solved = twoWaySlabPlate.run({ ratio: 1, nu: 0.6 }, { edges: 'all continuous' })
    expect(solved.ok).toBe(false)
  })
})
