import { readFormula } from '../formula/read-formula.ts'
import type { Formula } from '../formula/types.ts'
import { dimensionByName } from '../quantity/dimension-names.ts'
import type { Dimension } from '../quantity/types.ts'
import type { Draft } from './draft.ts'

/** A formula of a module's own text. Throws where it cannot be read: our own bug. */
export function ownFormula(draft: Draft, text: string): Formula {
  const known = draft.formulas.get(text)
  if (known) return known
  const read = readFormula(text)
  if (!read.ok) throw new Error(`formula \`${text}\`: ${read.fault.says}`)
  draft.formulas.set(text, read.formula)
  return read.formula
}

/** A dimension by the name a module uses. Throws where there is none: our own bug. */
export function ownDimension(name: string): Dimension {
  const dimension = dimensionByName(name)
  if (!dimension) throw new Error(`no dimension is called \`${name}\``)
  return dimension
}
