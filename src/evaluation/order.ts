import type { Diagnostic, Note } from '../diagnostic/diagnostic.ts'
import type { Notebook } from '../notebook/types.ts'
import type { Definition, Use } from './define.ts'

export interface Ordered {
  /** Each after everything it uses; otherwise in the author's order. Rings are left out. */
  readonly order: readonly Definition[]
  /** One for each ring, at its first link. */
  readonly diagnostics: readonly Diagnostic[]
  /** Keys that stand in a ring. */
  readonly rings: ReadonlyMap<string, Diagnostic>
}

type State = 'new' | 'open' | 'done'
interface Frame {
  readonly definition: Definition
  next: number
}

/**
 * The order of evaluation, by depth-first walk over what each definition uses. A ring is reported once, link by link.
 * The walk keeps its own stack, so that a chain of any length is followed.
 */
export function order(definitions: readonly Definition[], notebook: Notebook): Ordered {
  const byKey = new Map(definitions.map(definition => [definition.key, definition]))
  const walk = {
    order: [] as Definition[],
    diagnostics: [] as Diagnostic[],
    rings: new Map<string, Diagnostic>(),
    state: new Map<string, State>(),
  }
  for (const start of definitions) {
    if ((walk.state.get(start.key) ?? 'new') !== 'new') continue
    const stack: Frame[] = [{ definition: start, next: 0 }]
    walk.state.set(start.key, 'open')
    while (stack.length > 0) {
      const frame = stack[stack.length - 1] as Frame
      const use = frame.definition.uses[frame.next]
      frame.next += 1
      if (!use) {
        stack.pop()
        walk.state.set(frame.definition.key, 'done')
        walk.order.push(frame.definition)
        continue
      }
      const target = targetOf(use, { byKey, block: notebook.blocks[frame.definition.block]?.name.text ?? '' })
      const state = target && (walk.state.get(target.key) ?? 'new')
      if (!target || state === 'done') continue
      if (state === 'open') reportRing(walk, stack.slice(stack.findIndex(open => open.definition === target)))
      else {
        walk.state.set(target.key, 'open')
        stack.push({ definition: target, next: 0 })
      }
    }
  }
  return {
    order: walk.order.filter(definition => !walk.rings.has(definition.key)),
    diagnostics: walk.diagnostics,
    rings: walk.rings,
  }
}

/** The definition that gives a name: an assumption, input or statement of that key, or the module of that block. */
function targetOf(use: Use, where: { byKey: ReadonlyMap<string, Definition>; block: string }): Definition | undefined {
  const key = use.name.includes('.') ? use.name : `${where.block}.${use.name}`
  return where.byKey.get(key) ?? where.byKey.get(key.slice(0, key.indexOf('.')))
}

function reportRing(walk: { diagnostics: Diagnostic[]; rings: Map<string, Diagnostic> }, ring: readonly Frame[]): void {
  const keys = ring.map(frame => frame.definition.key)
  const notes: Note[] = ring.map((frame, index) => {
    const use = frame.definition.uses[frame.next - 1]
    return {
      says: `\`${frame.definition.key}\` uses \`${keys[(index + 1) % keys.length]}\``,
      place: use?.place ?? frame.definition.place,
    }
  })
  const first = ring[0]?.definition
  if (!first) return
  const only = ring.length === 1
  const fault: Diagnostic = {
    rule: 'reference-cycle',
    severity: 'error',
    place: notes[0]?.place ?? first.place,
    says: only
      ? `\`${first.key}\` refers to itself`
      : `Values refer to each other in a ring: ${[...keys, keys[0]].map(key => `\`${key}\``).join(' → ')}`,
    help: 'One of these must be given by an assumption, or by a formula that does not need the others',
    notes,
  }
  walk.diagnostics.push(fault)
  for (const key of keys) walk.rings.set(key, fault)
}
