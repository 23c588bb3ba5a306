import { givenAnchor } from './anchors.ts'
import { linesOf } from './block-lines.ts'
import type { Entity, PlannedCalc, PlannedGiven, PlannedLine, Word } from './plan-types.ts'
import { isKnown, type PrintContext } from './print-context.ts'
import { tablesUsedBy, usedBy } from './used-by.ts'
import type { Workings } from './workings.ts'

type Users = Map<string, { readonly id: string; readonly number: string }[]>

/** By key of a value or word: the printed lines and given rows that use it, in the package's order. */
export function usersOf(context: PrintContext): Workings['users'] {
  const users: Users = new Map()
  for (const block of context.results.plan.blocks) {
    if (!block) continue
    if (block.kind === 'calc') for (const given of block.given) addGiven(context, users, { block, given })
    for (const line of linesOf(block)) addLine(context, users, line)
  }
  return users
}

/** A row that takes a value or word over unchanged; a row that is worked out is used by its line. */
function addGiven(context: PrintContext, users: Users, at: { block: PlannedCalc; given: PlannedGiven }): void {
  const { block, given } = at
  const used = taken(given)
  if (!used || !isKnown(context, given.value)) return
  const { numbering, results } = context
  const id = givenAnchor(results.plan.notebook.blocks[block.index]?.name.text ?? '', given)
  add(users, used.key, { id, number: numbering.blocks[block.index] ?? '' })
}

/** The value or word that an input takes over unchanged, where it does. */
export function taken({ value, word, line, taken: byDefault }: PlannedGiven): Entity | Word | undefined {
  const used = typeof value === 'string' ? word : value.same
  return line || byDefault ? undefined : used
}

function addLine(context: PrintContext, users: Users, line: PlannedLine): void {
  const origin = context.numbering.lines.get(line)
  if (!origin) return
  for (const { key } of [...usedBy(line), ...tablesUsedBy(line)]) add(users, key, origin)
}

function add(users: Users, key: string, user: { id: string; number: string }): void {
  const at = users.get(key) ?? []
  if (!at.some(known => known.id === user.id)) at.push(user)
  users.set(key, at)
}
