import { describe, expect, it } from 'vitest'
import { modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import type { Wing } from '../../src/modules/ledger.ts'
import { nomenclature } from '../../src/modules/nomenclature.ts'
import { dimensionByName } from '../../src/quantity/dimension-names.ts'
import { faultsOf, symbolsIn, symbolsOfWing } from './nomenclature-of.ts'
import type { SymbolUse } from './symbol-uses.ts'
import { symbolUses } from './symbol-uses.ts'
import { type Asked, askedBy, needless, symbolsOfRows, takenByRows, twoSymbols } from './two-symbols.ts'

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

/** Names of inputs that stand for several quantities of their wing, each with a symbol of its own. */
const severalQuantities: Readonly<Record<Wing, readonly string[]>> = {
  ground: ['clear', 'depth', 'plan_length', 'plan_width', 'factor', 'c', 'load', 'toe'],
  concrete: ['thickness', 'unit_weight', 'live_load', 'height', 'width', 'moment', 'cover', 'span', 'bar_size'],
  shielding: ['dose_limit', 'height'],
  living: ['diffusivity', 'thickness', 'width', 'height', 'washing', 'reserve'],
  power: ['voltage', 'efficiency'],
}

describe('one quantity, one symbol', () => {
  const asked = (wing: Wing) => modulesByWing[wing].flatMap(askedBy)

  it.each(wingOrder)('%s: inputs of one name, or with the same words, print one symbol', wing => {
    expect(twoSymbols(asked(wing), severalQuantities[wing])).toEqual([])
    expect(needless(asked(wing), severalQuantities[wing])).toEqual([])
  })

  it.each(wingOrder)('%s: no symbol is that of a row as well', wing => {
    expect(modulesByWing[wing].flatMap(module => takenByRows(symbolUses(module), symbolsOfRows(module)))).toEqual([])
  })

  const ask = (module: string, symbol: string, more: Partial<Asked> = {}): Asked => ({
    module,
    code: undefined,
    name: 'phi',
    dimension: 'angle',
    says: module,
    symbol,
    ...more,
  })

  it('two symbols for one name are found, and for the same words under two names', () => {
    expect(twoSymbols([ask('pit', 'phi'), ask('wall', "phi'")], [])).toEqual(["phi: phi (pit), phi' (wall)"])
    expect(twoSymbols([ask('pit', 'phi'), ask('wall', '\\phi')], [])).toEqual([])
    expect(twoSymbols([ask('pit', 'phi'), ask('wall', "phi'")], ['phi'])).toEqual([])
    const words = [ask('pit', 'q', { says: 'load' }), ask('wall', 'q_s', { says: 'load', name: 'surcharge' })]
    expect(twoSymbols(words, ['phi', 'surcharge'])).toEqual(['load: q (pit), q_s (wall)'])
    expect(twoSymbols([ask('pit', 'd', { dimension: 'length' }), ask('wall', 'phi')], [])).toEqual([])
  })

  it('two codes may each keep its symbol, a code and none may not', () => {
    const codes = [ask('a', 'D', { code: 'IS 456:2000' }), ask('b', 'h', { code: 'ACI 318-19' })]
    expect(twoSymbols(codes, [])).toEqual([])
    expect(twoSymbols([...codes, ask('c', 'D')], [])).toEqual(['phi: D (a), h (b), D (c)'])
  })

  it('a name listed in vain is one', () => {
    expect(needless([ask('pit', 'phi'), ask('wall', 'phi')], ['phi'])).toEqual(['phi'])
  })

  it('a symbol that the first row of a list prints is found', () => {
    const uses = [use('pit', 'z_1', 'depth of the top strut'), use('pit', 'z', 'depth of a strut')]
    expect(takenByRows(uses, ['z'])).toEqual(['pit: z_1 is printed for a row of z too'])
    expect(takenByRows(uses, ['x'])).toEqual([])
  })
})

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
