import { describe, expect, it } from 'vitest'
import { barSchedule } from '../../../src/modules/concrete/bar-schedule.ts'
import { shapesWith } from '../../../src/modules/concrete/bar-shapes.ts'
import { metricDiameter, metricMass } from '../../../src/modules/concrete/bar-tables.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const run = (row: Row, more: Row = {}) =>
  runModule(barSchedule, {
    bars: [{ mark: '01', bar_size: '12 mm', shape: 'shape 00', count: '1', a: '900 mm', ...row }],
    ...more,
  })
const cut = (row: Row) => run(row).si('L_cut_1') * 1000
const rules = (ran: ReturnType<typeof run>) => ran.errors.map(({ rule }) => rule)

describe('bar-schedule', () => {
  it.each(['SI', 'US'] as const)('bar-schedule: the example evaluates without a message, in %s', units => {
    expect(runModule(barSchedule, barSchedule.example, { units }).diagnostics).toEqual([])
  })

  // BS 8666:2005 Table 3 (looked up in a reprint), by hand; r 24 mm for 12 mm, 70 mm for 20 mm.
  it.each([
    [{ shape: 'shape 00' }, 900],
    [{ shape: 'shape 11', b: '400 mm' }, 900 + 400 - 12 - 12],
    [{ shape: 'shape 13', b: '100 mm', c: '500 mm' }, 900 + 57 + 500 - 19.2],
    [{ shape: 'shape 21', b: '300 mm', c: '500 mm' }, 1700 - 24 - 24],
    [{ shape: 'shape 23', b: '300 mm', c: '500 mm' }, 1700 - 24 - 24],
    [{ shape: 'shape 26', b: '300 mm', c: '500 mm' }, 1700],
    [{ shape: 'shape 41', b: '300 mm', c: '200 mm', d: '300 mm', e: '400 mm' }, 2100 - 48 - 48],
    [{ shape: 'shape 47', b: '300 mm' }, 1800 + 300 + 252],
    [{ shape: 'shape 47', b: '300 mm', bar_size: '10 mm' }, 1800 + 300 + 240],
    [{ shape: 'shape 51', b: '300 mm' }, 1800 + 600 + 192],
    [{ shape: 'shape 51', b: '300 mm', bar_size: '8 mm' }, 1800 + 600 + 160],
    [{ shape: 'shape 63', b: '300 mm' }, 1800 + 900 + 168],
    [{ shape: 'shape 63', b: '300 mm', bar_size: '10 mm' }, 1800 + 900 + 150],
    [{ shape: 'shape 75', b: '300 mm' }, Math.PI * 888 + 300],
    [{ shape: 'shape 11', b: '400 mm', bar_size: '20 mm' }, 1300 - 35 - 20],
  ])('bar-schedule: %j is cut %d mm long', (row, printed) => {
    expect(cut(row)).toBeCloseTo(printed, 6)
  })

  it('bar-schedule: masses are those of the tables of bars', () => {
    metricDiameter.cells.forEach(([phi], i) => {
      const ran = run({ bar_size: `${phi} mm`, a: '10 m', count: '100' })
      expect(Math.abs(ran.si('m_n_1') / 1000 / Number(metricMass.cells[i]?.[0]) - 1)).toBeLessThan(0.002)
    })
  })

  it('bar-schedule: lengths are cut in steps of 25 mm, upwards, and weighed as they are cut', () => {
    const cutTo = (a: string) => run({ a }).si('L_c_1') * 1000
    expect([cutTo('900 mm'), cutTo('901 mm'), cutTo('925 mm')].map(Math.round)).toEqual([900, 925, 925])
    expect(run({ a: '901 mm' }).si('m_n_1')).toBe(run({ a: '925 mm' }).si('m_n_1'))
  })

  it('bar-schedule: the mass in all is the sum of the rows', () => {
    const ran = runModule(barSchedule, barSchedule.example)
    const sum = [1, 2, 3, 4].reduce((all, i) => all + ran.si(`m_n_${i}`), 0)
    expect(ran.si('m_t')).toBeCloseTo(sum, 9)
  })

  it.each([
    ['shape 11', 'b', {}],
    ['shape 13', 'c', { b: '100 mm' }],
    ['shape 21', 'c', { b: '100 mm' }],
    ['shape 23', 'c', { b: '100 mm' }],
    ['shape 26', 'c', { b: '100 mm' }],
    ['shape 41', 'e', { b: '200 mm', c: '200 mm', d: '200 mm' }],
  ])('bar-schedule: the end leg of %s is 125 mm at least, and one left out is none', (shape, leg, rest) => {
    const ends = (row: Row) => run({ shape, ...rest, ...row }).satisfied('ends')
    expect(ends({ [leg]: '125 mm' })).toBe(true)
    expect(ends({ [leg]: '124 mm' })).toBe(false)
    expect(ends({})).toBe(false)
    expect(ends({ [leg]: '300 mm', a: '124 mm' })).toBe(false)
  })

  it.each([
    ['shape 13', 'b', { c: '300 mm' }],
    ['shape 21', 'b', { c: '300 mm' }],
    ['shape 23', 'b', { c: '300 mm' }],
    ['shape 26', 'b', { c: '300 mm' }],
    ['shape 41', 'c', { b: '200 mm', d: '200 mm', e: '200 mm' }],
    ['shape 47', 'b', {}],
    ['shape 51', 'b', {}],
    ['shape 63', 'b', {}],
    ['shape 75', 'a', {}],
  ])('bar-schedule: %s has room for two bends in a leg of 72 mm and not in less', (shape, leg, rest) => {
    const legs = (row: Row) => run({ shape, ...rest, ...row }).satisfied('legs')
    expect(legs({ [leg]: '72 mm' })).toBe(true)
    expect(legs({ [leg]: '71 mm' })).toBe(false)
  })

  it('bar-schedule: a dimension that the shape has not is marked in the table of what was given', () => {
    expect(shapesWith('B')).not.toContain('shape 00')
    expect(shapesWith('D')).toEqual(['shape 41'])
    const given = run({ b: '400 mm' }).results.plan.blocks[0]
    const row = given?.kind === 'calc' ? given.given.find(({ name }) => name === 'b_1') : undefined
    expect(row?.says).toContain('no part in this calculation')
    expect(cut({ b: '400 mm' })).toBeCloseTo(900, 9)
  })

  it('bar-schedule: both sides of the length stocked', () => {
    expect(run({ a: '12 m' }).satisfied('stock')).toBe(true)
    expect(run({ a: '12.01 m' }).satisfied('stock')).toBe(false)
    expect(run({ a: '12.01 m' }, { stock_length: '14 m' }).satisfied('stock')).toBe(true)
  })

  it('bar-schedule: a bent bar of a size without a radius is refused, a straight one is not', () => {
    expect(run({ bar_size: '14 mm' }).errors).toEqual([])
    expect(rules(run({ bar_size: '14 mm', shape: 'shape 11', b: '400 mm' }))).toContain('lookup-outside-table')
  })

  it('bar-schedule: bends longer than the bar leave none, and it is refused', () => {
    expect(rules(run({ bar_size: '40 mm', shape: 'shape 21', a: '100 mm', b: '50 mm', c: '50 mm' }))).toEqual([
      'limit-exceeded',
    ])
  })

  it.each([
    [{ a: '0 mm' }],
    [{ count: '0' }],
    [{ bar_size: '4.9 mm' }],
    [{ a: '20.1 m' }],
    [{ b: '-1 mm', shape: 'shape 11' }],
  ])('bar-schedule: refuses %j', row => {
    expect(rules(run(row))).toContain('value-outside-range')
  })
})
