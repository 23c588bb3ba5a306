import { describe, expect, it } from 'vitest'
import { room } from '../../src/typesetting/fit-tex.ts'
import { layOut } from '../../src/typesetting/step-layout.ts'

// figures are 0.5 em wide
const figures = (em: number): string => '1'.repeat(em * 2)
const lay = (first: number, second: number, taken = 0) =>
  layOut({ first: [figures(first)], second: [figures(second)], between: 0, taken })

// half the column, less what is between: two such stand together, two a little wider do not
const half = Math.floor(room.column) / 2
// breaks at each sign
const sum = (em: number): string => '1+'.repeat(em / 1.75).slice(0, -1)

describe('step-layout', () => {
  it('one line in the column where all fits', () => {
    expect(lay(half, half)).toEqual({ together: true, across: false })
  })
  it('two lines in the column where each fits', () => {
    expect(lay(half + 1, half + 1)).toEqual({ together: false, across: false })
  })
  it('across where a part is wider than the column and cannot be broken, on one line if it fits', () => {
    const broken = Math.ceil(room.column) + 1
    expect(lay(8, broken)).toEqual({ together: true, across: true })
    expect(lay(broken + 6, broken + 6)).toEqual({ together: false, across: true })
  })
  it('a sum is broken in its column into a few lines, and goes across before it takes many', () => {
    const laid = (first: number, second: number) =>
      layOut({ first: [sum(room.column * first)], second: [sum(room.column * second)], between: 0 })
    expect(laid(1.2, 0.8)).toEqual({ together: false, across: false })
    expect(laid(1.1, 1.1)).toEqual({ together: true, across: true })
    expect(laid(1.8, 1.8)).toEqual({ together: false, across: false })
    expect(laid(2.5, 2.5)).toEqual({ together: false, across: true })
  })
  it('a wide symbol takes from the room', () => {
    expect(lay(half, half, 4)).toEqual({ together: false, across: false })
    expect(room.column).toBeLessThan(room.across)
  })
})
