import { inSymbols, isOne } from '../evaluation/in-symbols.ts'
import { shownWords } from '../evaluation/shown-words.ts'
import type { Line, Printed, Substitution } from '../evaluation/workings.ts'
import { symbolInRow } from './row-symbol.ts'

/** The formula in symbols, and the one the numbers are put into where that is another; where two values have one symbol, their names stand. */
export function symbolsText(working: Substitution, { row }: Pick<Line, 'row'>): string {
  const homes = new Map<string, Set<string>>()
  for (const [name, found] of working.operands) {
    const { symbol = name, to = name } = [found].flat()[0] ?? {}
    homes.set(symbol, (homes.get(symbol) ?? new Set()).add(to))
  }
  const symbolOf = (found: Printed | readonly Printed[], name: string): string => {
    // The values of a list have one symbol, without the numbers of its rows.
    if (!isOne(found)) return found[0]?.symbol.replace(/_\d+$/, '') ?? name
    return (homes.get(found.symbol)?.size ?? 0) > 1 ? name : symbolInRow(found.symbol, { name, row })
  }
  const { formula, numbers } = inSymbols(working, symbolOf)
  return numbers === undefined ? formula : `${formula}; ${numbers}`
}

/** The numbers as they are put in, and whether they stand without their units. */
export const inputsText = ({ operands, bare }: Substitution): string =>
  [...[...operands.values()].map(operandText), bare ? 'bare' : ''].join('; ')

export function operandText(value: string | Printed | readonly Printed[]): string {
  if (typeof value === 'string') return value
  return isOne(value) ? shownWords(value.shown) : value.map(({ shown }) => shownWords(shown)).join(', ')
}
