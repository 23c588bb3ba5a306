import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluate, run } from '../../src/evaluation/evaluate.ts'
import { digitsOf } from '../../src/quantity/number-print.ts'
import { fromUnit } from '../../src/quantity/to-unit.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { linesOf, type RunText, runPlan, runText, said, shownOf } from './run-text.ts'
import { sampleBlocks, sampleBody } from './sample-sheet.ts'

const sheet = runText(sampleBody())

const assumed = [
  ['cover', '1.2', 'm'],
  ['water', '2.8', 'm'],
  ['gamma_soil', '18.5', 'kN/m^3'],
  ['phi_soil', '32', 'deg'],
  ['wall', '300', 'mm'],
  ['T_soil', '11', 'degC'],
] as const

const values = (ran: RunText): Record<string, number> =>
  Object.fromEntries(
    [...ran.plan.names].flatMap(([key, named]) =>
      named.kind === 'number' ? [[key, ran.results.slots[named.slot] ?? 0]] : [],
    ),
  )

/** Everything printed of every line, without numbers and places, which follow the text. */
const printed = (ran: RunText): readonly string[] =>
  ran.workings.blocks.flatMap(block =>
    linesOf(block).map(line => {
      const verdict =
        line.kind === 'check'
          ? [line.satisfied, line.demand?.digits, line.capacity?.digits, line.ratio?.shown.digits]
          : []
      const holds = line.kind === 'branch' ? line.holds : ''
      return [block.name, line.kind, 'name' in line ? line.name : '', shownOf(line), holds, ...verdict].join(' ')
    }),
  )

const messages = (ran: RunText) => said(ran.workings.diagnostics).filter(text => !text.startsWith('assumption-'))

function expectAlike(a: RunText, b: RunText, relative: number): void {
  const [left, right] = [values(a), values(b)]
  expect(Object.keys(left).sort()).toEqual(Object.keys(right).sort())
  for (const [key, value] of Object.entries(left)) {
    const other = right[key] ?? Number.NaN
    if (Number.isNaN(value)) expect(other, key).toBeNaN()
    else expect(Math.abs(value - other), key).toBeLessThanOrEqual(relative * Math.max(Math.abs(value), 1e-9))
  }
}

describe('changed assumptions', () => {
  it('one plan with changed numbers gives what a plan of the changed text gives, to the last printed character', () => {
    const factor = fc.double({ min: 0.5, max: 2, noNaN: true })
    fc.assert(
      fc.property(fc.array(factor, { minLength: assumed.length, maxLength: assumed.length }), factors => {
        let body = sampleBody()
        const changed = new Map<string, number>()
        assumed.forEach(([name, digits, unit], index) => {
          const typed = String(Number(digitsOf(Number(digits) * (factors[index] ?? 1), 3)))
          body = body.replace(`${name}: { value: ${digits} ${unit}`, `${name}: { value: ${typed} ${unit}`)
          changed.set(`site.${name}`, fromUnit(Number(typed), unitOf(unit)))
        })
        const fresh = runText(body)
        const reused = runPlan(sheet.plan, { changed })
        expectAlike(reused, fresh, 0)
        expect(messages(reused)).toEqual(messages(fresh))
        expect(printed(reused)).toEqual(printed(fresh))
      }),
      { seed: 20260302, numRuns: 40 },
    )
  })

  it('a plan is not changed by being run: the same numbers again, and those of the text at the end', () => {
    const changed = new Map([['site.cover', 1.5]])
    const once = run(sheet.plan, { changed })
    run(sheet.plan, { changed: new Map([['site.water', 0.1]]) })
    expect(run(sheet.plan, { changed })).toEqual(once)
    expect(evaluate(sheet.plan).slots).toEqual(sheet.results.slots)
  })

  it('a changed assumption prints its new value where it is handed on', () => {
    const ran = runPlan(sheet.plan, { changed: new Map([['site.cover', 1.45]]) })
    const block = ran.block('heights')
    const row = block?.kind === 'calc' ? block.given.find(({ name }) => name === 'cover') : undefined
    expect(row?.value).toMatchObject({ digits: '1.45' })
  })

  it('what is no assumption, and what is no number, is refused', () => {
    expect(() => run(sheet.plan, { changed: new Map([['roof.load', 1]]) })).toThrow(
      'no assumption is called `roof.load`',
    )
    expect(() => run(sheet.plan, { changed: new Map([['site.ground', 1]]) })).toThrow(
      'no assumption is called `site.ground`',
    )
    expect(() => run(sheet.plan, { changed: new Map([['site.cover', Number.NaN]]) })).toThrow('cannot be NaN')
    expect(() => run(sheet.plan, { changed: new Map([['site.cover', Number.POSITIVE_INFINITY]]) })).toThrow(RangeError)
  })

  it('without the second methods the first give the same numbers', () => {
    const first = evaluate(sheet.plan, { second: false })
    for (const block of sheet.plan.blocks) {
      if (block?.kind !== 'calc') continue
      for (const line of block.lines)
        if (line.kind === 'formula') expect(first.slots[line.gives.slot]).toBe(sheet.results.slots[line.gives.slot])
    }
    expect(first.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([])
  })
})

describe('what must not matter', () => {
  it('the order of the blocks in the file', () => {
    const names = Object.keys(sampleBlocks)
    fc.assert(
      fc.property(fc.shuffledSubarray(names, { minLength: names.length, maxLength: names.length }), order => {
        const ran = runText(sampleBody(order))
        expectAlike(ran, sheet, 0)
        expect([...printed(ran)].sort()).toEqual([...printed(sheet)].sort())
        expect([...messages(ran)].sort()).toEqual([...messages(sheet)].sort())
      }),
      { seed: 20260302, numRuns: 12 },
    )
  })

  it('the unit in which a quantity is typed', () => {
    const typed = [
      ['1.2 m', ['1200 mm', '120 cm', '0.0012 km', '1.2e3 mm']],
      ['3.4 m', ['3400 mm', '340 cm']],
      ['10 kPa', ['10 kN/m^2', '10000 Pa', '0.01 MPa']],
      ['18.5 kN/m^3', ['18500 N/m^3', '0.0185 MN/m^3']],
      ['300 mm', ['0.3 m', '30 cm']],
    ] as const
    for (const [text, others] of typed) {
      expect(sampleBody()).toContain(text)
      for (const other of others) {
        const ran = runText(sampleBody().replace(text, other))
        expectAlike(ran, sheet, 1e-12)
        expect(printed(ran), other).toEqual(printed(sheet))
      }
    }
  })
})
