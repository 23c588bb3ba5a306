import { describe, expect, it } from 'vitest'
import type { CheckLine } from '../../src/evaluation/workings.ts'
import { type Checked, governing, tighter, worse } from '../../src/sheets/gather-checks.ts'

const check = (number: string, ratio: number, more: Partial<CheckLine> = {}): Checked => ({
  line: { number, satisfied: ratio <= 1, ratio: { value: ratio }, ...more } as CheckLine,
  block: {} as Checked['block'],
  blockTitle: '',
})
const geometry = { aspect: 'geometry' } as const
const order = (checks: readonly Checked[]): string[] => checks.toSorted(worse).map(({ line }) => line.number)

describe('gather-checks', () => {
  it('geometry stands behind strength, however tight it is', () => {
    expect(order([check('fits', 0.99, geometry), check('bends', 0.4), check('floats', 0.8)])).toEqual([
      'floats',
      'bends',
      'fits',
    ])
  })
  it('what is not satisfied stands first, geometry too', () => {
    expect(order([check('bends', 0.9), check('fits', 1.1, geometry)])).toEqual(['fits', 'bends'])
    expect(order([check('fits', 1.2, geometry), check('bends', 1.1)])).toEqual(['bends', 'fits'])
  })
  it('in the summary the tightest stands first, whatever it is about', () => {
    const checks = [check('bends', 0.4), check('lies', 0.5, geometry), check('breaks', 1.1), check('whole', 0)]
    expect(checks.toSorted(tighter).map(({ line }) => line.number)).toEqual(['breaks', 'lies', 'bends', 'whole'])
  })
  it('what governs: the worst of strength and the worst of geometry, each where there is one', () => {
    const checks = [check('fits', 0.99, geometry), check('bends', 0.4), check('lies', 0.5, geometry)]
    expect(governing(checks).main?.line.number).toBe('bends')
    expect(governing(checks).geometry?.line.number).toBe('fits')
    expect(governing([check('bends', 0.4)]).geometry).toBeUndefined()
    expect(governing([check('fits', 0.4, geometry)]).main).toBeUndefined()
  })
})
