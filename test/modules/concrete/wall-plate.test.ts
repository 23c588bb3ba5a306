import { describe, expect, it } from 'vitest'
import { wallPlate } from '../../../src/modules/concrete/wall-plate.ts'
import { type WallWord, wallEdges, wallWords } from '../../../src/modules/concrete/wall-plate-edges.ts'
import { wallPlateMethod } from '../../../src/modules/concrete/wall-plate-method.ts'
import * as tables from '../../../src/modules/concrete/wall-plate-tables.ts'
import { drawingOf } from '../drawing-of.ts'
import { publishedTable } from '../numerics/published-table.ts'
import { runModule } from '../run-module.ts'

const base = {
  height: '3 m',
  width: '4.5 m',
  pressure_top: '10 kPa',
  pressure_base: '40 kPa',
  edges: 'all fixed',
}
type Changes = Partial<typeof base> & { load_factor?: string }
const run = (changes: Changes = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(wallPlate, { ...base, ...changes }, { units })
const words = Object.keys(wallWords) as WallWord[]
const rules = (changes: Changes) => run(changes).errors.map(fault => fault.rule)

describe('wall held on three or four edges', () => {
  it('wall-plate: the tables are those computed apart, with blanks where an edge is hinged', () => {
    const rows = publishedTable('concrete-wall-plate')
    const at = (wall: number, load: string, ratio: string, place: string) =>
      rows.find(
        row =>
          row.wall === `W${wall}` && row.load === load && row.b_over_a === ratio && row.y_over_a_from_top === place,
      )
    for (const [table, load, column, place] of [
      [tables.baseTriangular, 'triangular', 'Mv_centre', '1'],
      [tables.baseUniform, 'uniform', 'Mv_centre', '1'],
      [tables.sideTriangular, 'triangular', 'Mh_side', '0.5'],
      [tables.sideUniform, 'uniform', 'Mh_side', '0.5'],
    ] as const)
      words.forEach((_, i) => {
        table.column?.keys.forEach((ratio, j) => {
          expect(Number(table.cells[i]?.[j] || 0)).toBe(Number(at(i + 1, load, ratio, place)?.[column]))
        })
      })
  })

  it.each(words)('wall-plate: %s agrees with the tables, closely at their own ratios', edges => {
    const { base: held, sides } = wallEdges[edges]
    const count = [held, sides].filter(kind => kind === 'fixed').length
    for (const [width, pressure_top, close] of [
      ['3 m', '10 kPa', 0.01],
      ['6 m', '0 kPa', 0.01],
      ['4.2 m', '40 kPa', 0.12],
    ] as const) {
      const result = run({ edges, width, pressure_top })
      expect(result.errors).toEqual([])
      expect(result.agrees).toHaveLength(count)
      for (const { difference } of result.agrees) expect(difference).toBeLessThanOrEqual(close)
    }
  })

  // Thin plates: the answers of two loads add. Largest values at one place each: base at mid-width, side at mid-height.
  it('wall-plate: uniform and triangular pressure add', () => {
    const part = (pressure_top: string, pressure_base: string) => run({ pressure_top, pressure_base })
    const [both, uniform, rising] = [part('10 kPa', '40 kPa'), part('10 kPa', '10 kPa'), part('0 kPa', '30 kPa')]
    for (const name of ['M_base', 'M_mid'])
      expect(both.si(name) / (uniform.si(name) + rising.si(name))).toBeCloseTo(1, 5)
  })

  // Strips (statics): a wide wall propped at the top is nearly the propped strip, p a^2 / 8 for uniform pressure.
  it('wall-plate: a wide wall is a strip at its middle', () => {
    const { si } = run({ width: '12 m', edges: 'top hinged, others fixed', pressure_top: '40 kPa' })
    expect(Math.abs(si('M_base') / ((-40000 * 9) / 8) - 1)).toBeLessThanOrEqual(0.01)
  })

  // A narrow wall spans sideways: p b^2 / 12 at its sides (uniform pressure).
  it('wall-plate: a narrow wall is a strip across', () => {
    const { si } = run({ width: '0.75 m', pressure_top: '40 kPa' })
    expect(Math.abs(si('M_mid') / ((-40000 * 0.75 ** 2) / 12) - 1)).toBeLessThanOrEqual(0.01)
  })

  it('wall-plate: moments scale with the load factor, and with the square of the size', () => {
    expect(run({ load_factor: '1.5' }).si('M_vert')).toBeCloseTo(1.5 * run().si('M_vert'), 6)
    const half = run({ height: '1.5 m', width: '2.25 m' })
    expect(half.si('M_base')).toBeCloseTo(run().si('M_base') / 4, 6)
    expect(half.si('V_side')).toBeCloseTo(run().si('V_side') / 2, 6)
  })

  it.each(words)('wall-plate: %s has moments at its fixed edges and reactions at its held ones', edges => {
    const held = wallEdges[edges]
    const result = run({ edges, width: '3 m' })
    expect(result.has('M_base')).toBe(held.base === 'fixed')
    expect(result.has('M_side')).toBe(held.sides === 'fixed')
    expect(result.has('M_top')).toBe(held.top === 'fixed')
    expect(result.has('V_top')).toBe(held.top !== 'free')
    expect(result.si('V_base')).toBeGreaterThan(0)
  })

  it('wall-plate: a narrower or wider wall than the tables keeps its moments and loses its second method', () => {
    for (const width of ['1.49 m', '9.01 m']) {
      const result = run({ width })
      expect(result.errors).toEqual([])
      expect(result.has('M_base')).toBe(true)
      expect(result.has('M_b_t')).toBe(false)
    }
    expect(run({ width: '1.5 m' }).has('M_b_t')).toBe(true)
    expect(run({ width: '9 m' }).has('M_b_t')).toBe(true)
  })

  it('wall-plate: refuses a wall that is a strip, and a pressure that falls', () => {
    expect(rules({ width: '0.75 m' })).toEqual([])
    expect(rules({ width: '0.74 m' })).toContain('limit-exceeded')
    expect(rules({ width: '12 m' })).toEqual([])
    expect(rules({ width: '12.01 m' })).toContain('limit-exceeded')
    expect(rules({ pressure_top: '40 kPa' })).toEqual([])
    expect(rules({ pressure_top: '40.1 kPa' })).toContain('limit-exceeded')
    expect(rules({ pressure_base: '0 kPa', pressure_top: '0 kPa' })).toContain('value-outside-range')
    expect(rules({ edges: 'all hinged' })).toContain('choice-unknown')
  })

  it('wall-plate: the plate refuses what it was not verified for', () => {
    expect(wallPlateMethod.run({ ratio: 6, top: 0 }, { edges: 'all fixed' }).ok).toBe(false)
  })

  it('wall-plate: American units give the same moments', () => {
    expect(run({}, 'US').si('M_base')).toBeCloseTo(run().si('M_base'), 6)
    expect(run({}, 'US').shown('M_base')).toMatch(/ lbf\*ft\/ft$/)
  })

  it.each(words)('wall-plate: the elevation of %s hatches its fixed edges and names their moments', edges => {
    const { shapes, says } = drawingOf(wallPlate, { ...base, edges })
    const named = shapes.flatMap(shape => (shape.kind === 'label' ? (shape.label.symbol ?? []) : []))
    expect(named.includes('M_side')).toBe(wallEdges[edges].sides === 'fixed')
    expect(named.includes('M_base')).toBe(wallEdges[edges].base === 'fixed')
    expect(shapes.some(shape => shape.kind === 'line' && shape.dashed === true)).toBe(wallEdges[edges].top === 'free')
    expect(says).toContain(edges)
  })
})
