import { describe, expect, it } from 'vitest'
import type { CheckLine } from '../../src/evaluation/workings.ts'
import { defineModule } from '../../src/modules/module.ts'
import { check, each, label, length, list, step } from '../../src/modules/words.ts'
import { fence, runText } from './run-text.ts'

const levels = fence(
  'calc levels lv',
  `cover: site.cover
cover_required: 1 m
roof: 300 mm
clear: 2.3 m
raft: 300 mm
water_depth: 9 m`,
)
const site = fence('assume site', 'cover: { value: 1.2 m, basis: brief }\nuse: { value: refuge, basis: brief }')
const own = fence('work depth', 'h = lv.box_height\nh <= 4 m  # it can be dug in one lift')
const body = site + levels + own

const run = (title: string) => runText(body, { title })
const numbers = (checks: readonly CheckLine[] = []): string[] => checks.map(({ number }) => number)

describe('the design basis', () => {
  const rows = (lines: string) => run(`design basis:\n${lines}`)

  it('takes values and checks from their names: one check, all of a block, a word', () => {
    const made = rows(
      '  - { what: earth over the roof, value: site.cover, shown by: lv.cover_enough }\n' +
        '  - { what: height of the box, value: lv.box_height, shown by: [depth, lv] }\n' +
        '  - { what: use, value: site.use }',
    )
    expect(made.errors).toEqual([])
    const [earth, box, use] = made.workings.basis
    expect(earth?.value?.shown).toMatchObject({ digits: '1.2' })
    expect(earth?.value?.to).toBe('v-site-cover')
    expect(earth?.checks.map(({ name }) => name)).toEqual(['cover_enough'])
    expect(numbers(box?.checks)).toEqual([
      ...numbers(made.block('depth')?.checks),
      ...numbers(made.block('lv')?.checks),
    ])
    expect([use?.value?.shown, use?.checks]).toEqual(['refuge', []])
  })

  it('takes a check in a list by its name in every row, and no other whose name only begins so', () => {
    const bars = defineModule({
      id: 'toy-checks',
      version: '1.0.0',
      title: 'Bars',
      asks: 'Do they fit?',
      inputs: {
        bars: list('bars', {
          least: 1,
          most: 9,
          fields: { a: length({ says: 'length', symbol: 'a', unit: { SI: 'm', US: 'ft' } }) },
        }),
      },
      steps: [
        each('bars', [
          check('fits', 'a <= 2 m', { says: 'it fits' }),
          check('long', 'a >= 1 m', { says: 'it reaches' }),
        ]),
        check('sum', 'sum(bars.a) <= 9 m', { says: 'all fit' }),
        check('sum_2', 'sum(bars.a) <= 8 m', { says: 'all fit again' }),
      ],
      results: [],
      limits: [],
      cautions: [],
      published: [],
      example: {},
    })
    const block = fence('calc toy-checks bb', 'bars:\n  - { a: 1.5 m }\n  - { a: 1.2 m }')
    const basis = '  - { what: fit, shown by: [bb.fits, bb.sum] }\n  - { what: second, shown by: [bb.long, bb.sum_2] }'
    const made = runText(block, { title: `design basis:\n${basis}`, modules: [bars] })
    expect(made.errors).toEqual([])
    const names = made.workings.basis.map(({ checks }) => checks.map(({ name }) => name))
    expect(names).toEqual([
      ['fits', 'fits', 'sum'],
      ['long', 'long', 'sum_2'],
    ])
  })

  it('finds names that mean nothing, at their own place, and names the nearest', () => {
    const made = rows('  - { what: earth, value: site.covr, shown by: [lv.cover_enuf, site, depht] }')
    expect(made.errors.map(fault => [fault.rule, made.under(fault)])).toEqual([
      ['mention-unknown', 'site.covr'],
      ['mention-unknown', 'lv.cover_enuf'],
      ['mention-unknown', 'site'],
      ['mention-unknown', 'depht'],
    ])
    expect(made.errors[0]?.help).toContain('`site.cover`')
    expect(made.errors[1]?.help).toContain('`lv.cover_enough`')
  })

  it('says nothing of a check that another fault stopped', () => {
    const broken = site + levels.replace('roof: 300 mm', 'roof: site.rof') + own
    const made = runText(broken, { title: 'design basis:\n  - { what: depth, shown by: [depth, lv.cover_enough] }' })
    expect(made.errors.map(fault => made.under(fault))).toEqual(['site.rof'])
    expect(made.workings.basis[0]?.checks).toEqual([])
  })

  it('refuses a line without what is asked, one with neither value nor check, and other keys', () => {
    expect(rows('  - { value: site.cover }').errors.map(({ rule }) => rule)).toEqual(['front-matter-value'])
    expect(rows('  - { what: earth }').errors.map(({ rule }) => rule)).toEqual(['front-matter-value'])
    const key = rows('  - { what: earth, value: site.cover, shown: lv }')
    expect(key.errors.map(fault => [fault.rule, fault.help])).toEqual([
      ['front-matter-key', expect.stringContaining('shown by')],
    ])
  })
})

describe('the coverage ledger', () => {
  const line = (made: ReturnType<typeof run>, key: string) => made.workings.coverage.find(each => each.key === key)

  it('is answered by modules, by blocks of the author, by a reason, by a reason for a whole part, or not at all', () => {
    const made = run('coverage:\n  pit-sides: { by: depth }\n  pit-bottom: no clay\n  power: no electricity')
    expect(made.errors).toEqual([])
    expect(line(made, 'levels')?.by.map(({ name }) => name)).toEqual(['lv'])
    expect(line(made, 'pit-sides')?.by.map(({ name }) => name)).toEqual(['depth'])
    expect(line(made, 'pit-bottom')?.reason).toBe('no clay')
    expect(line(made, 'storage')?.reason).toBe('no electricity')
    expect(line(made, 'bearing')).toMatchObject({ by: [] })
    expect(line(made, 'bearing')?.reason).toBeUndefined()
  })

  it('has a block once that answers it both as a module and by its name', () => {
    const made = run('coverage:\n  levels: { by: [lv, depth] }')
    expect(made.errors).toEqual([])
    expect(line(made, 'levels')?.by.map(({ name }) => name)).toEqual(['lv', 'depth'])
  })

  it('is answered by a module that serves two lines on the one that its choice names', () => {
    const slope = (place: string) =>
      runText(
        fence(
          'calc slope-circle sl',
          `place: ${place}
slope_height: 4 m
slope: 45 deg
hard_depth: 0 m
strength: undrained
c_u: 40 kPa
gamma: 18 kN/m^3
water: none
crest: bare
crack: none
factor: 1.3`,
        ),
      )
    const by = (place: string, key: string) => line(slope(place), key)?.by.map(({ name }) => name)
    expect([by('pit', 'pit-sides'), by('pit', 'slope-global')]).toEqual([['sl'], []])
    expect([by('ground', 'pit-sides'), by('ground', 'slope-global')]).toEqual([[], ['sl']])
  })

  it('refuses lines it does not have, blocks that are not there, an empty reason, and a reason where a block answers', () => {
    const faults = (lines: string) => {
      const made = run(`coverage:\n${lines}`)
      return made.errors.map(fault => [fault.rule, made.under(fault)])
    }
    expect(faults('  pit-side: none')).toEqual([['front-matter-value', 'pit-side']])
    expect(faults('  fire: { by: dept }')).toEqual([['front-matter-value', 'dept']])
    expect(faults("  fire: ''")).toEqual([['front-matter-value', 'fire']])
    expect(faults('  fire: { of: depth }')).toEqual([['front-matter-key', 'of']])
    expect(faults('  levels: not asked for')).toEqual([['front-matter-value', 'levels']])
  })
})

describe('what is handed on', () => {
  const bars = defineModule({
    id: 'toy-bars',
    version: '1.0.0',
    title: 'Bars',
    asks: 'How long are they?',
    inputs: {
      bars: list('bars', {
        least: 1,
        most: 9,
        fields: {
          mark: label({ says: 'mark' }),
          a: length({ says: 'length', symbol: 'a', unit: { SI: 'm', US: 'ft' } }),
        },
      }),
    },
    steps: [
      { kind: 'each', list: 'bars', steps: [step('b', 'a * 2', { says: 'of two', unit: { SI: 'm', US: 'ft' } })] },
      step('all', 'sum(bars.b)', { says: 'all of them', unit: { SI: 'm', US: 'ft' } }),
    ],
    results: ['all'],
    drawing: ['all'],
    schedule: { title: 'Bars', list: 'bars', columns: ['mark', 'a', 'b'] },
    limits: [],
    cautions: [],
    published: [],
    example: {},
  })
  const rows = fence('calc toy-bars bb', 'bars:\n  - { mark: A1, a: 1.5 m }\n  - { mark: A2, a: 250 mm }')

  it('gives a schedule with a row for each row of the list, a column in one unit', () => {
    const [table] = runText(rows, { modules: [bars] }).workings.schedules
    expect(table?.columns).toEqual([{ says: 'mark' }, { says: 'length', unit: 'm' }, { says: 'of two', unit: 'm' }])
    expect(table?.rows).toEqual([
      ['A1', { digits: '1.5' }, { digits: '3.000' }],
      ['A2', { digits: '0.25' }, { digits: '0.5000' }],
    ])
  })

  it('gives a schedule with a line for each of some values', () => {
    const lines = { ...bars, schedule: { title: 'Sums', lines: ['all'] } }
    const [table] = runText(rows, { modules: [lines] }).workings.schedules
    expect(table?.rows).toEqual([['all of them', { digits: '3.500' }, 'm']])
  })

  it('gives what goes to the drawings with where it was made', () => {
    const [row, ...rest] = runText(rows, { modules: [bars] }).workings.drawing
    expect(rest).toEqual([])
    expect(row).toMatchObject({ name: 'all', says: 'all of them', to: 'v-bb-all', block: { name: 'bb' } })
  })
})
