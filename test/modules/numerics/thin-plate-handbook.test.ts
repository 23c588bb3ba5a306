import { describe, expect, it } from 'vitest'
import type { EdgeKind } from '../../../src/modules/numerics/plate-axis.ts'
import { plateStateAt } from '../../../src/modules/numerics/plate-state.ts'
import { thinPlate } from '../../../src/modules/numerics/thin-plate.ts'

const edgesOf = (left: EdgeKind, right: EdgeKind, bottom: EdgeKind, top: EdgeKind) => ({ left, right, bottom, top })
const simple = edgesOf('simple', 'simple', 'simple', 'simple')
const fixed = edgesOf('fixed', 'fixed', 'fixed', 'fixed')
const uniform = { uniform: 1 }

/** Asserts `got` within `percent` of the printed number. */
function near(got: number | undefined, printed: number, percent: number): void {
  expect(Math.abs((got ?? Number.NaN) - printed)).toBeLessThanOrEqual((percent / 100) * Math.abs(printed))
}

// Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 8 (memory); nu 0.3, a the short side.
describe('thin plate: four simple edges, Timoshenko Table 8', () => {
  it.each([
    { id: 'slab-1', ratio: 1, w: 0.00406, mx: 0.0479, my: 0.0479, vx: 0.42, vy: 0.42, r: 0.065, percent: 0.5 },
    { id: 'slab-2', ratio: 1.5, w: 0.00772, mx: 0.0812, my: 0.0498, vx: 0.486, vy: 0.48, r: 0.085, percent: 1.5 },
    { id: 'slab-3', ratio: 2, w: 0.01013, mx: 0.1017, my: 0.0464, vx: 0.503, vy: undefined, r: 0.092, percent: 1 },
  ])('$id: b/a $ratio as printed', ({ ratio, w, mx, my, vx, vy, r, percent }) => {
    const { centre, edges, holdDown } = thinPlate({ ratio, edges: simple, nu: 0.3, load: uniform })
    near(centre.deflection, w, 0.5)
    near(centre.mx, mx, 0.5)
    near(centre.my, my, 0.5)
    near(edges.left.reaction?.middle, vx, 0.5)
    if (vy !== undefined) near(edges.bottom.reaction?.middle, vy, 0.5)
    for (const force of holdDown) near(force, r, percent)
  })

  it('slab-1: shear at the middle of an edge of a square as printed', () => {
    const { edges } = thinPlate({ ratio: 1, edges: simple, nu: 0.3, load: uniform })
    near(edges.left.shear?.middle, 0.338, 0.5)
    near(edges.top.shear?.middle, 0.338, 0.5)
  })
})

// Same, Table 35 (memory); nu 0.3.
describe('thin plate: four fixed edges, Timoshenko Table 35', () => {
  it.each([
    { id: 'slab-4', ratio: 1, w: 0.00126, left: -0.0513, bottom: -0.0513, mx: 0.0231, my: 0.0231, percent: 1 },
    { id: 'slab-5', ratio: 1.5, w: 0.0022, left: -0.0757, bottom: -0.057, mx: 0.0368, my: 0.0203, percent: 0.5 },
    { id: 'slab-6', ratio: 2, w: 0.00254, left: -0.0829, bottom: -0.0571, mx: 0.0412, my: 0.0158, percent: 0.5 },
  ])('$id: b/a $ratio as printed', ({ ratio, w, left, bottom, mx, my, percent }) => {
    const { centre, edges } = thinPlate({ ratio, edges: fixed, nu: 0.3, load: uniform })
    near(centre.deflection, w, percent)
    near(edges.left.hoggingMiddle, left, percent)
    near(edges.bottom.hoggingMiddle, bottom, percent)
    near(centre.mx, mx, percent)
    near(centre.my, my, percent)
  })
})

// Same, Table 54 (looked up, scan of p. 243); nu 0.2, factors on the smaller span squared.
describe('thin plate: two adjacent edges fixed, Timoshenko Table 54', () => {
  it.each([
    { id: 'slab-7', ratio: 1, mx: 0.0281, my: 0.0281, left: -0.0678, bottom: -0.0678, percent: 0.5 },
    { id: 'slab-8', ratio: 0.7, mx: 0.0257, my: 0.046, left: -0.0767, bottom: -0.0991, percent: 0.6 },
    { id: 'slab-9', ratio: 1.2, mx: 0.0376, my: 0.0279, left: -0.0845, bottom: -0.0736, percent: 0.6 },
    { id: 'slab-10', ratio: 2, mx: 0.0574, my: 0.0191, left: -0.118, bottom: -0.0787, percent: 0.5 },
  ])('$id: b/a $ratio as printed', ({ ratio, mx, my, left, bottom, percent }) => {
    const panel = { ratio, edges: edgesOf('fixed', 'simple', 'fixed', 'simple'), nu: 0.2, load: uniform }
    const { centre, edges } = thinPlate(panel)
    const smaller = Math.min(1, ratio) ** 2
    near(centre.mx / smaller, mx, percent)
    near(centre.my / smaller, my, percent)
    near((edges.left.hoggingMiddle ?? Number.NaN) / smaller, left, percent)
    near((edges.bottom.hoggingMiddle ?? Number.NaN) / smaller, bottom, percent)
  })
})

describe('thin plate: square with one or two fixed edges, nu 0.3', () => {
  it('slab-11: two opposite edges fixed (computed; Timoshenko Table 29 by memory)', () => {
    const panel = { ratio: 1, edges: edgesOf('fixed', 'fixed', 'simple', 'simple'), nu: 0.3, load: uniform }
    const { centre, edges } = thinPlate(panel)
    near(centre.deflection, 0.00192, 0.5)
    near(edges.left.hoggingMiddle, -0.0698, 0.5)
    near(centre.mx, 0.0332, 0.5)
    near(centre.my, 0.0244, 0.5)
  })

  it('slab-12: one edge fixed, three simple (computed)', () => {
    const panel = { ratio: 1, edges: edgesOf('fixed', 'simple', 'simple', 'simple'), nu: 0.3, load: uniform }
    const { centre, edges } = thinPlate(panel)
    near(centre.deflection, 0.00279, 0.5)
    near(edges.left.hoggingMiddle, -0.0839, 0.5)
    near(centre.mx, 0.0392, 0.5)
    near(centre.my, 0.0339, 0.5)
  })
})

// Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 case 1a (looked up): sigma = beta q b^2/t^2 (6 M),
// y = alpha q b^4/(E t^3) (12 (1 - nu^2) w), R = gamma q b; b the short side, nu 0.3.
describe('thin plate: four simple edges, Roark Table 11.4 case 1a', () => {
  it.each([
    { ratio: 1, beta: 0.2874, alpha: 0.0444, gamma: 0.42 },
    { ratio: 1.4, beta: 0.453, alpha: 0.077, gamma: 0.478 },
    { ratio: 2, beta: 0.6102, alpha: 0.111, gamma: 0.503 },
  ])('slab-13: a/b $ratio as printed', ({ ratio, beta, alpha, gamma }) => {
    const { sagging, deflection, edges } = thinPlate({ ratio, edges: simple, nu: 0.3, load: uniform })
    near(6 * sagging.x.value, beta, 0.5)
    near(10.92 * deflection.value, alpha, 0.5)
    near(edges.left.reaction?.peak.value, gamma, 0.5)
  })
})

describe('thin plate: load that grows along one axis, nu 0.3', () => {
  it('slab-18: hydrostatic square, four simple edges, centre half of the uniform values (memory)', () => {
    const { centre } = thinPlate({ ratio: 1, edges: simple, nu: 0.3, load: { uniform: 0, varying: 1, along: 'x' } })
    near(centre.deflection, 0.00203, 0.5)
    near(centre.mx, 0.0239, 0.5)
    near(centre.my, 0.0239, 0.5)
  })

  it('plate-2: hydrostatic square, four fixed edges (computed; Timoshenko Table 38 by memory)', () => {
    const panel = { ratio: 1, edges: fixed, nu: 0.3, load: { uniform: 0, varying: 1, along: 'x' as const } }
    const { centre, edges } = thinPlate(panel)
    near(edges.right.hoggingMiddle, -0.0334, 1)
    near(edges.left.hoggingMiddle, -0.0179, 1)
    near(edges.bottom.hoggingMiddle, -0.0257, 1)
    near(centre.mx, 0.0115, 1)
    near(centre.deflection, 0.00063, 1)
  })
})

// Timoshenko and Woinowsky-Krieger, arts. 48 and 49 (memory), square plates, nu 0.3.
describe('thin plate: one edge free, Timoshenko', () => {
  it('three simple edges: deflection and moment at the middle of the free edge, moments at the centre', () => {
    const panel = { ratio: 1, edges: edgesOf('simple', 'simple', 'simple', 'free'), nu: 0.3, load: uniform }
    const result = thinPlate(panel)
    near(result.deflection.value, 0.01286, 0.5)
    near(plateStateAt(result.field, 0.5, 1).mx, 0.112, 0.5)
    near(result.centre.mx, 0.08, 0.7)
    near(result.centre.my, 0.039, 1.3)
  })

  it('edge opposite the free one fixed, sides simple: free edge and fixed edge', () => {
    const panel = { ratio: 1, edges: edgesOf('simple', 'simple', 'fixed', 'free'), nu: 0.3, load: uniform }
    const result = thinPlate(panel)
    // The deflection, 0.0113 as remembered, is not asserted: the Levy series gives 0.01124 (levy-plate.test.ts).
    near(plateStateAt(result.field, 0.5, 1).mx, 0.0972, 0.5)
    near(result.edges.bottom.hoggingMiddle, -0.119, 0.5)
  })
})
