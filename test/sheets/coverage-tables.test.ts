import { describe, expect, it } from 'vitest'
import type { CoverageLine } from '../../src/evaluation/workings.ts'
import { basisSheet } from '../../src/sheets/basis-sheet.ts'
import { coverageTables, coverageWords, isOpen } from '../../src/sheets/coverage-tables.ts'
import { textOf } from '../../src/sheets/pencil/find-elements.ts'
import { runText } from '../evaluation/run-text.ts'

const block = { id: 'b-wall', number: '4', name: 'wall', checks: [] }
const line = (key: string, more: Partial<CoverageLine>): CoverageLine => ({
  key,
  wing: 'Concrete',
  says: `${key} of slabs`,
  by: [],
  ...more,
})
const lines = [line('Bending', { by: [block] }), line('Fire', { reason: 'nothing burns here' }), line('Shear', {})]

describe('the coverage ledger on its sheet', () => {
  it('counts what is answered, left out with a reason, and not covered', () => {
    expect(coverageWords(lines)).toBe(
      '1 of 3 limit states and services answered, 1 left out with a reason, 1 not covered',
    )
    expect(lines.map(isOpen)).toEqual([false, false, true])
  })

  it('shows the block, the reason, and what nothing covers, each once', () => {
    const text = coverageTables(lines).map(textOf).join(' ')
    expect(text).toMatch(/Bending of slabs\s*4 wall\s*none made/)
    expect(text).toContain('Fire of slabs: left out, nothing burns here')
    expect(text).toContain('Not covered: Shear of slabs.')
    expect(text.split('Shear of slabs').length).toBe(2)
  })
})

describe('the design basis on its sheet', () => {
  it('says where no check shows a requirement, and where there is no basis at all', () => {
    const asked = runText('```assume a\nn: { value: 3, basis: brief }\n```\n', {
      title: 'design basis:\n  - { what: people, value: a.n }',
    })
    const text = textOf(basisSheet(asked.workings))
    expect(text).toMatch(/People\s*3\s*no check named/)
    expect(text).toContain('not shown')
    expect(textOf(basisSheet(runText('').workings))).toContain('The notebook states no design basis.')
  })
})
