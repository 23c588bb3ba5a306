import { describe, expect, it } from 'vitest'
import { percentText } from '../../src/evaluation/percent-text.ts'

describe('a difference in percent', () => {
  it('has two figures, and none where it is rounding only', () => {
    expect([0, 0.0213, 0.4, 1e-6].map(percentText)).toEqual(['0 %', '2.1 %', '40 %', '0.00010 %'])
    expect([1e-9, 9.9e-10, 3e-14].map(percentText)).toEqual(['1.0×10⁻⁷ %', 'under 10⁻⁷ %', 'under 10⁻⁷ %'])
  })
})
