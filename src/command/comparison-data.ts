import type { Comparison } from '../comparison/types.ts'
import type { Shown } from '../quantity/types.ts'
import type { ComparedAbout } from './comparison-words.ts'

/** The comparison as JSON data, format 1: quantities as shown, with their unit's text; numbers that are not finite are left out. */
export function comparisonData(comparison: Comparison, about: ComparedAbout): unknown {
  const { errors, ...rest } = comparison
  const plain: unknown = JSON.parse(JSON.stringify({ ...rest, errors }, replace))
  return { format: 1, ...about, ...(typeof plain === 'object' ? plain : {}) }
}

const isShown = (value: unknown): value is Shown =>
  typeof value === 'object' && value !== null && 'digits' in value && 'unit' in value && 'exact' in value

function replace(_key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) return undefined
  return isShown(value) ? { shown: value.digits, unit: value.unit.text } : value
}
