import { describe, expect, it } from 'vitest'
import { room } from '../../src/typesetting/fit-tex.ts'
import { layOut } from '../../src/typesetting/step-layout.ts'

// figures are 0.5 em wide
const figures = (em: number): string => '1'.repeat(em * 2)
const lay = (first: number, second: number, taken = 0) =>
  layOut({ first: [figures(first)], second: [figures(second)], between: 0, taken })

// half the column, less what is between: two such stand together, two a little wider do not
const half = Math.floor(room.column) / 2
const tall = (em: number): string => `\\frac{${figures(em)}}{2}`

describe('step-layout', () => {
  it('one line in the column where all fits', () => {
    expect(lay(half, half)).toEqual({ together: true, across: false })
  })
  it('two lines in the column where each fits', () => {
    expect(lay(half + 1, half + 1)).toEqual({ together: false, across: false })
  })
  it('across where one would be broken, on one line if it fits', () => {
    const broken = Math.ceil(room.column) + 1
    expect(lay(8, broken)).toEqual({ together: true, across: true })
    expect(lay(16, broken)).toEqual({ together: false, across: true })
  })
  it('high formulas go across on one line rather than below each other', () => {
    const both = (em: number) => layOut({ first: [tall(em)], second: [tall(em)], between: 0 })
    expect(both(half + 1)).toEqual({ together: true, across: true })
    expect(both(Math.floor(room.column) - 2)).toEqual({ together: false, across: false })
  })
  it('a wide symbol takes from the room', () => {
    expect(lay(half, half, 4)).toEqual({ together: false, across: false })
    expect(room.column).toBeLessThan(room.across)
  })
})
