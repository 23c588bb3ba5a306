import { sortDiagnostics } from '../diagnostic/sort-diagnostics.ts'
import { blockAnchor, numberLines } from './anchors.ts'
import { answerMentions } from './answer-mentions.ts'
import { linesOf } from './block-lines.ts'
import { doubtsOf } from './check-doubts.ts'
import { coverageOf } from './coverage.ts'
import { designBasis } from './design-basis.ts'
import { drawingValues } from './drawing-values.ts'
import type { Results } from './evaluate.ts'
import { citable, gatherReferences } from './gather-references.ts'
import { truth } from './judge-blocks.ts'
import { moduleSymbols } from './module-symbols.ts'
import type { PlannedBlock, PlannedCalc, PlannedLine } from './plan-types.ts'
import { printAssume } from './print-assume.ts'
import type { PrintContext } from './print-context.ts'
import { printGiven } from './print-given.ts'
import { printLimits } from './print-limits.ts'
import { pick, printTrail } from './print-lines.ts'
import { printSecond } from './print-second.ts'
import { schedulesOf } from './schedules.ts'
import { sketchOf } from './sketch-view.ts'
import { typedShown } from './typed-shown.ts'
import { typedValues } from './typed-values.ts'
import { usersOf } from './users.ts'
import type { BlockWorking, CalcWorking, Line, PointsTable, Workings } from './workings.ts'

/** Everything that is printed of a notebook, with its digits chosen line by line. A pure function of the results. */
export function makeWorkings(results: Results): Workings {
  const { plan } = results
  const context: PrintContext = {
    results,
    numbering: numberLines(results),
    figures: plan.notebook.title.figures,
    doubts: doubtsOf(plan.blocks, results.slots),
    printed: new Map(),
  }
  const users = usersOf(context)
  const printed = printTrail(context)
  const blocks = plan.blocks.flatMap((block): BlockWorking[] => {
    if (!block) return []
    if (block.kind !== 'assume') return [printBlock(context, block, printed)]
    return [
      { kind: 'assume', ...headOf(context, block), rows: printAssume(context, block, key => users.get(key) ?? []) },
    ]
  })
  const titles = new Map(
    blocks.map(block => [block.name, block.kind === 'calc' ? block.title : block.name.replaceAll('_', ' ')]),
  )
  const { answers, diagnostics } = answerMentions(context, { titles, references: citable(plan.notebook) })
  const basis = designBasis(context, blocks)
  const coverage = coverageOf(plan, blocks)
  return {
    blocks,
    answers,
    basis: basis.rows,
    coverage: coverage.lines,
    drawing: drawingValues(context, blocks),
    schedules: schedulesOf(context, blocks),
    references: gatherReferences(plan.notebook, blocks),
    users,
    typed: typedValues(blocks),
    diagnostics: sortDiagnostics([
      ...results.diagnostics,
      ...diagnostics,
      ...basis.diagnostics,
      ...coverage.diagnostics,
    ]),
  }
}

function headOf(context: PrintContext, block: PlannedBlock) {
  const source = context.results.plan.notebook.blocks[block.index]
  if (!source) throw new Error('a planned block stands in its notebook')
  const name = source.name.text
  return {
    name,
    number: context.numbering.blocks[block.index] ?? '',
    id: blockAnchor(name),
    place: source.place,
    index: block.index,
    complete: true,
    checks: [],
  }
}

/** All lines have been printed before, so that a value shown elsewhere has the digits of its own line. */
function printBlock(
  context: PrintContext,
  block: Exclude<PlannedBlock, { kind: 'assume' }>,
  printed: ReadonlyMap<PlannedLine, Line>,
): BlockWorking {
  const checks = pick(linesOf(block), printed).filter(line => line.kind === 'check')
  const head = { ...headOf(context, block), complete: isComplete(context, block), checks }
  const lines = pick(block.lines, printed)
  if (block.kind === 'work') return { kind: 'work', ...head, tables: tablesOf(context, block.index), lines }
  const { module } = block
  const sketch = sketchOf(context, block)
  return {
    kind: 'calc',
    ...head,
    module: module.id,
    version: module.version,
    title: module.title,
    asks: module.asks,
    code: module.code ?? '',
    symbols: moduleSymbols(module),
    given: printGiven(context, block),
    lines,
    limits: printLimits(block, context.results.slots),
    cautions: cautionsOf(context, block),
    ...(block.second ? { second: printSecond(context, block.second, printed) } : {}),
    ...(sketch ? { sketch } : {}),
  }
}

/** The author's own tables of one work block, as typed. */
function tablesOf(context: PrintContext, index: number): PointsTable[] {
  return [...context.results.plan.names.values()].flatMap(named => {
    if (named.kind !== 'points' || named.block !== index) return []
    const points = named.typed.map(({ x, y }) => ({ x: typedShown(x), y: typedShown(y) }))
    return { name: named.name, says: named.remark, points }
  })
}

/** False where some value of the block was stopped by a fault. */
function isComplete(context: PrintContext, block: Exclude<PlannedBlock, { kind: 'assume' }>): boolean {
  if (block.kind === 'calc' && context.results.slots[block.alive] !== 1) return false
  for (const [entity, cause] of context.results.absent)
    if (entity.block === block.index && cause !== 'not taken') return false
  return true
}

function cautionsOf(context: PrintContext, block: PlannedCalc): CalcWorking['cautions'] {
  return block.cautions
    .filter(({ judged }) => truth(judged, context.results.slots) === true)
    .map(({ caution }) => (typeof caution === 'string' ? caution : caution.says))
}
