import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { matchRows } from '../../src/comparison/match-rows.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { fence, runText } from '../evaluation/run-text.ts'
import { compareTexts } from './compare-texts.ts'

const row = (layer: string, thickness: string, weight: string): string =>
  `{ layer: ${layer}, thickness: ${thickness}, unit_weight: ${weight} kN/m^3 }`
const [earth, slab, screed] = [row('earth', '1 m', '20'), row('slab', '250 mm', '25'), row('screed', '50 mm', '24')]
const membrane = row('membrane', '10 mm', '12')

const load = (...rows: readonly string[]): string =>
  fence(
    'calc roof-load load',
    `layers:\n${rows.map(each => `  - ${each}`).join('\n')}\nlive_load: 5 kPa\ncombination: IS 456`,
  )

const compared = (old: readonly string[], now: readonly string[]) => compareTexts(load(...old), load(...now), 0)

describe('rows of a list', () => {
  it('one put in between is one change, and the rows below it have not moved', () => {
    const { changes, results, recheck } = compared([earth, slab, screed], [earth, membrane, slab, screed])
    expect(changes).toMatchObject([
      {
        what: 'input',
        action: 'added',
        key: 'load.layers_2',
        now: 'layer: membrane, thickness: 10 mm, unit_weight: 12 kN/m^3',
      },
    ])
    expect(changes[0]).not.toHaveProperty('old')
    const rows = recheck.differ.filter(({ key }) => key.startsWith('load.g_layer'))
    // The symbols of the rows below are numbered on.
    expect(rows.map(({ key, kind }) => [key, kind])).toEqual([
      ['load.g_layer_2', 'added'],
      ['load.g_layer_3', 'restated'],
      ['load.g_layer_4', 'restated'],
    ])
    expect(recheck.unexplained).toEqual([])
    expect(results.filter(({ key }) => key.startsWith('load.g_layer')).map(({ key, share }) => [key, share])).toEqual([
      ['load.g_layer_2', undefined],
    ])
    // 0.01 m x 12 kN/m3
    const sum = results.find(({ key }) => key === 'load.g_k')
    expect(sum?.moved?.parts).toMatchObject([{ changes: ['c1'] }])
    expect(sum?.moved?.parts[0]?.alone).toBeCloseTo(120, 9)
  })

  it('one taken out is one change', () => {
    const { changes, results, recheck } = compared([earth, slab, screed], [earth, screed])
    expect(changes).toMatchObject([{ action: 'removed', key: 'load.layers_2' }])
    expect(recheck.differ.find(({ kind }) => kind === 'removed')).toMatchObject({ key: 'load.g_layer_2' })
    expect(results.find(({ key }) => key === 'load.g_k')?.moved?.parts[0]?.alone).toBeCloseTo(-6250, 9)
  })

  it('beside a changed row each has its part', () => {
    const thick = row('earth', '1.2 m', '20')
    const { changes, results } = compared([earth, slab, screed], [thick, membrane, slab])
    expect(changes.map(({ key, action }) => [key, action])).toEqual([
      ['load.thickness_1', 'changed'],
      ['load.layers_2', 'added'],
      ['load.layers_3', 'removed'],
    ])
    const { moved } = results.find(({ key }) => key === 'load.g_k') ?? {}
    // 0.2 x 20, 0.01 x 12 and 0.05 x 24 kN/m2
    expect(moved?.parts.map(({ alone }) => Math.round(alone * 1e6) / 1e6)).toEqual([4000, 120, -1200])
    expect(moved?.together).toBeCloseTo(0, 6)
  })

  it('a row with another label in the same place is the same row', () => {
    const { changes } = compared([earth, slab], [row('placed earth', '1 m', '20'), slab])
    expect(changes).toMatchObject([{ key: 'load.layer_1', old: 'earth', now: 'placed earth' }])
  })

  it('a row is known by its label where its numbers changed and another came before it', () => {
    const { changes } = compared([earth, slab], [membrane, earth, row('slab', '300 mm', '25')])
    expect(changes.map(({ key, action }) => [key, action])).toEqual([
      ['load.thickness_3', 'changed'],
      ['load.layers_1', 'added'],
    ])
  })

  it('any rows put in and taken out: no line without a cause, and the parts make up the whole', () => {
    const rows = fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 })
    const text = (numbers: readonly number[]) => numbers.map(n => row(`layer ${n}`, `${n}00 mm`, '20'))
    fc.assert(
      fc.property(rows, rows, (old, now) => {
        const { changes, results, recheck } = compared(text(old), text(now))
        expect(recheck.unexplained).toEqual([])
        const common = old.filter(each => now.includes(each)).length
        if (common === 0 || changes.some(({ action }) => action === 'changed')) return
        expect(changes.length).toBeGreaterThanOrEqual(old.length + now.length - 2 * common)
        for (const { moved, si } of results) {
          if (!moved) continue
          const sum = moved.parts.reduce((all, { alone }) => all + alone, moved.together)
          expect(sum).toBeCloseTo((si.now ?? 0) - (si.old ?? 0), 6)
        }
      }),
      { seed: 20260302, numRuns: 60 },
    )
  })
})

describe('matching rows', () => {
  const rowsOf = (rows: readonly string[]) => {
    const [block] = readNotebook(`---\ntitle: T\n---\n\n${load(...rows)}`, { path: 'a.md' }).blocks
    const list = block?.kind === 'calc' ? block.inputs[0]?.value : undefined
    return list?.kind === 'list' ? list.items : []
  }

  it.each([
    [
      [earth, slab],
      [earth, slab],
      [0, 1],
    ],
    [
      [earth, slab],
      [slab, earth],
      [1, undefined],
    ],
    [[earth], [earth, earth], [0, undefined]],
    [
      [earth, earth, slab],
      [earth, slab],
      [0, 2],
    ],
    [[earth, slab, screed], [membrane], [undefined]],
    [[earth], [membrane], [0]],
  ])('%#', (old, now, match) => {
    const found = matchRows(rowsOf(old), rowsOf(now), 'load')
    expect(found.filter(was => was !== undefined)).toEqual(match.filter(was => was !== undefined))
    expect(found).toHaveLength(match.length)
  })

  it('the sheet of these tests has no error', () => {
    expect(runText(load(earth, slab, screed)).errors).toEqual([])
  })
})
