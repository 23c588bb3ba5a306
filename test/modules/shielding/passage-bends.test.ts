import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CaseInput } from '../../../src/modules/module.ts'
import { passageBends } from '../../../src/modules/shielding/passage-bends.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type Inputs = Readonly<Record<string, CaseInput>>
type Row = Readonly<Record<string, string>>

const leg = (length = '3 m', more: Row = {}): Row => ({ turn: 'left', width: '1 m', height: '2 m', length, ...more })
const base: Inputs = {
  rule: 'albedo',
  mouth: '1',
  first_width: '1 m',
  first_height: '2 m',
  first_length: '3 m',
  legs: [leg(), leg()],
  doors: [{ material: 'steel', thickness: '0 mm' }],
  spectrum: 'fallout',
  required_factor: '1',
}
const run = (more: Inputs = {}, units: 'SI' | 'US' = 'SI') => runModule(passageBends, { ...base, ...more }, { units })
const rules = ['solid angle', 'albedo', 'flat factor'] as const
const metres = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map(n => `${n / 10} m`)

/** Solid angle of a rectangle on its axis, summed over a grid of its face. */
function summed(width: number, height: number, distance: number): number {
  const n = 400
  let sum = 0
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) {
      const [x, y] = [((i + 0.5) / n - 0.5) * width, ((j + 0.5) / n - 0.5) * height]
      sum += distance / (x * x + y * y + distance * distance) ** 1.5
    }
  return (sum * width * height) / (n * n)
}

describe('passage-bends', () => {
  it.each(['SI', 'US'] as const)('passage-bends: the example evaluates without a fault, in %s', units => {
    expect(runModule(passageBends, passageBends.example, { units }).diagnostics).toEqual([])
  })

  it.each([
    [0.8, 2, 3],
    [2, 2, 1],
    [1.2, 2.1, 0.6],
  ])('passage-bends: the solid angle of %d m by %d m from %d m is that summed over its face', (width, height, l) => {
    const ran = run({ first_width: `${width} m`, first_height: `${height} m`, first_length: `${l} m` })
    expect(ran.si('Omega_f')).toBeCloseTo(summed(width, height, l), 4)
  })

  it('passage-bends: far away the solid angle is the area over the square of the distance, near it is a half space', () => {
    expect(run({ first_length: '100 m' }).si('Omega_f') / (2 / 100 ** 2)).toBeCloseTo(1, 3)
    expect(run({ first_length: '0 m' }).si('k_f')).toBe(1)
    expect(run({ first_length: '0.001 m' }).si('k_f')).toBeCloseTo(1, 2)
  })

  it.each([
    ['solid angle', 0.1 * 0.5 * 2],
    ['flat factor', 0.01],
  ])('passage-bends: by the %s two bends have the factors of the rule', (rule, product) => {
    const ran = run({ rule })
    const [first, second] = [1, 2].map(at => (rule === 'flat factor' ? 1 : ran.si(`omega_l_${at}`)))
    const mouth = rule === 'flat factor' ? 1 : ran.si('k_f')
    const factors = rule === 'flat factor' ? product : product / 2
    expect(ran.si('K_e') / (mouth * (first ?? 0) * (second ?? 0) * factors)).toBeCloseTo(1, 12)
  })

  it('passage-bends: by the albedo the first bend has its own and further ones that of soft photons', () => {
    const ran = run({ energy: '1 MeV' })
    // straight back at 1 and 0.25 MeV, corner of 1 m by 2 m, legs of 3 m
    expect(ran.si('k_l_1')).toBeCloseTo((0.0107 * 2) / 9, 12)
    expect(ran.si('k_l_2')).toBeCloseTo((0.0372 * 2) / 9, 12)
    expect(run({ albedo: '0.02' }).si('k_l_1')).toBeCloseTo((0.02 * 2) / 9, 12)
    expect(run().si('alpha_b_1')).toBe(0.0372)
  })

  it('passage-bends: the larger section at a corner counts', () => {
    expect(run({ legs: [leg('3 m', { width: '1.5 m' })] }).si('A_c_1')).toBeCloseTo(3, 12)
    expect(run({ legs: [leg('3 m', { width: '0.8 m' })] }).si('A_c_1')).toBeCloseTo(2, 12)
    expect(run({ legs: [leg(), leg('3 m', { height: '2.5 m' }), leg()] }).si('A_c_3')).toBeCloseTo(2.5, 12)
  })

  it.each(rules)('passage-bends: by the %s a bend more or a longer leg never lets more through', rule => {
    fc.assert(
      fc.property(fc.array(metres(2, 9), { minLength: 1, maxLength: 4 }), metres(2, 9), (lengths, more) => {
        const legs = lengths.map(length => leg(length))
        const K = run({ rule, legs }).si('K_p')
        expect(run({ rule, legs: [...legs, leg(more)] }).si('K_p')).toBeLessThan(K)
        const longer = [leg('9.5 m'), ...legs.slice(1)]
        expect(run({ rule, legs: longer }).si('K_p')).toBeLessThanOrEqual(K)
        expect(run({ rule, legs, first_length: '5 m' }).si('K_p')).toBeLessThanOrEqual(K)
      }),
      { numRuns: 10 },
    )
  })

  it('passage-bends: solid angle and albedo, two rules of two houses, agree within a factor of three', () => {
    fc.assert(
      fc.property(metres(0.8, 1.4), metres(2.5, 6), metres(2.5, 6), (width, one, two) => {
        const legs = [leg(one, { width }), leg(two, { width })]
        const by = (rule: string) => run({ rule, legs, first_width: width, energy: '0.662 MeV' }).si('K_e')
        const ratio = by('solid angle') / by('albedo')
        expect(ratio).toBeGreaterThan(1 / 3)
        expect(ratio).toBeLessThan(3)
      }),
      { numRuns: 20 },
    )
  })

  it('passage-bends: doors halve, in any order and split as one likes, and none is a factor of 1', () => {
    const steel = (thickness: string): Row => ({ material: 'steel', thickness })
    const wood: Row = { material: 'wood', thickness: '2.2 in' }
    expect(run().si('k_d')).toBe(1)
    expect(run({ doors: [steel('2 in')] }).si('k_d')).toBeCloseTo(1 / 4, 12)
    const K = run({ doors: [steel('1 in'), wood] }).si('K_p')
    expect(run({ doors: [wood, steel('1 in')] }).si('K_p')).toBeCloseTo(K, 15)
    expect(run({ doors: [steel('0.4 in'), wood, steel('0.6 in')] }).si('K_p')).toBeCloseTo(K, 15)
  })

  it('passage-bends: the field at the mouth scales the answer', () => {
    expect(run({ mouth: '2' }).si('P')).toBeCloseTo(run().si('P') / 2, 9)
  })

  it('passage-bends: both systems of units give one answer', () => {
    expect(run({}, 'US').si('P')).toBe(run().si('P'))
  })

  it('passage-bends: a leg as long as the passage is wide is one, a shorter one is not', () => {
    expect(run({ legs: [leg('1 m')] }).satisfied('is_leg')).toBe(true)
    expect(run({ legs: [leg('0.99 m')] }).satisfied('is_leg')).toBe(false)
    expect(run({ legs: [leg('1 m')], first_width: '1.1 m' }).satisfied('is_leg')).toBe(false)
  })

  it('passage-bends: refuses more than there is in the open', () => {
    const wide = { rule: 'albedo', first_length: '0 m', legs: [leg('1 m', { width: '3 m', height: '3 m' })] }
    expect(run({ ...wide, albedo: '0.1' }).errors).toEqual([])
    expect(run({ ...wide, albedo: '0.1', mouth: '1.2' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it('passage-bends: warns of doors past ten halvings, and of an albedo that no rule uses', () => {
    const doors = (thickness: string) => run({ doors: [{ material: 'steel', thickness }] }).limits[1]?.kept
    expect(doors('10 in')).toBe(true)
    expect(doors('10.01 in')).toBe(false)
    expect(run({ rule: 'albedo', albedo: '0.02' }).limits[2]?.kept).toBe(true)
    expect(run({ rule: 'solid angle', albedo: '0.02' }).limits[2]?.kept).toBe(false)
    expect(run({ rule: 'solid angle' }).limits).toHaveLength(2)
  })

  it('passage-bends: refuses a door whose material has no halving thickness of the spectrum', () => {
    const ran = run({ doors: [{ material: 'wood', thickness: '50 mm' }], spectrum: 'Co-60' })
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['lookup-outside-table'])
  })

  it.each([
    ['mouth', '0'],
    ['mouth', '10.1'],
    ['first_width', '0 m'],
    ['first_height', '10.1 m'],
    ['first_length', '-0.1 m'],
    ['first_length', '101 m'],
    ['energy', '0.24 MeV'],
    ['energy', '2.01 MeV'],
    ['albedo', '0'],
    ['albedo', '0.11'],
    ['required_factor', '0.9'],
  ])('passage-bends: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors[0]?.rule).toBe('value-outside-range')
  })

  it.each([[{ width: '0 m' }], [{ height: '10.1 m' }], [{ length: '0 m' }], [{ length: '101 m' }]])(
    'passage-bends: refuses a leg with %j',
    more => {
      expect(run({ legs: [leg('3 m', more)] }).errors[0]?.rule).toBe('value-outside-range')
    },
  )

  it('passage-bends: a factor just met is met, just missed is not', () => {
    const P = run().si('P')
    expect(run({ required_factor: `${P * 0.999}` }).satisfied('protection')).toBe(true)
    expect(run({ required_factor: `${P * 1.001}` }).satisfied('protection')).toBe(false)
  })

  it('passage-bends: the plan turns as the legs do, its walls meeting at the bends', () => {
    const drawing = drawingOf(passageBends, { ...base, legs: [leg('3 m'), leg('2 m', { turn: 'right' })] })
    const inner = drawing.shapes.filter(({ kind }) => kind === 'polygon').at(-1)
    const points = inner ? pointsOf(inner).map(([x, y]) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10]) : []
    // in along x to 3, left up to y = 3, right along x to 5; half a width of 0.5 either side
    const wanted = [
      [0, 0.5],
      [2.5, 0.5],
      [2.5, 3.5],
      [5, 3.5],
      [5, 2.5],
      [3.5, 2.5],
      [3.5, -0.5],
      [0, -0.5],
    ]
    expect(points).toEqual(wanted.map(([x = 0, y = 0]) => [x, y]))
  })
})
