import { describe, expect, test } from 'vitest'
import { dimensionless, dimensionOf, power } from '../../src/quantity/dimension.ts'
import { dimensionByName, dimensionName, dimensionNames, dimensionWords } from '../../src/quantity/dimension-names.ts'
import { namedDimensions } from '../../src/quantity/dimension-table.ts'
import { displayPoint, displayUnit } from '../../src/quantity/display-unit.ts'
import { rational } from '../../src/quantity/rational.ts'
import { unitOf } from '../../src/quantity/unit.ts'

describe('dimension names', () => {
  test('dimension names: the names modules use are there', () => {
    const used =
      'ratio angle length area volume mass time temperature force pressure moment moment_per_length force_per_length unit_weight density flow flow_per_person velocity acceleration energy power current voltage charge dose dose_rate absorbed_dose activity per_length per_area area_per_length mass_per_area inertia'
    for (const name of used.split(' ')) expect(dimensionByName(name), name).toBeDefined()
    expect(dimensionByName('constructor')).toBeUndefined()
  })

  test('dimension names: names of one dimension are one object', () => {
    expect(dimensionByName('angle') === dimensionless).toBe(true)
    expect(dimensionByName('moment_per_length') === dimensionByName('force')).toBe(true)
    expect(dimensionByName('area_per_length') === dimensionByName('length')).toBe(true)
    expect(dimensionByName('stress') === dimensionByName('pressure')).toBe(true)
  })

  test('dimension names: no name stands twice, and both systems show the dimension it has', () => {
    expect(new Set(dimensionNames).size).toBe(dimensionNames.length)
    for (const row of namedDimensions) {
      expect(unitOf(row.US).dimension === row.dimension, row.name).toBe(true)
      expect(unitOf(row.SI).dimension === row.dimension, row.name).toBe(true)
    }
  })

  test('dimension words: words with the unit of the system', () => {
    expect(dimensionWords(dimensionByName('pressure')!, 'SI')).toBe('a pressure (kN/m^2)')
    expect(dimensionWords(dimensionByName('pressure')!, 'US')).toBe('a pressure (psf)')
    expect(dimensionWords(dimensionless, 'SI')).toBe('a plain number')
    expect(dimensionWords(dimensionOf({ length: 3, time: -3 }), 'SI')).toBe('a quantity in m^3/s^3')
    expect(dimensionName(dimensionOf({ mass: 1, length: 4, time: -2 }))).toBe('kN*m^3')
  })
})

describe('displayUnit', () => {
  test('displayUnit: trade units of each system', () => {
    const shown = ['length', 'force', 'pressure', 'moment', 'unit_weight', 'flow', 'temperature', 'ratio'].map(name => [
      displayUnit(dimensionByName(name)!, 'SI').text,
      displayUnit(dimensionByName(name)!, 'US').text,
    ])
    expect(shown).toEqual([
      ['m', 'ft'],
      ['kN', 'kip'],
      ['kN/m^2', 'psf'],
      ['kN*m', 'kip*ft'],
      ['kN/m^3', 'pcf'],
      ['L/s', 'cfm'],
      ['K', 'delta_degF'],
      ['', ''],
    ])
    expect([displayPoint('SI').text, displayPoint('US').text]).toEqual(['degC', 'degF'])
  })

  test('displayUnit: a dimension without a row is built of base units, its own dimension kept', () => {
    const unnamed = [
      dimensionOf({ mass: 1, length: 4, time: -2 }),
      dimensionOf({ mass: 2, length: -2, time: -4 }),
      dimensionOf({ length: rational(1, 2) }),
      dimensionOf({ mass: 1, time: -3, temperature: -4 }),
      dimensionOf({ dose: 1, length: 2, person: -1, amount: 1, luminous: 1, current: 2 }),
      power(dimensionByName('stress')!, rational(1, 2)),
    ]
    for (const dimension of unnamed)
      for (const system of ['SI', 'US'] as const) {
        const unit = displayUnit(dimension, system)
        expect(unit.dimension === dimension, unit.text).toBe(true)
        expect(unitOf(unit.text) === unit).toBe(true)
      }
    expect(displayUnit(unnamed[0]!, 'US').text).toBe('kip*ft^3')
    expect(displayUnit(unnamed[3]!, 'SI').text).toBe('kg/(s^3*K^4)')
  })
})
