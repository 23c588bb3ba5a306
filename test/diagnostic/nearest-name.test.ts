import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nearestName, nearestNames } from '../../src/diagnostic/nearest-name.ts'

const keys = ['value', 'basis', 'range', 'status', 'check level', 'water_depth']

describe('the nearest name', () => {
  it.each([
    ['valeu', 'value'],
    ['Value', 'value'],
    ['vlaue', 'value'],
    ['bassis', 'basis'],
    ['check-level', 'check level'],
    ['checklevel', 'check level'],
    ['water depth', 'water_depth'],
    ['watr_dpth', 'water_depth'],
    ['statu', 'status'],
  ])('%s is %s', (name, nearest) => expect(nearestName(name, keys)).toBe(nearest))
  it.each(['', 'x', 'mass', 'pressure', 'v', 'hold'])('%j is near to none', name => {
    expect(nearestName(name, keys)).toBeUndefined()
  })
  it('the first of equals is taken', () => expect(nearestName('roof_x', ['roof_a', 'roof_b'])).toBe('roof_a'))
  it('all equals are told, in their order, and none that is further', () => {
    expect(nearestNames('roof_x', ['roof_a', 'wall', 'roof_b', 'rooff'])).toEqual(['roof_a', 'roof_b'])
    expect(nearestNames('roof_x', ['roof_a', 'roof_x', 'roof_b'])).toEqual(['roof_x'])
    expect(nearestNames('roof_x', ['wall'])).toEqual([])
  })
  it('of one letter nothing but its capital is near', () => {
    expect(nearestName('Q', ['v', 'q', 'w'])).toBe('q')
    expect(nearestName('Q', ['v', 'w', 'Q_d'])).toBeUndefined()
    expect(nearestName('ab', ['ac'])).toBe('ac')
  })
  it('four slips are too many, however long the name', () => {
    expect(nearestName('corner_hold_down_xy', ['corner_hold_down'])).toBe('corner_hold_down')
    expect(nearestName('corner_hold_down_xyz', ['corner_hold_down'])).toBeUndefined()
  })
  it('nothing to choose from', () => expect(nearestName('value', [])).toBeUndefined())
  it('a name itself is always its own nearest', () => {
    const names = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 })
    fc.assert(
      fc.property(names, fc.nat(), (all, pick) => {
        const name = all[pick % all.length] ?? ''
        expect(nearestName(name, all)).toBe(name)
      }),
      { seed: 7 },
    )
  })
  it('a name of any length takes no time', () => {
    expect(nearestName('x'.repeat(1_000_000), keys)).toBeUndefined()
  })
})
