import { describe, expect, it } from 'vitest'
import { fence, runText, said } from './run-text.ts'
import { toys } from './toy-modules.ts'

const run = (body: string) => runText(body, { modules: toys })
const after = `${fence('work after', 'y = cause.x * 2\nz = y + 1\nz >= 3')}\n:value[cause.x] and :value[after.z]\n`

/** Each: the broken text, and the rule of its one message. */
const causes: readonly (readonly [title: string, body: string, rule: string])[] = [
  ['a formula that cannot be read', fence('work cause', 'x = 3 +'), 'formula-syntax'],
  ['dimensions that do not fit', fence('work cause', 'x = 3 m + 2 kPa'), 'dimension-mismatch'],
  ['an unknown name', fence('work cause', 'x = nothing'), 'name-unknown'],
  ['a ring', fence('work cause', 'x = u\nu = x'), 'reference-cycle'],
  ['an assumption that is a formula', fence('assume cause', 'x: { value: 3 * 2, basis: none }'), 'value-kind'],
  ['an assumption with an unknown unit', fence('assume cause', 'x: { value: 3 furlong, basis: none }'), 'unit-unknown'],
  ['a name that is a unit', fence('work cause', 'N = 3\nx_1 = 2'), 'name-is-unit'],
  ['a line that is nothing', fence('work cause', 'what is this'), 'statement-unread'],
  ['an unknown module', fence('calc nothing cause', 'x: 3'), 'module-unknown'],
  ['a missing input', fence('calc branches cause', 'extra: 3'), 'key-missing'],
  ['an input of another dimension', fence('calc branches cause', 'x: 3 m'), 'dimension-mismatch'],
  ['YAML that is broken', fence('calc branches cause', 'x: [3'), 'yaml-syntax'],
  ['YAML that is broken, in an assumption', fence('assume cause', 'x: { value: 3'), 'yaml-syntax'],
  ['an empty key', fence('calc branches cause', 'x:\nway: plain'), 'value-kind'],
  ['an infinite value', fence('work cause', 'u = 1 - 1\nx = 1 / u'), 'value-not-finite'],
  ['a root of a negative number', fence('work cause', 'x = sqrt(-1)'), 'value-not-finite'],
  ['an overflow', fence('work cause', 'x = 10^200 * 10^200'), 'value-not-finite'],
]

describe('one cause, one message', () => {
  for (const [title, body, rule] of causes) {
    it(`${title}: what depends on it is counted, not complained of`, () => {
      const ran = run(body + after)
      expect(
        ran.errors.map(fault => fault.rule),
        said(ran.errors).join('\n'),
      ).toEqual([rule])
      expect(ran.errors[0]?.stops ?? 0).toBeGreaterThanOrEqual(3)
      expect(ran.workings.answers.map(({ kind }) => kind)).toEqual(['unknown', 'unknown'])
    })
  }

  it('an unknown key: the block gives nothing, its sound inputs stand', () => {
    const ran = run(fence('calc branches cause', 'x: 3\nwhatever: 2') + fence('work v', 'p = cause.x\nq = cause.y'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['key-unknown'])
    expect(ran.errors[0]?.stops).toBe(2)
    expect(ran.si('v.p')).toBe(3)
  })

  it('a block whose name cannot be used: a formula that uses it has no message of its own', () => {
    const ran = run(fence('work Thrust', 'x = 3') + fence('work v', 'p = Thrust.x\nq = p'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['block-name'])
    expect(ran.errors[0]?.stops).toBe(2)
  })

  it('an unclosed block: what stands in it is not called unknown', () => {
    const ran = run(`${fence('work after', 'y = cause.x')}\`\`\`work cause\nx = 3\n`)
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['fence-unclosed'])
  })

  it('a block that repeats a name: what only the second has is not called unknown, the first is evaluated', () => {
    const ran = run(
      fence('calc branches b', 'x: 4') + fence('work b', 'only = 3') + fence('work v', 'p = b.only\nq = b.y'),
    )
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['block-duplicate'])
    expect(ran.si('v.q')).toBe(8)
  })

  it('a block of a misspelt kind', () => {
    const ran = run(fence('calk branches b', 'x: 4') + fence('work v', 'q = b.y'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['block-kind'])
  })

  it('a block read in part: what was read stands, what was not is not called unknown', () => {
    const ran = run(
      fence('assume site', 'N: 3\nd: { value: 2 m, basis: none }') + fence('work v', 'p = site.d\nq = site.depth'),
    )
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['name-is-unit'])
    expect(ran.si('v.p')).toBe(2)
  })

  it('a sound block still tells its unknown names beside a broken one', () => {
    const ran = run(fence('work cause', 'x = 3 +') + fence('work other', 'u = 1') + fence('work v', 'q = other.w'))
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['formula-syntax', 'name-unknown'])
  })

  it('a block stopped by a range: its steps and what uses them are counted, its neighbours stand', () => {
    const ran = run(
      fence('calc plot p', 'a: 11 m\nb: 12 m') +
        fence('calc plot q', 'a: 2 m\nb: p.girth') +
        fence('calc plot r', 'a: 2 m\nb: 3 m'),
    )
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['value-outside-range'])
    expect(ran.errors[0]?.stops).toBe(8)
    expect(ran.si('r.area')).toBe(6)
    expect(['p', 'q', 'r'].map(name => [name, ran.block(name)?.complete])).toEqual([
      ['p', false],
      ['q', false],
      ['r', true],
    ])
  })
})
