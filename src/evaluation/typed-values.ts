import { childrenOf } from '../formula/names-of.ts'
import type { Node } from '../formula/types.ts'
import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { one } from '../quantity/unit.ts'
import type { BlockWorking, CalcWorking, GivenRow, Line, TypedValue } from './workings.ts'

/**
 * The numbers with a meaning of their own that the author typed into `calc` and `work` blocks, so that no assumption and no basis
 * stands behind them: inputs typed as a number, a name given to a bare number, and quantities with a unit in the author's formulas.
 * Left out: numbers without a unit inside a formula, and `0 m` or `1 m`, which only carry a unit; the methods' own formulas.
 */
export function typedValues(blocks: readonly BlockWorking[]): TypedValue[] {
  return blocks.flatMap(block => {
    if (block.kind === 'assume') return []
    if (block.kind === 'work') return block.lines.flatMap(line => typedIn(line, block))
    return [...givenTyped(block), ...formulasTyped(block).flatMap(line => typedIn(line, block))]
  })
}

function givenTyped(block: CalcWorking): TypedValue[] {
  return block.given.flatMap(row => {
    const { id, value, from, taken } = row
    if (taken || from !== 'typed here' || typeof value === 'string') return []
    return [{ id, number: block.number, block: block.name, says: saysOf(row), shown: value }]
  })
}

const saysOf = ({ says, row }: GivenRow): string => (row?.label ? `${says}: ${row.label}` : says)

/** The lines of a calc block that are the author's formulas for its inputs. */
function formulasTyped(block: CalcWorking): Line[] {
  const origins = new Set(block.given.map(({ to }) => to))
  return block.lines.filter(line => origins.has(line.id))
}

function typedIn(line: Line, block: BlockWorking): TypedValue[] {
  if (line.kind !== 'formula' && line.kind !== 'check') return []
  const { id, number, working } = line
  const says = line.says || ('name' in line ? line.name.replaceAll('_', ' ') : '')
  const shown = line.kind === 'formula' ? alone(working.formula.tree) : undefined
  const values = shown ? [shown] : quantitiesIn(working.formula.tree)
  return values.map(value => ({ id, number, block: block.name, says, shown: value }))
}

/** A number that is all of a formula: its name gives it a meaning, with or without a unit. */
function alone(node: Node): Shown | undefined {
  if (node.kind !== 'number' && node.kind !== 'quantity') return undefined
  return { digits: typedDigits(node.text), unit: node.kind === 'quantity' ? node.unit : one, exact: true }
}

function quantitiesIn(node: Node): Shown[] {
  if (node.kind !== 'quantity') return childrenOf(node).flatMap(quantitiesIn)
  return node.value === 0 || node.value === 1 ? [] : [{ digits: typedDigits(node.text), unit: node.unit, exact: true }]
}
