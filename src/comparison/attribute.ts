import { run } from '../evaluation/evaluate.ts'
import { plan } from '../evaluation/plan.ts'
import type { Plan } from '../evaluation/plan-types.ts'
import type { Module } from '../modules/module.ts'
import type { Notebook } from '../notebook/types.ts'
import type { IdentifiedEdit } from './recheck.ts'
import type { Attribution } from './types.ts'

/** The numbers of one notebook, by the keys and check identities that both share. */
export interface Numbers {
  readonly value: (key: string) => number
  readonly ratio: (check: string) => number
}

export type ReadNumbers = (plan: Plan, slots: Float64Array) => Numbers

/** Changes that are put in together, and what that gives. */
export interface Packet {
  readonly edits: readonly IdentifiedEdit[]
  readonly numbers: Numbers
}

export interface Packets {
  readonly packets: readonly Packet[]
  /** All changes but those of assumptions' numbers, as one; taken where one at a time does not give a number. */
  readonly grouped: () => readonly Packet[]
  /** True where they are that from the start, being too many. */
  readonly tooMany: boolean
}

/** So many plans are made at most: beyond it, changes of formulas and blocks are put in as one. */
const mostPlans = 40

export interface PutIn {
  readonly notebook: Notebook
  readonly plan: Plan
  readonly modules: readonly Module[]
  readonly read: ReadNumbers
}

/** Puts the changes into the old notebook one at a time, those that need one another together. */
export function putIn(edits: readonly IdentifiedEdit[], into: PutIn): Packets {
  const putting = edits.filter(({ put }) => put !== undefined)
  const sets = joined(putting)
  const isNumber = (set: readonly IdentifiedEdit[]): boolean =>
    set.every(({ number }) => number && canPut(into.plan, number.key))
  const numbers = sets.filter(isNumber)
  const others = sets.filter(set => !isNumber(set))
  const asOne = (): Packet[] => (others.length > 0 ? [packetOf(others.flat(), into)] : [])
  const plain = numbers.map(set => packetOf(set, into))
  let one: readonly Packet[] | undefined
  const grouped = (): readonly Packet[] => {
    one ??= [...plain, ...asOne()]
    return one
  }
  const tooMany = others.length > mostPlans
  return { packets: tooMany ? grouped() : [...plain, ...others.map(set => packetOf(set, into))], grouped, tooMany }
}

/** Whether a number can be put in without planning anew: a choice taken from it would be another. */
function canPut({ names, chosen }: Plan, key: string): boolean {
  const named = names.get(key)
  return named?.kind === 'number' && !chosen.has(named)
}

function packetOf(edits: readonly IdentifiedEdit[], into: PutIn): Packet {
  const changed = edits.flatMap(({ number }) => (number ? [[number.key, number.si] as const] : []))
  const isRun = changed.length === edits.length && changed.every(([key]) => canPut(into.plan, key))
  if (isRun) return { edits, numbers: into.read(into.plan, run(into.plan, { changed: new Map(changed) })) }
  const blocks = edits.reduce((all, { put }) => put?.(all) ?? all, into.notebook.blocks)
  const made = plan({ ...into.notebook, blocks, mentions: [] }, into.modules)
  return { edits, numbers: into.read(made, run(made)) }
}

/** Sets of changes of which none can be put in without the others: one brings what another uses. */
function joined(edits: readonly IdentifiedEdit[]): IdentifiedEdit[][] {
  const sets: IdentifiedEdit[][] = []
  for (const edit of edits) {
    const near = sets.filter(set => set.some(each => needs(each, edit) || needs(edit, each)))
    for (const set of near) sets.splice(sets.indexOf(set), 1)
    sets.push([...near.flat(), edit])
  }
  return sets.map(set => set.toSorted((a, b) => edits.indexOf(a) - edits.indexOf(b)))
}

const needs = (a: IdentifiedEdit, b: IdentifiedEdit): boolean =>
  b.brings.some(key => [...a.uses, ...a.brings].some(use => use === key || use.startsWith(`${key}.`)))

/** What a number moved by, taken apart over the changes that reach it. */
export function attribute(
  ends: { readonly old: number; readonly now: number },
  about: {
    readonly packets: readonly Packet[]
    readonly of: (numbers: Numbers) => number
    readonly reaches: (edit: IdentifiedEdit) => boolean
  },
): Attribution | undefined {
  const { packets, of, reaches } = about
  const near = packets.filter(({ edits }) => edits.some(reaches))
  const parts = near.map(({ edits, numbers }) => ({
    changes: edits.map(({ id }) => id),
    alone: near.length === 1 ? ends.now - ends.old : of(numbers) - ends.old,
  }))
  if (parts.length === 0 || !parts.every(({ alone }) => Number.isFinite(alone))) return undefined
  const least = noise * Math.max(Math.abs(ends.old), Math.abs(ends.now))
  const told = parts.filter(({ alone }) => Math.abs(alone) > least)
  const sum = told.reduce((total, { alone }) => total + alone, 0)
  return { parts: told, together: parts.length === 1 ? 0 : ends.now - ends.old - sum }
}

/** What is apart by less than that, relative to the number, is the same number worked out in another order. */
export const noise = 1e-12
