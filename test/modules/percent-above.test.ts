import { describe, expect, it } from 'vitest'
import { percentAbove } from '../../src/modules/percent-above.ts'

describe('percentAbove', () => {
  it.each([
    [0.000123, 2, '0.02'],
    [0.0001, 2, '0.01'],
    [0, 4, '0.0001'],
    [0.0123451, 2, '1.24'],
  ])('%s with %i decimals is %s', (share, decimals, expected) => {
    expect(percentAbove(share, decimals)).toBe(expected)
  })
})
