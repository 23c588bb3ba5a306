import type { InnerText } from './inner-text.ts'
import { isUsableName } from './is-usable-name.ts'
import { readAssumption } from './read-assumption.ts'
import { readYaml } from './read-yaml.ts'
import type { Reading } from './reading.ts'
import type { Assumption } from './types.ts'

/** Returns the rows of an `assume` block. Refuses names that formulas could not use, and rows without a value. */
export function readAssumptions(
  inner: InnerText,
  reading: Reading,
): { assumptions: readonly Assumption[]; whole: boolean } {
  const { entries, whole } = readYaml(inner, reading)
  const rows = entries.map(entry => {
    const assumption = readAssumption(entry, reading)
    return isUsableName(entry.key, reading) ? assumption : undefined
  })
  const assumptions = rows.filter(row => row !== undefined)
  return { assumptions, whole: whole && assumptions.length === rows.length }
}
