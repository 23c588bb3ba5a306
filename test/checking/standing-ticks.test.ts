import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addTicks } from '../../src/checking/change-record.ts'
import { checkingState } from '../../src/checking/checking-state.ts'
import type { CheckingRecord } from '../../src/checking/record.ts'
import { randomChange, randomNotebook, textOf } from '../comparison/random-notebook.ts'
import { type Mutation, mutations } from '../comparison/sample-mutations.ts'
import { type TypesetLine, typesetLines } from '../comparison/typeset-lines.ts'
import { type RunText, runText } from '../evaluation/run-text.ts'
import { sampleBody } from '../evaluation/sample-sheet.ts'

const signed = { by: 'J. Okonedo', on: '2026-03-04' }

function tickedAll({ workings }: RunText): CheckingRecord {
  const state = checkingState(workings, new Map())
  return addTicks(state, { steps: state.steps, signed })
}

/** A line of the page without the number of its row, at its head and as an index, and without what is read aloud, where it stands too. */
const unrowed = (html: string): string =>
  html
    .replace(/^\[\d+,/, '[')
    .replace(/ aria-label="[^"]*"/g, '')
    .replace(/mtight">\d+</g, 'mtight">i<')

/** Every line with a standing tick is printed as one was that was ticked, and every line printed as before still has its tick. */
function expectHonest(before: RunText, after: RunText, renamed: Readonly<Record<string, string>> = {}): void {
  const { steps } = checkingState(after.workings, tickedAll(before))
  const old = typesetLines(before)
  const now = new Map(typesetLines(after).map(line => [line.number, line]))
  const isAt = (each: TypesetLine, block: string): boolean => each.block === (renamed[block] ?? block)
  for (const { line, block, standing, key } of steps) {
    const html = now.get(line.number)?.html ?? ''
    const same = old.some(each => isAt(each, block) && each.html === html)
    const moved = line.row !== undefined && old.some(each => isAt(each, block) && unrowed(each.html) === unrowed(html))
    if (standing.length > 0) expect([block, key, same || moved]).toEqual([block, key, true])
    else expect([block, key, same]).toEqual([block, key, false])
  }
}

describe('a tick stands where the line is printed as it was, and nowhere else', () => {
  const before = runText(sampleBody())

  for (const { says, do: mutate, renamed } of mutations)
    it(`sample sheet, ${says}`, () => expectHonest(before, runText(mutate(sampleBody())), renamed))

  it('sample sheet, any changes together', () => {
    const some = fc.uniqueArray(fc.constantFrom<Mutation>(...mutations), { minLength: 1, maxLength: 4 })
    fc.assert(
      fc.property(some, chosen => {
        const body = chosen.reduce((text, mutation) => mutation.do(text), sampleBody())
        expectHonest(before, runText(body), Object.assign({}, ...chosen.map(each => each.renamed ?? {})))
      }),
      { seed: 20260302, numRuns: 6 },
    )
  })

  it('random notebooks and changes', () => {
    fc.assert(
      fc.property(randomNotebook, fc.array(randomChange, { minLength: 1, maxLength: 4 }), (notebook, changes) => {
        const changed = changes.reduce((all, change) => change(all), notebook)
        expectHonest(runText(textOf(notebook)), runText(textOf(changed)), changed.renamed)
      }),
      { seed: 20260302, numRuns: 60 },
    )
  })
})
