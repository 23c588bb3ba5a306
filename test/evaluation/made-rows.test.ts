import { describe, expect, it } from 'vitest'
import type { Method } from '../../src/modules/method.ts'
import { defineModule } from '../../src/modules/module.ts'
import { choice, eachPart, length, solve, step, when } from '../../src/modules/words.ts'
import { fence, linesOf, runText } from './run-text.ts'

const echo: Method = {
  id: 'echo',
  title: 'Echo',
  says: 'It gives the shorter of what it takes.',
  takes: { a: 'length', b: 'length' },
  run: numbers => ({
    ok: true,
    values: { shorter: Math.min(...Object.values(numbers).map(Number)), count: Object.keys(numbers).length },
    verified: 'by looking',
  }),
}

/** A plank cut into four; its paint is asked for only where it is painted. */
const plank = defineModule({
  id: 'plank',
  version: '1.0.0',
  title: 'Plank',
  asks: 'Where are the cuts?',
  inputs: {
    whole: length({ says: 'length of the plank', symbol: 'l', above: '0 m' }),
    finish: choice({ says: 'finish', words: { bare: 'none', painted: 'painted' } }),
    coat: length({ says: 'thickness of the paint', symbol: 't', when: { choice: 'finish', is: ['painted'] } }),
  },
  steps: [
    step('part', 'whole / 4', { says: 'length of a part' }),
    eachPart('parts', { count: 4, number: 'i' }, [step('x', '(i - 0.5) * part', { says: 'its middle' })]),
    when({ choice: 'finish', is: ['painted'] }, { yes: [step('thick', '2 * coat', { says: 'paint on both faces' })] }),
    eachPart('parts', { count: 4, number: 'i' }, [step('square', 'x^2', { says: 'its square' })]),
    step('all', 'sum(parts.x)', { says: 'all middles' }),
    solve(echo, {
      says: 'the shorter',
      takes: { a: 'whole', b: { ifGiven: 'coat' } },
      gives: {
        shorter: { dimension: 'length', name: 'shorter', says: 'the shorter' },
        count: { dimension: 'ratio', name: 'count', says: 'how many were taken' },
      },
    }),
  ],
  results: ['all'],
  schedule: { title: 'Cuts', list: 'parts', columns: ['x', 'square'] },
  limits: [],
  cautions: [],
  published: [],
  example: {},
})

const run = (lines: string) => runText(fence('calc plank p', `whole: 8 m\n${lines}`), { modules: [plank] })

describe('parts that a method makes', () => {
  it('has as many rows, each with its number, and lists them outside', () => {
    const made = run('finish: bare')
    expect(made.errors).toEqual([])
    expect([1, 2, 3, 4].map(row => made.si(`p.x_${row}`))).toEqual([1, 3, 5, 7])
    expect([made.si('p.square_4'), made.si('p.all')]).toEqual([49, 16])
  })

  it('prints the number as a number, and says of each line that it is a part', () => {
    const block = run('finish: bare').workings.blocks[0]
    const line = block && linesOf(block).find(each => 'name' in each && each.name === 'x_3')
    if (line?.kind !== 'formula') throw new Error('no such line')
    expect(line.row).toEqual({ index: 3, of: 4, label: '', made: true })
    const [number] = [line.working.operands.get('i')].flat()
    expect([number?.symbol, number?.shown.digits]).toEqual(['i', '3'])
  })

  it('gives them to a schedule, row by row', () => {
    const [cuts] = run('finish: bare').workings.schedules
    expect(cuts?.rows).toHaveLength(4)
  })
})

describe('an input that only one word asks for', () => {
  it('is asked for in words, a plain number not as a ratio', () => {
    const helps = (body: string) => runText(body).workings.diagnostics.map(({ help }) => help)
    const slope = helps(fence('calc slope-circle bank', 'place: ground\nstrength: drained'))
    expect(slope).toContain('Write `phi:` with an angle')
    expect(slope).toContain('Write `factor:` with a plain number')
  })

  it('must be given with that word, and may be left out with the others', () => {
    expect(run('finish: painted').errors.map(({ rule }) => rule)).toEqual(['key-missing'])
    expect(run('finish: bare').errors).toEqual([])
    expect(run('finish: painted\ncoat: 1 mm').si('p.thick')).toBe(0.002)
  })

  it('must be given where the word comes from elsewhere, since it is not known before', () => {
    const site = fence('assume site', 'finish: { value: bare, basis: brief }')
    const body = site + fence('calc plank p', 'whole: 8 m\nfinish: site.finish')
    expect(runText(body, { modules: [plank] }).errors.map(({ rule }) => rule)).toEqual(['key-missing'])
  })

  it('goes into a method only where it has a part', () => {
    expect(run('finish: bare').si('p.count')).toBe(1)
    expect(run('finish: bare\ncoat: 1 mm').si('p.count')).toBe(1)
    const painted = run('finish: painted\ncoat: 1 mm')
    expect([painted.si('p.count'), painted.si('p.shorter')]).toEqual([2, 0.001])
  })
})
