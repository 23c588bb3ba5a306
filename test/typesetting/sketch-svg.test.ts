import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { Drawing, Shape } from '../../src/modules/sketch.ts'
import type { System } from '../../src/quantity/types.ts'
import { sketchSvg } from '../../src/typesetting/sketch-svg.ts'
import { symbolRuns } from '../../src/typesetting/symbol-runs.ts'
import { drawingOf } from '../modules/drawing-of.ts'
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
  it('labels of thin layers one above the other: in the order of the layers, a line apart, with leaders', () => {
    const edges = [0, 0.05, 0.12, 0.5, 3, 3.05, 3.1]
    const shapes = edges.slice(1).map(
      (to, index): Shape => ({
        kind: 'dimension',
        from: [0, -to],
        to: [0, -(edges[index] ?? 0)],
        off: 12,
        label: { text: `layer ${index + 1}` },
      }),
    )
    const svg = toHtml(sketchSvg(drawing([box(1, -3.1), ...shapes]), 'a', sheet))
    const heights = [...svg.matchAll(/<text x="[^"]*" y="([^"]*)"/g)].map(found => Number(found[1]))
    expect(heights).toHaveLength(6)
    for (const [index, y] of heights.entries())
      expect(y - (heights[index - 1] ?? Number.NEGATIVE_INFINITY)).toBeGreaterThan(9)
    expect(svg.match(/class="leader"/g)).toHaveLength(6)
  })
  it('labels with room: stand at their marks, without a leader', () => {
    const shapes = [1, 2, 3].map(
      (y): Shape => ({ kind: 'level', at: [1, y], side: 'right', label: { symbol: 'z', value: `${y} m` } }),
    )
    expect(toHtml(sketchSvg(drawing([box(1, 4), ...shapes]), 'a', sheet))).not.toContain('leader')
  })
  it.each(
    catalogue
      .filter(module => module.sketch)
      .flatMap(({ id }) => [
        [id, 'SI'],
        [id, 'US'],
      ]),
  )('%s in %s units: no label of the example stands on another', (id, units) => {
    const module = catalogue.find(one => one.id === id)
    if (!module) throw new Error(`no module is called ${id}`)
    for (const width of [190, 260]) {
      const svg = toHtml(
        sketchSvg(drawingOf(module, module.example, { units: units as System }), 'a', { width, height: 160 }),
      )
      const plates = [
        ...svg.matchAll(/<rect x="([^"]*)" y="([^"]*)" width="([^"]*)" height="([^"]*)" fill="#fff"/g),
      ].map(found => found.slice(1).map(Number) as [number, number, number, number])
      expect(plates.length).toBeGreaterThan(0)
      for (const [index, [x, y, w, h]] of plates.entries())
        for (const [x2, y2, w2, h2] of plates.slice(index + 1))
          expect(
            x + 1 < x2 + w2 - 1 && x2 + 1 < x + w - 1 && y < y2 + h2 && y2 < y + h,
            `${x} ${y} on ${x2} ${y2}`,
          ).toBe(false)
    }
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
