import { readFormula } from '../formula/read-formula.ts'
import { spokenSymbols } from '../formula/spoken.ts'
import { isSymbolic, symbolSpoken, symbolTex } from '../formula/symbol.ts'
import { texSymbols } from '../formula/tex.ts'
import { readUnit, unitSpoken, unitTex } from '../quantity/unit.ts'
import type { Typeset } from './substitution-tex.ts'

/** Symbols of a module by name: what a sentence of its means by a name. */
export type Symbols = ReadonlyMap<string, string>

const none: Symbols = new Map()

/**
 * What stands in backticks in a sentence, set as in the working: a name of the module's as its symbol, a unit upright, a formula over
 * both. Undefined for what is none of these and stays as it is typed: a file, a command, a word of a choice.
 */
export function typesetWritten(text: string, symbols: Symbols = none): Typeset | undefined {
  const symbol = symbols.get(text) ?? [...symbols.values()].find(own => own === text)
  if (symbol !== undefined) return asSymbol(symbol)
  const read = readUnit(text)
  if (text !== '' && read.ok) return { tex: `{${unitTex(read.unit)}}`, spoken: unitSpoken(read.unit) }
  return isSymbolic(text) ? asSymbol(text) : asFormula(text, symbols)
}

const asSymbol = (symbol: string): Typeset => ({ tex: symbolTex(symbol), spoken: symbolSpoken(symbol) })

function asFormula(text: string, symbols: Symbols): Typeset | undefined {
  const read = readFormula(text)
  if (!read.ok || read.formula.names.some(name => !symbols.has(name) && !isSymbolic(name))) return undefined
  const symbolOf = (name: string): string => symbols.get(name) ?? name
  return { tex: texSymbols(read.formula, symbolOf), spoken: spokenSymbols(read.formula, symbolOf) }
}
