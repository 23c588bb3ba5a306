import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Compiled, Formula, Kind } from '../formula/types.ts'
import type { Reading } from './define.ts'
import { breakKey, compileIn, type Draft, type Find, faultAt, operandsOf, proveIn, stopKey } from './draft.ts'
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
  return draft.names.get(key) ?? draft.broken.get(key) ?? draft.broken.get(key.slice(0, key.indexOf('.')))
}

/**
 * Makes an author's formula ready, or reports every fault in it and marks `key` as broken. What an earlier fault
 * already stops is counted there and gets no message of its own.
 */
export function soundFormula(draft: Draft, reading: Reading, about: { key: string; block: string }): Sound | undefined {
  const { written, read } = reading
  if (!read.ok) {
    breakKey(draft, about.key, faultAt(read.fault, { written }))
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
  const proof = proveIn(formula, find)
  if (!proof.ok) {
    const names = namesInReach(draft, about.block)
    const faults = proof.faults.map(
      fault => wordFault(draft, formula, about.block) ?? faultAt(fault, { written, names }),
    )
    for (const fault of faults) breakKey(draft, about.key, fault)
    return undefined
  }
  return { formula, operands: operandsOf(formula, find), result: proof.result, compiled: compileIn(formula, find) }

  function wordFault(from: Draft, inside: Formula, block: string): Diagnostic | undefined {
    const word = inside.names.find(name => kindOfName(lookUp(from, name, block)) === 'word')
    if (!word) return undefined
    const says = `\`${word}\` is a short text, so it cannot stand in a formula`
    return { rule: 'value-kind', severity: 'error', place: written.place, says }
  }
}

const kindOfName = (found: Named | Diagnostic | undefined): string | undefined =>
  found && 'kind' in found ? found.kind : undefined

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

/** Every name that could have been meant, as it would be written in this block. */
function namesInReach(draft: Draft, block: string): string[] {
  const own = `${block}.`
  return [...draft.names.keys()].map(key => (key.startsWith(own) ? key.slice(own.length) : key))
}
