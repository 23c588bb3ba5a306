import { describe, expect, it } from 'vitest'
import { catalogue, modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import { concreteSources } from '../../src/modules/concrete/concrete-sources.ts'
import { groundSources } from '../../src/modules/ground/ground-sources.ts'
import type { Wing } from '../../src/modules/ledger.ts'
import { livingSources } from '../../src/modules/living/living-sources.ts'
import { powerSources } from '../../src/modules/power/power-sources.ts'
import { sharedSources } from '../../src/modules/shared-sources.ts'
import { shieldingSources } from '../../src/modules/shielding/shielding-sources.ts'
import { sources } from '../../src/modules/sources.ts'

const ofWing: Readonly<Record<Wing, object>> = {
  ground: groundSources,
  concrete: concreteSources,
  shielding: shieldingSources,
  living: livingSources,
  power: powerSources,
}

/** The keys of all citations in a piece of a module, at any depth. */
function citedIn(piece: unknown): readonly string[] {
  if (typeof piece !== 'object' || piece === null) return []
  if ('key' in piece && 'at' in piece && typeof piece.key === 'string') return [piece.key]
  return Object.values(piece).flatMap(citedIn)
}

const wingsThatCite = (key: string): readonly Wing[] =>
  wingOrder.filter(wing => modulesByWing[wing].some(module => citedIn(module).includes(key)))

describe('the sources', () => {
  it('sources: each key stands in one list', () => {
    const keys = [...Object.values(ofWing), sharedSources].flatMap(Object.keys)
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([])
    expect(Object.keys(sources)).toEqual(keys)
  })

  it.each(wingOrder)('sources: those of the wing %s are cited by its modules and no others', wing => {
    for (const key of Object.keys(ofWing[wing])) expect(wingsThatCite(key), key).toEqual([wing])
  })

  it('sources: the shared ones are cited by modules of several wings', () => {
    for (const key of Object.keys(sharedSources)) expect(wingsThatCite(key).length, key).toBeGreaterThan(1)
  })

  it('sources: what is cited is found', () => {
    const cited = catalogue.flatMap(citedIn)
    expect(cited.length).toBeGreaterThan(catalogue.length)
    expect(cited.filter(key => !(key in sources))).toEqual([])
  })
})
