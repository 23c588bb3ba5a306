import type { Module, PublishedCase } from '../modules/module.ts'
import { digitsOf, figuresOf, lastPlace } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { System, Unit } from '../quantity/types.ts'
import { calcNotebook } from './calc-notebook.ts'
import { evaluate, type Results } from './evaluate.ts'
import { ownLiteral } from './literal.ts'
import { plan } from './plan.ts'

/** One published answer beside ours, in the published unit. */
export interface CaseAnswer {
  readonly name: string
  readonly says: string
  readonly unit: Unit
  /** The printed digits. */
  readonly published: string
  /** Our number in the published unit; NaN where none came out. */
  readonly value: number
  /** Our number to the figures printed. */
  readonly ours: string
  /** How far ours may lie from the printed answer, in the published unit. */
  readonly allowed: number
  readonly agrees: boolean
}

export interface CaseRun {
  readonly published: PublishedCase
  readonly results: Results
  readonly answers: readonly CaseAnswer[]
}

const slack = 1 + 1e-9

/** Runs a published case through the whole evaluation and sets our answers beside the printed ones. */
export function runCase(module: Module, published: PublishedCase): CaseRun {
  const results = evaluate(plan(calcNotebook(module, published.inputs, systemOf(published)), [module]))
  const answers = Object.entries(published.answers).map(([name, text]): CaseAnswer => {
    const { digits, unit } = ownLiteral(text)
    const named = results.plan.names.get(`it.${name}`)
    const value = named?.kind === 'number' ? inUnit(results.slots[named.slot] ?? Number.NaN, unit) : Number.NaN
    const allowed = allowedBy(digits, published.tolerance)
    const ours = Number.isFinite(value) ? digitsOf(value, Math.max(3, figuresOf(digits))) : ''
    const says = named?.kind === 'number' ? named.says : name
    return {
      name,
      says,
      unit,
      published: digits,
      value,
      ours,
      allowed,
      agrees: Math.abs(value - Number(digits)) <= allowed * slack,
    }
  })
  return { published, results, answers }
}

/** Half a unit in the last printed digit, unless the case states its own tolerance. */
function allowedBy(digits: string, tolerance: PublishedCase['tolerance']): number {
  if (tolerance && 'relative' in tolerance) return tolerance.relative * Math.abs(Number(digits))
  return (tolerance ? tolerance.units : 0.5) * lastPlace(digits)
}

const american = /\b(?:psf|psi|ksi|ksf|pcf|ft|in|lbf|lb|kip|cfm|gal)\b/

/** A case with US units in it is run in the US system. */
function systemOf({ inputs, answers }: PublishedCase): System {
  return american.test(JSON.stringify([inputs, answers])) ? 'US' : 'SI'
}
