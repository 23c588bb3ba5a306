import { describe, expect, it } from 'vitest'
import { flexureIs456 } from '../../../src/modules/concrete/flexure-is-456.ts'
import { twoWaySlab } from '../../../src/modules/concrete/two-way-slab.ts'
import { wallStrip } from '../../../src/modules/concrete/wall-strip.ts'
import type { Drawing, Point, Shape } from '../../../src/modules/sketch.ts'
import { drawingOf, pointsOf } from '../drawing-of.ts'

const labelled = (drawing: Drawing, symbol: string) =>
  drawing.shapes.filter(shape => 'label' in shape && shape.label?.symbol === symbol)

const labels = ({ shapes }: Drawing) =>
  shapes.filter((shape): shape is Extract<Shape, { kind: 'label' }> => shape.kind === 'label')

describe('flexure-is-456: the section', () => {
  const section = (face: string) => drawingOf(flexureIs456, { ...flexureIs456.example, face })
  const barLevel = (drawing: Drawing): number => {
    const heights = drawing.shapes.flatMap(shape =>
      shape.kind === 'polygon' && shape.fill === 'void' ? shape.points.map(([, y]) => y) : [],
    )
    return (Math.min(...heights) + Math.max(...heights)) / 2
  }

  it('has its bars and its cover at the face in tension', () => {
    expect(barLevel(section('bottom'))).toBeCloseTo(0.25 - 0.204, 9)
    expect(barLevel(section('top'))).toBeCloseTo(0.204, 9)
    const ends = (face: string) =>
      labelled(section(face), 'c')
        .flatMap(pointsOf)
        .map(([, y]) => y)
    expect(ends('bottom').map(y => Number(y.toFixed(9)))).toEqual([0.04, 0])
    expect(ends('top').map(y => Number(y.toFixed(9)))).toEqual([0.25, 0.21])
    expect(section('top').says).toContain('near the top face, cover 40 mm')
  })

  it('has the bars at the bottom where nothing is said', () => {
    expect(drawingOf(flexureIs456, flexureIs456.example)).toEqual(section('bottom'))
  })
})

describe('wall-strip: the section', () => {
  it.each(['pinned', 'fixed', 'free'])('parts its labels by a letter height, top %s', top => {
    const own = labels(drawingOf(wallStrip, { ...wallStrip.example, top })).filter(({ anchor }) => anchor === 'start')
    const heights = own.map(({ at }) => at[1] / 2.6).toSorted((a, b) => a - b)
    expect(own.length).toBeGreaterThan(2)
    expect(new Set(own.map(({ at }) => at[0])).size).toBe(1)
    for (const [index, y] of heights.slice(1).entries()) expect(y - (heights[index] ?? 0)).toBeGreaterThan(0.11)
  })

  it('names two points of one depth and pressure once', () => {
    const diagram = [
      { z: '0 m', p: '10 kPa' },
      { z: '1 m', p: '20 kPa' },
      { z: '1 m', p: '20 kPa' },
      { z: '1 m', p: '25 kPa' },
      { z: '2.6 m', p: '40 kPa' },
    ]
    const pressures = labels(drawingOf(wallStrip, { ...wallStrip.example, diagram })).filter(
      ({ anchor }) => anchor === 'end',
    )
    expect(pressures.map(({ label }) => label.symbol)).toEqual(['q_1', 'q_2', 'q_4', 'q_5'])
  })
})

describe('two-way-slab: the plan', () => {
  it('has arrows that do not cross, and no label on one', () => {
    const drawing = drawingOf(twoWaySlab, { ...twoWaySlab.example, edges: 'all continuous' })
    const arrows = drawing.shapes.filter((shape): shape is Extract<Shape, { kind: 'arrow' }> => shape.kind === 'arrow')
    const [up, along] = arrows
    if (!up || !along) throw new Error('two arrows are drawn')
    expect(up.from[0]).toBe(up.to[0])
    expect(along.from[1]).toBe(along.to[1])
    expect(along.from[0]).toBeGreaterThan(up.from[0])
    const clear = ([x, y]: Point): boolean => Math.abs(y - along.from[1]) > 0.15 || x < along.from[0]
    for (const { at } of labels(drawing)) expect(clear(at), at.join(' ')).toBe(true)
  })
})
