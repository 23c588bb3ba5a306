import { describe, expect, it } from 'vitest'
import { fence, runText, said } from './run-text.ts'
import { toys } from './toy-modules.ts'

const run = (body: string) => runText(body, { modules: toys })
const plot = (more = '') => fence('calc plot plot', `a: 2 m\nb: 3 m\n${more}`)
const helps = (body: string) => run(body).errors.map(({ help }) => help)

describe('unknown names', () => {
  it('a local: the nearest of the block is offered, at the exact characters', () => {
    const ran = run(fence('work v', 'thrust = 3 kN\ny = thrst * 2'))
    expect(said(ran.errors)).toEqual(['name-unknown: Nothing here is named `thrst`'])
    expect(ran.errors[0]?.help).toBe('Did you mean `thrust`?')
    expect(ran.under(ran.errors[0])).toBe('thrst')
  })

  it('an output: the nearest output is offered, though its block stands below', () => {
    expect(helps(fence('work v', 'y = plot.aera') + plot())).toEqual(['Did you mean `plot.area`?'])
  })

  it('a block: the nearest name is offered, or the nearest block where the name is no help', () => {
    expect(helps(fence('work v', 'y = plt.area') + plot())).toEqual(['Did you mean `plot.area`?'])
    expect(helps(fence('work v', 'y = plt.something_else') + plot())).toEqual([
      'No block is called `plt`; did you mean `plot`?',
    ])
    expect(helps(fence('work v', 'y = quarry.depth') + plot())).toEqual(['No block is called `quarry`'])
  })

  it('a unit: the nearest is offered in a line, in a value and in a mention', () => {
    expect(helps(fence('work v', 'y = 30 dge'))).toEqual([
      'Did you mean `deg`? Write `30 * dge` if `dge` is the name of a value',
    ])
    expect(helps(fence('work v', 'y = 30 deg to dge'))).toEqual(['Did you mean `deg`?'])
    const mentioned = (unit: string) =>
      helps(`${fence('work v', 'y = 30 kPa')}It is :value[v.y]{unit="${unit}"} there.\n`)
    expect(mentioned('kpaa')).toEqual(['Did you mean `kPa`?'])
    expect(mentioned('kpa')).toEqual(['Write `kPa`'])
    expect(mentioned('furlong')).toEqual([undefined])
  })

  it('a name that a lone `==` was meant to give: how to give it, beside the nearest that stands', () => {
    expect(helps(fence('work v', 'Q == 3 kN   # thrust'))).toEqual(['Write `Q = 3 kN` to give `Q` this value'])
    expect(helps(fence('work v', 'y = 2 kN\nQ == 3 * y to N'))).toEqual([
      'Write `Q = 3 * y to N` to give `Q` this value',
    ])
    expect(helps(fence('work v', 'thrust = 2 kN\nthrst == 3 kN'))).toEqual([
      'Did you mean `thrust`? Write `thrst = 3 kN` to give `thrst` this value',
    ])
    const long = Array(12).fill('3 kN').join(' + ')
    expect(helps(fence('work v', `Q == ${long}`))).toEqual(['Write `Q = …` to give `Q` this value'])
  })

  it('a name that no line was meant to give: nothing is said of it', () => {
    const others = ['Q <= 3 kN', '3 kN == Q', 'Q == Q + 1 kN', 'Q == 3 kN and y == 2 kN', 'Q * 2 == 3 kN', 'P == Q']
    for (const line of others) {
      const all = run(fence('work v', `y = 2 kN\n${line}`)).errors
      expect(
        all.map(({ rule }) => rule),
        line,
      ).toContain('name-unknown')
      expect(all.find(({ says }) => says.includes('`Q`'))?.help, line).toBeUndefined()
    }
    expect(helps(fence('work v', 'quarry.Q == 3 kN'))).toEqual(['No block is called `quarry`'])
    expect(run(fence('work v', 'Q = 3 kN\nQ == 3 kN')).errors).toEqual([])
    expect(helps(fence('calc plot plot', 'a: Q == 3 kN\nb: 3 m'))).toEqual([undefined])
  })

  it('two unknown names in one formula are two messages', () => {
    const ran = run(fence('work v', 'y = p + q'))
    expect(said(ran.errors)).toEqual([
      'name-unknown: Nothing here is named `p`',
      'name-unknown: Nothing here is named `q`',
    ])
  })

  it('a module, with the nearest; its block stops what uses it without further messages', () => {
    const ran = run(fence('calc plott plot', 'a: 2 m\nb: 3 m') + fence('work v', 'y = plot.area\nz = y'))
    expect(said(ran.errors)).toEqual(['module-unknown: No module is called `plott`'])
    expect(ran.errors[0]).toMatchObject({ help: 'Did you mean `plot`?', stops: 2 })
  })

  it('an input: the message stands at the key, and the input it was meant for is not called missing', () => {
    const ran = run(fence('calc plot plot', 'a: 2 m\nbb: 3 m') + fence('work v', 'y = plot.area'))
    expect(said(ran.errors)).toEqual(['key-unknown: `bb` is not among the inputs of plot'])
    expect(ran.under(ran.errors[0])).toBe('bb')
    expect(ran.errors[0]?.help).toBe('Did you mean `b`?')
  })

  it('an input that the module does not have stops the block: what the author meant is not what would be worked out', () => {
    const ran = run(plot('surcharge: 10 kPa'))
    expect(said(ran.errors)).toEqual(['key-unknown: `surcharge` is not among the inputs of plot'])
    expect(ran.errors[0]?.help).toBe('They are `a`, `b`, `note`')
    expect(ran.block('plot')).toBeUndefined()
  })

  it('a misspelt optional input is not taken for one left out', () => {
    const ran = run(fence('calc branches b', 'x: 4\nextr: 1'))
    expect(said(ran.errors)).toEqual(['key-unknown: `extr` is not among the inputs of branches'])
    expect(ran.results.plan.names.has('b.y')).toBe(false)
  })

  it('a field of a row, with the nearest', () => {
    const ran = run(fence('calc rows r', 'items:\n  - { x: 1 m, kk: 3 }'))
    expect(said(ran.errors)).toEqual(['key-unknown: `kk` is not among the fields of `items`'])
    expect(ran.errors[0]?.help).toBe('Did you mean `k`?')
  })

  it('a choice: the nearest word; a reference to nothing: the nearest name', () => {
    expect(said(run(fence('calc branches b', 'x: 4\nway: square')).errors)).toEqual([
      'choice-unknown: `square` is not a choice for `way`',
    ])
    expect(helps(fence('calc branches b', 'x: 4\nway: square'))).toEqual(['Did you mean `squared`?'])
    expect(helps(fence('calc branches b', 'x: 4\nway: sit.way') + fence('assume site', 'way: squared'))).toEqual([
      'Did you mean `site.way`?',
    ])
    const number = run(fence('calc branches b', 'x: 4\nway: site.n') + fence('assume site', 'n: 3'))
    expect(said(number.errors)).toEqual(['choice-unknown: `site.n` is not a short text for `way`'])
  })

  it('a short text in a formula is told as such', () => {
    const ran = run(fence('assume site', 'ground: clay') + fence('work v', 'y = 2 * site.ground'))
    expect(said(ran.errors)).toEqual(['value-kind: `site.ground` is a short text, so it cannot stand in a formula'])
    expect(ran.under(ran.errors[0])).toBe('site.ground')
  })

  it('mentions in the text: value, block and source, each with the nearest', () => {
    const ran = run(`${plot()}\nSee :value[plot.aera], :see[plott], :value[plot.area].\n`)
    expect(said(ran.errors)).toEqual([
      'mention-unknown: No value is called `plot.aera`',
      'mention-unknown: No block is called `plott`',
    ])
    expect(ran.errors.map(({ help }) => help)).toEqual(['Did you mean `plot.area`?', 'Did you mean `plot`?'])
  })

  it('mentions of a list, a table, and a value whose branch was not taken say so', () => {
    const ran = run(
      `:value[r.n], :value[v.depth] and :value[b.big]\n\n${fence('calc rows r', 'items: [{ x: 1 m }]')}${fence('work v', 'table depth = 0 m, 1; 2 m, 3\ny = interpolate(depth, 1 m)')}${fence('calc branches b', 'x: 0.1')}`,
    )
    expect(said(ran.errors)).toEqual([
      'mention-unknown: `r.n` is a list, and one value is wanted here',
      'mention-unknown: `v.depth` is a table, and one value is wanted here',
      'mention-unknown: `b.big` was not evaluated: its branch was not taken',
    ])
    expect(ran.workings.answers.map(({ kind }) => kind)).toEqual(['unknown', 'unknown', 'unknown'])
  })
})

describe('names that cannot be given', () => {
  it('units, functions and words of the language are refused as names of assumptions and lines', () => {
    const names = ['N', 'kPa', 'min', 'sqrt', 'pi', 'to', 'and', 'NaN', "f'c"]
    for (const name of names) {
      const inAssume = run(fence('assume site', `"${name}": 3`))
      expect(
        inAssume.errors.map(({ rule }) => rule).filter(rule => /^name-(is-unit|form)$/.test(rule)),
        name,
      ).toHaveLength(1)
      const inWork = run(fence('work v', `${name} = 3`))
      expect(inWork.errors, name).toHaveLength(1)
      expect(inWork.results.plan.names.size, name).toBe(0)
    }
  })

  it('a name given twice: the first stands, the second is told', () => {
    const ran = run(fence('work v', 'x = 1\nx = 2\ny = x'))
    expect(said(ran.errors)).toEqual(['name-duplicate: `x` is given twice in this block'])
    expect(ran.si('v.y')).toBe(1)
  })
})
