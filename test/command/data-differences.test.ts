import { describe, expect, it } from 'vitest'
import { dataDifferences } from '../../src/command/data-differences.ts'

const at = (stands: unknown, gives: unknown): readonly string[] => dataDifferences(stands, gives).map(each => each.at)

describe('differences of data', () => {
  it('takes the last digits of a machine for no difference, and one in a billion for one', () => {
    expect(at({ si: 60491.78096886616 }, { si: 60491.78096886614 })).toEqual([])
    expect(at({ difference: 0.000027568196393908254 }, { difference: 0.000027568196394269087 })).toEqual([])
    expect(at({ si: 1 }, { si: 1.000000001 })).toEqual(['si'])
    expect(at({ si: 1e-9 }, { si: 2e-9 })).toEqual(['si'])
    expect(at({ si: 0 }, { si: 1e-9 })).toEqual(['si'])
    expect(at({ si: 1 }, { si: -1 })).toEqual(['si'])
  })

  it('names the place, and what only one has', () => {
    expect(dataDifferences({ a: [{ number: '4.07', b: 1 }] }, { a: [{ number: '4.07', b: '1' }], c: 2 })).toEqual([
      { at: 'a[4.07].b', stands: '1', gives: '"1"' },
      { at: 'c', stands: 'nothing', gives: '2' },
    ])
  })
})
