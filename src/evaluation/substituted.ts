import { formulaText, shownText } from '../formula/formula-text.ts'
import type { Shown } from '../quantity/types.ts'
import type { Printed, Substitution } from './workings.ts'

/** A line's formula as text, and the same with its numbers put in. */
export function substituted({ formula, numbers, operands, bare }: Substitution): { formula: string; shown: string } {
  const shownOf = (name: string): Shown | readonly Shown[] => {
    const printed = operands.get(name)
    if (!printed) return []
    return isOne(printed) ? printed.shown : printed.map(each => each.shown)
  }
  return { formula: formulaText(formula), shown: shownText(numbers ?? formula, shownOf, { bare }) }
}

const isOne = (printed: Printed | readonly Printed[]): printed is Printed => 'shown' in printed
