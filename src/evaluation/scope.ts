import type { Entity, Row } from './plan-types.ts'

/** Names of a module's block, or of one row of it. */
export interface Scope {
  readonly names: Map<string, Entity | readonly Entity[]>
  /** Choices by name. */
  readonly words: Map<string, string>
  /** Optional inputs that were given. */
  readonly given: Set<string>
  /** The rows of each list, each with a scope of its own. */
  readonly lists: Map<string, readonly ListRow[]>
  readonly parent?: Scope
  /** In a row's scope: the row before it. */
  readonly before?: Scope
}

export interface ListRow {
  readonly scope: Scope
  readonly row: Row
}

/** A scope with nothing in it, inside another where it has one. */
export const newScope = (parent?: Scope, before?: Scope): Scope => ({
  names: new Map(),
  words: new Map(),
  given: new Set(),
  lists: new Map(),
  ...(parent ? { parent } : {}),
  ...(before ? { before } : {}),
})

const prev = 'prev_'

/** What a name stands for: in this scope, in an outer one, or with `prev_` before it in the row before. */
export function findIn(scope: Scope, name: string): Entity | readonly Entity[] | undefined {
  const found = scope.names.get(name) ?? (scope.parent && findIn(scope.parent, name))
  return found ?? (name.startsWith(prev) ? scope.before?.names.get(name.slice(prev.length)) : undefined)
}

/** The word of a choice, in this scope or an outer one. */
export function wordIn(scope: Scope, name: string): string | undefined {
  return scope.words.get(name) ?? (scope.parent && wordIn(scope.parent, name))
}

/** Whether an input was given, in this scope or an outer one. */
export const isGiven = (scope: Scope, name: string): boolean =>
  scope.given.has(name) || (scope.parent !== undefined && isGiven(scope.parent, name))
