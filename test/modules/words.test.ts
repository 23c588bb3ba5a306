import { describe, expect, it } from 'vitest'
import { modulePage } from '../../src/command/module-page.ts'
import { defineModule, type Module } from '../../src/modules/module.ts'
import {
  choice,
  choiceLimit,
  each,
  length,
  limit,
  list,
  pairs,
  pressure,
  ratio,
  step,
  when,
} from '../../src/modules/words.ts'
import { linesOf, runText, said } from '../evaluation/run-text.ts'

const bare = { version: '1.0.0', limits: [], cautions: [], published: [], example: {}, results: [] } as const

/** Land under a broken line: a trapezium between each two points. */
const profile = defineModule({
  ...bare,
  id: 'profile',
  title: 'Profile',
  asks: 'How much lies under the line?',
  inputs: {
    points: list('points of the line', {
      least: 2,
      most: 5,
      fields: { x: length({ says: 'along', note: 'From the peg at the gate' }), y: length({ says: 'up' }) },
    }),
  },
  steps: [
    each('points', [step('y_m', 'y + 1 m', { says: 'height over the mark' })]),
    pairs('points', [
      step('wide', 'x - prev_x', { says: 'width' }),
      step('part', 'wide * (prev_y_m + y_m) / 2', { says: 'area between' }),
    ]),
    step('area', 'sum(points.part)', { says: 'area in all' }),
  ],
})

const rows = (...points: readonly (readonly [number, number])[]): string =>
  `\`\`\`calc profile p\npoints: [${points.map(([x, y]) => `{ x: ${x} m, y: ${y} m }`).join(', ')}]\n\`\`\`\n\n`

const run = (body: string, ...modules: readonly Module[]) => runText(body, { modules })

describe('pairs: steps between neighbouring rows', () => {
  it('see both rows, belong to the later one, and are summed', () => {
    const ran = run(rows([0, 1], [2, 3], [5, 1]), profile)
    expect(said(ran.errors)).toEqual([])
    expect(ran.si('p.part_2')).toBe(2 * 3)
    expect(ran.si('p.part_3')).toBe(3 * 3)
    expect(ran.si('p.area')).toBe(15)
  })

  it('give the first row nothing: neither a name nor a line', () => {
    const ran = run(rows([0, 1], [2, 3]), profile)
    expect(ran.plan.names.has('p.part_1')).toBe(false)
    expect(linesOf(ran.block('p')).flatMap(line => ('name' in line ? [line.name] : []))).toEqual([
      'y_m_1',
      'y_m_2',
      'wide_2',
      'part_2',
      'area',
    ])
  })

  it('print the earlier row by its own symbol and link to its line', () => {
    const ran = run(rows([0, 1], [2, 3]), profile)
    const line = ran.line('p', 'part_2')
    const earlier = line?.kind === 'formula' ? line.working.operands.get('prev_y_m') : undefined
    expect(earlier).toMatchObject({ symbol: 'y_m_1', to: ran.line('p', 'y_m_1')?.id })
  })

  it('are a fault of the module where the first row asks for a row before it', () => {
    const wrong = { ...profile, steps: [each('points', [step('wide', 'x - prev_x', { says: 'width' })])] }
    expect(() => run(rows([0, 1], [2, 3]), wrong)).toThrow(/prev_x/)
  })

  it('are told on the page of the module, with the note of an input', () => {
    const page = modulePage(profile)
    expect(page).toContain('- for each two neighbouring rows of `points` (`prev_` before a name of the earlier):')
    expect(page).toContain('| `points` → `x` | along. From the peg at the gate |')
  })
})

const quiet = defineModule({
  ...bare,
  id: 'quiet',
  title: 'Quiet',
  asks: 'Which?',
  inputs: {
    way: choice({ says: 'way', words: { up: 'up', down: 'down' } }),
    load: pressure({ says: 'load' }),
    extra: ratio({ says: 'extra', optional: true }),
  },
  steps: [
    when(
      { choice: 'way', is: ['up'] },
      {
        yes: [step('q', 'load', { says: 'upwards' })],
        no: [step('q', '-load', { says: 'downwards' })],
      },
    ),
    when({ given: 'extra' }, { yes: [step('e', 'extra', { says: 'extra' })] }),
  ],
  limits: [
    limit('load < 5 kPa', { says: 'the load is small', advice: 'Take some off', otherwise: 'refuse', on: 'load' }),
  ],
})

const asked = (more: string) => run(`\`\`\`calc quiet q\n${more}\n\`\`\`\n\n`, quiet)

describe('when: a branch that says nothing', () => {
  it('chooses, and has no line of its own', () => {
    expect(linesOf(asked('way: up\nload: 2 kPa').block('q')).map(({ says }) => says)).toEqual(['upwards'])
    const both = linesOf(asked('way: down\nload: 2 kPa\nextra: 2').block('q'))
    expect(both.map(({ says }) => says)).toEqual(['downwards', 'extra'])
  })

  it('is a fault of the module where numbers decide: their outcome is always printed', () => {
    const wrong = { ...quiet, steps: [when({ formula: 'load > 1 kPa' }, { yes: [] })] }
    expect(() => run('```calc quiet q\nway: up\nload: 2 kPa\n```\n', wrong)).toThrow(/says nothing/)
  })
})

describe('limit: advice', () => {
  it('stands under the message, not in it', () => {
    expect(asked('way: up\nload: 6 kPa').errors).toMatchObject([
      { rule: 'limit-exceeded', says: 'Quiet: outside the limit that the load is small', help: 'Take some off' },
    ])
  })
})

const cut = defineModule({
  ...bare,
  id: 'cut',
  title: 'Cut',
  asks: 'How long?',
  inputs: {
    rods: list('rods', {
      least: 1,
      most: 5,
      fields: {
        form: choice({ says: 'form', words: { straight: 'one leg', bent: 'two legs' } }),
        a: length({ says: 'first leg' }),
        b: length({ says: 'second leg', default: '0 m', when: { choice: 'form', is: ['bent'] } }),
      },
    }),
  },
  steps: [
    each('rods', [
      when(
        { choice: 'form', is: ['bent'] },
        { yes: [step('z', 'a + b', { says: 'all' })], no: [step('z', 'a', { says: 'all' })] },
      ),
    ]),
  ],
})

describe('an input of one choice in a row', () => {
  const given = (text: string) => {
    const block = run(`\`\`\`calc cut c\nrods: [${text}]\n\`\`\`\n\n`, cut).block('c')
    return block?.kind === 'calc' ? block.given.map(({ name, says }) => `${name}: ${says}`) : []
  }

  it('is judged by the choice of its own row', () => {
    const both = given('{ form: straight, a: 1 m }, { form: bent, a: 1 m, b: 2 m }')
    expect(both).toContain('b_2: second leg')
    expect(both.filter(each => each.startsWith('b_1'))).toEqual([])
  })

  it('says that it has no part where the row has another word', () => {
    expect(given('{ form: straight, a: 1 m, b: 2 m }')).toContain('b_1: second leg: no part in this calculation')
  })
})

describe('limit: when', () => {
  const asking = {
    ...quiet,
    limits: [
      limit('load < 5 kPa', { when: { choice: 'way', is: ['up'] }, says: 'the load is small', otherwise: 'warn' }),
      choiceLimit('way', ['up'], { when: { given: 'extra' }, says: 'the way is up', otherwise: 'refuse' }),
    ],
  } as const satisfies Module
  const limitsOf = (more: string) => {
    const block = run(`\`\`\`calc quiet q\n${more}\n\`\`\`\n\n`, asking).block('q')
    return block?.kind === 'calc' ? block.limits.map(({ says, kept }) => `${says}: ${kept}`) : []
  }

  it('is judged where its choice or input stands, and left away elsewhere', () => {
    expect(limitsOf('way: up\nload: 6 kPa')).toEqual(['the load is small: false'])
    expect(limitsOf('way: up\nload: 2 kPa\nextra: 1')).toEqual(['the load is small: true', 'the way is up: true'])
    expect(limitsOf('way: down\nload: 6 kPa')).toEqual([])
    expect(limitsOf('way: down\nload: 6 kPa\nextra: 1')).toEqual(['the way is up: false'])
  })
})

describe('ranges in words', () => {
  const ranged = defineModule({
    ...bare,
    id: 'ranged',
    title: 'Ranged',
    asks: 'Where?',
    inputs: {
      q: pressure({
        says: 'load',
        unit: { SI: 'kPa', US: 'psf' },
        least: '0 kPa',
        most: '1000 kPa',
        usual: ['5 kPa', '50 kPa'],
      }),
      f: ratio({ says: 'factor', unit: { SI: 'percent', US: 'percent' }, usual: ['0.001', '0.12'], default: '0.1' }),
    },
    steps: [step('q_2', '2 * q', { says: 'twice' })],
  })
  const words = (inputs: string, units: 'SI' | 'US' = 'SI') =>
    runText(`\`\`\`calc ranged r\n${inputs}\n\`\`\`\n\n`, { modules: [ranged], units }).workings.diagnostics.map(
      ({ says }) => says,
    )

  it('keep the bound as it is defined where the author typed its unit', () => {
    expect(words('q: 60 kPa')).toEqual(['`q` is 60 kPa; it is usually 5 kPa to 50 kPa'])
  })

  it('stand in the unit that the author typed, to three figures', () => {
    expect(words('q: 90 psf')).toEqual(['`q` is 90 psf; it is usually 104 psf to 1040 psf'])
    expect(words('q: 2 MPa')).toEqual(['`q` is 2 MPa; it must be at most 1 MPa'])
    expect(words('q: 0.06 MPa')).toEqual(['`q` is 0.06 MPa; it is usually 0.005 MPa to 0.05 MPa'])
    expect(words('q: -1 psf')[0]).toBe('`q` is −1 psf; it must be at least 0 psf')
  })

  it('stand in the unit of the system where the author typed a formula', () => {
    expect(words('q: 30 psf + 30 psf', 'US')).toEqual(['`q` is 60.00 psf; it is usually 104 psf to 1040 psf'])
  })

  it('are plain numbers where the author typed one', () => {
    expect(words('q: 10 kPa\nf: 0.2')).toEqual(['`f` is 0.2; it is usually 0.001 to 0.12'])
    expect(words('q: 10 kPa\nf: 20 percent')).toEqual(['`f` is 20 %; it is usually 0.1 % to 12 %'])
  })
})

describe('limit: each', () => {
  const stacked = {
    ...cut,
    limits: [
      limit('b <= a', { each: 'rods', says: 'the second leg is the shorter', otherwise: 'refuse', on: 'b' }),
      limit('z <= 9 m', { each: 'rods', says: 'no rod is long', otherwise: 'warn', on: 'a' }),
    ],
  } as const satisfies Module
  const bent = (a: string, b: string) => `{ form: bent, a: ${a} m, b: ${b} m }`
  const at = (...rods: readonly string[]) => run(`\`\`\`calc cut c\nrods: [${rods.join(', ')}]\n\`\`\`\n\n`, stacked)

  it('is judged row by row, and told in each row that exceeds it, at the field it is about', () => {
    expect(at(bent('3', '3'), bent('4', '2')).errors).toEqual([])
    const ran = at(bent('3', '3.01'), bent('4', '2'), bent('5', '6'))
    expect(ran.errors.map(({ says }) => says)).toEqual([
      'Cut: outside the limit that the second leg is the shorter, in row 1 of `rods`',
      'Cut: outside the limit that the second leg is the shorter, in row 3 of `rods`',
    ])
    expect(ran.errors.map(ran.under)).toEqual(['3.01 m', '6 m'])
    expect(ran.block('c')).toMatchObject({ complete: false, lines: [] })
  })

  it('is one line of the package, kept where every row keeps it', () => {
    const limitsOf = (ran: ReturnType<typeof at>) => {
      const block = ran.block('c')
      return block?.kind === 'calc' ? block.limits.map(({ says, kept }) => `${says}: ${kept}`) : []
    }
    expect(limitsOf(at(bent('4', '2'), bent('5', '4')))).toEqual([
      'the second leg is the shorter: true',
      'no rod is long: true',
    ])
    const long = at(bent('4', '2'), bent('5', '4.1'))
    expect(limitsOf(long)[1]).toBe('no rod is long: false')
    expect(long.warnings.map(fault => [fault.says, long.under(fault)])).toEqual([
      ['Cut: outside the limit that no rod is long, in row 2 of `rods`', '5 m'],
    ])
  })
})
