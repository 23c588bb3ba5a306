import { compile } from '../formula/compile.ts'
import { chooseDigits } from '../formula/reach.ts'
import { coherent } from '../formula/scale.ts'
import type { Formula } from '../formula/types.ts'
import type { Unit } from '../quantity/types.ts'
import type { PrintContext } from './print-context.ts'
import type { PrintedLine } from './print-formula.ts'
import type { Printed } from './workings.ts'

/** A number that is not an entity: a table's cell or key, or a value between. */
export interface Loose {
  readonly value: number
  readonly unit: Unit
  readonly symbol: string
  readonly digits?: string
  readonly to?: string
}

/** A line over loose numbers, as an interpolation has. */
export function printNumbers(
  context: PrintContext,
  about: { readonly formula: Formula; readonly operands: ReadonlyMap<string, Loose>; readonly unit: Unit },
): PrintedLine {
  const { formula, unit } = about
  const names = [...about.operands.keys()]
  const loose = [...about.operands.values()]
  const compiled = compile(formula, name => ({ kind: 'slot', slot: names.indexOf(name) }))
  const operands = loose.map(({ unit: own, digits }, slot) => ({
    slot,
    unit: own,
    ...(digits === undefined ? {} : { digits }),
  }))
  const slots = Float64Array.from(loose, ({ value }) => value)
  const chosen = chooseDigits({ compiled, slots, operands, resultUnit: unit, figures: context.figures })
  const printed = loose.map(({ symbol, unit: own, digits, to }, index): Printed => {
    const shown = { digits: chosen.operands[index] ?? '', unit: own, exact: digits !== undefined }
    return { symbol, shown, ...(to ? { to } : {}) }
  })
  const bare = coherent(formula, name => about.operands.get(name)?.unit, unit)
  const byName = new Map(names.map((name, index) => [name, printed[index] as Printed]))
  return {
    working: { formula, operands: byName, bare },
    result: { digits: chosen.result, unit, exact: false },
    fewer: chosen.fewer,
  }
}
