import { describe, expect, it } from 'vitest'
import { run } from '../../src/evaluation/evaluate.ts'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { findMargins } from '../../src/study/margins.ts'
import { fence, runText } from './run-text.ts'

const site = (energy: string) => fence('assume site', `energy: { value: ${energy}, basis: fallout }`)
const shield = (energy: string) =>
  fence(
    'calc halving-layers shield',
    `layers:\n  - { material: concrete, thickness: 300 mm }\nrequired_factor: 20\nenergy: ${energy}`,
  )
const wall = (bar: string) =>
  fence(
    'calc bar-choice-is-456 wall',
    `member: wall, horizontal\nrequired_area: 300 mm^2/m\nbar_size: ${bar}\nspacing: 200 mm\ncover: 50 mm\naggregate: 20 mm\nthickness: 300 mm\nsteel: Fe 500`,
  )
const bars = (value: string, more = '') => fence('assume bars', `wall: { value: ${value}, basis: one size${more} }`)
const said = (body: string, units: 'SI' | 'US' = 'SI') =>
  runText(body, { units }).errors.map(({ rule, says, help }) => `${rule}: ${says}. ${help}`)

describe.each(['SI', 'US'] as const)('a choice taken from a value that is stated as a quantity, units %s', units => {
  it.each(['12 mm', '1.2 cm', '0.012 m', '0.47244094488188976378 in'])(
    'is the bar of that size where the assumption says %s, and the assumption stays a number',
    value => {
      const taken = runText(`${bars(value)}${wall('bars.wall')}${fence('work w', 'd = 50 mm + bars.wall / 2')}`, {
        units,
      })
      expect(taken.errors).toEqual([])
      expect(taken.si('wall.A_s')).toBe(runText(wall('12 mm')).si('wall.A_s'))
      expect(taken.si('w.d')).toBeCloseTo(0.056, 12)
      const block = taken.block('wall')
      const given = block?.kind === 'calc' && block.given.find(({ name }) => name === 'bar_size')
      expect(given).toMatchObject({ value: '12 mm', from: 'A1', to: 'v-bars-wall' })
      const register = taken.block('bars')
      expect(register?.kind === 'assume' && register.rows[0]).toMatchObject({
        value: { exact: true },
        users: [{ number: '1' }, { number: '2.01' }],
      })
    },
  )

  it('takes it from an input that hands the assumption on, and from a typed one', () => {
    const strip = (bar: string) =>
      fence(
        'calc crack-width-is-456 crack',
        `moment: 20 kN*m/m\nthickness: 300 mm\ncover: 50 mm\nbar_size: ${bar}\nspacing: 200 mm\nf_ck: 35 MPa\nsteel: Fe 500\nexposure: soil or water`,
      )
    for (const body of [`${bars('16 mm')}${strip('bars.wall')}`, strip('16 mm')])
      expect(runText(`${body}${wall('crack.bar_size')}`, { units }).si('wall.phi')).toBeCloseTo(0.016, 12)
  })

  it('says which choices lie nearest where it has the value of none', () => {
    expect(said(`${bars('14 mm')}${wall('bars.wall')}`, units)).toEqual([
      'choice-unknown: `bars.wall` is 14 mm, which is not a choice for `bar_size`. The nearest are `12 mm`, `16 mm`',
    ])
    expect(said(wall('14 mm'), units)).toEqual([
      'choice-unknown: `14 mm` is not a choice for `bar_size`. The nearest are `12 mm`, `16 mm`',
    ])
    expect(said(wall('2 in'), units)).toEqual([
      'choice-unknown: `2 in` is not a choice for `bar_size`. The nearest is `40 mm`',
    ])
    // A US bar has no size that its number states.
    expect(said(wall('0.5 in'), units)[0]).toContain('`0.5 in` is not a choice for `bar_size`')
  })
})

describe('a choice and a value', () => {
  it('of another dimension, or worked out, do not go together, and each says so', () => {
    expect(said(`${bars('12 kPa')}${wall('bars.wall')}`)[0]).toMatch(
      /^choice-unknown: `bars.wall` is not a choice for `bar_size`. (Did you mean|The choices are)/,
    )
    expect(said(`${fence('work w', 'b = 2 * 6 mm')}${wall('w.b')}`)[0]).toMatch(
      /^choice-unknown: `w.b` is worked out, and `bar_size` is chosen before anything is. The choices are `6 mm`/,
    )
  })

  it('compare in any unit of the dimension', () => {
    for (const value of ['1 MeV', '1000 keV']) {
      expect(runText(`${site(value)}${shield('site.energy')}`).si('shield.mu_rho_1')).toBe(
        runText(shield('1 MeV')).si('shield.mu_rho_1'),
      )
      expect(runText(shield(value)).si('shield.mu_rho_1')).toBe(runText(shield('1 MeV')).si('shield.mu_rho_1'))
    }
  })

  it('a short text that is a word still chooses, in the rows of a list as well', () => {
    const rows = (material: string) =>
      `${fence('assume site', 'stuff: { value: concrete, basis: b }')}${shield('1 MeV').replace('concrete', material)}`
    expect(runText(rows('site.stuff')).si('shield.mu_rho_1')).toBe(runText(rows('concrete')).si('shield.mu_rho_1'))
  })
})

describe('what a choice is taken from', () => {
  const body = `${bars('12 mm', ', range: 10 mm to 16 mm')}${wall('bars.wall')}${fence('work w', 'd = 2 * bars.wall\nd <= 30 mm')}`

  it('is moved by no study, and its range says so', () => {
    const { plan, warnings, under } = runText(body)
    expect(assumptionsOf(plan)).toMatchObject({ variables: [], words: [], chosen: ['bars.wall'] })
    expect(findMargins(plan).unsearched).toEqual([{ key: 'bars.wall', why: 'a choice is taken from it' }])
    expect(() => run(plan, { changed: new Map([['bars.wall', 0.016]]) })).toThrow('was chosen by `bars.wall`')
    const warned = warnings.find(({ rule }) => rule === 'assumption-range')
    expect(warned?.says).toBe('`bars.wall` is not moved over its range: `wall.bar_size` takes it from a list')
    expect(under(warned)).toContain('10 mm')
  })

  it('is moved where only formulas use it', () => {
    const { plan, warnings } = runText(body.replace('bar_size: bars.wall', 'bar_size: 12 mm'))
    expect(assumptionsOf(plan).variables).toHaveLength(1)
    expect(warnings.map(({ rule }) => rule)).not.toContain('assumption-range')
  })
})
