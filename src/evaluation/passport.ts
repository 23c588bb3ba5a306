import type { Module, PublishedCase } from '../modules/module.ts'
import { digitsOf, plainNumber } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import { isAtMost } from '../quantity/tolerance.ts'
import type { Unit } from '../quantity/types.ts'
import type { Results } from './evaluate.ts'
import { readLiteral } from './literal.ts'
import { moduleSymbols } from './module-symbols.ts'
import type { PlannedCalc } from './plan-types.ts'
import { runCase } from './run-case.ts'
import { shownText } from './shown-text.ts'
import { shownWords } from './shown-words.ts'
import type { CalcWorking, Workings } from './workings.ts'

/** One published answer beside ours, as text. */
export interface PassportAnswer {
  readonly says: string
  readonly published: string
  readonly ours: string
  readonly agrees: boolean
}

/** A published case that this version of the module was run on. */
export interface PassportCase {
  readonly source: string
  readonly status: string
  readonly says: string
  readonly answers: readonly PassportAnswer[]
}

/** One use of a module in this package, with the inputs that lie outside what the published cases span. */
export interface PassportUse {
  readonly id: string
  readonly number: string
  readonly name: string
  readonly outside: readonly {
    readonly input: string
    readonly symbol: string
    readonly value: string
    /** How the published cases have it: `tested at 4.00 m`. */
    readonly tested: string
  }[]
}

/** What stands behind a module that the package uses. */
export interface Passport {
  readonly module: string
  readonly version: string
  readonly title: string
  /** Its symbols by name, for its sentences. */
  readonly symbols: ReadonlyMap<string, string>
  readonly cases: readonly PassportCase[]
  readonly uses: readonly PassportUse[]
}

/** The modules that a notebook uses, in the order of first use. */
export function modulesUsed({ plan }: Results): Module[] {
  return [...new Set(plan.blocks.flatMap(block => (block?.kind === 'calc' ? [block.module] : [])))]
}

/** A passport for each module used, in the order of first use: its published cases run now, when it is asked for, its uses against their span. */
export function* passportsOf(results: Results, workings: Workings): Generator<Passport, void> {
  const uses = workings.blocks.filter((block): block is CalcWorking => block.kind === 'calc')
  for (const module of modulesUsed(results))
    yield {
      module: module.id,
      version: module.version,
      title: module.title,
      symbols: moduleSymbols(module),
      cases: module.published.map(published => caseOf(module, published)),
      uses: uses.filter(use => use.module === module.id).map(use => useOf(results, module, use)),
    }
}

function caseOf(module: Module, published: PublishedCase): PassportCase {
  const { answers } = runCase(module, published)
  return {
    source: published.source,
    status: published.status,
    says: published.says,
    answers: answers.map(({ says, unit, published: printed, ours, agrees }) => ({
      says,
      published: shownWords({ digits: printed, unit }),
      ours: ours ? shownWords({ digits: ours, unit }) : 'no answer',
      agrees,
    })),
  }
}

function useOf(results: Results, module: Module, use: CalcWorking): PassportUse {
  const planned = results.plan.blocks[use.index]
  const outside = planned?.kind === 'calc' ? outsideOf(results, module, planned) : []
  return { id: use.id, number: use.number, name: use.name, outside }
}

/** Numeric inputs (rows of lists aside) whose value lies outside the least and greatest of the published cases. */
function outsideOf(results: Results, module: Module, planned: PlannedCalc): PassportUse['outside'] {
  return planned.given.flatMap(({ name, value, row, taken }) => {
    if (typeof value === 'string' || row || taken) return []
    const tested = module.published.flatMap(({ inputs }) => {
      const input = inputs[name]
      const literal = typeof input === 'string' ? readLiteral(input) : undefined
      return literal ? [literal.si] : []
    })
    const si = results.slots[value.slot] ?? Number.NaN
    const [from, to] = [Math.min(...tested), Math.max(...tested)]
    if (tested.length > 0 && isAtMost(from, si) && isAtMost(si, to)) return []
    return [
      {
        input: name,
        symbol: value.symbol,
        value: shownText(value, si),
        tested: tested.length === 0 ? 'untested' : spanText(value.unit, [from, to]),
      },
    ]
  })
}

function spanText(unit: Unit, [from, to]: readonly [number, number]): string {
  const [least = '', most = ''] = [from, to].map(si => digitsOf(inUnit(si, unit), 3))
  const last = shownWords({ digits: most, unit })
  return least === most ? `tested at ${last}` : `tested ${plainNumber(least)} to ${last}`
}
