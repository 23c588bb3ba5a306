import { entitiesOf } from './operands.ts'
import type { Entity, PlannedLine, Points } from './plan-types.ts'

/** The entities a line uses directly. */
export function usedBy(line: PlannedLine): readonly Entity[] {
  if (line.kind === 'formula' || line.kind === 'check') return entitiesOf(line.operands)
  if (line.kind === 'look') return [line.rowKey, line.columnKey].filter(key => typeof key === 'object')
  if (line.kind === 'branch') return line.test ? entitiesOf(line.test.operands) : []
  return line.takes.flatMap(({ value }) => (typeof value === 'string' ? [] : 'kind' in value ? [value] : [...value]))
}

/** The author's own tables that a line interpolates in. */
export function tablesUsedBy(line: PlannedLine): readonly Points[] {
  const operands = line.kind === 'branch' ? line.test?.operands : 'operands' in line ? line.operands : undefined
  return [...(operands?.values() ?? [])].filter((found): found is Points => 'kind' in found && found.kind === 'points')
}

/** The entities a line gives: none where it is a check or a branch. */
export function givenBy(line: PlannedLine): readonly Entity[] {
  if (line.kind === 'formula' || line.kind === 'look') return [line.gives]
  return line.kind === 'solve' ? line.gives.map(({ entity }) => entity) : []
}
