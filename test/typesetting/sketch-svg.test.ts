import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { Drawing, Shape } from '../../src/modules/sketch.ts'
import { sketchSvg } from '../../src/typesetting/sketch-svg.ts'
import { symbolRuns } from '../../src/typesetting/symbol-runs.ts'
import { calc, modelOf } from '../sheets/skerry-notebook.ts'

const sheet = { width: 200, height: 190 }
const drawing = (shapes: readonly Shape[], toScale = true): Drawing => ({ says: 'A box.', toScale, shapes })
const box = (width: number, height: number): Shape => ({
  kind: 'polygon',
  fill: 'concrete',
  points: [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ],
})
const dimension = (to: readonly [number, number], off: number, symbol: string): Shape => ({
  kind: 'dimension',
  from: [0, 0],
  to,
  off,
  label: { symbol, value: '3.4 m' },
})
const size = (svg: Element): number[] => String(svg.properties.viewBox).split(' ').map(Number)

describe('sketch-svg', () => {
  it('fits its sheet, labels and all', () => {
    const [, , width = 0, height = 0] = size(
      sketchSvg(drawing([box(8, 2), dimension([0, 2], 12, 'h_roof'), dimension([8, 0], -12, 'l_x')]), 'a', sheet),
    )
    expect(width).toBeLessThanOrEqual(sheet.width + 2)
    expect(height).toBeLessThanOrEqual(sheet.height + 2)
    expect(width).toBeGreaterThan(sheet.width * 0.8)
  })
  it('to scale, a square is a square; a chart fills its sheet', () => {
    const path = (svg: Element): number[] => {
      const d = /<path d="([^"]*)Z" fill="url/.exec(toHtml(svg))?.[1] ?? ''
      return [...d.matchAll(/-?[\d.]+/g)].map(found => Number(found[0]))
    }
    const [x0 = 0, y0 = 0, x1 = 0, , , y2 = 0] = path(sketchSvg(drawing([box(3, 3)]), 'a', sheet))
    expect(Math.abs(x1 - x0)).toBeCloseTo(Math.abs(y2 - y0), 1)
    const chart = path(sketchSvg(drawing([box(3, 300)], false), 'a', sheet))
    expect(Math.abs((chart[2] ?? 0) - (chart[0] ?? 0))).toBeGreaterThan(180)
  })
  it('says what it shows', () => {
    const svg = sketchSvg(drawing([box(1, 1)]), 'a', sheet)
    expect(svg.properties).toMatchObject({ role: 'img', ariaLabel: 'A box.' })
    expect(toHtml(svg)).toContain('<title>A box.</title>')
  })
  it('names its patterns by the block, the same every time', () => {
    const one = toHtml(sketchSvg(drawing([box(1, 1)]), 'sketch-roof', sheet))
    expect(one).toContain('id="sketch-roof-concrete"')
    expect(one).toContain('url(#sketch-roof-concrete)')
    expect(toHtml(sketchSvg(drawing([box(1, 1)]), 'sketch-roof', sheet))).toBe(one)
  })
  it('leaves out what could not be evaluated, and draws the rest', () => {
    const svg = toHtml(sketchSvg(drawing([box(Number.NaN, 1), box(1, 1)]), 'a', sheet))
    expect(svg).not.toContain('NaN')
    expect(svg).toContain('url(#a-concrete)')
    expect(toHtml(sketchSvg(drawing([box(Number.NaN, 1)]), 'a', sheet))).not.toContain('NaN')
  })
  it('moves a label that would stand on another', () => {
    const label = (text: string): Shape => ({ kind: 'label', at: [1, 1], anchor: 'middle', label: { text } })
    const svg = toHtml(sketchSvg(drawing([box(4, 4), label('one'), label('two')]), 'a', sheet))
    const heights = [...svg.matchAll(/<text x="[^"]*" y="([^"]*)"/g)].map(found => Number(found[1]))
    expect(Math.abs((heights[0] ?? 0) - (heights[1] ?? 0))).toBeGreaterThanOrEqual(9)
  })
  it.each(catalogue.filter(module => module.sketch).map(module => module.id))('%s: the example draws', id => {
    const example = catalogue.find(module => module.id === id)?.example ?? {}
    const model = modelOf({ blocks: [calc(id, 'it', example)], body: { type: 'root', children: [] } })
    const [block] = model.workings.blocks
    if (block?.kind !== 'calc' || !block.sketch) throw new Error('no sketch')
    const html = toHtml(sketchSvg(block.sketch, 'it', sheet))
    expect(html).not.toMatch(/NaN|undefined|Infinity/)
    expect(block.sketch.says.length).toBeGreaterThan(40)
  })
})

describe('symbol-runs: letters italic, words and figures upright, indices below', () => {
  it.each([
    [
      'K_0',
      [
        ['K', 'italic', 'line'],
        ['0', 'upright', 'sub'],
      ],
    ],
    [
      'f_ck',
      [
        ['f', 'italic', 'line'],
        ['ck', 'upright', 'sub'],
      ],
    ],
    [
      "gamma'",
      [
        ['γ', 'italic', 'line'],
        ['′', 'upright', 'line'],
      ],
    ],
    [
      'M_x',
      [
        ['M', 'italic', 'line'],
        ['x', 'italic', 'sub'],
      ],
    ],
  ])('%s', (symbol, expected) => {
    expect(symbolRuns(symbol).map(({ text, style, level }) => [text, style, level])).toEqual(expected)
  })
})
