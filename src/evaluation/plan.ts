import type { Module } from '../modules/module.ts'
import type { Notebook } from '../notebook/types.ts'
import { define } from './define.ts'
import type { Definition } from './definition.ts'
import { type Draft, newDraft, stopKey } from './draft.ts'
import { neededOps } from './needed-ops.ts'
import { order } from './order.ts'
import { planAssumption } from './plan-assumption.ts'
import { planInput } from './plan-input.ts'
import { planModule } from './plan-module.ts'
import { gatherStatements, planStatement } from './plan-statement.ts'
import type { Plan } from './plan-types.ts'
import { saidWhole } from './said-whole.ts'
import { warnFixed } from './stated.ts'

/**
 * Names, dimensions and order of a whole notebook, before any number: every formula is proved and compiled once.
 * Faults are collected; what does not depend on them is planned all the same.
 */
export function plan(notebook: Notebook, modules: readonly Module[]): Plan {
  const defined = define(notebook, modules)
  const ordered = order(defined.definitions, notebook)
  const draft = newDraft(notebook, defined.lost)
  draft.diagnostics.push(...notebook.diagnostics, ...defined.diagnostics, ...ordered.diagnostics)
  for (const [key, fault] of [...defined.broken, ...ordered.rings]) draft.broken.set(key, fault)
  for (const definition of ordered.order) planDefinition(draft, definition)
  warnFixed(draft)
  gatherStatements(draft)
  const { system, blocks, names, ranges, trail, chosen } = draft
  const ops = neededOps(draft.ops)
  const start = Float64Array.from(draft.start)
  const broken = new Map([...defined.lost, ...draft.broken])
  const diagnostics = saidWhole(draft)
  return {
    notebook,
    system,
    slots: start.length,
    start,
    ops,
    blocks,
    names,
    ranges,
    trail,
    chosen,
    broken,
    diagnostics,
  }
}

function planDefinition(draft: Draft, definition: Definition): void {
  switch (definition.kind) {
    case 'assumption':
      planAssumption(draft, definition)
      return
    case 'input':
      planInput(draft, definition)
      return
    case 'statement':
      planStatement(draft, definition)
      return
    case 'module': {
      const cause =
        draft.broken.get(definition.key) ??
        definition.uses.map(use => draft.broken.get(use.name)).find(fault => fault !== undefined)
      if (cause) stopKey(draft, definition.key, cause)
      else planModule(draft, definition)
    }
  }
}
