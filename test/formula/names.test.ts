import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { functionNames } from '../../src/formula/functions.ts'
import { nameFault, nearUnitHelp, unitHelp } from '../../src/formula/names.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { unitNames } from '../../src/quantity/units.ts'

describe('nameFault', () => {
  test('nameFault: names of engineers are free', () => {
    const free = [
      'b',
      'd',
      'h',
      't',
      'l',
      'w',
      'q',
      'n',
      'H',
      'B',
      'F',
      'M',
      'P',
      'R',
      'e',
      'i',
      'E_c',
      'N_u',
      'f_ck',
      'M_support',
      'γ_w',
      'φ',
      'x2',
      'totally',
      'integral',
    ]
    for (const name of free) expect(nameFault(name), name).toBeUndefined()
  })

  test('nameFault: no unit, function or word of the language is a name, and each has its reason', () => {
    for (const name of unitNames) expect(nameFault(name)?.rule, name).toBe('name-is-unit')
    for (const name of functionNames.filter(each => each !== 'min'))
      expect(nameFault(name)?.rule, name).toBe('formula-refused')
    for (const name of ['to', 'and', 'or', 'not', 'pi', 'π', 'true', 'NaN', 'mod', '__proto__'])
      expect(nameFault(name)?.rule, name).toBe('formula-refused')
    expect(nameFault('N')).toEqual({
      rule: 'name-is-unit',
      says: '`N` is the name of a unit and cannot be the name of a value',
      help: 'Add an index, as in `N_1` or `N_u`',
    })
  })

  test('nameFault: what is not letters, digits and `_` is no name', () => {
    for (const name of ['', '_x', '2x', 'a-b', 'a.b', "f'", 'a b', 'é', 'a²', '$x', 'Ω', 'um', 'µm'])
      expect(nameFault(name), name).toBeDefined()
  })

  test('nameFault: what it lets through reads back as that name', () => {
    for (const name of [
      'b',
      'N_u',
      'γ_w',
      'x2',
      'mod_1',
      'to_x',
      'pi_1',
      'in_1',
      'min_1',
      'e1',
      'and1',
      'inf',
      'constructor',
      'toString',
    ]) {
      if (nameFault(name)) continue
      const read = readFormula(`${name} + 1`)
      expect(read.ok && read.formula.names, name).toEqual([name])
    }
  })

  test('unitHelp: what people write for a unit', () => {
    expect(unitHelp('h')).toBe('Write `hr`')
    expect(unitHelp('rpm')).toBe('Write 1/min, or rad/s for an angular speed')
    expect(unitHelp('furlong')).toBeUndefined()
  })

  test('nearUnitHelp: units that are a slip of the pen away, of three letters or more', () => {
    expect(nearUnitHelp('dge')).toBe('Did you mean `deg`?')
    expect(nearUnitHelp('litrre')).toBeUndefined()
    expect(nearUnitHelp('kPs')).toBe('Did you mean `kPa`?')
    expect(nearUnitHelp('ksx')).toBe('Did you mean `ksi` or `ksf`?')
    // `psf`, `ksf` and `tsf` are told; of the four of `xPa` none is.
    expect(nearUnitHelp('xsf')).toBe('Did you mean `psf` or `ksf` or `tsf`?')
    expect(nearUnitHelp('xPa')).toBeUndefined()
    for (const short of ['x', 'mn', 'kx', 'nm']) expect(nearUnitHelp(short), short).toBeUndefined()
    expect(nearUnitHelp('furlong')).toBeUndefined()
  })
})

describe('the home of mathjs', () => {
  test('the home of mathjs: one file of the formula room imports it', () => {
    const room = new URL('../../src/formula/', import.meta.url)
    const importing = readdirSync(room).filter(file => readFileSync(new URL(file, room), 'utf8').includes("'mathjs"))
    expect(importing).toEqual(['read-formula.ts'])
  })
})
