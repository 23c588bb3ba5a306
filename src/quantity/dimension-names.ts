import { namedDimensions, rowOf } from './dimension-table.ts'
import { displayUnit } from './display-unit.ts'
import type { Dimension, System } from './types.ts'

const byName = new Map(namedDimensions.map(each => [each.name, each]))

/** The dimension that modules call by this name (`pressure`, `force_per_length`, `ratio`), or undefined. */
export const dimensionByName = (name: string): Dimension | undefined => byName.get(name)?.dimension

/** A dimension by its name as a message says it, without a unit: `an angle`. */
export const dimensionSaid = (name: string): string => byName.get(name)?.words ?? name

/** Every name of a dimension. */
export const dimensionNames: readonly string[] = namedDimensions.map(each => each.name)

/** The first name of a dimension, `pressure`; for one without a name its unit in base units, `kN*m^3`. */
export const dimensionName = (dimension: Dimension): string =>
  rowOf(dimension)?.name ?? displayUnit(dimension, 'SI').text

/** Words and unit for a message: `a pressure (kN/m^2)`, `a plain number`, `a quantity in kN*m^3`. */
export function dimensionWords(dimension: Dimension, system: System): string {
  const unit = displayUnit(dimension, system).text
  const row = rowOf(dimension)
  if (!row) return `a quantity in ${unit}`
  return unit ? `${row.words} (${unit})` : row.words
}
