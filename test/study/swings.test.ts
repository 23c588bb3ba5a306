import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { measureOf, sectionMeasures } from '../../src/study/measure.ts'
import { sweep } from '../../src/study/sweep.ts'
import { swingsOf } from '../../src/study/swings.ts'
import { bodyOf, planOf } from './plan-of.ts'

const body = bodyOf(
  {
    span: '{ value: 3 m, basis: b, range: 2.5 m to 4.5 m }',
    load: '{ value: 20 kN/m^2, basis: b, range: 15 kN/m^2 to 30 kN/m^2 }',
    other: '{ value: 1 m, basis: b, range: 0.5 m to 2 m }',
    fixed: '{ value: 1 m, basis: b }',
  },
  ['M = a.load * a.span^2 / 8', 'M <= 40 kN*m/m # strip', 'r = sqrt(a.other - 0.6 m) * sqrt(1 m)'],
)
const planned = planOf(`## Roof\n\n${body}\n## Pit\n\n\`\`\`work p\na.other <= 4 m # room\n\`\`\`\n`)
const results = evaluate(planned)

describe('swings', () => {
  const measure = (name: string) => {
    const found = measureOf(results, name)
    if (!found) throw new Error(name)
    return found
  }

  it('the ends of each range against the closed form, the widest first', () => {
    const [moment] = swingsOf(planned, [measure('w.M')])
    expect(moment?.base).toBeCloseTo(22_500, 6)
    expect(moment?.swings.map(({ variable }) => variable.entity.key)).toEqual(['a.span', 'a.load'])
    expect(moment?.swings[0]?.atFrom).toBeCloseTo((20_000 * 2.5 ** 2) / 8, 6)
    expect(moment?.swings[0]?.atTo).toBeCloseTo((20_000 * 4.5 ** 2) / 8, 6)
    expect(moment?.swings[1]?.atTo).toBeCloseTo((30_000 * 9) / 8, 6)
    expect(moment?.still).toEqual(['a.other'])
  })

  it('an end without a value stands first and says so', () => {
    const [root] = swingsOf(planned, [measure('w.r')])
    expect(root?.swings[0]?.variable.entity.key).toBe('a.other')
    expect(root?.swings[0]?.atFrom).toBeNaN()
    expect(root?.swings[0]?.atTo).toBeCloseTo(Math.sqrt(1.4), 12)
  })

  it('the governing ratio of each section, and a check by its number', () => {
    const sections = sectionMeasures(results)
    expect(sections.map(({ name }) => name)).toEqual(['Roof', 'Pit'])
    expect(sections.map(({ read }) => read(results.slots))).toEqual([22_500 / 40_000, 0.25])
    expect(measure('1.02').read(results.slots)).toBe(0.5625)
    expect(measureOf(results, 'w.nothing')).toBeUndefined()
    expect(measureOf(results, '1.01')).toBeUndefined()
  })
})

describe('sweep', () => {
  const span = planned.names.get('a.span')
  if (span?.kind !== 'number') throw new Error('no span')

  it('goes from end to end in equal steps, with the checks that turn', () => {
    const rows = sweep(planned, span, { from: 3, to: 5, places: 5, measures: sectionMeasures(results) })
    expect(rows.map(({ si }) => si)).toEqual([3, 3.5, 4, 4.5, 5])
    expect(rows.map(({ measures }) => measures[0])).toEqual(
      [3, 3.5, 4, 4.5, 5].map(l => expect.closeTo((20 * l * l) / 8 / 40, 12)),
    )
    expect(rows.map(({ failing }) => failing.length)).toEqual([0, 0, 0, 1, 1])
    expect(() => sweep(planned, span, { from: 3, to: 5, places: 1, measures: [] })).toThrow(RangeError)
  })

  it('says where the answer is lost', () => {
    const other = planned.names.get('a.other')
    if (other?.kind !== 'number') throw new Error('no other')
    const rows = sweep(planned, other, { from: 0.4, to: 0.8, places: 3, measures: sectionMeasures(results) })
    expect(rows.map(({ lost }) => lost)).toEqual([true, false, false])
  })
})
