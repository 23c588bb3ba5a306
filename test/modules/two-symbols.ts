import { symbolTex } from '../../src/formula/symbol.ts'
import type { Input, Module } from '../../src/modules/module.ts'
import type { SymbolUse } from './symbol-uses.ts'

/** A number that a module asks for: what its author types, what it says, how it is printed. */
export interface Asked {
  readonly module: string
  readonly code: string | undefined
  readonly name: string
  readonly dimension: string
  readonly says: string
  readonly symbol: string
}

/** What a module asks for, the fields of its lists too. */
export function askedBy(module: Module): readonly Asked[] {
  const within = (inputs: Readonly<Record<string, Input>>): readonly Asked[] =>
    Object.entries(inputs).flatMap(([name, input]) => {
      if (input.kind === 'list') return within(input.fields)
      if (input.kind !== 'quantity') return []
      const { dimension, says, symbol = name } = input
      return [{ module: module.id, code: module.code, name, dimension, says, symbol }]
    })
  return within(module.inputs)
}

/**
 * Inputs of one wing that are one quantity and have two symbols: they go by one name, or say the same in the same words. Modules of
 * two design codes may each print the symbol of its own. `apart` lists names that stand for several quantities.
 */
export function twoSymbols(asked: readonly Asked[], apart: readonly string[]): readonly string[] {
  const named = asked.filter(({ name }) => !apart.includes(name))
  return [...pairsBy(named, ({ name }) => name), ...pairsBy(asked, ({ says }) => says)]
}

/** Names that are listed as several quantities and are not. */
export const needless = (asked: readonly Asked[], apart: readonly string[]): readonly string[] =>
  apart.filter(name => pairsBy(asked, each => each.name).every(fault => !fault.startsWith(`${name}: `)))

function pairsBy(asked: readonly Asked[], key: (each: Asked) => string): readonly string[] {
  const groups = new Map<string, Asked[]>()
  for (const each of asked) {
    const of = `${key(each)}\n${each.dimension}`
    groups.set(of, [...(groups.get(of) ?? []), each])
  }
  return [...groups.values()].flatMap(group => {
    const first = group[0]
    if (!first) return []
    const other = group.find(each => group.some(one => differ(one, each)))
    const symbols = [...new Set(group.map(each => `${each.symbol} (${each.module})`))]
    return other ? [`${key(first)}: ${symbols.join(', ')}`] : []
  })
}

const differ = (one: Asked, other: Asked): boolean =>
  symbolTex(one.symbol) !== symbolTex(other.symbol) && !(one.code && other.code && one.code !== other.code)

/** Symbols of a module that a row of another one prints too: `z_1` beside the first row of `z`. */
export function takenByRows(uses: readonly SymbolUse[], ofRows: readonly string[]): readonly string[] {
  const rows = new Set(ofRows.map(symbolTex))
  return uses.flatMap(({ module, symbol }) => {
    const stem = /^(.+)_[1-9]\d*$/.exec(symbol)?.[1]
    return stem && rows.has(symbolTex(stem)) ? [`${module}: ${symbol} is printed for a row of ${stem} too`] : []
  })
}

/** Symbols of the fields of a module's lists: their rows print them with the numbers 1, 2 and so on. */
export const symbolsOfRows = (module: Module): readonly string[] =>
  Object.values(module.inputs).flatMap(input => {
    if (input.kind !== 'list') return []
    return Object.entries(input.fields).flatMap(([name, field]) =>
      field.kind === 'quantity' ? [field.symbol ?? name] : [],
    )
  })
