import type { Diagnostic } from '../../src/diagnostic/diagnostic.ts'
import { linesOf as ownLinesOf } from '../../src/evaluation/block-lines.ts'
import { type Changes, evaluate, type Results } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import type { BlockWorking, Line, Workings } from '../../src/evaluation/workings.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { Module } from '../../src/modules/module.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { plainNumber } from '../../src/quantity/number-print.ts'

/** A notebook text taken through every stage short of the page. */
export interface RunText {
  readonly text: string
  readonly plan: Plan
  readonly results: Results
  readonly workings: Workings
  readonly errors: readonly Diagnostic[]
  readonly warnings: readonly Diagnostic[]
  /** SI number; NaN where there is none. Refuses (throws) a name the plan does not know. */
  readonly si: (key: string) => number
  /** The printed line that gives a value, or the check of that name. */
  readonly line: (block: string, name: string) => Line | undefined
  readonly block: (name: string) => BlockWorking | undefined
  /** The author's characters under a diagnostic. */
  readonly under: (fault: Diagnostic | undefined) => string
}

export const head = '---\ntitle: Skerry Point trial sheet\n---\n\n'

/** Fences for a body: `fence('assume site', 'a: 1 m')`. */
export const fence = (first: string, body: string): string => `\`\`\`${first}\n${body.trim()}\n\`\`\`\n\n`

export interface RunOptions {
  readonly modules?: readonly Module[]
  readonly changes?: Changes
  readonly units?: 'SI' | 'US'
  readonly figures?: number
  /** More keys of the title block, as YAML lines. */
  readonly title?: string
}

/** Reads and evaluates a notebook's body (without its title block). */
export function runText(body: string, options: RunOptions = {}): RunText {
  const { units, figures, title: more } = options
  const keys = [
    ...(units ? [`units: ${units}\n`] : []),
    ...(figures ? [`figures: ${figures}\n`] : []),
    more ? `${more.trim()}\n` : '',
  ].join('')
  const title = head.replace('\n---\n\n', `\n${keys}---\n\n`)
  const text = `${title}${body}`
  const made = plan(readNotebook(text, { path: 'trial.md' }), options.modules ?? catalogue)
  return runPlan(made, options.changes)
}

/** Evaluates a plan and prepares it for print. */
export function runPlan(made: Plan, changes: Changes = {}): RunText {
  const { text } = made.notebook
  const results = evaluate(made, changes)
  const workings = makeWorkings(results)
  const { diagnostics } = workings
  const block = (name: string) => workings.blocks.find(each => each.name === name)
  return {
    text,
    plan: made,
    results,
    workings,
    errors: diagnostics.filter(fault => fault.severity === 'error'),
    warnings: diagnostics.filter(fault => fault.severity === 'warning'),
    si: key => {
      const named = made.names.get(key)
      if (named?.kind !== 'number')
        throw new Error(`no number is called ${key}: ${diagnostics.map(d => d.says).join('; ')}`)
      return results.slots[named.slot] as number
    },
    line: (name, wanted) => linesOf(block(name)).find(line => 'name' in line && line.name === wanted),
    block,
    under: fault => (fault ? text.slice(fault.place.offset, fault.place.end) : ''),
  }
}

/** Every printed line of a block, its second method included. */
export function linesOf(block: BlockWorking | undefined): readonly Line[] {
  return block ? ownLinesOf(block) : []
}

/** The printed result of a line: digits and unit. */
export function shownOf(line: Line | undefined): string {
  if (line?.kind !== 'formula' && line?.kind !== 'look') return ''
  return `${plainNumber(line.result.digits)} ${line.result.unit.text}`.trim()
}

/** Rule and sentence of each, to compare whole lists of messages. */
export const said = (faults: readonly Diagnostic[]): readonly string[] =>
  faults.map(({ rule, says }) => `${rule}: ${says}`)
