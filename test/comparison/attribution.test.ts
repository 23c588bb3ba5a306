import { describe, expect, it } from 'vitest'
import type { Attribution } from '../../src/comparison/types.ts'
import { fence, runText } from '../evaluation/run-text.ts'
import { sampleBody } from '../evaluation/sample-sheet.ts'
import { type Compared, compareTexts } from './compare-texts.ts'

const sheet = (site: string, work: string): string => fence('assume site', site) + fence('work strip', work)

const old = sheet(
  'span: { value: 3 m, basis: drawing }\nload: { value: 20 kN/m^2, basis: soil }',
  'M = site.load * site.span^2 / 8\nM <= 40 kN',
)

const checkOf = ({ checks }: Compared, block: string) => checks.find(check => check.block === block)
const resultOf = ({ results }: Compared, key: string) => results.find(result => result.key === key)

/** What each change does alone, by the key of the change. */
function alone(compared: Compared, moved: Attribution | undefined): Record<string, number> {
  const keys = new Map(compared.changes.map(({ id, key }) => [id, key]))
  return Object.fromEntries(
    (moved?.parts ?? []).map(part => [part.changes.map(id => keys.get(id)).join(' with '), part.alone]),
  )
}

describe('attribution: what moved a result', () => {
  it('two changes that multiply: each alone by hand, and what they do together is the rest', () => {
    // 20 kN/m2 and 3 m give 22.5 kN; 30 kN/m2 alone 33.75, 4 m alone 40, both 60: 60 - 22.5 = 11.25 + 17.5 + 8.75.
    const now = old.replace('20 kN/m^2', '30 kN/m^2').replace('3 m', '4 m')
    const compared = compareTexts(old, now)
    const result = resultOf(compared, 'strip.M')
    expect(result?.si).toEqual({ old: 22500, now: 60000 })
    expect(alone(compared, result?.moved)).toEqual({ 'site.span': 17500, 'site.load': 11250 })
    expect(result?.moved?.together).toBe(8750)
  })

  it('the same of the ratio of a check, which turned', () => {
    const compared = compareTexts(old, old.replace('20 kN/m^2', '30 kN/m^2').replace('3 m', '4 m'))
    const check = checkOf(compared, 'strip')
    expect(check?.turn).toBe('turned to not satisfied')
    expect([check?.old?.ratio?.value, check?.now?.ratio?.value]).toEqual([22.5 / 40, 1.5])
    expect(alone(compared, check?.moved)['site.span']).toBeCloseTo(17.5 / 40, 14)
    expect(check?.moved?.together).toBeCloseTo(8.75 / 40, 14)
  })

  it('a bar that a choice and a formula take: chosen anew, not put in as a number', () => {
    const wall = fence(
      'calc bar-choice-is-456 wall',
      `member: wall, horizontal\nrequired_area: 300 mm^2/m\nbar_size: site.size\nspacing: site.at\ncover: 50 mm\naggregate: 20 mm\nthickness: 300 mm\nsteel: Fe 500`,
    )
    const body = `${sheet('size: { value: 12 mm, basis: b }\nat: { value: 200 mm, basis: c }', 'd = 50 mm - site.size / 2')}${wall}`
    const compared = compareTexts(body, body.replace('12 mm', '16 mm').replace('200 mm', '100 mm'))
    // pi / 4 on 16^2 less 12^2 at 200 mm; the spacing alone doubles 565.5; both 2010.6: 1445.1 = 439.8 + 565.5 + 439.8.
    const result = resultOf(compared, 'wall.A_s')
    const area = (Math.PI / 4) * 1e-6 * 5
    expect(alone(compared, result?.moved)['site.size']).toBeCloseTo(area * (256 - 144), 12)
    expect(alone(compared, result?.moved)['site.at']).toBeCloseTo(area * 144, 12)
    expect(result?.moved?.together).toBeCloseTo(area * (256 - 144), 12)
    expect(alone(compared, resultOf(compared, 'strip.d')?.moved)).toEqual({ 'site.size': expect.closeTo(-0.002, 12) })
  })

  it('changes that do not meet leave nothing over, and one change alone is the whole', () => {
    const two = sheet(
      'a: { value: 1 m, basis: b }\nb: { value: 2 m, basis: c }',
      'x = site.a + site.b\ny = 2 * site.a\nx <= 9 m',
    )
    const compared = compareTexts(two, two.replace('1 m', '1.5 m').replace('2 m', '3 m'))
    expect(resultOf(compared, 'strip.x')?.moved).toEqual({
      parts: [
        { changes: ['c1'], alone: 0.5 },
        { changes: ['c2'], alone: 1 },
      ],
      together: 0,
    })
    expect(resultOf(compared, 'strip.y')?.moved).toEqual({ parts: [{ changes: ['c1'], alone: 1 }], together: 0 })
  })

  it('a formula and a number: the formula is put into the old notebook by itself', () => {
    const now = old.replace('3 m', '4 m').replace('/ 8', '/ 10')
    const compared = compareTexts(old, now)
    const result = resultOf(compared, 'strip.M')
    expect(alone(compared, result?.moved)).toEqual({ 'site.span': 17500, 'strip.M': -4500 })
    expect(result?.moved?.together).toBeCloseTo(32000 - 22500 - 17500 + 4500, 8)
  })

  it('a limit of a check that changed is a part of its own', () => {
    const compared = compareTexts(old, old.replace('40 kN', '20 kN').replace('20 kN/m^2', '22 kN/m^2'))
    const check = checkOf(compared, 'strip')
    expect(check?.turn).toBe('turned to not satisfied')
    expect(alone(compared, check?.moved).strip).toBeCloseTo(22.5 / 20 - 22.5 / 40, 14)
    expect(check?.moved?.parts).toHaveLength(2)
  })

  it('changes that need one another are one part: a new assumption and the formula that uses it', () => {
    const now = old
      .replace('basis: soil }', 'basis: soil }\nsnow: { value: 2 kN/m^2, basis: drift }')
      .replace('M = site.load', 'M = (site.load + site.snow)')
      .replace('3 m', '3.2 m')
    const compared = compareTexts(old, now)
    const parts = alone(compared, resultOf(compared, 'strip.M')?.moved)
    expect(Object.keys(parts)).toEqual(['site.span', 'site.snow with strip.M'])
    expect(parts['site.snow with strip.M']).toBeCloseTo((2000 * 9) / 8, 9)
  })

  it('what needs one another is put in without what does not', () => {
    const body = old.replace('M = site.load * site.span^2', 'reach = 1.0 * site.span\nM = site.load * reach^2')
    const now = body
      .replace('basis: soil }', 'basis: soil }\nsnow: { value: 2 kN/m^2, basis: drift }')
      .replace('M = site.load', 'M = (site.load + site.snow)')
      .replace('1.0 * site.span', '1.1 * site.span')
    const compared = compareTexts(body, now)
    const moved = resultOf(compared, 'strip.M')?.moved
    // 20 kN/m2 and 3 m: 22.5 kN. 3.3 m alone 27.225; 22 kN/m2 alone 24.75.
    const parts = alone(compared, moved)
    expect(Object.keys(parts).toSorted()).toEqual(['site.snow with strip.M', 'strip.reach'])
    expect(parts['site.snow with strip.M']).toBeCloseTo(2250, 8)
    expect(parts['strip.reach']).toBeCloseTo(4725, 8)
  })

  it('an assumption that went, and a block that came, go with what used them', () => {
    const now = old
      .replace('load: { value: 20 kN/m^2, basis: soil }', '')
      .replace('site.load', 'weight.w')
      .concat(fence('work weight', 'w = 21 kN/m^2'))
    const compared = compareTexts(old, now)
    const moved = resultOf(compared, 'strip.M')?.moved
    expect(moved?.parts).toHaveLength(1)
    expect(new Set(moved?.parts[0]?.changes)).toEqual(new Set(compared.changes.map(({ id }) => id)))
    expect(moved?.together).toBe(0)
  })

  it('what cannot be put in one at a time is put in as one, and the parts still add up', () => {
    const body =
      fence('assume site', 'a: { value: 4 m, basis: b }') +
      fence('work one', 'p = site.a\nq = p / (1 m)') +
      fence('work two', 'r = sqrt(one.q)\nu = r * one.q')
    // `q` alone gives a root of a negative number; with the new `r` it does not.
    const now = body
      .replace('q = p / (1 m)', 'q = -p / (1 m)')
      .replace('sqrt(one.q)', 'sqrt(-one.q)')
      .replace('4 m', '9 m')
    const compared = compareTexts(body, now)
    const result = resultOf(compared, 'two.u')
    expect([result?.si.old, result?.si.now]).toEqual([8, -27])
    expect(alone(compared, result?.moved)).toEqual({ 'site.a': 19, 'one.q with two.r': -16 })
    expect(result?.moved?.together).toBeCloseTo(-35 - 19 + 16, 12)
  })
})

describe('attribution: the sample sheet', () => {
  const put: readonly (readonly [string, string, string])[] = [
    ['site.cover', 'cover: { value: 1.2 m', 'cover: { value: 1.3 m'],
    ['site.water', 'water: { value: 2.8 m', 'water: { value: 2.5 m'],
    ['roof.corners', 'corners: held down', 'corners: free'],
    ['loads.live_load', 'live_load: 5 kN/m^2', 'live_load: 7 kN/m^2'],
    ['pressure.phi_1', 'phi: site.phi_soil }\n', 'phi: site.phi_soil - 2 deg }\n'],
    ['thrust.k', 'k = site.wall / 6', 'k = site.wall / 5'],
  ]
  const all = put.reduce((body, [, from, to]) => body.replace(from, to), sampleBody())
  const compared = compareTexts(sampleBody(), all, 0)

  it('finds these changes and no other', () => {
    expect(compared.changes.map(({ key }) => key).toSorted()).toEqual(put.map(([key]) => key).toSorted())
  })

  it('every part is what its change alone gives, typed into the old text', () => {
    const single = new Map(put.map(([key, from, to]) => [key, runText(sampleBody().replace(from, to))]))
    let parts = 0
    for (const { key, si, moved } of compared.results)
      for (const [change, part] of Object.entries(alone(compared, moved))) {
        const typed = single.get(change)?.si(key) ?? Number.NaN
        const off = Math.abs(part - (typed - (si.old ?? 0)))
        expect([key, change, off <= 1e-9 * Math.abs(si.old ?? 0)]).toEqual([key, change, true])
        parts += 1
      }
    expect(parts).toBeGreaterThan(80)
  })

  it('the parts and what is left over make up the whole, of results and of ratios', () => {
    const sum = (moved: Attribution): number => moved.parts.reduce((total, part) => total + part.alone, moved.together)
    for (const { key, si, moved } of compared.results) {
      if (!moved) continue
      const whole = (si.now ?? Number.NaN) - (si.old ?? Number.NaN)
      expect([key, Math.abs(sum(moved) - whole) <= 1e-12 * Math.abs(si.now ?? 0)]).toEqual([key, true])
    }
    for (const { key, old: a, now: b, moved } of compared.checks)
      if (moved) expect(sum(moved), key).toBeCloseTo((b?.ratio?.value ?? 0) - (a?.ratio?.value ?? 0), 12)
  })

  it('a result that no change reaches is not listed, and one that a change reaches names no other', () => {
    const keys = new Set(compared.results.map(({ key }) => key))
    expect(keys.has('heights.z_roof')).toBe(true)
    expect(keys.has('thrust.half')).toBe(false)
    expect(Object.keys(alone(compared, resultOf(compared, 'thrust.k')?.moved))).toEqual(['thrust.k'])
  })
})
