import { describe, expect, it } from 'vitest'
import { roundTowards } from '../../src/study/round-towards.ts'

describe('roundTowards', () => {
  it.each([
    [1.79653, 2.1, '1.797'],
    [2.66649, 2.1, '2.666'],
    [0.5648884997892584, 0.75, '0.5649'],
    [1.1249999999999991, 0.95, '1.125'],
    [19.99999998, 35, '20'],
    [4.9e-13, 17.5, '0'],
    [69.708258, 100, '69.8'],
    [0.9, 0.95, '0.9'],
    [200, 300, '200'],
    [0.89996, 0.95, '0.9000'],
    [-3.4567, 2, '-3.456'],
    [12345.67, 20000, '12350'],
    [0, 2, '0'],
    [1.5, 0, '1.5'],
  ])('%d seen from %d is %s', (limit, value, digits) => {
    expect(roundTowards(limit, value)).toBe(digits)
  })
})
