import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Compiled, Fault, Formula, Kind } from '../formula/types.ts'
import type { Written } from '../notebook/types.ts'
import type { Reading } from './definition.ts'
import { breakKey, type Draft, faultAt, stopKey } from './draft.ts'
import type { MeantToDefine } from './meant-to-define.ts'
import { compileIn, type Find, operandsOf, proveIn } from './operands.ts'
import type { Entity, Named, Operands } from './plan-types.ts'

/** An author's formula that is sound: read, every name known, every dimension proved. */
export interface Sound {
  readonly formula: Formula
  readonly operands: Operands
  readonly result: Kind
  readonly compiled: Compiled
}

/** What a name in an author's formula stands for: a local of the block, or `block.name`. */
export function lookUp(draft: Draft, name: string, block: string): Named | Diagnostic | undefined {
  const key = name.includes('.') ? name : `${block}.${name}`
  const owner = key.slice(0, key.indexOf('.'))
  return draft.names.get(key) ?? draft.broken.get(key) ?? draft.broken.get(owner) ?? draft.lost.get(owner)
}

interface About {
  readonly key: string
  readonly block: string
  /** What the line was perhaps meant to define. */
  readonly meant?: MeantToDefine | undefined
}

/**
 * Makes an author's formula ready, or reports every fault in it and marks `key` as broken. What an earlier fault
 * already stops is counted there and gets no message of its own.
 */
export function soundFormula(draft: Draft, reading: Reading, about: About): Sound | undefined {
  const { written, read } = reading
  if (!read.ok) {
    breakKey(draft, about.key, faultAt(read.fault, written))
    return undefined
  }
  const { formula } = read
  for (const name of formula.names) {
    const found = lookUp(draft, name, about.block)
    if (found && 'rule' in found) {
      stopKey(draft, about.key, found)
      return undefined
    }
  }
  const find: Find = name => usable(lookUp(draft, name, about.block))
  const proof = proveIn(draft, formula, find)
  if (!proof.ok) {
    for (const fault of proof.faults) breakKey(draft, about.key, authorFault(draft, fault, { ...about, written }))
    return undefined
  }
  return { formula, operands: operandsOf(formula, find), result: proof.result, compiled: compileIn(formula, find) }
}

/** A fault of an author's formula: a name that is a short text says so, an unknown one is kept until the nearest can be told. */
function authorFault(draft: Draft, fault: Fault, where: About & { readonly written: Written }): Diagnostic {
  const made = faultAt(fault, where.written)
  const { name } = fault
  if (name === undefined) return made
  const found = lookUp(draft, name, where.block)
  if (found && 'kind' in found && found.kind === 'word')
    return { ...made, rule: 'value-kind', says: `\`${name}\` is a short text, so it cannot stand in a formula` }
  const help = where.meant?.name === name ? { help: where.meant.help } : {}
  draft.unknown.set(made, { name, block: where.block, ...help })
  return made
}

function usable(found: Named | Diagnostic | undefined): ReturnType<Find> {
  if (!found || 'rule' in found || found.kind === 'word') return undefined
  return found.kind === 'rows' ? found.entities : found
}

/** The value that a formula hands on unchanged, where it is a bare name. */
export function sameAs(sound: Sound): Entity | undefined {
  if (sound.formula.tree.kind !== 'name') return undefined
  const found = sound.operands.get(sound.formula.tree.name)
  return found && 'kind' in found && found.kind === 'number' ? found : undefined
}
