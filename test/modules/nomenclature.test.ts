import { describe, expect, it } from 'vitest'
import { wingOrder } from '../../src/modules/catalogue.ts'
import { nomenclature } from '../../src/modules/nomenclature.ts'
import { dimensionByName } from '../../src/quantity/dimension-names.ts'
import { faultsOf, symbolsIn, symbolsOfWing } from './nomenclature-of.ts'
import type { SymbolUse } from './symbol-uses.ts'

describe('the symbols of a wing', () => {
  it.each(wingOrder)(
    '%s: one symbol has one dimension and one meaning, said once where modules say it differently',
    wing => {
      expect(faultsOf(symbolsOfWing(wing), nomenclature[wing])).toEqual([])
    },
  )

  it.each(wingOrder)('%s: meanings are captions', wing => {
    for (const meaning of Object.values(nomenclature[wing])) {
      expect(meaning.length, meaning).toBeLessThanOrEqual(70)
      expect(meaning).not.toMatch(/[=<>*^]|\.$/)
    }
  })
})

const use = (module: string, symbol: string, says: string, dimension = 'length'): SymbolUse => {
  const found = dimensionByName(dimension)
  if (!found) throw new Error(dimension)
  return { module, symbol, says, dimension: found, units: { SI: new Set(['m']), US: new Set(['ft']) } }
}
const faults = (uses: readonly SymbolUse[], meanings: Readonly<Record<string, string>> = {}) =>
  faultsOf(symbolsIn(uses), meanings)

describe('faults of symbols', () => {
  it('two dimensions are one, within a module too, and no entry mends it', () => {
    const two = [use('pit', 'd', 'depth'), use('wall', 'd', 'density', 'density')]
    expect(faults(two)).toEqual(['d has two dimensions: pit, wall'])
    expect(faults(two, { d: 'depth' })).toEqual(['d has two dimensions: pit, wall'])
    expect(faults([use('pit', 'd', 'depth'), use('pit', 'd', 'depth', 'area')])).toEqual(['d has two dimensions: pit'])
  })

  it('two modules that say different things need the one meaning; the branches of one module do not', () => {
    const two = [use('pit', '\\gamma', 'depth of the pit'), use('wall', 'gamma', 'depth of the wall')]
    expect(faults(two)).toEqual(['\\gamma has no one meaning: pit, wall'])
    expect(faults(two, { gamma: 'depth' })).toEqual([])
    expect(faults([use('pit', 'd', 'depth: dry'), use('pit', 'd', 'depth: wet')])).toEqual([])
    expect(faults([use('pit', 'd', 'depth'), use('wall', 'd', 'depth')])).toEqual([])
  })

  it('an entry for a symbol of one module or of none is one, and so are two entries for one symbol', () => {
    expect(faults([use('pit', 'd', 'depth')], { d: 'depth' })).toEqual(['d has an entry, but not two modules'])
    expect(faults([], { d: 'depth' })).toEqual(['d has an entry, but not two modules'])
    const two = [use('pit', 'gamma', 'depth of the pit'), use('wall', 'gamma', 'depth of the wall')]
    expect(faults(two, { gamma: 'depth', '\\gamma': 'depth' })).toEqual(['one symbol has two entries'])
  })
})
