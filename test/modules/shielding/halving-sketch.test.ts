import { describe, expect, it } from 'vitest'
import { halvingLayers } from '../../../src/modules/shielding/halving-layers.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'

const stack = {
  layers: [
    { material: 'packed earth', thickness: '36 in' },
    { material: 'concrete', thickness: '4.8 in' },
  ],
  required_factor: '1000',
}
const drawing = drawingOf(halvingLayers, stack)
const curve = drawing.shapes.find(shape => shape.kind === 'line' && shape.weight === 'thick')

describe('halving sketch', () => {
  it('halving-sketch: the curve falls by the log of the share, layer by layer', () => {
    const points = curve ? pointsOf(curve) : []
    expect(points).toHaveLength(3)
    const expected = [
      [0, 0],
      [0.9144, -10 * Math.log10(2)],
      [0.9144 + 0.12192, -12 * Math.log10(2)],
    ]
    for (const [index, [x = 0, y = 0]] of expected.entries()) {
      expect(points[index]?.[0]).toBeCloseTo(x, 9)
      expect(points[index]?.[1]).toBeCloseTo(y, 9)
    }
  })

  it('halving-sketch: each layer is drawn over its own thickness and named', () => {
    const polygons = drawing.shapes.filter(shape => shape.kind === 'polygon')
    expect(polygons.map(shape => shape.fill)).toEqual(['soil', 'concrete'])
    const texts = drawing.shapes.flatMap(shape => (shape.kind === 'label' ? [shape.label.text] : []))
    expect(texts).toEqual(expect.arrayContaining(['packed earth', 'concrete', '1', '10⁻¹', '10⁻³']))
  })

  it('halving-sketch: what a layer leaves is written in the next layer where that has room, else right of the stack', () => {
    const left = (layers: readonly { material: string; thickness: string }[]) =>
      drawingOf(halvingLayers, { ...stack, layers }).shapes.flatMap(shape =>
        shape.kind === 'label' && shape.label.symbol !== undefined ? [shape.at[0]] : [],
      )
    const all = 0.9144 + 0.12192
    for (const at of left(stack.layers)) expect(at).toBeGreaterThan(all)
    const [thin = 0, last = 0] = left([...stack.layers].reverse())
    expect(thin).toBeGreaterThan(0.12192)
    expect(thin).toBeLessThan(0.2)
    expect(last).toBeGreaterThan(all)
  })

  it('halving-sketch: says the layers, the share and the factor in words', () => {
    expect(drawing.says).toContain('2 layers')
    expect(drawing.says).toContain('4096')
  })

  it('halving-sketch: a deep stack keeps its scale to a dozen marks', () => {
    const deep = drawingOf(halvingLayers, { ...stack, layers: [{ material: 'steel', thickness: '4 m' }] })
    const marks = deep.shapes.filter(shape => shape.kind === 'line' && shape.dashed)
    expect(marks.length).toBeLessThanOrEqual(13)
    expect(marks.length).toBeGreaterThan(5)
  })

  it.each(['SI', 'US'] as const)('halving-sketch: every coordinate is a number, in %s', units => {
    for (const shape of drawingOf(halvingLayers, stack, { units }).shapes)
      for (const [x, y] of pointsOf(shape)) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
  })
})
