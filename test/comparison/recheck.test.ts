import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runText } from '../evaluation/run-text.ts'
import { sampleBlocks, sampleBody } from '../evaluation/sample-sheet.ts'
import { type Compared, compareRuns, compareTexts } from './compare-texts.ts'
import { randomChange, randomNotebook, textOf } from './random-notebook.ts'
import { mutations } from './sample-mutations.ts'
import { type TypesetLine, typesetLines } from './typeset-lines.ts'

/**
 * Every printed line of the new notebook that is not listed as different stands in the old one to the byte, in its own block; every line
 * that is listed does not. The three counts make up the whole.
 */
function expectProved(
  { recheck, before, after }: Compared,
  renamed: Readonly<Record<string, string>> = {},
  old: readonly TypesetLine[] = typesetLines(before),
): void {
  const now = typesetLines(after, renamed)
  const listed = new Map(recheck.differ.filter(({ kind }) => kind !== 'removed').map(line => [line.number, line]))
  const gone = recheck.differ.filter(({ kind }) => kind === 'removed')
  expect(recheck.lines).toBe(now.length)
  expect(recheck.unexplained).toEqual([])
  // A line that is only written otherwise may rest on no change of meaning.
  expect(recheck.differ.filter(({ changes, kind }) => kind !== 'restated' && changes.length === 0)).toEqual([])
  expect(listed.size + recheck.same.length + recheck.cannot).toBe(now.length)
  const stands = (line: TypesetLine): boolean =>
    old.some(({ block, html }) => block === line.block && html === line.html)
  expect(now.filter(line => !listed.has(line.number) && !stands(line))).toEqual([])
  // A line without a name of its own, or one that came, may be like another of its block: a check written twice.
  const isOwn = ({ number }: TypesetLine): boolean => {
    const line = listed.get(number)
    return line !== undefined && line.kind !== 'added' && line.key !== line.block
  }
  expect(now.filter(line => isOwn(line) && stands(line))).toEqual([])
  expect(old.length - gone.length).toBe(now.length - recheck.differ.filter(({ kind }) => kind === 'added').length)
}

describe('what needs checking again: the sample sheet', () => {
  const before = runText(sampleBody())
  const old = typesetLines(before)

  for (const mutation of mutations)
    it(`${mutation.says}: what is not listed is equal to the byte`, () => {
      const body = mutation.do(sampleBody())
      expect(body).not.toBe(sampleBody())
      expectProved(compareRuns(before, runText(body)), mutation.renamed, old)
    })

  it('any changes together, in any order of blocks: what is not listed is equal to the byte', () => {
    const names = Object.keys(sampleBlocks)
    const some = fc.uniqueArray(fc.constantFrom(...mutations), { minLength: 1, maxLength: 5 })
    const order = fc.shuffledSubarray(names, { minLength: names.length, maxLength: names.length })
    fc.assert(
      fc.property(some, order, (chosen, blocks) => {
        const body = chosen.reduce((text, mutation) => mutation.do(text), sampleBody(blocks))
        const renamed = Object.assign({}, ...chosen.map(each => each.renamed ?? {}))
        expectProved(compareRuns(before, runText(body)), renamed, old)
      }),
      { seed: 20260302, numRuns: 20 },
    )
  })
})

describe('what needs checking again: random notebooks', () => {
  it('hundreds of random changes of random notebooks: what is not listed is equal to the byte', () => {
    fc.assert(
      fc.property(randomNotebook, fc.array(randomChange, { minLength: 1, maxLength: 4 }), (notebook, changes) => {
        const changed = changes.reduce((all, change) => change(all), notebook)
        expectProved(compareTexts(textOf(notebook), textOf(changed)), changed.renamed)
      }),
      { seed: 20260302, numRuns: 200 },
    )
  })

  it('a notebook against itself: nothing differs and nothing rests on a change', () => {
    fc.assert(
      fc.property(randomNotebook, notebook => {
        const { changes, recheck } = compareTexts(textOf(notebook), textOf(notebook))
        expect(changes).toEqual([])
        expect([recheck.differ, recheck.same, recheck.cannot]).toEqual([[], [], recheck.lines])
      }),
      { seed: 20260302, numRuns: 30 },
    )
  })
})
