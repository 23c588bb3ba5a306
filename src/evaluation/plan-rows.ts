import type { EachStep, PairsStep, Step } from '../modules/module.ts'
import { madeRows } from './made-rows.ts'
import { moduleFault, type Stage } from './module-scope.ts'
import type { ListRow } from './scope.ts'
import { stepByStep } from './step-by-step.ts'

/** How the steps of one row are planned. */
export type PlanSteps = (stage: Stage, steps: readonly Step[]) => void

/** Plans the same steps for each row of a list. */
export function planEach(stage: Stage, step: EachStep, planSteps: PlanSteps): void {
  if (step.made && !stage.scope.lists.has(step.list))
    stage.scope.lists.set(step.list, madeRows(stage, step.list, step.made))
  planRows(stage, step, { rows: rowsOf(stage, step.list), planSteps })
  gatherRows(stage, step.list)
}

/** Planned row by row, as they are evaluated; printed step by step. */
function planRows(
  stage: Stage,
  { steps }: EachStep | PairsStep,
  { rows, planSteps }: { readonly rows: readonly ListRow[]; readonly planSteps: PlanSteps },
): void {
  const from = stage.lines.length
  for (const { scope, row } of rows) planSteps({ ...stage, scope, row }, steps)
  stage.lines.push(...stepByStep(stage.lines.splice(from), steps))
}

/** The rows of a list, each with its scope. Throws where no list has this name: our own bug. */
export function rowsOf(stage: Stage, list: string): readonly ListRow[] {
  const rows = stage.scope.lists.get(list)
  if (!rows) throw moduleFault(stage, `no list is called \`${list}\``)
  return rows
}

/** Plans steps between neighbouring rows, in the later row, which finds the earlier one by `prev_`. */
export function planPairs(stage: Stage, step: PairsStep, planSteps: PlanSteps): void {
  const [first, ...later] = rowsOf(stage, step.list)
  if (!first || later.length === 0) throw moduleFault(stage, `\`${step.list}\` has no two rows`)
  planRows(stage, step, { rows: later, planSteps })
  const between = [...(later[0]?.scope.names.keys() ?? [])].filter(name => !first.scope.names.has(name))
  gather(stage, { list: step.list, scopes: later, names: between })
}

/** Every number that all rows have, as a list in the outer scope: `layers.x`. */
export function gatherRows(stage: Stage, list: string): void {
  const scopes = rowsOf(stage, list)
  gather(stage, { list, scopes, names: scopes[0]?.scope.names.keys() ?? [] })
}

function gather(
  stage: Stage,
  { list, scopes, names }: { list: string; scopes: readonly ListRow[]; names: Iterable<string> },
): void {
  for (const name of names) {
    const entities = scopes
      .map(({ scope }) => scope.names.get(name))
      .filter(found => found !== undefined && 'kind' in found)
    if (entities.length !== scopes.length) continue
    stage.scope.names.set(`${list}.${name}`, entities)
    const { block, place } = stage
    const key = `${stage.blockName}.${name}`
    if (!stage.draft.names.has(key)) stage.draft.names.set(key, { kind: 'rows', key, name, block, entities, place })
  }
}
