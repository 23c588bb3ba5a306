import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { CaseInput, Module } from '../../src/modules/module.ts'
import { digitsOf } from '../../src/quantity/number-print.ts'
import { calcText } from './module-text.ts'
import { faultsOf } from './recompute.ts'
import { linesOf, type RunText, runText } from './run-text.ts'

const faults = (ran: RunText): string[] =>
  ran.workings.blocks.flatMap(block => linesOf(block).flatMap(line => faultsOf(line)))
const count = (ran: RunText): number => ran.workings.blocks.reduce((so, block) => so + linesOf(block).length, 0)

type Inputs = Readonly<Record<string, CaseInput>>

/** Some numbers of the inputs times their own factor, equal ones alike, to a few figures; counts stay whole, words and dates as they are. */
function jittered(inputs: Inputs, factors: () => { by: number; figures: number; keep: boolean }): Inputs {
  const known = new Map<string, ReturnType<typeof factors>>()
  const one = (name: string, text: string): string =>
    text.replace(/^(\d+(?:\.\d+)?)(?=$| [A-Za-z%])/, digits => {
      const { by, figures, keep } = known.get(digits) ?? factors()
      known.set(digits, { by, figures, keep })
      if (keep || /_(year|month|day)$/.test(name)) return digits
      const isCount = /^\d{1,2}$/.test(text)
      return isCount ? String(Math.max(1, Math.round(Number(digits) * by))) : digitsOf(Number(digits) * by, figures)
    })
  return Object.fromEntries(
    Object.entries(inputs).map(([key, value]) => [
      key,
      typeof value === 'string'
        ? one(key, value)
        : value.map(row => Object.fromEntries(Object.entries(row).map(([field, text]) => [field, one(field, text)]))),
    ]),
  )
}

function seedsOf(module: Module): readonly Inputs[] {
  return [module.example, ...module.published.map(({ inputs }) => inputs)]
}

for (const module of catalogue) {
  describe(module.id, () => {
    it('example and published cases, in both systems: every printed line closes and every verdict is its own', () => {
      let lines = 0
      for (const inputs of seedsOf(module)) {
        for (const units of ['SI', 'US'] as const) {
          const ran = runText(calcText(module.id, 'it', inputs), { units })
          lines += count(ran)
          expect(faults(ran), JSON.stringify(inputs)).toEqual([])
        }
      }
      expect(lines).toBeGreaterThan(0)
    })

    it('numbers at random round them: the same', () => {
      const seeds = seedsOf(module)
      fc.assert(
        fc.property(
          fc.nat({ max: seeds.length - 1 }),
          fc.constantFrom('SI' as const, 'US' as const),
          fc.infiniteStream(
            fc.record({
              // A little as well: where many numbers hang together, as those of panels do, a method refuses most that are far off.
              by: fc.oneof(
                fc.double({ min: 0.6, max: 1.6, noNaN: true }),
                fc.double({ min: 0.99, max: 1.01, noNaN: true }),
              ),
              figures: fc.integer({ min: 2, max: 4 }),
              keep: fc.boolean(),
            }),
          ),
          (seed, units, stream) => {
            const inputs = jittered(seeds[seed] ?? module.example, () => stream.next().value)
            const ran = runText(calcText(module.id, 'it', inputs), { units })
            // What a method refuses has no line to close: others are drawn in its place, and too many of them fail.
            fc.pre(count(ran) > 0)
            expect(faults(ran), JSON.stringify(inputs)).toEqual([])
          },
        ),
        { seed: 20260120, numRuns: 15, maxSkipsPerRun: 10 },
      )
    })
  })
}

describe('the recomputation itself', () => {
  const ran = runText(calcText('two-way-slab', 'it', catalogue.find(({ id }) => id === 'two-way-slab')?.example ?? {}))
  const lines = linesOf(ran.block('it'))

  it('refuses a result two units off, one on the wrong side, and a verdict turned round', () => {
    let refused = 0
    for (const line of lines) {
      if (line.kind === 'formula' && !line.result.exact && !line.fewer) {
        const digits = digitsOf(Number(line.result.digits) * 1.003, 4)
        expect(faultsOf({ ...line, result: { ...line.result, digits } }), line.number).toHaveLength(1)
        refused += 1
      }
      if (line.kind === 'check') expect(faultsOf({ ...line, satisfied: !line.satisfied }).length).toBeGreaterThan(0)
      if (line.kind === 'branch' && line.working) expect(faultsOf({ ...line, holds: !line.holds })).toHaveLength(1)
      if (line.kind === 'look')
        expect(faultsOf({ ...line, result: { ...line.result, digits: '9.99' } })).toHaveLength(1)
    }
    expect(refused).toBeGreaterThan(3)
  })
})
