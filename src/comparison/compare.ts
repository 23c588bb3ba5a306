import { linesOf } from '../evaluation/block-lines.ts'
import type { PlannedLine } from '../evaluation/plan-types.ts'
import type { Module } from '../modules/module.ts'
import { putIn } from './attribute.ts'
import { blockEdits } from './block-edits.ts'
import { checkMoves } from './check-moves.ts'
import type { Edit } from './edit.ts'
import { graphOf } from './graph.ts'
import { matchBlocks } from './match-blocks.ts'
import { type Naming, namingOf } from './naming.ts'
import { numbersOf } from './numbers-of.ts'
import { printedLines } from './printed-lines.ts'
import { noticeEdits } from './prose-differences.ts'
import { type IdentifiedEdit, joinGraphs, type Proven, reachedBy, recheck } from './recheck.ts'
import { noRenames } from './renames.ts'
import { restatedOf } from './restated.ts'
import { resultMoves } from './result-moves.ts'
import { keptRows, movedRows, noRows } from './row-names.ts'
import { titleEdits } from './title-edits.ts'
import type { Comparison, Evaluation } from './types.ts'
import { verdictMoves } from './verdicts.ts'

export interface CompareOptions {
  readonly modules: readonly Module[]
  /** Relative move from which a result is listed; 0.01 is 1 percent. */
  readonly threshold: number
}

/**
 * What changed from one notebook to another, what each change moved, and which printed lines need checking again. Both are evaluated
 * before, by the same modules. A pure function of its arguments.
 */
export function compareNotebooks(old: Evaluation, now: Evaluation, options: CompareOptions): Comparison {
  const notebooks = { old: old.notebook, now: now.notebook }
  const matched = matchBlocks(old.notebook, now.notebook)
  const blocks = blockEdits(notebooks, matched)
  const edits = identified([
    ...blocks.edits,
    ...titleEdits(old.notebook, now.notebook),
    ...noticeEdits(old.notebook, now.notebook),
  ])
  const naming = {
    old: namingOf(old.results.plan, { renames: noRenames, rows: noRows, checks: new Map() }),
    now: namingOf(now.results.plan, {
      renames: matched.renames,
      rows: movedRows(matched.pairs, matched.renames),
      checks: blocks.checks,
    }),
  }
  const [before, after] = [provenOf(old, naming.old), provenOf(now, naming.now)]
  const reach = joinGraphs(before, after)
  const reached = reachedBy(reach, edits)
  const packets = putIn(edits, {
    notebook: old.notebook,
    plan: old.results.plan,
    modules: options.modules,
    read: (plan, slots) => {
      const rows = keptRows(old.notebook.blocks, plan.notebook.blocks)
      return numbersOf(plan, slots, namingOf(plan, { renames: noRenames, rows, checks: blocks.checks }))
    },
  })
  const moving = {
    old: sideOf(old, naming.old, before),
    now: sideOf(now, naming.now, after),
    packets,
    reached,
  }
  const { threshold } = options
  return {
    changes: edits.map(({ id, change }) => ({ id, ...change })),
    restated: restatedOf(notebooks, { blocks, matched, edits }),
    checks: checkMoves(moving),
    verdicts: verdictMoves(old.workings, now.workings, naming.now.key),
    ...resultMoves(moving, threshold),
    threshold,
    recheck: recheck(before, after, { reach, reached }),
    grouped: packets.tooMany ? edits.filter(({ put, number }) => put && !number).map(({ id }) => id) : [],
    errors: { old: errorsIn(old), now: errorsIn(now) },
  }
}

const sideOf = ({ results: { plan, slots } }: Evaluation, naming: Naming, { lines }: Proven) => ({
  lines,
  numbers: numbersOf(plan, slots, naming),
  key: naming.key,
})

const identified = (edits: readonly Edit[]): IdentifiedEdit[] =>
  edits.map((edit, index) => ({ ...edit, id: `c${index + 1}` }))

const errorsIn = ({ workings }: Evaluation): number =>
  workings.diagnostics.filter(({ severity }) => severity === 'error').length

function provenOf(evaluation: Evaluation, naming: Naming): Proven {
  const { plan, slots } = evaluation.results
  const reached = new Map<string, string>()
  const calcs = new Map<string, string>()
  for (const block of plan.blocks) {
    if (!block || block.kind === 'assume') continue
    for (const line of linesOf<PlannedLine>(block)) {
      const node = naming.lineId(line)
      reached.set(node, `${reached.get(node) ?? ''}${isReached(line, slots)}`)
      if (block.kind === 'calc') calcs.set(node, naming.key(naming.blockOf(line)))
    }
  }
  return { graph: graphOf(plan, naming), lines: printedLines(evaluation, naming), reached, calcs }
}

const isReached = ({ guards }: PlannedLine, slots: Float64Array): string =>
  guards.every(guard => slots[guard] === 1) ? '1' : '0'
