import type { Diagnostic } from '../../src/diagnostic/diagnostic.ts'
import { linesOf } from '../../src/evaluation/block-lines.ts'
import { calcNotebook } from '../../src/evaluation/calc-notebook.ts'
import { evaluate, type Results } from '../../src/evaluation/evaluate.ts'
import { satisfied as satisfiedIn, secondLimitsOf, truth } from '../../src/evaluation/judge-blocks.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Entity, PlannedCalc, PlannedCheck } from '../../src/evaluation/plan-types.ts'
import type { CaseInput, Module } from '../../src/modules/module.ts'
import { digitsOf } from '../../src/quantity/number-print.ts'
import { inUnit } from '../../src/quantity/to-unit.ts'
import type { System } from '../../src/quantity/types.ts'

export interface Ran {
  readonly results: Results
  /** SI number of an input or output; refuses (throws) a name that was not evaluated. */
  readonly si: (name: string) => number
  readonly has: (name: string) => boolean
  /** The value to four figures in its own unit: `12.34 kN/m^2`. */
  readonly shown: (name: string) => string
  readonly satisfied: (check: string) => boolean | undefined
  readonly limits: readonly { readonly says: string; readonly kept: boolean | undefined; readonly refuses: boolean }[]
  readonly agrees: readonly {
    readonly first: number
    readonly second: number
    readonly difference: number
    readonly band: number
  }[]
  readonly diagnostics: readonly Diagnostic[]
  readonly errors: readonly Diagnostic[]
}

/** One module evaluated through the real plan and evaluation, its inputs as an author writes them. */
export function runModule(
  module: Module,
  inputs: Readonly<Record<string, CaseInput>>,
  options: { units?: System } = {},
): Ran {
  const results = evaluate(plan(calcNotebook(module, inputs, options.units ?? 'SI'), [module]))
  const block = results.plan.blocks[0] as PlannedCalc | undefined
  const entity = (name: string): Entity => {
    const found = results.plan.names.get(`it.${name}`)
    if (found?.kind !== 'number')
      throw new Error(`nothing is called ${name}: ${results.diagnostics.map(fault => fault.says).join('; ')}`)
    return found
  }
  const value = (name: string): number => results.slots[entity(name).slot] as number
  const si = (name: string): number => {
    const number = value(name)
    if (Number.isFinite(number)) return number
    throw new Error(`${name} was not evaluated: ${results.diagnostics.map(fault => fault.says).join('; ')}`)
  }
  const checks = (block ? linesOf(block) : []).filter((line): line is PlannedCheck => line.kind === 'check')
  return {
    results,
    si,
    has: name => results.plan.names.has(`it.${name}`) && Number.isFinite(value(name)),
    shown: name => `${digitsOf(inUnit(si(name), entity(name).unit), 4)} ${entity(name).unit.text}`.trim(),
    satisfied: name => {
      const named = checks.filter(check => check.name === name)
      if (named.length === 0) throw new Error(`no check is called ${name}`)
      return named.map(check => satisfiedIn(check, results.slots)).find(answer => answer !== undefined)
    },
    limits: (block ? [...block.limits, ...secondLimitsOf(block, results.slots)] : []).map(({ limit, judged }) => ({
      says: limit.says,
      kept: truth(judged, results.slots),
      refuses: limit.otherwise === 'refuse',
    })),
    agrees: (block?.second?.comparisons ?? [])
      .filter(({ applies }) => truth(applies, results.slots) === true)
      .map(({ compare, first, second }) => {
        const [a, b] = [results.slots[first.slot] as number, results.slots[second.slot] as number]
        return { first: a, second: b, difference: a === b ? 0 : Math.abs(b - a) / Math.abs(a), band: compare.band }
      }),
    diagnostics: results.diagnostics,
    errors: results.diagnostics.filter(fault => fault.severity === 'error'),
  }
}
