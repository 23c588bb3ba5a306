import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as tables from '../../../src/modules/concrete/aci63-method3.ts'
import { panelWords } from '../../../src/modules/concrete/is456-table-26.ts'
import { twoWaySlabAci63 } from '../../../src/modules/concrete/two-way-slab-aci-63.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

const words = Object.keys(panelWords)
/** Case numbers of ACI 318-63 in the order of the words. */
const cases = ['2', '9', '8', '4', '5', '3', '6', '7', '1']
const base = {
  short_span: '4 m',
  long_span: '5 m',
  dead_load: '20 kN/m^2',
  live_load: '5 kN/m^2',
  edges: 'all continuous',
}
const run = (changes: Partial<typeof base> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(twoWaySlabAci63, { ...base, ...changes }, { units })
const rules = (changes: Partial<typeof base>) => run(changes).errors.map(fault => fault.rule)

const published = () => {
  const text = readFileSync(new URL('./published/concrete-aci63-method3.csv', import.meta.url), 'utf8')
  const [head = '', ...rows] = text.split('\n').filter(line => line !== '' && !line.startsWith('#'))
  const columns = head.split(',')
  return rows.map(row => Object.fromEntries(row.split(',').map((cell, i) => [columns[i] ?? '', cell])))
}

/** Continuous edges of a kind, read from the words. */
function edgeCount(edges: string, kind: 'long' | 'short'): number {
  if (edges === 'all continuous') return 2
  if (edges === 'all discontinuous') return 0
  if (edges === 'two adjacent edges discontinuous') return 1
  const own = edges.includes(kind)
  if (edges.endsWith('edge continuous')) return own ? 1 : 0
  if (!own) return 2
  return edges.startsWith('two') ? 0 : 1
}

describe('two-way slab by ACI 318-63', () => {
  it('two-way-slab-aci-63: the example evaluates without a message and agrees with the plate', () => {
    const result = runModule(twoWaySlabAci63, twoWaySlabAci63.example)
    expect(result.diagnostics).toEqual([])
    expect(result.agrees).toHaveLength(1)
    for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
    expect(result.satisfied('load_carried')).toBe(true)
  })

  // ACI 318-63 Method 3 as reprinted by Nilson, Tables 12.3 to 12.6 (status in the head of the file).
  it('two-way-slab-aci-63: every entry and every blank of the tables is as published', () => {
    const rows = published()
    expect(rows).toHaveLength(99)
    const plain = (cell: string | undefined) => (cell ? String(Number(cell)) : '')
    for (const [column, table] of [
      ['Ca_neg', tables.shortNegative],
      ['Cb_neg', tables.longNegative],
      ['Ca_pos_dead', tables.shortDead],
      ['Cb_pos_dead', tables.longDead],
      ['Ca_pos_live', tables.shortLive],
      ['Cb_pos_live', tables.longLive],
      ['Wa', tables.shortShare],
    ] as const)
      for (const row of rows) {
        const [i, j] = [cases.indexOf(row.case ?? ''), table.column?.keys.indexOf(row.m ?? '') ?? -1]
        expect(plain(table.cells[i]?.[j]), `${column}, case ${row.case}, ${row.m}`).toBe(plain(row[column]))
      }
  })

  it('two-way-slab-aci-63: the shares of the two spans make the whole load, and live load is the mean with case 1', () => {
    const rows = published()
    for (const row of rows) {
      expect(Number(row.Wa) + Number(row.Wb)).toBeCloseTo(1, 9)
      const alone = rows.find(other => other.case === '1' && other.m === row.m)
      const mean = (Number(row.Ca_pos_dead) + Number(alone?.Ca_pos_dead)) / 2
      expect(Math.abs(Number(row.Ca_pos_live) - mean)).toBeLessThanOrEqual(0.00101)
    }
  })

  // Case 2, ratio 0.8: each coefficient by the square of its own span.
  it('two-way-slab-aci-63: each moment takes its own span squared', () => {
    const { si } = run()
    expect(si('M_x_sup')).toBeCloseTo(0.065 * 25000 * 16, 6)
    expect(si('M_y_sup')).toBeCloseTo(0.027 * 25000 * 25, 6)
    expect(si('M_x_mid')).toBeCloseTo((0.026 * 20000 + 0.041 * 5000) * 16, 6)
    expect(si('M_y_mid')).toBeCloseTo((0.011 * 20000 + 0.017 * 5000) * 25, 6)
    expect(si('V_long')).toBeCloseTo((0.71 * 25000 * 4) / 2, 6)
    expect(si('V_short')).toBeCloseTo((0.29 * 25000 * 5) / 2, 6)
  })

  it.each(words)('two-way-slab-aci-63: %s keeps to the bands of the plate, and to its edges', edges => {
    const [longs, shorts] = [edgeCount(edges, 'long'), edgeCount(edges, 'short')]
    for (const [long_span, live_load] of [
      ['4 m', '5 kN/m^2'],
      ['4.6 m', '500 kN/m^2'],
      ['5 m', '0 kN/m^2'],
      ['5.4 m', '0 kN/m^2'],
      ['6 m', '60 kN/m^2'],
      ['8 m', '20 kN/m^2'],
    ] as const) {
      const result = run({ edges, long_span, live_load })
      expect(result.errors).toEqual([])
      expect(result.agrees).toHaveLength(result.si('m_s') >= 0.8 ? 2 : 1)
      for (const { difference, band } of result.agrees) expect(difference).toBeLessThanOrEqual(band)
      const peak = result.si('V_el') / Math.max(result.si('V_long'), result.si('V_short'))
      expect(peak).toBeGreaterThan(1)
      expect(peak).toBeLessThan(2.4)
      expect(result.satisfied('load_carried')).toBe(true)
      expect(result.si('M_x_sup') > 0).toBe(longs !== 0)
      expect(result.si('M_y_sup') > 0).toBe(shorts !== 0)
      expect(result.has('M_x_dis')).toBe(longs !== 2)
      expect(result.has('M_y_dis')).toBe(shorts !== 2)
    }
  })

  it('two-way-slab-aci-63: a discontinuous edge has a third of the sagging moment', () => {
    const { si } = run({ edges: 'all discontinuous' })
    expect(si('M_x_dis')).toBeCloseTo(si('M_x_mid') / 3, 9)
    expect(si('M_y_dis')).toBeCloseTo(si('M_y_mid') / 3, 9)
  })

  it('two-way-slab-aci-63: live load on single panels sags more than as much dead load', () => {
    const live = run({ dead_load: '15 kN/m^2', live_load: '10 kN/m^2' })
    expect(live.si('M_x_mid')).toBeGreaterThan(run().si('M_x_mid'))
    expect(live.si('M_x_sup')).toBeCloseTo(run().si('M_x_sup'), 6)
  })

  it('two-way-slab-aci-63: refuses a panel that spans one way, and spans the wrong way round', () => {
    expect(rules({ long_span: '8 m' })).toEqual([])
    expect(rules({ long_span: '8.01 m' })).toContain('limit-exceeded')
    expect(rules({ long_span: '4 m' })).toEqual([])
    expect(rules({ long_span: '3.99 m' })).toContain('limit-exceeded')
    expect(rules({ dead_load: '0 kN/m^2' })).toContain('value-outside-range')
    expect(rules({ edges: 'case 4' })).toContain('choice-unknown')
  })

  it('two-way-slab-aci-63: American units give the same moments', () => {
    expect(run({}, 'US').si('M_x_mid')).toBeCloseTo(run().si('M_x_mid'), 6)
    expect(run({}, 'US').shown('M_x_mid')).toMatch(/ lbf\*ft\/ft$/)
  })

  it('two-way-slab-aci-63: the plan names the moments of the method', () => {
    const { shapes } = drawingOf(twoWaySlabAci63, base)
    const named = shapes.flatMap(shape => (shape.kind === 'label' ? (shape.label.symbol ?? []) : []))
    expect(named).toEqual(expect.arrayContaining(['M_a_pos', 'M_b_pos', 'M_a_neg', 'M_b_neg']))
  })
})
