import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NumericRefusal } from '../../../src/modules/numerics/numeric-refusal.ts'
import type { EdgeKind } from '../../../src/modules/numerics/plate-axis.ts'
import { plateChange } from '../../../src/modules/numerics/plate-changes.ts'
import { plateField } from '../../../src/modules/numerics/plate-field.ts'
import { edgeNames, type PlatePanel } from '../../../src/modules/numerics/plate-panel.ts'
import { plateStateAt } from '../../../src/modules/numerics/plate-state.ts'
import { thinPlate } from '../../../src/modules/numerics/thin-plate.ts'

const uniform = { uniform: 1 }
const all = (kind: EdgeKind) => ({ left: kind, right: kind, bottom: kind, top: kind })

const anyKind = fc.constantFrom<EdgeKind>('fixed', 'simple', 'free')
const anyEdges = fc
  .record({ left: anyKind, right: anyKind, bottom: anyKind, top: anyKind })
  .filter(edges => edgeNames.filter(name => edges[name] === 'free').length < 2)
const anyLoad = fc.constantFrom<PlatePanel['load']>(
  uniform,
  { uniform: 0, varying: 1, along: 'x' },
  { uniform: 1, varying: -0.6, along: 'y' },
)
const anyPanel: fc.Arbitrary<PlatePanel> = fc.record({
  ratio: fc.double({ min: 0.25, max: 4, noNaN: true }),
  edges: anyEdges,
  nu: fc.double({ min: 0, max: 0.4, noNaN: true }),
  load: anyLoad,
})
const runs = { numRuns: 40, seed: 20 }

describe('thin plate: verification', () => {
  it('thin-plate: a moment at an edge counts in the change between the meshes, as one in the panel does', () => {
    const solved = thinPlate({ ratio: 1, edges: all('fixed'), nu: 0.2, load: uniform })
    const field = plateField(solved.panel, solved.verification.meshes.fine)
    expect(plateChange(solved, field).moment).toBeLessThan(1e-9)
    const { left } = solved.edges
    if (!left.hogging) throw new Error('a fixed edge hogs')
    const moved = { ...left, hogging: { ...left.hogging, value: 1.1 * left.hogging.value } }
    const edges = { ...solved.edges, left: moved }
    expect(plateChange({ ...solved, edges }, field).moment).toBeCloseTo(1 / 11, 6)
    const sagging = { ...solved.sagging, x: { ...solved.sagging.x, value: 1.1 * solved.sagging.x.value } }
    expect(plateChange({ ...solved, sagging }, field).moment).toBeGreaterThan(0.01)
  })
})

describe('thin plate: symmetry', () => {
  it('swapping the axes swaps the answers', () => {
    fc.assert(
      fc.property(anyPanel, panel => {
        const { edges, ratio, load } = panel
        const along = load.along === 'y' ? 'x' : 'y'
        const turned = thinPlate({
          ...panel,
          ratio: 1 / ratio,
          edges: { left: edges.bottom, right: edges.top, bottom: edges.left, top: edges.right },
          load: { ...load, along },
        })
        const plain = thinPlate(panel)
        const scale = 1 / ratio ** 2
        const largest = Math.max(plain.sagging.x.value, plain.sagging.y.value) * scale
        expect(Math.abs(turned.centre.mx - plain.centre.my * scale)).toBeLessThanOrEqual(1e-5 * largest)
        expect(Math.abs(turned.sagging.y.value - plain.sagging.x.value * scale)).toBeLessThanOrEqual(1e-5 * largest)
        const [one, other] = [turned.edges.left.hogging?.value, plain.edges.bottom.hogging?.value]
        expect(one === undefined).toBe(other === undefined)
        if (one !== undefined && other !== undefined) {
          expect(Math.abs(one - other * scale)).toBeLessThanOrEqual(1e-5 * Math.abs(one))
        }
      }),
      runs,
    )
  })

  it('turning the panel end for end turns the answers', () => {
    fc.assert(
      fc.property(anyPanel, panel => {
        const { edges, load } = panel
        const end = load.uniform + (load.varying ?? 0)
        const turnedLoad = load.along === 'x' ? { ...load, uniform: end, varying: -(load.varying ?? 0) } : load
        const turned = thinPlate({
          ...panel,
          edges: { ...edges, left: edges.right, right: edges.left },
          load: turnedLoad,
        })
        const plain = thinPlate(panel)
        expect(turned.centre.mx).toBeCloseTo(plain.centre.mx, 8)
        expect(turned.sagging.y.value).toBeCloseTo(plain.sagging.y.value, 6)
        expect(turned.holdDown[0]).toBeCloseTo(plain.holdDown[1], 6)
      }),
      runs,
    )
  })

  it('a square with like edges has like moments', () => {
    for (const kind of ['fixed', 'simple'] as const) {
      const { sagging, edges } = thinPlate({ ratio: 1, edges: all(kind), nu: 0.2, load: uniform })
      expect(sagging.x.value).toBeCloseTo(sagging.y.value, 9)
      expect(edges.left.reaction?.middle).toBeCloseTo(edges.top.reaction?.middle ?? Number.NaN, 9)
    }
  })

  it('a triangular load and its mirror image add to the uniform load', () => {
    const solve = (load: PlatePanel['load']) => thinPlate({ ratio: 1.4, edges: all('fixed'), nu: 0.2, load })
    const rising = solve({ uniform: 0, varying: 1, along: 'x' })
    const falling = solve({ uniform: 1, varying: -1, along: 'x' })
    const whole = solve(uniform)
    expect(rising.centre.mx + falling.centre.mx).toBeCloseTo(whole.centre.mx, 5)
    const ends = [rising, falling].map(({ edges }) => edges.left.hoggingMiddle ?? Number.NaN)
    expect((ends[0] ?? 0) + (ends[1] ?? 0)).toBeCloseTo(whole.edges.left.hoggingMiddle ?? Number.NaN, 4)
  })
})

describe('thin plate: sense', () => {
  it('is in balance with its load, and settled between its meshes', () => {
    fc.assert(
      fc.property(anyPanel, panel => {
        const { innerBalance, edgeBalance, change } = thinPlate(panel).verification
        const mixed = edgeNames.some(name => panel.edges[name] === 'free')
        expect(Math.abs(innerBalance)).toBeLessThanOrEqual(0.002)
        expect(Math.abs(edgeBalance)).toBeLessThanOrEqual(mixed ? 0.05 : 0.005)
        expect(change.moment).toBeLessThanOrEqual(0.006)
        expect(change.deflection).toBeLessThanOrEqual(0.003)
        expect(change.shear).toBeLessThanOrEqual(0.01)
      }),
      runs,
    )
  })

  it('a longer panel bends more across its short span, a fixed edge takes from the span', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3.5, noNaN: true }), ratio => {
        const solve = (more: number, kind: EdgeKind) => {
          return thinPlate({ ratio: ratio * more, edges: { ...all('simple'), left: kind }, nu: 0.2, load: uniform })
        }
        const plain = solve(1, 'simple')
        expect(solve(1.1, 'simple').deflection.value).toBeGreaterThan(plain.deflection.value)
        expect(solve(1.1, 'simple').sagging.x.value).toBeGreaterThan(plain.sagging.x.value)
        expect(solve(1, 'fixed').sagging.x.value).toBeLessThan(plain.sagging.x.value)
      }),
      runs,
    )
  })

  it('answers are in proportion to the load', () => {
    const solve = (uniform: number) => thinPlate({ ratio: 1.3, edges: all('fixed'), nu: 0.2, load: { uniform } })
    expect(solve(7).sagging.x.value / solve(1).sagging.x.value).toBeCloseTo(7, 9)
  })

  it('is the same twice', () => {
    const panel = { ratio: 1.37, edges: { ...all('fixed'), top: 'free' as const }, nu: 0.2, load: uniform }
    expect(thinPlate(panel)).toEqual(thinPlate(panel))
  })
})

// Strips: w l^2/8, w l^2/12, w l^2/24 and 9 w l^2/128; the long panel is within 1 % of them at its middle.
describe('thin plate: a long panel tends to the strip', () => {
  it.each([
    { left: 'simple', right: 'simple', hogging: undefined, middle: 1 / 8 },
    { left: 'fixed', right: 'fixed', hogging: -1 / 12, middle: 1 / 24 },
    { left: 'fixed', right: 'simple', hogging: -1 / 8, middle: 1 / 16 },
  ] as const)('$left and $right', ({ left, right, hogging, middle }) => {
    const panel = { ratio: 5, edges: { left, right, bottom: 'simple', top: 'simple' }, nu: 0.2, load: uniform } as const
    const { centre, edges } = thinPlate(panel)
    expect(Math.abs(centre.mx - middle)).toBeLessThanOrEqual(0.01 * middle)
    if (hogging) expect(Math.abs((edges.left.hoggingMiddle ?? 0) - hogging)).toBeLessThanOrEqual(-0.01 * hogging)
  })

  it('a high wall spans between its sides: p b^2/12 and p b^2/24', () => {
    const panel = { ratio: 5, edges: { ...all('fixed'), top: 'free' as const }, nu: 0.2, load: uniform }
    const { centre, field } = thinPlate(panel)
    expect(centre.mx).toBeCloseTo(1 / 24, 4)
    expect(plateStateAt(field, 0, 0.5).mx).toBeCloseTo(-1 / 12, 4)
  })
})

describe('thin plate: edge conditions', () => {
  it('edges do what their kind says', () => {
    const edges = { left: 'fixed', right: 'simple', bottom: 'simple', top: 'free' } as const
    const { field, sagging, edges: answers } = thinPlate({ ratio: 1.2, edges, nu: 0.3, load: uniform })
    const limit = 0.002 * sagging.x.value
    expect(Math.abs(plateStateAt(field, 1, 0.4).mx)).toBeLessThanOrEqual(limit)
    expect(Math.abs(plateStateAt(field, 0.4, 0).my)).toBeLessThanOrEqual(limit)
    expect(Math.abs(plateStateAt(field, 0.6, 1).my)).toBeLessThanOrEqual(limit)
    for (const [x, y] of [
      [0, 0.3],
      [1, 0.3],
      [0.3, 0],
    ] as const) {
      expect(Math.abs(plateStateAt(field, x, y).deflection)).toBeLessThanOrEqual(1e-12)
    }
    expect(answers.top.reaction).toBeUndefined()
    expect(answers.right.hogging).toBeUndefined()
    expect(answers.left.searched).toEqual([0, 1 - 0.1 / 1.2])
  })
})

describe('thin plate: refusals', () => {
  const good = { ratio: 1, edges: all('fixed'), nu: 0.2, load: uniform }
  const refused = (change: Partial<PlatePanel>) => () => thinPlate({ ...good, ...change })

  it.each([0.199, 5.01, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])('ratio %d', ratio => {
    expect(refused({ ratio })).toThrow(NumericRefusal)
    expect(refused({ ratio })).toThrow('Expected `ratio` from 0.2 to 5')
  })

  it.each([0.2, 5])('not ratio %d', ratio => {
    expect(refused({ ratio })).not.toThrow()
  })

  it.each([-0.01, 0.5, Number.NaN])('nu %d', nu => {
    expect(refused({ nu })).toThrow('Expected `nu` from 0 to 0.49')
  })

  it('two free edges', () => {
    expect(refused({ edges: { ...all('fixed'), left: 'free', top: 'free' } })).toThrow('one free edge at most')
  })

  it('an edge of no known kind', () => {
    expect(refused({ edges: { ...all('fixed'), left: 'clamped' as EdgeKind } })).toThrow('for edge `left`, got clamped')
  })

  it.each([
    { uniform: 0 },
    { uniform: -1 },
    { uniform: 1, varying: -2 },
    { uniform: Number.NaN },
    { uniform: 1, varying: Number.POSITIVE_INFINITY },
  ])('load %o', load => {
    expect(refused({ load })).toThrow('`load`')
  })
})
