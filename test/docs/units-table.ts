import { dimensionWords } from '../../src/quantity/dimension-names.ts'
import { listedUnit, unitNames } from '../../src/quantity/units.ts'

/** The closed list of units as Markdown, one row a dimension. */
export function unitsTable(): string {
  const rows = new Map<string, string[]>()
  for (const name of unitNames) {
    const unit = listedUnit(name)
    if (!unit) continue
    const words = unit.dimension.key === '' ? 'ratio, angle' : dimensionWords(unit.dimension, 'SI')
    rows.set(words, [...(rows.get(words) ?? []), `\`${name}\``])
  }
  return [
    '| dimension | units |',
    '| --- | --- |',
    ...[...rows].map(([words, names]) => `| ${words} | ${names.join(', ')} |`),
  ].join('\n')
}
