import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readRecord } from '../../src/checking/read-record.ts'
import type { BlockRecord, CheckingRecord } from '../../src/checking/record.ts'
import { writeRecord } from '../../src/checking/write-record.ts'

const now = { words: '44444444', formula: '00000000', source: '11111111', inputs: '2222222e', result: '33333333' }
const of = fc.constantFrom(now, { ...now, result: '5555555f' })
const words = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }).filter(text => text.trim() === text)
const remarks = fc.array(fc.constantFrom('of the wall', 'twice: – “so”', '# again', '- { step: x }'), {
  minLength: 1,
  maxLength: 3,
})
const signed = { by: words, on: fc.constantFrom('2026-01-05', '2028-02-29') }
const tick = fc.record(
  { step: words, row: words, from: words, ...signed, as: words, of, remarks },
  { requiredKeys: ['step', 'by', 'on', 'as', 'of'] },
)
const settled = fc.record({ ...signed, says: words })
const comment = fc.record(
  { step: words, row: words, ...signed, says: words, settled, remarks },
  { requiredKeys: ['step', 'by', 'on', 'says'] },
)
const block = fc.record(
  { ticks: fc.array(tick, { maxLength: 4 }), comments: fc.array(comment, { maxLength: 3 }), remarks },
  { requiredKeys: ['ticks', 'comments'] },
)

describe('the checking record as a file', () => {
  it('comes back as it was written, whatever names and remarks hold', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('roof', 'wall', 'null', 'yes', 'on'), block), blocks => {
        const record: CheckingRecord = new Map<string, BlockRecord>(Object.entries(blocks))
        const text = writeRecord(record, { notebook: 'shelter.md', blocks: [...record.keys()] })
        const read = readRecord(text)
        expect(read.faults).toEqual([])
        expect(read.record).toEqual(record)
        expect(writeRecord(read.record, { notebook: 'shelter.md', blocks: [...record.keys()] })).toBe(text)
      }),
    )
  })

  it('has a place for each block of the notebook in its order, and keeps a block that is gone with its ticks', () => {
    const ticks = [{ step: 'M_x', by: 'J. Okonedo', on: '2026-03-04', as: '31.24 kN·m/m', of: now }]
    const record: CheckingRecord = new Map([
      ['old', { ticks, comments: [] }],
      ['roof', { ticks: [], comments: [] }],
    ])
    const text = writeRecord(record, { notebook: 'shelter.md', blocks: ['levels', 'roof'] })
    expect(text.split('\n').slice(3)).toEqual([
      'levels:',
      '',
      'roof:',
      '',
      'old:',
      '  - { step: M_x, by: J. Okonedo, on: 2026-03-04, as: 31.24 kN·m/m, of: 44444444 00000000 11111111 2222222e 33333333 }',
      '',
    ])
  })

  it.each([
    ['roof: [', 1, /./],
    ['# a\nroof: 3', 2, /`roof` holds a list of ticks and comments/],
    ['- 3', 1, /not a list of blocks/],
    ['roof:\n  - { step: a, by: b, on: 2026-01-05, as: c }', 2, /`of` is missing/],
    ['roof:\n  - { step: a, by: b, on: 2026-01-05, as: c, of: 12 }', 2, /fingerprint/],
    [
      'roof:\n  - { step: a, by: b, on: 2026-01-05, as: c, of: 00000000 11111111 22222222 33333333 }',
      2,
      /five times eight/,
    ],
    [
      'roof:\n  - { step: a, by: b, on: 2026-13-05, as: c, of: 00000000 11111111 22222222 33333333 }',
      2,
      /a date as 2026-03-04/,
    ],
    ['roof:\n  - { step: a, by: b, on: 2026-01-05, as: c, of: 00000000 11111111 22222222 33333333, x: 1 }', 2, /`x`/],
    [
      'roof:\n  - { step: a, row: [b], by: b, on: 2026-01-05, as: c, of: 00000000 11111111 22222222 33333333 }',
      2,
      /`row` says nothing here/,
    ],
    ['roof:\n  - { comment: a, by: b, on: 2026-01-05, says: c, settled: yes }', 2, /`settled` holds/],
    ['a: &x 1\nb: *x', 1, /./],
  ])('refuses %j with its line', (text, line, says) => {
    const { faults } = readRecord(text)
    expect(faults[0]?.line).toBe(line)
    expect(faults[0]?.says).toMatch(says)
  })
})
