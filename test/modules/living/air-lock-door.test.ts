import { describe, expect, it } from 'vitest'
import { airLockDoor } from '../../../src/modules/living/air-lock-door.ts'
import { plateBending, plateStress } from '../../../src/modules/living/plate-factors.ts'
import { plateSeries } from '../../../src/modules/living/plate-series.ts'
import { readRows } from '../../published/read-rows.ts'
import { levyPlate } from '../numerics/levy-plate.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const base: Row = {
  width: '0.9 m',
  height: '1.8 m',
  thickness: '10 mm',
  design_pressure: '10 kPa',
  strength: '235 MPa',
  bending_limit: '5 mm',
  difference: '50 Pa',
  opens: 'against the pressure',
  closer: '30 N',
  handle: '75 mm',
  gap: '1 mm',
  leak_limit: '0.1 m^3/s',
}
const run = (more: Row = {}) => runModule(airLockDoor, { ...base, ...more })
const rules = (more: Row) =>
  run(more)
    .diagnostics.filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)

describe('air-lock-door', () => {
  it.each(['SI', 'US'] as const)('air-lock-door: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(airLockDoor, airLockDoor.example, { units }).diagnostics).toEqual([])
  })

  it.each(readRows('door-pressure.csv'))(
    'air-lock-door: closer $closer_force_lbf lbf and $door_width_in in open at $published_dp_inH2O as printed',
    ({ closer_force_lbf, door_width_in, published_dp_inH2O = '' }) => {
      const ran = run({
        closer: `${closer_force_lbf} lbf`,
        width: `${door_width_in} in`,
        height: '7 ft',
        handle: '3 in',
      })
      // the source works with an inch of water of 5.2 lbf/ft^2
      const inches = ran.si('dp_max') / (5.2 * 47.880259)
      expect(Math.abs(inches - Number(published_dp_inH2O))).toBeLessThanOrEqual(0.005)
    },
  )

  it('air-lock-door: the tabled factors are those of the double series', () => {
    for (const [index, key] of plateStress.row.keys.entries()) {
      const { stress, bending } = plateSeries(Number(key), { poisson: 0.3, most: 400 })
      expect(Math.abs(Number(plateStress.cells[index]?.[0]) / stress - 1)).toBeLessThan(0.001)
      expect(Math.abs(Number(plateBending.cells[index]?.[0]) / bending - 1)).toBeLessThan(0.006)
    }
  })

  // memory: Timoshenko, table 8: a square bends by 0.00406 p b^4 / D and has a moment of 0.0479 p b^2
  it('air-lock-door: the double series has the printed values of a square, and of a strip', () => {
    const square = plateSeries(1, { poisson: 0.3, most: 400 })
    expect(square.bending / (12 * 0.91)).toBeCloseTo(0.00406, 5)
    expect(square.stress / 6).toBeCloseTo(0.0479, 4)
    const strip = plateSeries(60, { poisson: 0.3, most: 4000 })
    expect(strip.bending).toBeCloseTo((5 / 32) * 0.91, 3)
    expect(strip.stress).toBeCloseTo(0.75, 2)
  })

  it('air-lock-door: the series agrees with Levy, another series, at every ratio', () => {
    for (const ratio of [1, 1.3, 2.22, 3.5]) {
      const { w, mx } = levyPlate({ ratio, nu: 0.3, bottom: 'simple', top: 'simple' }, 0.5, ratio / 2)
      const { stress, bending } = plateSeries(ratio, { poisson: 0.3, most: 400 })
      expect(bending / (12 * 0.91 * w)).toBeCloseTo(1, 4)
      expect(stress / (6 * mx)).toBeCloseTo(1, 3)
    }
  })

  it.each(['1.2 m', '2 m', '2.25 m', '3.2 m', '4 m'])(
    'air-lock-door: table and series agree for a leaf of 0.9 by %s',
    height => {
      const { agrees } = run({ height })
      expect(agrees.length).toBe(2)
      for (const { difference, band } of agrees) expect(difference).toBeLessThan(band)
    },
  )

  it('air-lock-door: a strip has 0.75 and 0.142, and nothing lies above it', () => {
    expect(Number(plateStress.cells.at(-1)?.[0])).toBeLessThan(0.75)
    expect(Number(plateBending.cells.at(-1)?.[0])).toBeLessThan(0.1422)
    expect(run({ width: '0.5 m', height: '3 m' }).si('k_s')).toBe(5)
  })

  it('air-lock-door: four times the pressure needs twice the thickness', () => {
    expect(run({ design_pressure: '40 kPa' }).si('t_req')).toBeCloseTo(2 * run().si('t_req'), 12)
  })

  it('air-lock-door: a leaf turned round is the same plate', () => {
    const turned = run({ width: '1.8 m', height: '0.9 m' })
    expect(turned.si('t_req')).toBeCloseTo(run().si('t_req'), 12)
    expect(turned.si('w_d')).toBeCloseTo(run().si('w_d'), 12)
  })

  it('air-lock-door: without a pressure difference only the closer is felt', () => {
    expect(run({ difference: '0 Pa' }).si('F_open')).toBeCloseTo(30, 12)
    expect(run({ difference: '0 Pa' }).si('Q_leak')).toBe(0)
    expect(run({ difference: '200 Pa' }).si('Q_leak')).toBeCloseTo(2 * run().si('Q_leak'), 12)
  })

  it('air-lock-door: the difference at which it can just be opened opens it just so', () => {
    const most = run().si('dp_max')
    expect(run({ difference: `${most * 0.999} Pa` }).satisfied('can_open')).toBe(true)
    expect(run({ difference: `${most * 1.001} Pa` }).satisfied('can_open')).toBe(false)
  })

  it('air-lock-door: a door that opens with the pressure is helped, and flies open', () => {
    const way = { opens: 'with the pressure' }
    expect(run({ ...way, difference: '10 Pa' }).si('F_open')).toBeLessThan(30)
    expect(run({ ...way, difference: '100 Pa' }).si('F_open')).toBe(0)
    expect(run({ ...way, difference: '100 Pa' }).satisfied('held')).toBe(true)
    expect(run({ ...way, difference: '200 Pa' }).satisfied('held')).toBe(false)
    expect(rules({ ...way, difference: '10 Pa' })).toEqual(['warning limit-exceeded'])
  })

  it('air-lock-door: thickness, bending and leak are just enough, or just not', () => {
    const need = run().si('t_req') * 1000
    expect(run({ thickness: `${need * 1.001} mm` }).satisfied('strong')).toBe(true)
    expect(run({ thickness: `${need * 0.999} mm` }).satisfied('strong')).toBe(false)
    const bends = run().si('w_d') * 1000
    expect(run({ bending_limit: `${bends * 1.001} mm` }).satisfied('stiff')).toBe(true)
    expect(run({ bending_limit: `${bends * 0.999} mm` }).satisfied('stiff')).toBe(false)
    const leaks = run().si('Q_leak')
    expect(run({ leak_limit: `${leaks * 1.001} m^3/s` }).satisfied('tight')).toBe(true)
    expect(run({ leak_limit: `${leaks * 0.999} m^3/s` }).satisfied('tight')).toBe(false)
  })

  it.each([
    [{ handle: '0.449 m' }, []],
    [{ handle: '0.45 m' }, ['error limit-exceeded']],
    [{ closer: '133 N' }, []],
    [{ closer: '134 N' }, ['error limit-exceeded']],
    [{ thickness: '90 mm' }, []],
    [{ thickness: '91 mm' }, ['warning limit-exceeded']],
    [{ thickness: '4 mm' }, ['warning limit-exceeded']],
  ])('air-lock-door: %j says %j', (more, said) => {
    expect(rules(more as Row)).toEqual(said)
  })

  it.each([
    ['width', '0.3 m'],
    ['design_pressure', '0 kPa'],
    ['factor', '1.1'],
    ['discharge', '0.4'],
    ['gap', '-0.1 mm'],
  ])('air-lock-door: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })
})
