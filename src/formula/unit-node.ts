import { withinReach } from '../quantity/dimension.ts'
import { multiply, negate, rational } from '../quantity/rational.ts'
import type { Unit, UnitPart } from '../quantity/types.ts'
import { isCalculable, unitFromParts } from '../quantity/unit.ts'
import type { Node, Span } from './types.ts'

type Arithmetic = Extract<Node, { kind: 'arithmetic' }>['op']

/**
 * `N/mm^2` of bare units is one unit node, so that it prints as a unit and `f / (N/mm^2)` stands over its own unit. Undefined for anything
 * else, and for a unit past what formulas reach.
 */
export function unitNode(
  op: Arithmetic,
  { left, right, span }: { left: Node; right: Node; span: Span },
): Node | undefined {
  if (left.kind !== 'unit') return undefined
  const parts = op === '^' ? raisedParts(left.unit, right) : joinedParts(left.unit, { op, right })
  if (!parts || parts.length > 12) return undefined
  const unit = unitFromParts(parts)
  const sound = withinReach(unit.dimension) && isCalculable(unit)
  return sound ? { kind: 'unit', unit, span } : undefined
}

function raisedParts(unit: Unit, exponent: Node): readonly UnitPart[] | undefined {
  const value =
    exponent.kind === 'negative' && exponent.of.kind === 'number' ? -exponent.of.value : numberValue(exponent)
  if (value === undefined || !Number.isInteger(value) || Math.abs(value) > 12 || value === 0) return undefined
  return unit.parts.map(part => ({ name: part.name, exponent: multiply(part.exponent, rational(value)) }))
}

const numberValue = (node: Node): number | undefined => (node.kind === 'number' ? node.value : undefined)

function joinedParts(unit: Unit, { op, right }: { op: Arithmetic; right: Node }): readonly UnitPart[] | undefined {
  if (right.kind !== 'unit' || (op !== '*' && op !== '/')) return undefined
  const turned = right.unit.parts.map(part => ({
    ...part,
    exponent: op === '/' ? negate(part.exponent) : part.exponent,
  }))
  return [...unit.parts, ...turned]
}
