import { describe, expect, it } from 'vitest'
import { oneWaySlab } from '../../../src/modules/concrete/one-way-slab.ts'
import { oneWaySlabDifferences } from '../../../src/modules/concrete/one-way-slab-second.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const base = { span: '3 m', load: '40 kN/m^2', ends: 'simple' }
const run = (changes: Partial<typeof base> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(oneWaySlab, { ...base, ...changes }, { units })
const ends = ['simple', 'propped', 'fixed', 'cantilever']

describe('one-way slab, single span', () => {
  it.each(ends)('one-way-slab: both methods agree for ends %s, and the ends carry the load', word => {
    const result = run({ ends: word })
    expect(result.diagnostics).toEqual([])
    expect(result.satisfied('load_carried')).toBe(true)
    expect(result.agrees.length).toBe(word === 'simple' ? 3 : word === 'cantilever' ? 2 : 4)
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
  })

  // Statics: the sagging moment at mid-span and the mean of the end moments make w l^2/8.
  it.each(ends)('one-way-slab: mid-span and mean end moment make w l^2/8 for ends %s', word => {
    const result = run({ ends: word })
    const [w, l] = [40000, 3]
    const middle = result.si('M_sup') + (result.si('V_left') * l) / 2 - (w * l * l) / 8
    const far = result.si('M_sup') + result.si('V_left') * l - (w * l * l) / 2
    expect(middle - (result.si('M_sup') + far) / 2).toBeCloseTo((w * l * l) / 8, 6)
    const at = result.si('x_m')
    expect(result.si('M_sup') + result.si('V_left') * at - (w * at * at) / 2).toBeCloseTo(result.si('M_span'), 6)
  })

  it('one-way-slab: moments grow with the load and the square of the span', () => {
    for (const word of ends) {
      expect(run({ ends: word, load: '80 kN/m^2' }).si('V_left')).toBeCloseTo(2 * run({ ends: word }).si('V_left'), 6)
      expect(run({ ends: word, span: '6 m' }).si('M_sup')).toBeCloseTo(4 * run({ ends: word }).si('M_sup'), 6)
      expect(run({ ends: word, span: '6 m' }).si('M_span')).toBeCloseTo(4 * run({ ends: word }).si('M_span'), 6)
    }
  })

  it.each([
    [{ span: '0 m' }, 'value-outside-range'],
    [{ load: '0 kN/m^2' }, 'value-outside-range'],
    [{ load: '-1 kN/m^2' }, 'value-outside-range'],
    [{ load: '10 kN/m' }, 'dimension-mismatch'],
    [{ ends: 'pinned' }, 'choice-unknown'],
  ])('one-way-slab: %j is refused (%s)', (changes, rule) => {
    expect(run(changes).errors.map(fault => fault.rule)).toContain(rule)
  })

  it('one-way-slab: a span or load that is not usual is said', () => {
    expect(run({ span: '8 m' }).diagnostics).toEqual([])
    expect(run({ span: '8.1 m' }).diagnostics.map(fault => fault.severity)).toEqual(['warning'])
    expect(run({ load: '4.9 kN/m^2' }).diagnostics.map(fault => fault.severity)).toEqual(['warning'])
  })

  it('one-way-slab: the second method refuses a span of no length', () => {
    expect(oneWaySlabDifferences.run({ span: 0, load: 1 }, { ends: 'simple' }).ok).toBe(false)
  })

  it('one-way-slab: American units give the same moments', () => {
    const us = run({ ends: 'fixed' }, 'US')
    expect(us.si('M_sup')).toBeCloseTo(run({ ends: 'fixed' }).si('M_sup'), 6)
    expect(us.shown('M_sup')).toMatch(/ lbf\*ft\/ft$/)
  })

  it.each(ends)('one-way-slab: the chart of ends %s closes its moment at the end that turns', word => {
    const drawing = drawingOf(oneWaySlab, { ...base, ends: word })
    const curve = drawing.shapes.find(shape => shape.kind === 'line' && shape.points.length > 30)
    if (curve?.kind !== 'line') throw new Error('no moment curve is drawn')
    const heights = curve.points.map(([, y]) => y + 0.52)
    if (word !== 'fixed') expect(heights.at(-1)).toBeCloseTo(0, 9)
    if (word === 'simple') expect(heights[0]).toBeCloseTo(0, 9)
    else expect(heights[0]).toBeGreaterThan(0)
  })
})
