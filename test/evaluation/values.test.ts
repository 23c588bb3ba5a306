import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { resultsData } from '../../src/evaluation/results-data.ts'
import { fence, type RunText, runText, said, shownOf } from './run-text.ts'
import { toys } from './toy-modules.ts'

const run = (body: string, units?: 'SI' | 'US') => runText(body, { modules: toys, ...(units ? { units } : {}) })
const plot = (a: string, b: string) => run(fence('calc plot p', `a: ${a}\nb: ${b}`))
const rules = (ran: RunText) =>
  ran.workings.diagnostics.filter(d => d.rule !== 'assumption-basis').map(({ rule }) => rule)

/** No number that is none may reach print or data. */
function expectClean(ran: RunText): void {
  const data = resultsData(ran.results, ran.workings, { tool: 't', path: 'p', sha256: '0' })
  const walk = (at: unknown, path: string): void => {
    if (typeof at === 'number') expect(Number.isFinite(at), path).toBe(true)
    if (typeof at === 'string') expect(at, path).not.toMatch(/NaN|Infinity|undefined/)
    expect(at, path).not.toBeNull()
    expect(at, path).not.toBeUndefined()
    if (typeof at === 'object' && at) for (const [key, value] of Object.entries(at)) walk(value, `${path}.${key}`)
  }
  walk(data, 'data')
  walk(ran.workings.blocks, 'blocks')
}

describe('values that are none', () => {
  const none = [
    '1 / u',
    'u / u',
    'sqrt(-1 - u)',
    '10^200 * 10^200',
    'log(u)',
    'asin(2 + u)',
    '(-8 + u)^(1/3)',
    'exp(1000)',
    'u^(-1)',
  ]
  for (const formula of none) {
    it(`\`${formula}\` has no finite value: told at the line, absent from print and data`, () => {
      const ran = run(fence('work v', `u = 1 - 1\nx = ${formula}\ny = x + 1\nz = 2`))
      expect(said(ran.errors)).toEqual([`value-not-finite: \`x = ${formula}\` has no finite value for these numbers`])
      expect(ran.errors[0]?.stops).toBe(1)
      expect(ran.errors[0]?.help).toContain('divided by nothing')
      expect(ran.line('v', 'x')).toBeUndefined()
      expect(ran.line('v', 'y')).toBeUndefined()
      expect(shownOf(ran.line('v', 'z'))).toBe('2')
      expect(ran.block('v')?.complete).toBe(false)
      expectClean(ran)
    })
  }

  it('a number too great for units to carry is refused where it is typed, and is none where it is worked out', () => {
    const typed = run(fence('assume site', 'd: { value: 1e205 m, basis: none }') + fence('work v', 'x = site.d * 2'))
    expect(said(typed.errors)).toEqual(['value-kind: `1e205 m` is too great a number'])
    const worked = run(fence('work v', 'x = 1e150 * 1e100\ny = 1 / x\n1e308 m >= 2 km'))
    expect(said(worked.errors)).toEqual(['value-not-finite: `x = 1e150 * 1e100` has no finite value for these numbers'])
    expectClean(worked)
    const given = run(fence('calc branches b', 'x: 1e250'))
    expect(given.errors.map(({ rule }) => rule)).toEqual(['value-not-finite'])
    expectClean(given)
  })

  it('a check that comes to nothing is an error, never silence', () => {
    const ran = run(fence('work v', 'u = 1 - 1\n1 / u <= 3'))
    expect(said(ran.errors)).toEqual(['value-not-finite: The check `1 / u <= 3` has no finite value for these numbers'])
    expectClean(ran)
  })

  it('a check on a value that has none is counted with the value', () => {
    const ran = run(fence('work v', 'u = 1 - 1\nx = 1 / u\nx <= 3\nx >= 3 or u == 0'))
    expect(ran.errors).toHaveLength(1)
    expect(ran.errors[0]?.stops).toBe(2)
  })

  it('a condition that comes to nothing stops both its sides, with one message', () => {
    const ran = run(fence('calc branches b', 'x: 0\nextra: 1') + fence('work v', 'q = b.z'))
    expect(said(ran.errors)).toEqual([
      'value-not-finite: The condition `1 / x <= 2` has no finite value for these numbers',
    ])
    expectClean(ran)
    expect(ran.block('b')?.complete).toBe(false)
  })

  it('a condition on a value that has none is counted with the value', () => {
    const ran = run(
      fence('work v', 'u = 1 - 1\nx = 1 / u') + fence('calc branches b', 'x: v.x') + fence('work w', 'q = b.w'),
    )
    expect(said(ran.errors)).toEqual(['value-not-finite: `x = 1 / u` has no finite value for these numbers'])
    expectClean(ran)
  })

  it('a refusing limit that cannot be judged is not kept', () => {
    const ran = run(fence('calc blind b', 'x: 0') + fence('work v', 'q = b.y'))
    expect(rules(ran)).toEqual(['limit-exceeded'])
    expect(ran.line('b', 'y')).toBeUndefined()
    expect(ran.si('v.q')).toBeNaN()
  })

  it('a value of a branch that was not taken: told where it is used, not where it is not', () => {
    const unused = run(fence('calc branches b', 'x: 0.1'))
    expect(unused.errors).toEqual([])
    const used = run(fence('calc branches b', 'x: 0.1') + fence('work v', 'q = b.big\nr = q'))
    expect(said(used.errors)).toEqual([
      'value-not-finite: `q` needs `big`, which was not evaluated: its branch was not taken',
    ])
    expect(used.under(used.errors[0])).toBe('q')
    expect(used.errors[0]?.stops).toBe(1)
    const fed = run(fence('calc branches b', 'x: 0.1') + fence('calc plot p', 'a: b.big * 1 m\nb: 4 m'))
    expect(fed.errors).toHaveLength(1)
    const handed = run(
      fence('calc branches b', 'x: 0.1') + fence('calc branches c', 'x: b.big') + fence('work v', 'q = c.y'),
    )
    expect(said(handed.errors)).toEqual(['value-not-finite: `x` was not evaluated: its branch was not taken'])
  })

  it('branches: the taken side is evaluated and printed with its condition, the other is not', () => {
    const yes = run(fence('calc branches b', 'x: 2'))
    const no = run(fence('calc branches b', 'x: 0.25'))
    expect([yes.si('b.y'), no.si('b.y')]).toEqual([4, Math.sqrt(1.25)])
    expect([yes.line('b', 'big') !== undefined, no.line('b', 'big') !== undefined]).toEqual([true, false])
    const held = [yes, no].map(ran => {
      const block = ran.block('b')
      return block?.kind === 'calc' ? block.lines.flatMap(line => (line.kind === 'branch' ? [line.holds] : [])) : []
    })
    expect(held).toEqual(
      [
        [true, false, false],
        [false, false, false],
      ].map(sides => [sides[0], sides[2]]),
    )
  })

  it('optional inputs: given, the step is there; left out, nothing stands for it', () => {
    const given = run(fence('calc branches b', 'x: 2\nextra: 0.5'))
    expect(given.si('b.z')).toBe(4.5)
    const left = run(fence('calc branches b', 'x: 2') + fence('work v', 'q = b.z'))
    expect(said(left.errors)).toEqual(['name-unknown: Nothing here is named `b.z`'])
  })

  it('defaults: taken, said, and marked as such', () => {
    const block = run(fence('calc branches b', 'x: 2')).block('b')
    const way = block?.kind === 'calc' ? block.given.find(({ name }) => name === 'way') : undefined
    expect(way).toMatchObject({ value: 'plain', taken: true, from: 'default' })
  })
})

describe('ranges and limits', () => {
  const inside = [
    ['above, just inside', '1e-6 mm', '1 m'],
    ['most, exactly', '10 m', '15 m'],
    ['most, exactly in feet', '32.80839895013123 ft', '15 m'],
    ['most, within 1e-9', '10.000000005 m', '15 m'],
    ['least, exactly', '1 m', '1 m'],
    ['least, within 1e-9', '0.9 m', '0.9999999995 m'],
  ] as const
  for (const [title, a, b] of inside) {
    it(`${title}: taken`, () => {
      const ran = plot(a, b)
      expect(rules(ran).filter(rule => rule === 'value-outside-range')).toEqual([])
    })
  }

  const outside = [
    ['above, exactly', '0 m', '1 m', '`a` is 0 m; it must be greater than 0 m'],
    ['most, just outside', '10.00000002 m', '15 m', '`a` is 10.00000002 m; it must be at most 10 m'],
    ['least, just outside', '0.5 m', '0.999999998 m', '`b` is 0.999999998 m; it must be at least 1 m'],
    ['below, exactly', '5 m', '20 m', '`b` is 20 m; it must be less than 20 m'],
    ['below, within 1e-9', '5 m', '19.99999999 m', '`b` is 19.99999999 m; it must be less than 20 m'],
  ] as const
  for (const [title, a, b, says] of outside) {
    it(`${title}: refused at the input, and nothing of the block is given`, () => {
      const ran = plot(a, b)
      expect(said(ran.errors)).toEqual([`value-outside-range: ${says}`])
      expect(['p.area', 'p.girth', 'p.slender'].map(ran.si)).toEqual([Number.NaN, Number.NaN, Number.NaN])
      expect(ran.block('p')).toMatchObject({ complete: false, lines: [] })
      expectClean(ran)
    })
  }

  it('unusual: said as a warning, and evaluated', () => {
    const ran = plot('9 m', '15 m')
    expect(said(ran.workings.diagnostics)).toContain('value-unusual: `a` is 9 m; it is usually 1 m to 8 m')
    expect(ran.si('p.area')).toBe(135)
  })

  it('unusual: not said besides where the value is refused', () => {
    const ran = plot('-1 m', '15 m')
    expect(rules(ran)).toContain('value-outside-range')
    expect(rules(ran)).not.toContain('value-unusual')
  })

  it('unusual: exactly at its bound nothing is said', () => {
    expect(rules(plot('8 m', '8 m'))).not.toContain('value-unusual')
    expect(rules(plot('800 cm', '8 m'))).not.toContain('value-unusual')
  })

  it('a refusing limit on inputs: told at the input it is about; nothing of the block is given', () => {
    const ran = plot('4 m', '3 m')
    expect(said(ran.errors)).toEqual(['limit-exceeded: Plot: outside the limit that the first side is the shorter'])
    expect(ran.under(ran.errors[0])).toBe('4 m')
    expect(ran.si('p.area')).toBeNaN()
  })

  it('a refusing limit on a step takes back what came before it: no dependent is worked out from a refused block', () => {
    const ran = run(fence('calc plot p', 'a: 1 m\nb: 5 m') + fence('work v', 'x = p.area * 2\ny = p.a + 1 m'))
    expect(said(ran.errors)).toEqual(['limit-exceeded: Plot: outside the limit that the plot is not too slender'])
    expect(['p.area', 'p.slender', 'p.girth', 'v.x'].map(ran.si)).toEqual(Array(4).fill(Number.NaN))
    expect(ran.si('v.y')).toBe(2)
    expect(ran.errors[0]?.stops).toBe(5)
    expect(ran.block('v')?.complete).toBe(false)
    expectClean(ran)
  })

  it('limits hold within a relative 1e-9', () => {
    expect(plot('3 m', '2.999999999 m').errors).toEqual([])
    expect(plot('3 m', '2.99999999 m').errors).toHaveLength(1)
    expect(plot('1 m', '4.000000001 m').errors).toEqual([])
    expect(plot('1 m', '4.00000001 m').errors).toHaveLength(1)
  })

  it('a warning limit: evaluated, shown as exceeded, and said once', () => {
    const ran = plot('7 m', '8 m')
    expect(said(ran.warnings)).toEqual(['limit-exceeded: Plot: outside the limit that the plot is small'])
    const block = ran.block('p')
    expect(block?.kind === 'calc' && block.limits.map(({ kept, refuses }) => [kept, refuses])).toEqual([
      [true, true],
      [true, true],
      [false, false],
    ])
    expect(block?.complete).toBe(true)
  })

  it('a plausible range of an assumption is kept exactly at its ends, in any unit', () => {
    const at = (value: string) =>
      runText(fence('assume site', `d: { value: ${value}, basis: dip, range: 2.4 m to 4.0 m }`)).warnings.map(
        ({ rule }) => rule,
      )
    expect([at('240 cm'), at('2400 mm'), at('4 m'), at('0.004 km')]).toEqual([[], [], [], []])
    expect([at('2.39 m'), at('4.01 m')]).toEqual([['assumption-range'], ['assumption-range']])
  })
})

describe('tables and methods', () => {
  const look = (span: string, count: string) => run(fence('calc looks l', `span: ${span}\ncount: ${count}`))

  it('on a key, between keys, at both ends', () => {
    expect(shownOf(look('2 m', '2').line('l', 'height'))).toBe('220 mm')
    expect(look('1.5 m', '1').si('l.height')).toBeCloseTo(0.15, 12)
    expect(look('1 m', '1').si('l.height')).toBeCloseTo(0.1, 12)
    expect(look('400 cm', '1').si('l.height')).toBeCloseTo(0.4, 12)
  })

  it('on a key within 1e-9, on the axis that has nothing between', () => {
    expect(look('1 m', '2.000000001').si('l.height')).toBeCloseTo(0.11, 12)
  })

  const refused = [
    ['outside', '4.1 m', '1', '`height`: span lies outside 1 to 4 (Heights)'],
    ['between keys that are not interpolated', '1 m', '1.5', '`height`: count must be one of 1, 2 (Heights)'],
    ['on an empty cell', '4 m', '2', '`height`: Heights has no entry here (Heights)'],
    ['beside an empty cell', '3 m', '2', '`height`: Heights has no entry here (Heights)'],
  ] as const
  for (const [title, span, count, says] of refused) {
    it(`${title}: refused with the reason, and what uses it is counted`, () => {
      const ran = look(span, count)
      expect(said(ran.errors)).toEqual([`lookup-outside-table: ${says}`])
      expect(ran.errors[0]?.stops).toBe(1)
      expectClean(ran)
    })
  }

  const solve = (x: string, bias = '0') => run(fence('calc solves s', `x: ${x}\nbias: ${bias}`))

  it('a method that fails says why, once', () => {
    const ran = solve('-2')
    expect(said(ran.errors)).toEqual([
      'solve-failed: `r`: Square root gave no answer: a negative number has none',
      'value-not-finite: `r_2 = x^0.5 * (1 + bias) + bias` has no finite value for these numbers',
    ])
    expectClean(ran)
  })

  it('a second method that agrees, one that does not, and one that is absent', () => {
    const agrees = solve('9')
    const block = (ran: RunText) => {
      const found = ran.block('s')
      return found?.kind === 'calc' ? found.second : undefined
    }
    expect(block(agrees)?.comparisons).toMatchObject([{ difference: 0, differenceShown: '0 %', agrees: true }])
    expect(rules(agrees)).toEqual([])
    const differs = solve('9', '0.1')
    expect(rules(differs)).toEqual(['methods-disagree'])
    expect(block(differs)?.comparisons[0]?.agrees).toBe(false)
    const absent = solve('4')
    expect(block(absent)).toMatchObject({ absent: 'not for four', lines: [], comparisons: [] })
    expect(rules(absent)).toEqual([])
  })

  it('a second method that differs from nought disagrees by all of it', () => {
    const ran = solve('0', '0.1')
    expect(said(ran.warnings)).toEqual([
      'methods-disagree: `r` and `r_2` of the second method differ by 100 %; they should agree within 1.0 %',
    ])
    expectClean(ran)
  })

  it('a run without the second methods says nothing of them', () => {
    const { plan } = solve('9', '0.1')
    expect(evaluate(plan, { second: false }).diagnostics).toEqual([])
  })
})

describe('checks', () => {
  const check = (line: string) => {
    const ran = run(fence('work v', line))
    const block = ran.block('v')
    const found = block?.kind === 'work' ? block.lines.find(each => each.kind === 'check') : undefined
    return found?.kind === 'check' ? found : undefined
  }

  it('a demand equal to its capacity within 1e-9 is satisfied', () => {
    expect(check('12 in >= 1 ft')?.satisfied).toBe(true)
    expect(check('0.1 m + 0.2 m <= 0.3 m')?.satisfied).toBe(true)
    expect(check('1.0000000005 m <= 1 m')?.satisfied).toBe(true)
    expect(check('1.00000001 m <= 1 m')?.satisfied).toBe(false)
    expect(check('1 m < 1.0000000005 m')?.satisfied).toBe(false)
    expect(check('1 m == 100 cm')?.satisfied).toBe(true)
    expect(check('1 m != 100 cm')?.satisfied).toBe(false)
  })

  it('both sides have the sense they are written in', () => {
    expect(check('3 kN <= 4 kN')?.demand?.digits).toBe('3')
    expect(check('4 kN >= 3 kN')).toMatchObject({ demand: { digits: '3' }, capacity: { digits: '4' } })
  })

  it('not satisfied is a warning that quotes the line once', () => {
    const ran = run(fence('work v', 'e = 3 m\ne <= 2 m # no tension'))
    expect(said(ran.warnings)).toEqual(['check-not-satisfied: Not satisfied: no tension (`e <= 2 m`)'])
    expect(said(run(fence('work v', 'e = 3 m\ne <= 2 m')).warnings)).toEqual([
      'check-not-satisfied: Not satisfied: `e <= 2 m`',
    ])
  })
})

describe('temperatures and units', () => {
  it('a temperature on a scale is shown in degC or degF, a difference in K', () => {
    const body =
      fence('assume site', 'T_soil: { value: 12 degC, basis: probe }') +
      fence('work v', 'T_in = site.T_soil + 9 K\nd = T_in - site.T_soil\nT_us = T_in to degF')
    const si = run(body)
    expect(si.errors).toEqual([])
    expect([shownOf(si.line('v', 'T_in')), shownOf(si.line('v', 'd')), shownOf(si.line('v', 'T_us'))]).toEqual([
      '21.00 degC',
      '9.000 K',
      '69.80 degF',
    ])
    expect(shownOf(run(body, 'US').line('v', 'T_in'))).toBe('69.80 degF')
  })

  it('a module shows a scale as a scale, and refuses a difference in its place', () => {
    const ran = run(fence('calc warmth w', 'T: 20 degC\nrise: 5 K'))
    expect(ran.errors).toEqual([])
    expect([shownOf(ran.line('w', 'T_end')), shownOf(ran.line('w', 'fall'))]).toEqual(['25.00 degC', '15.00 K'])
    expect(rules(run(fence('calc warmth w', 'T: 20 K\nrise: 5 K')))).toEqual(['dimension-mismatch'])
    expect(rules(run(fence('calc warmth w', 'T: 20 degC\nrise: 5 degC')))).toEqual(['dimension-mismatch'])
    expect(rules(run(fence('calc warmth w', 'T: 60 degC\nrise: 5 K')))).toEqual(['check-not-satisfied'])
    expect(rules(run(fence('calc warmth w', 'T: 140 degF\nrise: 0 K')))).toEqual(['check-not-satisfied'])
    expect(rules(run(fence('calc warmth w', 'T: 60.001 degC\nrise: 5 K')))).toEqual(['value-outside-range'])
  })

  it('`to` chooses the unit of a result and nothing else', () => {
    const ran = run(fence('work v', 'x = 3 m * 2 to mm\ny = 2 * x\nw = 5 kN / 2 m to N/mm'))
    expect(shownOf(ran.line('v', 'x'))).toBe('6000 mm')
    expect(shownOf(ran.line('v', 'y'))).toBe('12.00 m')
    expect(shownOf(ran.line('v', 'w'))).toBe('2.500 N/mm')
  })
})
