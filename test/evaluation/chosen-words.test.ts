import { describe, expect, it } from 'vitest'
import { fence, runText } from './run-text.ts'

const shield = (energy: string) =>
  fence(
    'calc halving-layers shield',
    `layers:\n  - { material: concrete, thickness: 300 mm }\nrequired_factor: 20\nenergy: ${energy}`,
  )
const site = (more: string) => fence('assume site', `energy: { value: ${more}, basis: fallout }`)
const rules = (body: string) => runText(body).errors.map(({ rule }) => rule)

describe('an assumption that chooses a word which reads as a quantity', () => {
  it('gives what the word typed in its place gives, and stands in the register as typed', () => {
    const chosen = runText(`${site('1 MeV')}${shield('site.energy')}`)
    const typed = runText(shield('1 MeV'))
    expect(chosen.errors).toEqual([])
    expect(chosen.si('shield.mu_rho_1')).toBe(typed.si('shield.mu_rho_1'))
    const block = chosen.block('site')
    expect(block?.kind === 'assume' && block.rows.map(({ value }) => value)).toEqual(['1 MeV'])
  })

  it('is no number any more: it stands in no formula and has no range', () => {
    expect(rules(`${site('1 MeV')}${shield('site.energy')}${fence('work w', 'E = 2 * site.energy')}`)).toEqual([
      'value-kind',
    ])
    expect(rules(`${site('1 MeV, range: 1 MeV to 2 MeV')}${shield('site.energy')}`)).toEqual(['value-kind'])
  })

  it('stays a number where no choice refers to it, and where it is no word of the choice, which then says so', () => {
    expect(rules(`${site('1 MeV')}${shield('1 MeV')}${fence('work w', 'E = 2 * site.energy')}`)).toEqual([])
    expect(rules(`${site('1000 keV')}${shield('site.energy')}`)).toEqual(['choice-unknown'])
  })

  it('chooses in the rows of a list as well', () => {
    const rows = (material: string) =>
      `${fence('assume site', 'stuff: { value: concrete, basis: b }')}${shield('1 MeV').replace('concrete', material)}`
    expect(runText(rows('site.stuff')).si('shield.mu_rho_1')).toBe(runText(rows('concrete')).si('shield.mu_rho_1'))
  })
})
