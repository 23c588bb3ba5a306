import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluate, run } from '../../src/evaluation/evaluate.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import type { MarginEnd } from '../../src/study/margin-end.ts'
import { findMargins, type Margin } from '../../src/study/margins.ts'
import { varied } from '../../src/study/varied.ts'
import { firstLines, watchOf } from '../../src/study/watch.ts'
import { bodyOf, planOf } from './plan-of.ts'

const marginIn = (planned: Plan, key: string): Margin => {
  const found = findMargins(planned).margins.find(({ variable }) => variable.entity.key === key)
  if (!found) throw new Error(`no margin of ${key}`)
  return found
}

const sayEnd = (end: MarginEnd): string =>
  end.kind === 'turn'
    ? end.turned.map(({ check, state }) => `${check.says}: ${state}`).join('; ')
    : end.kind === 'refusal'
      ? end.fault.says
      : 'none'

const beam = (span: string) =>
  bodyOf({ span, load: '{ value: 20 kN/m^2, basis: b, range: 18 kN/m^2 to 40 kN/m^2 }' }, [
    'M = a.load * a.span^2 / 8',
    'M <= 40 kN*m/m # strip',
    'M >= 10 kN*m/m # not idle',
  ])

describe('margins', () => {
  it('closed form: w l^2 / 8 against 40 and 10 kN turns where algebra says', () => {
    const planned = planOf(beam('{ value: 3 m, basis: b }'))
    const span = marginIn(planned, 'a.span')
    expect(span.up.at).toBeCloseTo(Math.sqrt((8 * 40) / 20), 9)
    expect(span.down.at).toBeCloseTo(Math.sqrt((8 * 10) / 20), 9)
    expect([sayEnd(span.down), sayEnd(span.up)]).toEqual(['not idle: not satisfied', 'strip: not satisfied'])
    expect(span.interval).toEqual({ from: 0, to: 6 })
    const load = marginIn(planned, 'a.load')
    expect(load.up.at / 1e3).toBeCloseTo((8 * 40) / 9, 7)
    expect(load.down.at / 1e3).toBeCloseTo((8 * 10) / 9, 7)
    expect(load).toMatchObject({ down: { inRange: false }, up: { inRange: true } })
  })

  it('a check that is not satisfied: how far the value must move until it is', () => {
    const span = marginIn(planOf(beam('{ value: 5 m, basis: b }')), 'a.span')
    expect(span.down.at).toBeCloseTo(4, 9)
    expect(sayEnd(span.down)).toBe('strip: satisfied')
    expect(span.up).toEqual({ kind: 'none', at: 10 })
  })

  it('not monotonic: a demand that rises above its capacity between two places and falls again is seen', () => {
    const planned = planOf(
      bodyOf({ x: '{ value: 10 m, basis: b }' }, ['y = 1 m - abs(a.x - 13.7 m) * 40', 'y <= 0.9 m # a narrow peak']),
    )
    const { up, down } = marginIn(planned, 'a.x')
    expect(up.at).toBeCloseTo(13.7 - 0.1 / 40, 9)
    expect(sayEnd(up)).toBe('a narrow peak: not satisfied')
    expect(down.kind).toBe('none')
  })

  it('a jump: a whole number of bars turns at the jump, on the side that still holds', () => {
    const planned = planOf(
      bodyOf({ width: '{ value: 1000 mm, basis: b }' }, ['n = floor(a.width / (150 mm))', 'n >= 5 # bars', 'n <= 9']),
    )
    const { down, up } = marginIn(planned, 'a.width')
    expect(down.at).toBeCloseTo(0.75, 8)
    expect(up.at).toBeCloseTo(1.5, 8)
  })

  it('a check of several conditions is followed by its verdict alone', () => {
    const planned = planOf(bodyOf({ x: '{ value: 1 m, basis: b }' }, ['a.x < 1.25 m and a.x > 0.4 m # between']))
    const { down, up } = marginIn(planned, 'a.x')
    expect(up.at).toBeCloseTo(1.25, 8)
    expect(down.at).toBeCloseTo(0.4, 8)
  })

  it('the end of a table is an honest end: nothing is said beyond it', () => {
    const planned = planOf(
      bodyOf({ x: '{ value: 2 m, basis: b }' }, [
        'table curve = 0 m, 1 kN; 1 m, 2 kN; 3 m, 5 kN',
        'F = interpolate(curve, a.x)',
        'F <= 50 kN # strength',
      ]),
    )
    const { up, down } = marginIn(planned, 'a.x')
    expect(up).toMatchObject({ kind: 'refusal', fault: { severity: 'error' } })
    expect(up.at).toBeCloseTo(3, 8)
    expect(down).toEqual({ kind: 'none', at: 0 })
  })

  it('a method that refuses ends the search at its limit, and says why', () => {
    const planned = planOf(
      `${bodyOf({ h: '{ value: 300 mm, basis: b }', f_ck: '{ value: 30 MPa, basis: b }' }, ['c = a.h'])}\`\`\`calc flexure-is-456 slab
moment: 40 kN*m/m
thickness: a.h
cover: 40 mm
bar_size: 12 mm
spacing: 150 mm
f_ck: a.f_ck
steel: Fe 500
\`\`\`
`,
    )
    const { down, up } = marginIn(planned, 'a.f_ck')
    expect(down).toMatchObject({ kind: 'refusal', fault: { rule: 'value-outside-range' } })
    expect(down.at / 1e6).toBeCloseTo(20, 6)
    expect(sayEnd(down)).toMatch(/^`f_ck` is 19\.\d+ MPa; it must be at least 20 MPa$/)
    expect(up.at / 1e6).toBeCloseTo(55, 6)
  })

  it.each([
    ['the first written is lost first', 'sqrt(1.5 - a.x)', 'sqrt(1.5002 - a.x)'],
    ['the last written is lost first', 'sqrt(1.5002 - a.x)', 'sqrt(1.5 - a.x)'],
  ])('two values lost within one step: the nearer ends the search; %s', (_, first, last) => {
    const { up, down } = marginIn(
      planOf(bodyOf({ x: '{ value: 1, basis: b }' }, [`y = ${first}`, `z = ${last}`])),
      'a.x',
    )
    expect(up.kind).toBe('refusal')
    expect(up.at).toBeCloseTo(1.5, 9)
    expect(down.kind).toBe('none')
  })

  it('a check that turns before something is lost in the same step ends the search', () => {
    const planned = planOf(
      bodyOf({ x: '{ value: 1, basis: b }' }, ['y = sqrt(1.5002 - a.x)', 'a.x <= 1.5 # first', 'y >= 0']),
    )
    const { up } = marginIn(planned, 'a.x')
    expect(sayEnd(up)).toBe('first: not satisfied')
    expect(up.at).toBeCloseTo(1.5, 9)
  })

  it('a choice of words, an idle assumption and a nought without a range have no margin, and each says so', () => {
    const planned = planOf(
      bodyOf(
        {
          steel: '{ value: Fe 500, basis: b }',
          idle: '{ value: 2 m, basis: b }',
          zero: '{ value: 0 m, basis: b }',
          set: '{ value: 0 m, basis: b, range: -1 m to 2 m }',
        },
        ['a.zero + a.set <= 1 m'],
      ),
    )
    const { unsearched, margins } = findMargins(planned)
    expect(unsearched).toEqual([
      { key: 'a.steel', why: 'a choice of words' },
      { key: 'a.idle', why: 'nothing rests on it' },
      { key: 'a.zero', why: 'its value is 0 and it has no range' },
    ])
    expect(margins).toMatchObject([{ interval: { from: -4, to: 4 }, up: { inRange: true } }])
    expect(margins[0]?.up.at).toBeCloseTo(1, 9)
  })

  it('a check of the author on a value of the second method is watched as well', () => {
    const planned = planOf(
      `${bodyOf({ load: '{ value: 20 kN/m^2, basis: b }' }, ['slab.M_x_peak <= 40 kN*m/m # elastic peak'])}\`\`\`calc two-way-slab slab
short_span: 3.4 m
long_span: 4.6 m
load: a.load
edges: one long edge continuous
corners: held down
\`\`\`
`,
    )
    const { slots, plan: own } = evaluate(planned)
    const peak = own.names.get('slab.M_x_peak')
    if (peak?.kind !== 'number') throw new Error('no peak')
    const { up } = marginIn(planned, 'a.load')
    expect(sayEnd(up)).toBe('elastic peak: not satisfied')
    // The moment is in proportion to the load.
    expect(up.at / 20e3).toBeCloseTo(40e3 / (slots[peak.slot] ?? 0), 9)
  })

  it('the tightest stands first', () => {
    const planned = planOf(
      bodyOf({ x: '{ value: 1 m, basis: b }', y: '{ value: 1 m, basis: b }' }, ['a.x <= 1.9 m', 'a.y <= 1.1 m']),
    )
    expect(findMargins(planned).margins.map(({ variable }) => variable.entity.key)).toEqual(['a.y', 'a.x'])
  })

  it('random sheets, against brute force: nothing turns before the margin, and just beyond it something has', () => {
    const number = fc.double({ min: 0.2, max: 3, noNaN: true }).map(x => x.toFixed(3))
    const leaf = fc.oneof(fc.constantFrom('a.p', 'a.q', 'a.r'), number)
    const { tree } = fc.letrec<{ tree: string }>(tie => ({
      tree: fc.oneof(
        { maxDepth: 3, withCrossShrink: true },
        leaf,
        fc
          .tuple(tie('tree'), fc.constantFrom('+', '-', '*'), tie('tree'))
          .map(([left, op, right]) => `(${left} ${op} ${right})`),
        fc.tuple(fc.constantFrom('sqrt', 'abs', 'floor'), tie('tree')).map(([fn, of]) => `${fn}(${of})`),
        fc.tuple(tie('tree'), tie('tree')).map(([x, y]) => `min(${x}, ${y})`),
        fc.tuple(tie('tree'), tie('tree')).map(([x, y]) => `(${x} / ${y})`),
      ),
    }))
    const check = fc.tuple(tree, fc.constantFrom('<=', '>', '<', '>='), number).map(parts => parts.join(' '))
    let turned = 0
    fc.assert(
      fc.property(
        fc.array(number, { minLength: 3, maxLength: 3 }),
        fc.array(check, { minLength: 1, maxLength: 3 }),
        (values, checks) => {
          const [p, q, r] = values.map(value => `{ value: ${value}, basis: b }`)
          const planned = planOf(bodyOf({ p: p ?? '', q: q ?? '', r: r ?? '' }, checks))
          for (const margin of findMargins(planned).margins)
            for (const way of [-1, 1] as const) turned += againstBruteForce(planned, margin, way)
        },
      ),
      { numRuns: 150, seed: 456 },
    )
    expect(turned).toBeGreaterThan(100)
  }, 60_000)
})

/** Which checks are not satisfied, and whether anything is lost that was not lost at the value itself. */
function statesAt(planned: Plan, key: string, x: number): string {
  const slots = run(planned, { changed: new Map([[key, x]]), second: false })
  const { absent } = evaluate(planned, { changed: new Map([[key, x]]), second: false })
  const verdicts = firstLines(planned).map(line => (line.kind === 'check' ? String(slots[line.slot]) : ''))
  return `${verdicts.join(' ')} ${absent.size}`
}

/** One where the end was a turn. The sheet is worked out whole at 400 places, none of the searcher's own means used. */
function againstBruteForce(planned: Plan, margin: Margin, way: -1 | 1): number {
  const { variable, value, interval } = margin
  const end = way < 0 ? margin.down : margin.up
  const { key } = variable.entity
  const lost = watchOf(varied(planned, [variable.entity])).checks.length
  if (lost === 0) return 0
  const start = statesAt(planned, key, value)
  const far = end.at
  const before = Array.from({ length: 400 }, (_, index) => value + ((far - value) * index) / 400)
  const early = before.filter(x => Math.abs(x - far) > 1e-8 && statesAt(planned, key, x) !== start)
  // A window narrower than a step of the search may be missed; it is stated. Two places in a row are no such window.
  expect(
    early.length,
    `${key} turns before ${end.at}, at ${early[0]} of ${value}: ${planned.notebook.text}`,
  ).toBeLessThan(2)
  if (end.kind === 'none') return 0
  // A quotient may have no value at one place alone, a round number or the end of the search.
  const alone = [Number(end.at.toPrecision(10)), way < 0 ? interval.from : interval.to]
  const near = alone.filter(x => Math.abs(x - end.at) < 1e-9)
  const beyond = [...near, ...[1e-9, 1e-8, 1e-7, 1e-6].map(step => end.at + way * step * Math.max(1, Math.abs(end.at)))]
  expect(
    beyond.some(x => statesAt(planned, key, x) !== start),
    `${key} turns beyond ${end.at}`,
  ).toBe(true)
  return 1
}
