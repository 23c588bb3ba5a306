import { describe, expect, it } from 'vitest'
import { addComment, addTicks, removeTicks } from '../../src/checking/change-record.ts'
import { checkingState } from '../../src/checking/checking-state.ts'
import { readRecord } from '../../src/checking/read-record.ts'
import type { CheckingRecord } from '../../src/checking/record.ts'
import { writeRecord } from '../../src/checking/write-record.ts'
import { fence, runText } from '../evaluation/run-text.ts'
import { rows } from '../evaluation/toy-modules.ts'

const signed = { by: 'J. Okonedo', on: '2026-03-04' }
const modules = { modules: [rows] }

const stateOf = (body: string, record: CheckingRecord = new Map()) =>
  checkingState(runText(body, modules).workings, record)

function tickedAll(body: string): CheckingRecord {
  const state = stateOf(body)
  return addTicks(state, { steps: state.steps, signed })
}

const standing = (body: string, record: CheckingRecord) =>
  stateOf(body, record).steps.flatMap(({ block, key, standing }) => (standing.length > 0 ? [`${block}.${key}`] : []))

const fallen = (body: string, record: CheckingRecord) =>
  stateOf(body, record).steps.flatMap(({ key, fallen }) =>
    fallen.map(({ tick, changed }) => [key, tick.as, ...changed]),
  )

const list = (...items: string[]) => fence('calc rows r', `items:\n${items.map(item => `  - { ${item} }`).join('\n')}`)
const [roof, wall, sill] = ['item: roof, x: 2 m', 'item: wall, x: 3 m', 'item: sill, x: 7 m'] as const

describe('ticks in rows of a list', () => {
  it('a row put in before others moves their ticks with them, and the sums fall', () => {
    const record = tickedAll(list(roof, wall))
    expect([...record.values()][0]?.ticks.map(({ step, row }) => [step, row])).toEqual([
      ['n', 'roof'],
      ['n', 'wall'],
      ['total', undefined],
      ['least', undefined],
    ])
    const after = list(sill, roof, wall)
    expect(standing(after, record)).toEqual(['r.n_2', 'r.n_3'])
    expect(fallen(after, record)).toEqual([
      ['total', '10.00 m', 'inputs', 'result'],
      ['least', '4.000 m', 'inputs'],
    ])
  })

  it('falls at the row that has its words, not at the one that has its old number', () => {
    expect(fallen(list(sill, 'item: roof, x: 2.5 m', wall), tickedAll(list(roof, wall)))).toContainEqual([
      'n_2',
      '4.000 m',
      'inputs',
      'result',
    ])
  })

  it('is gone with its row, and where the row is called otherwise, since its words are printed', () => {
    for (const body of [list(wall), list('item: canopy, x: 2 m', wall)]) {
      const { gone } = stateOf(body, tickedAll(list(roof, wall)))
      expect(gone.map(({ entry: { step, row } }) => [step, row])).toEqual([['n', 'roof']])
    }
  })

  it('rows without words are known by what is printed: they may change places, and equal ones keep a tick each', () => {
    const record = tickedAll(list('x: 2 m', 'x: 3 m'))
    expect(standing(list('x: 3 m', 'x: 2 m'), record)).toContain('r.n_1')
    expect(standing(list('x: 3 m', 'x: 2 m'), record)).toContain('r.n_2')
    expect(standing(list('x: 9 m', 'x: 2 m', 'x: 3 m'), record).filter(key => /n_/.test(key))).toEqual([
      'r.n_2',
      'r.n_3',
    ])
    const twice = tickedAll(list('x: 2 m', 'x: 2 m'))
    expect(standing(list('x: 9 m', 'x: 2 m', 'x: 2 m'), twice).filter(key => /n_/.test(key))).toEqual([
      'r.n_2',
      'r.n_3',
    ])
    expect(standing(list('x: 2 m', 'x: 2 m', 'x: 2 m'), twice).filter(key => /n_/.test(key))).toEqual([
      'r.n_1',
      'r.n_2',
    ])
  })

  it('rows with the same words keep their own ticks', () => {
    const record = tickedAll(list(roof, 'item: roof, x: 5 m'))
    expect(standing(list('item: roof, x: 9 m', roof, 'item: roof, x: 5 m'), record)).toEqual(['r.n_2', 'r.n_3'])
  })

  it('a comment goes with its row, and a new tick takes the place of the old one there', () => {
    const asked = stateOf(list(roof, wall))
    const record = addComment(
      { ...asked, record: tickedAll(list(roof, wall)) },
      { steps: asked.steps.slice(0, 1), signed, says: 'Why?' },
    )
    const after = stateOf(list(sill, roof, wall), record)
    const row = after.steps.find(({ key }) => key === 'n_2')
    expect(row?.comments.map(({ says }) => says)).toEqual(['Why?'])
    const again = addTicks(after, { steps: after.steps, signed: { ...signed, on: '2026-05-01' } })
    expect([...again.values()][0]?.ticks).toHaveLength(after.steps.length)
    const none = removeTicks(after, { steps: after.steps, by: signed.by })
    expect([...none.values()][0]?.ticks).toEqual([])
  })
})

const site = (name = 'site', symbol = '') => fence(`assume ${name}`, `load: { value: 5 kPa, basis: b${symbol} }`)
const strip = (name: string, load = '5 kPa', from = 'site') =>
  fence(
    `work ${name}`,
    `q = 2 * ${from}.load\nM = q * 3 m # for a strip\nhalf = M / 2\np = 3 * ${load}\np <= 40 kPa # enough`,
  )

describe('ticks of a block that was renamed', () => {
  const record = tickedAll(`${site()}${strip('slab')}`)

  it('stand under its new name and say from where', () => {
    const state = stateOf(`${site()}${strip('roof')}`, record)
    expect(state.counts).toEqual({ steps: 5, checked: 5, fallen: 0, open: 0 })
    expect(state.renamed.map(({ block, was, steps }) => [block, was, steps.length])).toEqual([['roof', 'slab', 5]])
    expect([...state.record.keys()]).toEqual(['roof'])
    expect(state.record.get('roof')?.ticks.every(({ from }) => from === 'slab')).toBe(true)
  })

  it('keep the name of the block they were made in, in the file and after another change of the name', () => {
    const once = stateOf(`${site()}${strip('roof')}`, record).record
    const text = writeRecord(once, { notebook: 'a.md', blocks: ['roof'] })
    expect(text).toContain('{ step: q, from: slab, by: J. Okonedo, ')
    const read = readRecord(text)
    expect([read.faults, read.record]).toEqual([[], once])
    const twice = stateOf(`${site()}${strip('plate')}`, read.record)
    expect(twice.renamed.map(({ block, was }) => [block, was])).toEqual([['plate', 'slab']])
  })

  it('fall at what is printed otherwise, and are gone where most of it is', () => {
    expect(fallen(`${site()}${strip('roof', '6 kPa')}`, record)).toEqual([
      ['p', '15.00 kN/m²', 'formula', 'result'],
      ['p <= 40 kPa', 'satisfied, ratio 0.375', 'inputs', 'result'],
    ])
    const { gone } = stateOf(`${site()}${fence('work roof', 'q = 2 * site.load\nM = q * 4 m\np = 9 kPa')}`, record)
    expect(gone).toHaveLength(5)
  })

  it('stand at what is left as it was where a row was put in as well', () => {
    const ticks = tickedAll(list(roof, wall))
    const state = stateOf(list(sill, roof, wall).replace('rows r', 'rows s'), ticks)
    expect(state.renamed.map(({ block, was, steps }) => [block, was, ...steps.map(({ key }) => key)])).toEqual([
      ['s', 'r', 'n_2', 'n_3'],
    ])
    expect([state.counts.fallen, state.gone]).toEqual([2, []])
  })

  it('are gone where two blocks are printed the same: nobody can tell which it was', () => {
    const { gone, counts } = stateOf(`${site()}${strip('roof')}${strip('wall')}`, record)
    expect([gone.length, counts.checked]).toEqual([5, 0])
  })

  it('never go to a block that was there and has ticks of its own', () => {
    const both = tickedAll(`${site()}${strip('slab')}${strip('wall')}`)
    const { gone, renamed } = stateOf(`${site()}${strip('wall')}`, both)
    expect([gone.length, renamed]).toEqual([5, []])
  })

  it('stand where a block that the lines refer to was renamed, since its name is not printed', () => {
    expect(fallen(`${site('ground')}${strip('slab', '5 kPa', 'ground')}`, record)).toEqual([])
  })

  it('fall under another symbol and under other words, which are printed', () => {
    expect(fallen(`${site('site', ', symbol: p')}${strip('slab')}`, record)).toEqual([['q', '10.00 kN/m²', 'formula']])
    expect(fallen(`${site()}${strip('slab').replace('for a strip', 'for a plate')}`, record)).toEqual([
      ['M', '30.00 kN/m', 'words'],
    ])
  })
})
