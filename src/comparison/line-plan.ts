import type { Entity, Operands, PlannedLine } from '../evaluation/plan-types.ts'
import { nodeText } from '../formula/formula-text.ts'
import { withNames } from '../formula/with-names.ts'
import type { Naming } from './naming.ts'

/** What stands for the names of a line's formula. */
export const operandsOf = (line: PlannedLine): Operands | undefined =>
  line.kind === 'formula' || line.kind === 'check'
    ? line.operands
    : line.kind === 'branch'
      ? line.test?.operands
      : undefined

/** How a line is planned, as a text: its formula over shared keys, table, method, words, remark and reference. */
export function lineplan({ naming }: { readonly naming: Naming }, line: PlannedLine): string {
  const head = [line.kind, line.says, line.source?.key, line.source?.at, line.row]
  const formula = (of: Extract<PlannedLine, { kind: 'formula' }>['formula'], operands: Operands): string => {
    const key = (name: string): string => {
      const found = operands.get(name)
      if (!found) return name
      return 'kind' in found ? naming.key(found.key) : found.map(each => naming.key(each.key)).join(' ')
    }
    return `${nodeText(withNames(of.tree, key))} to ${of.to?.text ?? ''}`
  }
  const tail = (): unknown[] => {
    switch (line.kind) {
      case 'formula':
        return [formula(line.formula, line.operands)]
      case 'check':
        return [formula(line.formula, line.operands), line.sides?.unit.text, line.sides?.demandLeft]
      case 'look': {
        const axis = (key: number | Entity | undefined) => (typeof key === 'object' ? naming.key(key.key) : key)
        return [line.table.title, axis(line.rowKey), axis(line.columnKey), line.tableUnit.text]
      }
      case 'branch':
        return [line.chosen, line.test && formula(line.test.formula, line.test.operands)]
      case 'solve': {
        const taken = (value: string | Entity | readonly Entity[]) =>
          typeof value === 'string'
            ? value
            : 'kind' in value
              ? naming.key(value.key)
              : value.map(each => naming.key(each.key))
        return [line.step.method.title, line.takes.map(({ name, value }) => [name, taken(value)])]
      }
    }
  }
  return JSON.stringify([...head, ...tail()])
}
