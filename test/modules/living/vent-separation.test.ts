import { describe, expect, it } from 'vitest'
import { ventSeparation } from '../../../src/modules/living/vent-separation.ts'
import { readRows } from '../../published/read-rows.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const exhaust: Row = { kind: 'exhaust class 3', apart: '8 m', mouth: '1 m' }
const other: Row = { kind: 'driveway', apart: '30 m', mouth: '0 m' }
const base: Row = {
  column: 'metric',
  intake_height: '1 m',
  snow: '0.5 m',
  flood: '0.3 m',
  wind: 'intake',
  intake_flow: '100 L/s',
  intake_area: '0.1 m^2',
}
const run = (more: Row = {}, sources: readonly Row[] = [{}]) =>
  runModule(ventSeparation, { ...base, sources: sources.map(source => ({ ...exhaust, ...source })), ...more })
const rules = (more: Row, row: Row = {}) =>
  run(more, [row])
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)

describe('vent-separation', () => {
  it.each(['SI', 'US'] as const)('vent-separation: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(ventSeparation, ventSeparation.example, { units }).diagnostics).toEqual([])
  })

  it.each(readRows('intake-separation.csv'))('vent-separation: $kind stands as published, $m m and $ft ft', row => {
    const { kind = '', m, ft } = row
    expect(run({}, [{ kind, mouth: '3 m' }, {}]).si('L_min_1')).toBeCloseTo(Number(m), 12)
    expect(run({ column: 'feet' }, [{ kind, mouth: '3 m' }, {}]).si('L_min_1')).toBeCloseTo(Number(ft) * 0.3048, 12)
  })

  it('vent-separation: an engine is kept twice as far as a flue', () => {
    const least = (kind: string) => run({}, [{ kind }, {}]).si('L_min_1')
    expect(least('engine exhaust')).toBe(2 * least('flue'))
  })

  it('vent-separation: the distance is measured from mouth to mouth', () => {
    expect(run({}, [{ apart: '3 m', mouth: '5 m' }]).si('L_s_1')).toBeCloseTo(5, 12)
    expect(run({}, [{ apart: '3 m', mouth: '5 m' }]).satisfied('far_enough')).toBe(true)
    expect(run({}, [{ apart: '2.9 m', mouth: '5 m' }]).satisfied('far_enough')).toBe(false)
  })

  it('vent-separation: more air wants more distance, a jet away from the intake less, never less than none', () => {
    const far = (more: Row) => run({}, [more]).si('L_dil_1')
    expect(far({ exhaust_flow: '400 L/s' })).toBeCloseTo(2 * far({ exhaust_flow: '100 L/s' }), 12)
    expect(far({ exhaust_speed: '2 m/s' })).toBeLessThan(far({}))
    expect(far({ exhaust_speed: '-2 m/s' })).toBeGreaterThan(far({}))
    expect(far({ exhaust_speed: '8 m/s' })).toBe(0)
    expect(far({ kind: 'exhaust class 4' }) / far({})).toBeCloseTo(Math.sqrt(50 / 15), 12)
  })

  it('vent-separation: an exhaust of which no flow is given takes all that is drawn in', () => {
    expect(run().si('Q_x_1')).toBe(run().si('intake_flow'))
    expect(run({ intake_flow: '90 L/s' }, [{ exhaust_flow: '60 L/s' }]).si('Q_x_1')).toBeCloseTo(0.06, 12)
  })

  it('vent-separation: rows may stand in any order, and every exhaust of air is thinned', () => {
    const rows: readonly Row[] = [
      other,
      { kind: 'exhaust class 3', apart: '8 m', exhaust_flow: '70 L/s' },
      { kind: 'engine exhaust', apart: '21 m' },
      { kind: 'exhaust class 4', apart: '12 m', exhaust_flow: '30 L/s' },
    ]
    const [one, turned] = [run({}, rows), run({}, [...rows].reverse())]
    for (const [at, back] of [
      [1, 4],
      [2, 3],
      [3, 2],
      [4, 1],
    ])
      for (const name of ['L_s', 'L_min', 'Q_x']) expect(turned.si(`${name}_${back}`)).toBe(one.si(`${name}_${at}`))
    expect(turned.si('L_dil_1')).toBe(one.si('L_dil_4'))
    expect(turned.si('L_dil_3')).toBe(one.si('L_dil_2'))
    expect(one.has('L_dil_1') || one.has('L_dil_3')).toBe(false)
    expect(one.si('Q_all')).toBeCloseTo(0.1, 12)
    expect([one.errors, turned.errors]).toEqual([[], []])
  })

  it('vent-separation: without an exhaust among the rows nothing is said of intake and exhaust', () => {
    expect(run({}, [other]).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(run({}, [other, {}]).errors).toEqual([])
  })

  it('vent-separation: a vent that is said to end above the intake does', () => {
    const vent = (mouth: string) =>
      run({}, [{}, { kind: 'soil vent above', apart: '9 m', mouth }]).satisfied('vent_above')
    expect(vent('2 m')).toBe(true)
    expect(vent('1.99 m')).toBe(false)
  })

  // the two unit forms of the standard round their constants apart
  it.each([50, 200, 1000])('vent-separation: the form in feet and %d cfm agrees within half a percent', cfm => {
    const feet = 0.09 * Math.sqrt(cfm) * Math.sqrt(15)
    expect(run({}, [{ exhaust_flow: `${cfm} cfm` }]).si('L_dil_1') / 0.3048 / feet).toBeCloseTo(1, 2)
  })

  it('vent-separation: the exhaust is just thinned, or just not', () => {
    expect(run({}, [{ exhaust_flow: '2600 L/s' }]).satisfied('diluted')).toBe(true)
    expect(run({}, [{ exhaust_flow: '2700 L/s' }]).satisfied('diluted')).toBe(false)
  })

  it.each([
    ['above_snow', { snow: '0.7 m' }, { snow: '0.71 m' }],
    ['above_water', { flood: '0.7 m' }, { flood: '0.71 m' }],
    ['gentle', { intake_area: '0.0667 m^2' }, { intake_area: '0.0666 m^2' }],
  ] as const)('vent-separation: %s with %j, not with %j', (check, enough, short) => {
    expect(run(enough).satisfied(check)).toBe(true)
    expect(run(short).satisfied(check)).toBe(false)
  })

  it.each([
    [{ wind: 'exhaust' }, ['warning limit-exceeded']],
    [{ intake_height: '2 m' }, []],
    [{ intake_height: '2.1 m' }, ['warning limit-exceeded']],
  ])('vent-separation: %j says %j', (more, said) => {
    expect(rules(more as Row)).toEqual(said)
  })

  it.each([
    [{ exhaust_speed: '5 m/s' }, []],
    [{ exhaust_speed: '5.1 m/s' }, ['warning limit-exceeded']],
    [{ exhaust_flow: '50 L/s' }, []],
    [{ exhaust_flow: '49 L/s' }, ['warning limit-exceeded']],
  ])('vent-separation: an exhaust with %j says %j', (row, said) => {
    expect(rules({}, row as Row)).toEqual(said)
  })

  it.each([
    ['intake_area', '0 m^2'],
    ['snow', '-0.1 m'],
  ])('vent-separation: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it.each([
    ['exhaust_flow', '0 L/s'],
    ['exhaust_speed', '21 m/s'],
    ['mouth', '51 m'],
  ])('vent-separation: refuses a row with %s of %s', (name, value) => {
    expect(run({}, [{ [name]: value }]).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })

  it('vent-separation: the elevation has the mouths where they are', () => {
    const drawing = drawingOf(ventSeparation, { ...base, sources: [{ ...exhaust, source: 'exhaust' }] })
    const mouths = drawing.shapes
      .filter(shape => shape.kind === 'line' && shape.weight === 'thick')
      .map(shape => pointsOf(shape).at(-1))
    expect(mouths).toEqual([
      [0, 1],
      [8, 1],
    ])
    expect(drawing.says).toContain('exhaust at 8')
  })

  it('vent-separation: no dimension is drawn where the pipes stand above each other, and no water where there is none', () => {
    const { shapes } = drawingOf(ventSeparation, {
      ...base,
      flood: '0 m',
      sources: [{ ...exhaust, apart: '0 m', mouth: '7 m' }],
    })
    expect(shapes.filter(({ kind }) => kind === 'dimension').length).toBe(1)
    expect(shapes.some(({ kind }) => kind === 'level')).toBe(false)
  })
})
