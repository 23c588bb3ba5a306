import { h } from 'hastscript'
import { describe, expect, it } from 'vitest'
import { all, classed, textOf } from '../../src/sheets/pencil/find-elements.ts'
import { settingOf } from '../../src/typesetting/setting.ts'
import { workingHtml } from '../../src/typesetting/working-html.ts'
import { blockAt, calc, modelOf, work } from '../sheets/skerry-notebook.ts'

const slab = (name: string, load: string) =>
  calc('two-way-slab', name, {
    short_span: '3.4 m',
    long_span: '4.6 m',
    load,
    edges: 'two adjacent edges discontinuous',
    corners: 'held down',
  })
const { workings } = modelOf({
  blocks: [
    slab('roof', '57 kN/m^2'),
    slab('raft', '49 kN/m^2'),
    work('both', [
      ['M', 'roof.M_x_mid + raft.M_x_mid', 'two moments of one symbol'],
      ['N', 'roof.M_x_mid * 2', 'one moment alone'],
    ]),
  ],
  body: { type: 'root', children: [h('p', 'Two slabs.'), blockAt(0), blockAt(1), blockAt(2)] },
})
const setting = settingOf(workings, { medium: 'screen' })
const pages = workings.blocks.map(block => workingHtml(block, 3, setting))
const words = (index: number): string => {
  const page = pages[index]
  return page ? textOf(page).replaceAll(/\s+/g, ' ') : ''
}

describe('first uses: said in full once', () => {
  it('cautions, the second method and a table stand in full at the first use of the module', () => {
    const [block] = workings.blocks
    if (block?.kind !== 'calc' || !block.second) throw new Error('no slab')
    const { cautions } = block
    expect(cautions.length).toBeGreaterThan(2)
    for (const caution of cautions) expect(words(0)).toContain(caution.replaceAll('`', '').slice(0, 40))
    for (const caution of cautions) expect(words(1)).not.toContain(caution.replaceAll('`', '').slice(0, 40))
    expect(words(0)).toContain(block.second.says.slice(0, 40))
    expect(words(1)).not.toContain(block.second.says.slice(0, 40))
  })
  it('later uses say where, with a link', () => {
    expect(words(1)).toContain('Cautions: as at 1.')
    expect(words(1)).toContain('The method is as at 1.')
    expect(words(1)).toMatch(/Table as at 1\.\d\d/)
    expect(words(0)).not.toContain('as at')
    const links = pages[1] ? all(pages[1], element => element.properties.href === '#b-roof') : []
    expect(links.length).toBeGreaterThan(1)
  })
})

describe('cautions that modules share', () => {
  const inputs = { width: '2 m', depth: '1 m', strength: 'undrained', c_u: '80 kPa', gamma: '18 kN/m^3' }
  const water = { gamma_sat: '19 kN/m^3', water_depth: '9 m' }
  const meyerhof = calc('bearing-meyerhof', 'raft', {
    ...inputs,
    ...water,
    length: '4 m',
    load: '900 kN',
    above: 'left out',
  })
  const terzaghi = calc('bearing-terzaghi', 'strip', { ...inputs, ...water, shape: 'strip', pressure: '100 kPa' })
  const told = (...blocks: ReturnType<typeof calc>[]) => {
    const model = modelOf({
      blocks,
      body: { type: 'root', children: blocks.map((_, index) => blockAt(index)) },
    })
    const set = settingOf(model.workings, { medium: 'screen' })
    return model.workings.blocks.map(block => textOf(workingHtml(block, 3, set)).replaceAll(/\s+/g, ' '))
  }
  const shared = 'Clay is checked twice'
  const alone = 'A central, vertical load only'

  it('another module says where they stand, and its own after them', () => {
    const [first, second] = told(meyerhof, terzaghi)
    expect(first).toContain(shared)
    expect(second).not.toContain(shared)
    expect(second).toMatch(/Cautions: as at 1; and here:.*A central, vertical load only/)
  })
  it('but stand in full where the earlier block has one that does not hold here', () => {
    const [first, second] = told(terzaghi, meyerhof)
    expect(first).toContain(alone)
    expect(second).toContain(shared)
    expect(second).not.toContain('Cautions: as at')
  })
})

describe('symbols of one line', () => {
  it('two values of one symbol are told apart by their blocks; one alone is not', () => {
    const steps = pages[2] ? all(pages[2], element => classed(element, 'step')) : []
    const annotated = steps.map(step => JSON.stringify(step))
    expect(annotated[0]).toContain('M_{x,\\\\mathrm{mid},\\\\mathrm{roof}} + M_{x,\\\\mathrm{mid},\\\\mathrm{raft}}')
    expect(annotated[1]).not.toContain('\\\\mathrm{roof}}')
  })
})
