import { describe, expect, it } from 'vitest'
import { airSupply } from '../../../src/modules/living/air-supply.ts'
import { drawingOf } from '../drawing-of.ts'

describe('air supply sketch', () => {
  const drawing = drawingOf(airSupply, airSupply.example)

  it('air-supply-sketch: flows and room carry the values of the working', () => {
    const values = drawing.shapes.flatMap(shape => {
      const label = 'label' in shape ? shape.label : undefined
      return label?.value ? [`${label.symbol} = ${label.value}`] : []
    })
    expect(values).toEqual(expect.arrayContaining(['Q_s = 30 L/s', 'c_out = 0.04 %']))
    expect(values).toHaveLength(5)
  })

  it('air-supply-sketch: says supply, people and steady level in words', () => {
    expect(drawing.says).toContain('Fresh air of 30 L/s enters a room with 12 people')
    expect(drawing.says).toMatch(/leaves with 0\.\d+ % of carbon dioxide/)
    expect(drawing.toScale).toBe(false)
  })

  it('air-supply-sketch: shows cfm in US units', () => {
    expect(drawingOf(airSupply, airSupply.example, { units: 'US' }).says).toContain('cfm')
  })
})
