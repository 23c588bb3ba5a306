import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { nomenclaturePage, symbolMarkdown } from './nomenclature-page.ts'

const page = new URL('../../docs/nomenclature.md', import.meta.url)

describe('docs/nomenclature.md', () => {
  it('equals what the code says', () => {
    const text = nomenclaturePage()
    if (process.env.UPDATE_DOCS) writeFileSync(page, text)
    expect(readFileSync(page, 'utf8')).toBe(text)
  })

  it.each([
    ['gamma_sat', 'γ<sub>sat</sub>'],
    ["\\gamma'", 'γ′'],
    ["sigma_v,lower'", 'σ<sub>v,lower</sub>′'],
    ['Delta_epsilon', 'Δε'],
    ['A_phi', 'A<sub>φ</sub>'],
    ['water_depth', 'water depth'],
  ])('writes %s as %s', (symbol, markdown) => {
    expect(symbolMarkdown(symbol)).toBe(markdown)
  })
})
