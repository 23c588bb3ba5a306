import { reached } from './anchors.ts'
import type { PlannedLine } from './plan-types.ts'
import type { PrintContext } from './print-context.ts'
import { usedBy } from './used-by.ts'
import type { Workings } from './workings.ts'

type Users = Map<string, { readonly id: string; readonly number: string }[]>

/** By key of a value or word: the printed lines and given rows that use it, in the package's order. */
export function usersOf(context: PrintContext): Workings['users'] {
  const users: Users = new Map()
  const { results, numbering } = context
  for (const block of results.plan.blocks) {
    if (!block || block.kind === 'assume') continue
    if (block.kind === 'calc') {
      const number = numbering.blocks[block.index] ?? ''
      for (const { value, word, line } of block.given) {
        const id = typeof value === 'string' ? '' : (numbering.origins.get(value)?.id ?? '')
        if (word)
          add(users, word.key, {
            id: id || `b-${context.results.plan.notebook.blocks[block.index]?.name.text}`,
            number,
          })
        else if (typeof value !== 'string' && value.same && !line) add(users, value.same.key, { id, number })
      }
    }
    const second = block.kind === 'calc' ? (block.second?.lines ?? []) : []
    for (const line of [...block.lines, ...second]) addLine(context, users, line)
  }
  return users
}

function addLine(context: PrintContext, users: Users, line: PlannedLine): void {
  const origin = context.numbering.lines.get(line)
  if (!origin || !reached(line, context.results.slots)) return
  for (const entity of usedBy(line)) add(users, entity.key, origin)
}

function add(users: Users, key: string, user: { id: string; number: string }): void {
  const at = users.get(key) ?? []
  if (!at.some(known => known.id === user.id)) at.push(user)
  users.set(key, at)
}
