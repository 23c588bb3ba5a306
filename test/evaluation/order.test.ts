import { describe, expect, it } from 'vitest'
import { fence, runText, said } from './run-text.ts'
import { toys } from './toy-modules.ts'

const run = (body: string) => runText(body, { modules: toys })

describe('references', () => {
  it('order of the lines: a line may use what stands below it', () => {
    const ran = run(fence('work v', 'c = b + 1\nb = a * 2\na = 3'))
    expect(ran.errors).toEqual([])
    expect(ran.si('v.c')).toBe(7)
  })

  it('order of the blocks: inputs, outputs and assumptions of other blocks are found wherever they stand', () => {
    const ran = run(
      fence('work v', 'half = plot.area / 2\nside = plot.a\nagain = site.len') +
        fence('calc plot plot', 'a: site.len\nb: v.side * 1.5') +
        fence('assume site', 'len: 2 m'),
    )
    expect(ran.errors).toEqual([])
    expect(ran.si('v.half')).toBe(3)
    expect(ran.si('v.again')).toBe(2)
  })

  it('an input of a block may use another input of the same block by its bare name', () => {
    const ran = run(fence('calc plot p', 'b: a * 3\na: 2 m'))
    expect(ran.errors).toEqual([])
    expect(ran.si('p.area')).toBe(12)
  })

  it('a local name shadows nothing: `a` is the own block, `p.a` another', () => {
    const ran = run(fence('work v', 'a = 1 m\nx = a + p.a') + fence('work p', 'a = 10 m'))
    expect(ran.si('v.x')).toBe(11)
  })

  it('words: a choice may be an assumption, and its row in the register is linked', () => {
    const ran = run(
      fence('calc branches b', 'x: 4\nway: site.way') +
        fence('assume site', 'way: { value: squared, basis: drawing 3 }'),
    )
    expect(ran.errors).toEqual([])
    expect(ran.si('b.w')).toBe(64)
    const block = ran.block('b')
    const row = block?.kind === 'calc' ? block.given.find(given => given.name === 'way') : undefined
    expect(row).toMatchObject({ value: 'squared', from: 'A1', to: 'v-site-way' })
  })

  it('rows: a row by its number, all rows in a sum, a field of a row by its number', () => {
    const ran = run(
      fence('work v', 'one = r.n_2\nall = sum(r.n)\nwide = max(r.x)\nfield = r.x_1') +
        fence('calc rows r', 'items:\n  - { x: 1 m }\n  - { x: 2 m, k: 5 }'),
    )
    expect(ran.errors).toEqual([])
    expect(['v.one', 'v.all', 'v.wide', 'v.field'].map(ran.si)).toEqual([10, 12, 2, 1])
  })

  it('tables: `interpolate` takes a table of the block or of another work block', () => {
    const ran = run(
      fence('work v', 'table depth = 0 m, 1; 2 m, 3\ny = interpolate(depth, 0.5 m)\nend = interpolate(depth, 2 m)') +
        fence('work w', 'z = interpolate(v.depth, 1 m)'),
    )
    expect(ran.errors).toEqual([])
    expect(['v.y', 'v.end', 'w.z'].map(ran.si)).toEqual([1.5, 3, 2])
  })

  it('tables: outside its points a value is refused at the line that asks', () => {
    const ran = run(fence('work v', 'table depth = 0 m, 1; 2 m, 3\ny = interpolate(depth, 2.1 m)'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['value-not-finite'])
    expect(ran.under(ran.errors[0])).toBe('y')
  })

  it('tables: temperatures on a scale are looked up as such', () => {
    const ran = run(fence('work v', 'table gain = 0 degC, 1 kW; 20 degC, 3 kW\ny = interpolate(gain, 10 degC)'))
    expect(ran.errors).toEqual([])
    expect(ran.si('v.y')).toBe(2000)
    const mixed = run(fence('work v', 'table gain = 0 degC, 1 kW; 20 K, 3 kW'))
    expect(mixed.errors.map(({ rule }) => rule)).toEqual(['value-kind'])
  })

  it('chains of thousands of lines are planned and evaluated without a deep stack', () => {
    const blocks = Array.from({ length: 10 }, (_, block) =>
      fence(
        `work w${block}`,
        Array.from({ length: 400 }, (_, line) => {
          const next = line < 399 ? `x_${line + 1}` : block < 9 ? `w${block + 1}.x_0` : '1'
          return `x_${line} = ${next} + 1`
        }).join('\n'),
      ),
    )
    const ran = run(blocks.join(''))
    expect(ran.errors).toEqual([])
    expect(ran.si('w0.x_0')).toBe(4001)
  })
})

describe('rings', () => {
  it('length 1: the line is told that it refers to itself', () => {
    const ran = run(fence('work v', 'x = x + 1 m'))
    expect(said(ran.errors)).toEqual(['reference-cycle: `v.x` refers to itself'])
    expect(ran.under(ran.errors[0])).toBe('x')
  })

  it('length 2: one message, each link with its place', () => {
    const ran = run(fence('work v', 'a = 1 + w.b') + fence('work w', 'b = 2 * v.a'))
    expect(said(ran.errors)).toEqual(['reference-cycle: Values refer to each other in a ring: `v.a` → `w.b` → `v.a`'])
    const notes = ran.errors[0]?.notes ?? []
    expect(notes.map(({ says }) => says)).toEqual(['`v.a` uses `w.b`', '`w.b` uses `v.a`'])
    expect(notes.map(({ place }) => place && ran.text.slice(place.offset, place.end))).toEqual(['w.b', 'v.a'])
  })

  it('many: one message however long, and what hangs on it is counted', () => {
    const lines = Array.from({ length: 300 }, (_, i) => `x_${i} = x_${(i + 1) % 300}`)
    const ran = run(fence('work v', [...lines, 'y = x_7 + 1', 'z = y'].join('\n')))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['reference-cycle'])
    expect(ran.errors[0]?.notes).toHaveLength(300)
    expect(ran.errors[0]?.stops).toBe(2)
  })

  it('through calc blocks: the ring goes over the block, and is told once though two inputs close it', () => {
    const ran = run(
      fence('calc plot p', 'a: v.short\nb: v.long') + fence('work v', 'short = p.girth / 6\nlong = p.girth / 3'),
    )
    expect(said(ran.errors)).toEqual([
      'reference-cycle: Values refer to each other in a ring: `p.a` → `v.short` → `p` → `p.a`',
    ])
  })

  it('a block whose own input names its output is a ring', () => {
    const ran = run(fence('calc plot p', 'a: 2 m\nb: girth / 4'))
    expect(said(ran.errors)).toEqual(['reference-cycle: Values refer to each other in a ring: `p.b` → `p` → `p.b`'])
  })

  it('an input of a block used by what feeds another input of it is no ring', () => {
    const ran = run(fence('calc plot p', 'a: 2 m\nb: v.long') + fence('work v', 'long = 2 * p.a'))
    expect(ran.errors).toEqual([])
    expect(ran.si('p.area')).toBe(8)
  })

  it('a field of a row used by what feeds another input is no ring; by another row of its own list it is', () => {
    const other = run(fence('calc plot p', 'a: r.x_1\nb: 4 m') + fence('calc rows r', 'items: [{ x: 2 m }]'))
    expect(other.errors).toEqual([])
    expect(other.si('p.area')).toBe(8)
    const own = run(fence('calc rows r', 'items: [{ x: 2 m }, { x: x_1 * 2 }]'))
    expect(said(own.errors)).toEqual(['reference-cycle: `r.items` refers to itself'])
  })

  it('a label is prose: one that looks like a name refers to nothing, and closes no ring', () => {
    const own = run(fence('calc plot p', 'a: 2 m\nb: 4 m\nnote: p.area'))
    expect([own.errors, own.si('p.area')]).toEqual([[], 8])
    const rows = run(fence('calc rows r', 'items: [{ item: r.total, x: 2 m }, { item: nobody.knows, x: 3 m }]'))
    expect([rows.errors, rows.si('r.total')]).toEqual([[], 10])
    const far = run(
      fence('calc plot p', 'a: v.short\nb: 4 m\nnote: v.short') + fence('work v', 'short = 2 m\nlong = p.area'),
    )
    expect(far.errors).toEqual([])
  })

  it('a choice that takes its word from an assumption refers to it', () => {
    const ran = run(fence('calc branches q', 'x: 3\nway: site.way') + fence('assume site', 'way: squared'))
    expect(ran.errors).toEqual([])
    expect(ran.workings.users.get('site.way')?.length).toBe(1)
  })

  it('two rings that share nothing are two messages', () => {
    const ran = run(fence('work v', 'a = b\nb = a\nc = d\nd = c'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['reference-cycle', 'reference-cycle'])
  })

  it('a check named like a step does not take its place', () => {
    const ran = run(fence('work v', 'x = check_2 + 1\nx >= 1\ncheck_2 = 4'))
    expect(ran.errors).toEqual([])
    expect(ran.si('v.x')).toBe(5)
  })
})
