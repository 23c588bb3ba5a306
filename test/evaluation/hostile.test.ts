import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { resultsData } from '../../src/evaluation/results-data.ts'
import { digitsOf } from '../../src/quantity/number-print.ts'
import { faultsOf } from './recompute.ts'
import { linesOf, type RunText, runText } from './run-text.ts'
import { sampleBody } from './sample-sheet.ts'

const body = sampleBody()

/** Words and characters that stand somewhere in a notebook, put where they do not belong. */
const scraps = [
  '0',
  '-1',
  '1e308',
  '1e-308',
  ' m',
  ' kPa',
  ' degC',
  '*',
  '/',
  '^',
  '(',
  ')',
  ' + ',
  'site.cover',
  'roof.M_y_sup',
  'thrust.e',
  'shield.n',
  'drift',
  'type B',
  'x',
  '#',
  ':',
  '\n',
  '- ',
  '{',
  '}',
  '```',
  '~',
  ' to mm',
  ' <= ',
  'sum(',
  'sqrt(',
  'interpolate(',
  '²',
  '−',
]

interface Edit {
  readonly at: number
  readonly cut: number
  readonly put: string
}

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.nat({ max: body.length - 1 }),
  cut: fc.nat({ max: 8 }),
  put: fc.constantFrom('', '', ...scraps),
})

const edited = (edits: readonly Edit[]): string =>
  [...edits]
    .sort((a, b) => b.at - a.at)
    .reduce((text, { at, cut, put }) => text.slice(0, at) + put + text.slice(at + cut), body)

function expectSound(ran: RunText): void {
  const data = resultsData(ran.results, ran.workings, { tool: 't', path: 'p', sha256: '0' })
  expect(JSON.stringify(data)).not.toMatch(/null|NaN|Infinity|undefined/)
  for (const block of ran.workings.blocks) for (const line of linesOf(block)) expect(faultsOf(line)).toEqual([])
  for (const { place, says } of ran.workings.diagnostics) {
    expect(place.offset <= place.end && place.end <= ran.text.length, says).toBe(true)
    expect(says).not.toMatch(/NaN|undefined|\[object/)
  }
  const incomplete =
    ran.workings.blocks.some(block => !block.complete) || ran.workings.blocks.length < ran.plan.notebook.blocks.length
  if (incomplete) expect(ran.errors.length, 'what is absent is explained').toBeGreaterThan(0)
}

describe('a damaged notebook', () => {
  it('never stops the program: what is sound is evaluated and closes, what is absent is explained', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), edits => {
        expectSound(runText(edited(edits)))
      }),
      { seed: 20260120, numRuns: 120 },
    )
  })

  it('numbers of any size: the same', () => {
    const number = fc.oneof(
      fc.constantFrom('0', '1e300', '1e-300', '1e308', '-1', '0.1'),
      fc.double({ min: 1e-9, max: 1e9, noNaN: true }).map(value => digitsOf(value, 6)),
    )
    fc.assert(
      fc.property(fc.array(number, { minLength: 6, maxLength: 6 }), values => {
        let index = 0
        const text = body.replace(/(?<=value: )\d+(\.\d+)?/g, digits => values[index++] ?? digits)
        expectSound(runText(text))
      }),
      { seed: 20260120, numRuns: 60 },
    )
  })
})
