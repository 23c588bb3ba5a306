import { describe, expect, it } from 'vitest'
import { room } from '../../src/typesetting/fit-tex.ts'
import { layOut } from '../../src/typesetting/step-layout.ts'

// figures are 0.5 em wide
const figures = (em: number): string => '1'.repeat(em * 2)
const lay = (first: number, second: number, taken = 0) =>
  layOut({ first: [figures(first)], second: [figures(second)], between: 0, taken })

describe('step-layout', () => {
  it('one line in the column where all fits', () => {
    expect(lay(8, 8)).toEqual({ together: true, across: false })
  })
  it('two lines in the column where each fits', () => {
    expect(lay(12, 12)).toEqual({ together: false, across: false })
  })
  it('across where one would be broken, on one line if it fits', () => {
    expect(lay(8, 22)).toEqual({ together: true, across: true })
    expect(lay(16, 22)).toEqual({ together: false, across: true })
  })
  it('high formulas go across on one line rather than below each other', () => {
    const tall = (em: number): string => `\\frac{${figures(em)}}{2}`
    expect(layOut({ first: [tall(12)], second: [tall(12)], between: 0 })).toEqual({ together: true, across: true })
    expect(layOut({ first: [tall(17)], second: [tall(17)], between: 0 })).toEqual({ together: false, across: false })
  })
  it('a wide symbol takes from the room', () => {
    expect(lay(8, 8, 4)).toEqual({ together: false, across: false })
    expect(room.column).toBeLessThan(room.across)
  })
})
