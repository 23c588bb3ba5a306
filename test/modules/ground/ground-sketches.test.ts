import { describe, expect, it } from 'vitest'
import { makeWorkings } from '../../../src/evaluation/make-workings.ts'
import { baseUplift } from '../../../src/modules/ground/base-uplift.ts'
import { batteredPit } from '../../../src/modules/ground/battered-pit.ts'
import { earthPressure } from '../../../src/modules/ground/earth-pressure.ts'
import { flotation } from '../../../src/modules/ground/flotation.ts'
import { infiniteSlope } from '../../../src/modules/ground/infinite-slope.ts'
import { levels } from '../../../src/modules/ground/levels.ts'
import type { CaseInput, Module } from '../../../src/modules/module.ts'
import type { Drawing, Point, Shape } from '../../../src/modules/sketch.ts'
import { runModule } from '../run-module.ts'

function drawn(module: Module, more: Readonly<Record<string, CaseInput>> = {}): Drawing {
  const block = makeWorkings(runModule(module, { ...module.example, ...more }).results).blocks[0]
  if (block?.kind !== 'calc' || !block.sketch) throw new Error('nothing was drawn')
  return block.sketch
}

const points = (shape: Shape): readonly Point[] =>
  'points' in shape ? shape.points : 'at' in shape ? [shape.at] : [shape.from, shape.to]
const labels = ({ shapes }: Drawing): readonly string[] =>
  shapes.flatMap(shape => ('label' in shape && shape.label ? [`${shape.label.symbol} = ${shape.label.value}`] : []))

describe('sketches of levels and ground', () => {
  it('every sketch: is to scale, with finite points and a sentence for those who cannot see it', () => {
    for (const module of [levels, batteredPit, earthPressure, flotation, infiniteSlope, baseUplift]) {
      const drawing = drawn(module)
      expect(drawing.toScale).toBe(true)
      expect(drawing.shapes.flatMap(points).flat().every(Number.isFinite)).toBe(true)
      expect(drawing.says).toMatch(/\d/)
      expect(drawing.says).not.toMatch(/NaN|undefined| {2}/)
    }
  })

  it('levels: water is drawn at its own depth, and left out where it is far below', () => {
    const mark = (drawing: Drawing) => drawing.shapes.find(shape => shape.kind === 'level' && shape.water)
    expect(mark(drawn(levels))).toMatchObject({ at: [expect.any(Number), -2.8] })
    expect(mark(drawn(levels, { water_depth: '12 m' }))).toBeUndefined()
  })

  it('battered-pit: edge, toe and formation stand where the working has them', () => {
    const ground = drawn(batteredPit).shapes.find(shape => shape.kind === 'ground')
    const [, edge, toe] = ground ? points(ground) : []
    expect(edge?.[0]).toBeCloseTo(-8.1, 9)
    expect(toe?.[0]).toBeCloseTo(-3.4, 9)
    expect(toe?.[1]).toBeCloseTo(-4.7, 9)
  })

  it('earth-pressure: the diagram is labelled at top, water and base, in dry ground without water', () => {
    const wet = labels(drawn(earthPressure))
    expect(wet).toEqual(
      expect.arrayContaining(['p_upper_1 = 16.88 kPa', 'p_water_1 = 29.05 kPa', 'p_lower_1 = 49.82 kPa']),
    )
    const { water_depth: _, ...dry } = earthPressure.example
    const drawing = drawn({ ...earthPressure, example: dry })
    expect(labels(drawing).some(text => text.startsWith('p_water'))).toBe(false)
    expect(drawing.shapes.some(shape => shape.kind === 'polygon' && shape.fill === 'water')).toBe(false)
  })

  it('earth-pressure: a wall that cohesion holds back is drawn without a force', () => {
    const layers = [{ thickness: '6 m', gamma: '18 kN/m^3', gamma_sat: '20 kN/m^3', phi: '30 deg', c: '200 kPa' }]
    const drawing = drawn(earthPressure, { state: 'active', layers, water_depth: '9 m' })
    expect(drawing.says).toContain('no force')
  })

  it('flotation: forces on box, cover and raft, on the toe only where there is one', () => {
    const symbols = (more: Readonly<Record<string, CaseInput>>) => labels(drawn(flotation, more)).join(' ')
    expect(symbols({})).toMatch(/W_cover.*W_box.*U_fin.*W_toe/)
    expect(symbols({ toe: '0 m' })).not.toMatch(/W_toe/)
  })

  it('base-uplift: water in the standpipe and top of the aquifer stand at their depths, water in the pit where there is some', () => {
    const marks = ({ shapes }: Drawing) => shapes.flatMap(shape => (shape.kind === 'level' ? [shape.at[1]] : []))
    expect(marks(drawn(baseUplift))).toEqual([-2.8, -8.2])
    expect(marks(drawn(baseUplift, { water_depth: '-1 m' }))).toEqual([1, -8.2])
    expect(labels(drawn(baseUplift)).join(' ')).toMatch(
      /sigma_v_a = 66.50 kPa.*u_a = 52.97 kPa.*d = 4.7 m.*t = 3.500 m/,
    )
    expect(labels(drawn(baseUplift)).join(' ')).not.toMatch(/h_pit/)
    expect(labels(drawn(baseUplift, { water_in_pit: '1 m' })).join(' ')).toMatch(/h_pit = 1 m/)
  })

  it('infinite-slope: plane and water run with the ground at their depths; what is not there is not drawn', () => {
    const lines = ({ shapes }: Drawing) => shapes.filter(shape => shape.kind === 'line')
    const drawing = drawn(infiniteSlope)
    const ground = drawing.shapes.find(shape => shape.kind === 'ground')
    const [[, low] = [0, 0], [far, high] = [0, 0]] = ground ? points(ground) : []
    expect((high - low) / far).toBeCloseTo(Math.tan((18 * Math.PI) / 180), 9)
    const plane = lines(drawing).find(shape => shape.weight === 'thick')
    const water = lines(drawing).find(shape => shape.weight === 'medium')
    expect(plane?.points.map(([, y]) => y)).toEqual([low - 2.5, high - 2.5])
    expect(water?.points.map(([, y]) => y)).toEqual([low - 1.7, high - 1.7])
    expect(labels(drawing).join(' ')).toMatch(
      /h_z = 0.8 m.*q = 5 kPa.*p_z = 51.60 kPa.*tau_z = 15.16 kPa.*tau_f = 27.70 kPa.*u_z/,
    )
    const dry = drawn(infiniteSlope, { water_height: '0 m', surcharge: '0 kPa' })
    expect(labels(dry).join(' ')).not.toMatch(/h_z|\bu_z|q =/)
  })
})
