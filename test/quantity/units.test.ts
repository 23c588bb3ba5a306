import { all, create } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { exactOf, nearest } from '../../src/quantity/exact.ts'
import { fromUnit, inUnit } from '../../src/quantity/to-unit.ts'
import { readUnit, unitOf, unitSpoken, unitTex, unitText } from '../../src/quantity/unit.ts'
import { unitMeant } from '../../src/quantity/unit-hints.ts'
import { isUnitName, listedUnit, unitNames } from '../../src/quantity/units.ts'

/** Conversion factors as NIST SP 811 (2008), appendix B.8, prints them; provenance: memory. Seven figures, or exact. */
const sp811: readonly (readonly [unit: string, printed: string])[] = [
  ['atm', '1.01325E+05'],
  ['bar', '1.0E+05'],
  ['Btu', '1.055056E+03'],
  ['Btu/hr', '2.930711E-01'],
  ['Btu/(hr*ft^2*delta_degF)', '5.678263E+00'],
  ['Btu*in/(hr*ft^2*delta_degF)', '1.442279E-01'],
  ['Btu/(lb*delta_degF)', '4.1868E+03'],
  ['Btu/lb', '2.326E+03'],
  ['cal', '4.184E+00'],
  ['kcal', '4.184E+03'],
  ['ft^3', '2.831685E-02'],
  ['cfm', '4.719474E-04'],
  ['in^3', '1.638706E-05'],
  ['yd^3', '7.645549E-01'],
  ['Ci', '3.7E+10'],
  ['deg', '1.745329E-02'],
  ['delta_degF', '5.555556E-01'],
  ['eV', '1.602177E-19'],
  ['ft', '3.048E-01'],
  ['ftH2O', '2.989067E+03'],
  ['ft*lbf', '1.355818E+00'],
  ['gal', '3.785412E-03'],
  ['gpm', '6.309020E-05'],
  ['ha', '1.0E+04'],
  ['hp', '7.456999E+02'],
  ['in', '2.54E-02'],
  ['inHg', '3.386389E+03'],
  ['inH2O', '2.490889E+02'],
  ['kgf', '9.80665E+00'],
  ['kgf/cm^2', '9.80665E+04'],
  ['kWh', '3.6E+06'],
  ['kip', '4.448222E+03'],
  ['ksi', '6.894757E+06'],
  ['mi', '1.609344E+03'],
  ['mi^2', '2.589988E+06'],
  ['mph', '4.4704E-01'],
  ['mil', '2.54E-05'],
  ['mmHg', '1.333224E+02'],
  ['mmH2O', '9.80665E+00'],
  ['oz', '2.834952E-02'],
  ['lb', '4.535924E-01'],
  ['lb/ft^2', '4.882428E+00'],
  ['lb/ft^3', '1.601846E+01'],
  ['lbf', '4.448222E+00'],
  ['plf', '1.459390E+01'],
  ['psf', '4.788026E+01'],
  ['psi', '6.894757E+03'],
  ['rem', '1.0E-02'],
  ['roentgen', '2.58E-04'],
  ['slug', '1.459390E+01'],
  ['ft^2', '9.290304E-02'],
  ['in^2', '6.4516E-04'],
  ['yd', '9.144E-01'],
  ['ton', '9.071847E+02'],
  ['tonf', '8.896443E+03'],
  ['torr', '1.333224E+02'],
  ['kcmil', '5.067075E-07'],
]

/** Half a unit in the last printed digit. */
function tolerance(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.split('E')
  const decimals = (mantissa.split('.')[1] ?? '').length
  return 0.5 * 10 ** (Number(exponent) - Math.max(decimals, 6)) * (1 + 1e-9)
}

describe('units', () => {
  test.each(sp811)('units: %s is %s as NIST SP 811 prints it', (unit, printed) => {
    expect(Math.abs(unitOf(unit).factor - Number(printed))).toBeLessThanOrEqual(tolerance(printed))
  })

  test('units: temperature points follow the definitions of the scales (SP 811 B.8: t/°C = T/K - 273.15, t/°F = 1.8 t/°C + 32)', () => {
    expect(fromUnit(0, unitOf('degC'))).toBe(273.15)
    expect(fromUnit(32, unitOf('degF'))).toBeCloseTo(273.15, 10)
    expect(fromUnit(212, unitOf('degF'))).toBeCloseTo(373.15, 10)
    expect(fromUnit(-40, unitOf('degF'))).toBeCloseTo(fromUnit(-40, unitOf('degC')), 10)
    expect(inUnit(fromUnit(68, unitOf('degF')), unitOf('degC'))).toBeCloseTo(20, 10)
  })

  test('units: every unit has mathjs’s factor where mathjs’s own is sound', () => {
    const math = create(all ?? {})
    // Left out: factors that mathjs rounds or takes from an older standard (kip, acre, mmHg and torr, eV), names with another meaning there
    const other = [
      'kip',
      'acre',
      'mmHg',
      'torr',
      'eV',
      'keV',
      'MeV',
      'Btu',
      'min',
      'cal',
      'ton',
      'A',
      'rad',
      'deg',
      'mrad',
      'percent',
      'person',
    ]
    let compared = 0
    for (const name of unitNames) {
      const listed = listedUnit(name)!
      if (other.includes(name) || listed.offset !== undefined) continue
      let theirs: number
      try {
        theirs = math
          .unit(1, name)
          .toSI()
          .toNumeric(null as never) as number
      } catch {
        continue
      }
      expect(Math.abs(theirs / unitOf(name).factor - 1), name).toBeLessThan(1e-9)
      compared++
    }
    expect(compared).toBeGreaterThan(60)
  })

  test('units: a year is the Julian year of the IAU, 31 557 600 s', () => {
    expect(unitOf('yr').factor).toBe(31_557_600)
  })

  test('units: what is defined by a whole number of another comes out whole', () => {
    expect(inUnit(fromUnit(5, unitOf('kip')), unitOf('lbf'))).toBe(5000)
    expect(unitOf('in/ft').factor).toBe(1 / 12)
    expect(fromUnit(12, unitOf('in/ft'))).toBe(1)
    expect(inUnit(fromUnit(1, unitOf('ksf')), unitOf('psf'))).toBeCloseTo(1000, 9)
    expect(nearest(exactOf('5/9'))).toBe(5 / 9)
  })

  test('units: one-letter names are m s g N W J V A K L only', () => {
    expect(unitNames.filter(name => name.length === 1).sort()).toEqual([...'AJKLNVWgms'])
  })

  test('units: names that engineers give to values are free', () => {
    const free = [
      ...'bdhtlqwneiTHBFSCPMRZ',
      'Es',
      'GA',
      'fs',
      'hs',
      'Pa_0',
      'ct',
      'cd',
      'lx',
      'ly',
      'lm',
      'qt',
      'pt',
      'As',
      'fc',
      'fy',
      'kn',
    ]
    for (const name of free) expect(isUnitName(name), name).toBe(false)
  })

  test('units: no name has two meanings and every unit has words', () => {
    expect(new Set(unitNames).size).toBe(unitNames.length)
    expect(unitNames.length).toBeGreaterThan(130)
    for (const name of unitNames) {
      const unit = listedUnit(name)!
      expect(unit.singular.length * unit.plural.length * unit.tex.length * unit.plain.length, name).toBeGreaterThan(0)
      expect(unitOf(name).factor).toBeGreaterThan(0)
    }
  })

  test('units: Sv, Gy and roentgen have three dimensions; Hz and Bq one', () => {
    expect(unitOf('Sv').dimension === unitOf('Gy').dimension).toBe(false)
    expect(unitOf('roentgen').dimension === unitOf('Gy').dimension).toBe(false)
    expect(unitOf('Hz').dimension === unitOf('Bq').dimension).toBe(true)
    expect(unitOf('lb').dimension === unitOf('lbf').dimension).toBe(false)
    expect(unitOf('pcf').dimension === unitOf('kN/m^3').dimension).toBe(true)
  })
})

describe('readUnit', () => {
  test.each([
    ['kN*m/m', 'kN*m/m', 1000],
    [' kN / m ^ 2 ', 'kN/m^2', 1000],
    ['W/(m^2*K)', 'W/(m^2*K)', 1],
    ['W/m^2/K', 'W/(m^2*K)', 1],
    ['1/m', '1/m', 1],
    ['m^-1', '1/m', 1],
    ['m⁻¹', '1/m', 1],
    ['kN·m', 'kN*m', 1000],
    ['N/mm²', 'N/mm^2', 1e6],
    ['µSv/hr', 'uSv/hr', 1e-6 / 3600],
    ['μm', 'um', 1e-6],
    ['°C', 'degC', 1],
    ['°', 'deg', Math.PI / 180],
    ['%', 'percent', 0.01],
    ['kΩ', 'kohm', 1000],
    ['(kN*m)/m', 'kN*m/m', 1000],
    ['m/(s/m)', 'm*m/s', 1],
    ['MPa^(1/2)', 'MPa^(1/2)', 1000],
    ['', '', 1],
  ])('readUnit: `%s` is %s', (typed, text, factor) => {
    const read = readUnit(typed)
    expect(read.ok && read.unit.text).toBe(text)
    expect(read.ok && read.unit.factor).toBeCloseTo(factor, 12)
  })

  test('readUnit: one canonical text is one object, and reads back as itself', () => {
    for (const text of [...unitNames, 'kN*m/m', 'W/(m^2*K)', '1/(m*s)', 'MPa^(1/2)/m']) {
      const first = unitOf(text)
      expect(unitOf(first.text) === first).toBe(true)
    }
  })

  test.each([
    ['kN m', 3, 4, '`m` stands beside another unit'],
    ['5 m', 0, 1, 'A unit holds no number but 1 and exponents'],
    ['m^x', 2, 3, 'The exponent of a unit is a small whole number'],
    ['m^13', 0, 1, 'The exponent of `m` passes 12'],
    ['m^(1/0)', 6, 7, 'The exponent of a unit is a whole number or a fraction like `(1/2)`'],
    ['(m', 2, 2, 'The unit ends where a closing bracket is expected'],
    ['m)', 1, 2, 'A closing bracket has no opening one'],
    ['m*', 2, 2, 'The unit ends where a unit is expected'],
    ['*m', 0, 1, '`*` cannot stand here in a unit'],
    ['m & s', 2, 3, '`&` has no meaning in a unit'],
    ['W/(m^2*degC)', 7, 11, '`degC` is a temperature on a scale and stands only by itself'],
    ['degF^2', 0, 4, '`degF` is a temperature on a scale and stands only by itself'],
    [`${'('.repeat(9)}m${')'.repeat(9)}`, 6, 7, 'The unit has too many brackets'],
    ['m'.repeat(200), 0, 200, 'The unit is too long'],
    ['TBq^12*TBq^12*TBq^12', 0, 20, 'The unit is too large or too small to calculate with'],
  ])('readUnit: `%s` is refused at its place', (typed, start, end, says) => {
    const read = readUnit(typed)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.fault).toMatchObject({ start, end, says })
  })

  test.each([
    ['h', 'hr'],
    ['t', 'tonne'],
    ['l', 'L'],
    ['mpa', 'MPa'],
    ['lbs', 'lb'],
    ['m2', 'm^2'],
    ['kips', 'kip'],
    ['kNm', 'kN*m'],
  ])('readUnit: `%s` is unknown and `%s` is offered', (typed, meant) => {
    const read = readUnit(typed)
    expect(read.ok === false && read.fault).toMatchObject({
      rule: 'unit-unknown',
      name: typed,
      help: `Write \`${meant}\``,
    })
  })

  test('readUnit: an unknown name without a likeness has no help', () => {
    const read = readUnit('kN/furlong')
    expect(read.ok === false && read.fault).toEqual({
      rule: 'unit-unknown',
      says: 'No unit is named `furlong`',
      start: 3,
      end: 10,
      name: 'furlong',
    })
    expect(unitMeant('constructor')).toBeUndefined()
    expect(readUnit('__proto__').ok).toBe(false)
  })
})

describe('unit for print', () => {
  test.each([
    ['kN*m/m', 'kN·m/m', '{\\mathrm{kN}\\,{\\cdot}\\,\\mathrm{m}/\\mathrm{m}}', 'kilonewton metres per metre'],
    ['kN/m^2', 'kN/m²', '{\\mathrm{kN}/\\mathrm{m}^{2}}', 'kilonewtons per square metre'],
    [
      'W/(m^2*K)',
      'W/(m²·K)',
      '{\\mathrm{W}/(\\mathrm{m}^{2}\\,{\\cdot}\\,\\mathrm{K})}',
      'watts per square metre kelvin',
    ],
    ['ft', 'ft', '{\\mathrm{ft}}', 'feet'],
    ['degC', '°C', '{{}^{\\circ}\\mathrm{C}}', 'degrees Celsius'],
    ['uSv/hr', 'µSv/hr', '{\\mathrm{μSv}/\\mathrm{hr}}', 'microsieverts per hour'],
    ['inH2O', 'inH₂O', '{\\mathrm{inH_{2}O}}', 'inches of water'],
    ['1/m', 'm⁻¹', '{\\mathrm{m}^{-1}}', 'per metre'],
    ['1/(m*s^2)', 'm⁻¹·s⁻²', '{\\mathrm{m}^{-1}\\,{\\cdot}\\,\\mathrm{s}^{-2}}', 'per metre second squared'],
    ['mm^4', 'mm⁴', '{\\mathrm{mm}^{4}}', 'millimetres to the power 4'],
    ['m/s^2', 'm/s²', '{\\mathrm{m}/\\mathrm{s}^{2}}', 'metres per second squared'],
    ['', '', '', ''],
  ])('unit: %s for print', (typed, plain, tex, spoken) => {
    const unit = unitOf(typed)
    expect([unitText(unit), unitTex(unit), unitSpoken(unit)]).toEqual([plain, tex, spoken])
  })
})
