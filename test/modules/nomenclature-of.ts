import { symbolTex } from '../../src/formula/symbol.ts'
import { modulesByWing } from '../../src/modules/catalogue.ts'
import type { Wing } from '../../src/modules/ledger.ts'
import type { SymbolUse } from './symbol-uses.ts'
import { symbolUses } from './symbol-uses.ts'

/** A symbol of a wing with its uses. Symbols are one where they are printed alike: `gamma` and `\gamma`. */
export interface WingSymbol {
  readonly symbol: string
  readonly uses: readonly SymbolUse[]
}

/** The symbols of modules by their TeX. */
export function symbolsIn(uses: readonly SymbolUse[]): ReadonlyMap<string, WingSymbol> {
  const symbols = new Map<string, { symbol: string; uses: SymbolUse[] }>()
  for (const use of uses) {
    const tex = symbolTex(use.symbol)
    const found = symbols.get(tex) ?? { symbol: use.symbol, uses: [] }
    found.uses.push(use)
    symbols.set(tex, found)
  }
  return symbols
}

/** The symbols of a wing by their TeX. */
export const symbolsOfWing = (wing: Wing): ReadonlyMap<string, WingSymbol> =>
  symbolsIn(modulesByWing[wing].flatMap(symbolUses))

export const modulesOf = ({ uses }: WingSymbol): readonly string[] => [...new Set(uses.map(({ module }) => module))]

/** What is wrong with the symbols of a wing, given the meanings that stand by hand: two dimensions, or meanings too few or too many. */
export function faultsOf(
  symbols: ReadonlyMap<string, WingSymbol>,
  meanings: Readonly<Record<string, string>>,
): readonly string[] {
  const keys = Object.keys(meanings)
  const told = new Set(keys.map(symbolTex))
  const several = (tex: string): boolean => modulesOf(symbols.get(tex) ?? { symbol: '', uses: [] }).length > 1
  const clashes = [...symbols].flatMap(([tex, found]) => {
    const by = modulesOf(found).join(', ')
    if (new Set(found.uses.map(({ dimension }) => dimension)).size > 1)
      return [`${found.symbol} has two dimensions: ${by}`]
    const says = new Set(found.uses.map(use => use.says))
    return several(tex) && says.size > 1 && !told.has(tex) ? [`${found.symbol} has no one meaning: ${by}`] : []
  })
  return [
    ...clashes,
    ...keys.filter(key => !several(symbolTex(key))).map(key => `${key} has an entry, but not two modules`),
    ...(told.size < keys.length ? ['one symbol has two entries'] : []),
  ]
}
