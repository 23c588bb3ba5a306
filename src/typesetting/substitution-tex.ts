import type { Printed, Substitution } from '../evaluation/workings.ts'
import { spokenNumbers, spokenSymbols } from '../formula/spoken.ts'
import { blockIndex } from '../formula/symbol.ts'
import { type Linked, texNumbers, texSymbols } from '../formula/tex.ts'

/** A formula ready to be set: its TeX, and what a reader hears. */
export interface Typeset {
  readonly tex: string
  readonly spoken: string
}

/** The formula in symbols. */
export function symbolsOf(working: Substitution): Typeset {
  const apart = symbolsApart(working)
  return { tex: texSymbols(working.formula, apart), spoken: spokenSymbols(working.formula, apart) }
}

/** The symbol of each name; where several values of one line have the same, each with the name of its block in words below it. */
function symbolsApart({ operands }: Substitution): (name: string) => string | undefined {
  const alike = new Map<string, Set<string>>()
  for (const [name, printed] of operands) {
    const symbol = symbolOf(printed) ?? name
    alike.set(symbol, (alike.get(symbol) ?? new Set()).add(first(printed)?.to ?? name))
  }
  return name => {
    const symbol = symbolOf(operands.get(name))
    const [block, own] = name.split('.')
    const apart = symbol !== undefined && own !== undefined && (alike.get(symbol)?.size ?? 0) > 1
    return apart && block ? `${symbol}_${blockIndex(block)}` : symbol
  }
}

/** The symbol of an operand; of a list that of its rows, without the number of a row. */
function symbolOf(printed: Printed | readonly Printed[] | undefined): string | undefined {
  const symbol = first(printed)?.symbol
  return printed !== undefined && isMany(printed) ? symbol?.replace(/_\d+$/, '') : symbol
}

/** The formula with its numbers put in, each a link to where it was made. */
export function numbersOf(working: Substitution): Typeset {
  const { numbers, bare } = working
  const formula = numbers ?? working.formula
  const shown = (name: string): Linked | readonly Linked[] => shownOf(working, name)
  return { tex: texNumbers(formula, shown, { bare }), spoken: spokenNumbers(formula, shown, { bare }) }
}

/** Where the first value of a formula was made. */
export const originOf = ({ operands }: Substitution): string | undefined => first([...operands.values()][0])?.to

function shownOf(working: Substitution, name: string): Linked | readonly Linked[] {
  const printed = working.operands.get(name) ?? []
  return isMany(printed) ? printed.map(linked) : linked(printed)
}

function linked({ shown, to }: Printed): Linked {
  return to === undefined ? shown : { ...shown, to }
}

function first(printed: Printed | readonly Printed[] | undefined): Printed | undefined {
  return printed === undefined || !isMany(printed) ? printed : printed[0]
}

function isMany(printed: Printed | readonly Printed[]): printed is readonly Printed[] {
  return Array.isArray(printed)
}
