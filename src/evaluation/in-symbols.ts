import { formulaText } from '../formula/formula-text.ts'
import type { Formula } from '../formula/types.ts'
import { withNames } from '../formula/with-names.ts'
import type { Printed, Substitution } from './workings.ts'

/** Whether an operand is one value and not a list of them. */
export const isOne = (printed: Printed | readonly Printed[]): printed is Printed => 'shown' in printed

type Operand = Printed | readonly Printed[]

const itsSymbol = (found: Operand): string =>
  isOne(found) ? found.symbol : found.map(({ symbol }) => symbol).join(' ')

/** The formula as it is printed, its names as their symbols; and the one that the numbers are put into, where that is another. */
export function inSymbols(
  { formula, numbers, operands }: Substitution,
  symbolOf: (found: Operand, name: string) => string = itsSymbol,
): { readonly formula: string; readonly numbers?: string } {
  const symbol = (name: string): string => {
    const found = operands.get(name)
    return found ? symbolOf(found, name) : name
  }
  const text = (of: Formula): string => formulaText({ ...of, tree: withNames(of.tree, symbol) })
  return { formula: text(formula), ...(numbers ? { numbers: text(numbers) } : {}) }
}
