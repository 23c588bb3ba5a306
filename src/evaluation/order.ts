import type { Diagnostic, Note } from '../diagnostic/diagnostic.ts'
import type { Notebook } from '../notebook/types.ts'
import type { Definition, Use } from './definition.ts'
import { givesOf } from './given-names.ts'

export interface Ordered {
  /** Each after everything it uses; otherwise in the author's order. Rings are left out. */
  readonly order: readonly Definition[]
  /** One for each knot of rings, at its first link. */
  readonly diagnostics: readonly Diagnostic[]
  /** Keys that stand in a ring. */
  readonly rings: ReadonlyMap<string, Diagnostic>
}

type State = 'open' | 'done'
interface Frame {
  readonly definition: Definition
  next: number
}

interface Walk {
  readonly order: Definition[]
  readonly diagnostics: Diagnostic[]
  readonly rings: Map<string, Diagnostic>
  readonly state: Map<Definition, State>
  readonly targetOf: TargetOf
}

/**
 * The order of evaluation, by depth-first walk over what each definition uses. A ring is reported once, link by link.
 * The walk keeps its own stack, so that a chain of any length is followed.
 */
export function order(definitions: readonly Definition[], notebook: Notebook): Ordered {
  const targetOf = targetsIn(definitions, notebook)
  const walk: Walk = { order: [], diagnostics: [], rings: new Map(), state: new Map(), targetOf }
  for (const definition of definitions) if (!walk.state.has(definition)) follow(walk, definition)
  const { diagnostics, rings } = walk
  return { order: walk.order.filter(({ key }) => !rings.has(key)), diagnostics, rings }
}

function follow(walk: Walk, start: Definition): void {
  const { state } = walk
  const stack: Frame[] = [{ definition: start, next: 0 }]
  state.set(start, 'open')
  for (let frame = stack.at(-1); frame; frame = stack.at(-1)) {
    const { definition } = frame
    const use = definition.uses[frame.next]
    frame.next += 1
    if (!use) {
      stack.pop()
      state.set(definition, 'done')
      walk.order.push(definition)
      continue
    }
    const target = walk.targetOf(use, definition.block)
    if (!target || state.get(target) === 'done') continue
    if (state.get(target) === 'open') closeRing(walk, stack.slice(stack.findIndex(open => open.definition === target)))
    else {
      state.set(target, 'open')
      stack.push({ definition: target, next: 0 })
    }
  }
}

type TargetOf = (use: Use, block: number) => Definition | undefined

/**
 * Finds the definition that gives a name: the assumption, input or statement of that key, the list whose row it is, or the
 * module of its block where one of the module's steps has that name.
 */
function targetsIn(definitions: readonly Definition[], notebook: Notebook): TargetOf {
  const byKey = new Map(definitions.map(definition => [definition.key, definition]))
  const gives = new Map<string, (name: string) => boolean>()
  for (const definition of definitions) {
    if (definition.kind === 'module') gives.set(definition.key, givesOf(definition.module))
    for (const key of rowKeys(definition)) byKey.set(key, definition)
  }
  return ({ name }, block) => {
    const key = name.includes('.') ? name : `${notebook.blocks[block]?.name.text}.${name}`
    const dot = key.indexOf('.')
    const owner = key.slice(0, dot)
    return byKey.get(key) ?? (gives.get(owner)?.(key.slice(dot + 1)) ? byKey.get(owner) : undefined)
  }
}

/** The keys of a list's values row by row: `stack.x_2`. */
function rowKeys(definition: Definition): string[] {
  if (definition.kind !== 'input' || definition.value.kind !== 'rows') return []
  const block = definition.key.slice(0, definition.key.indexOf('.'))
  return definition.value.rows.flatMap((row, index) => [...row.keys()].map(field => `${block}.${field}_${index + 1}`))
}

/** Marks the keys of a ring. Rings that share a link with a reported one are one knot and get no message of their own. */
function closeRing(walk: Walk, ring: readonly Frame[]): void {
  const keys = ring.map(frame => frame.definition.key)
  const known = keys.map(key => walk.rings.get(key)).find(fault => fault !== undefined)
  const fault = known ?? ringFault(ring, keys)
  if (!known) walk.diagnostics.push(fault)
  for (const key of keys) if (!walk.rings.has(key)) walk.rings.set(key, fault)
}

function ringFault(ring: readonly Frame[], keys: readonly string[]): Diagnostic {
  const notes = ring.map(({ definition, next }, index): Note & { place: Diagnostic['place'] } => ({
    says: `\`${keys[index]}\` uses \`${keys[(index + 1) % keys.length]}\``,
    place: definition.uses[next - 1]?.place ?? definition.place,
  }))
  const [first] = notes
  if (!first) throw new Error('a ring has a link')
  const round = [...keys, keys[0]].map(key => `\`${key}\``)
  return {
    rule: 'reference-cycle',
    severity: 'error',
    place: first.place,
    says:
      keys.length === 1 ? `${round[0]} refers to itself` : `Values refer to each other in a ring: ${round.join(' → ')}`,
    help: 'One of these must be given by an assumption, or by a formula that does not need the others',
    notes,
  }
}
