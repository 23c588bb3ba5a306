import { toNumber } from '../quantity/rational.ts'
import type { Unit } from '../quantity/types.ts'
import { staysInLine } from './bare-unit.ts'
import { literalExponent } from './literal-exponent.ts'
import { type ScaleReading, scaleReading } from './scale-reading.ts'
import type { Formula, FunctionName, Node } from './types.ts'

/** The unit a name is displayed in; undefined for a table. */
export type UnitOf = (name: string) => Unit | undefined

/**
 * Whether a line may be printed with bare numbers: worked through with the numbers as displayed, without any unit, the formula gives the
 * result in `resultUnit`. Each part carries the factor from its bare number to SI; sums and comparisons need equal factors, functions
 * the factor 1, and the whole the factor of the result's unit within 1e-12. A nought has any factor; degrees and percent stay with their
 * number and count as 1. Temperatures on a scale are coherent only where they are read in the unit they are shown in.
 */
export function coherent(formula: Formula, unitOf: UnitOf, resultUnit: Unit): boolean {
  const factor = factorOf(formula.tree, unitOf)
  return (
    factor !== undefined &&
    resultUnit.offset === undefined &&
    same(factor, staysInLine(resultUnit) ? 1 : resultUnit.factor)
  )
}

/** The same for a condition: both sides of every comparison in one unit. */
export function coherentCheck(formula: Formula, unitOf: UnitOf): boolean {
  return factorOf(formula.tree, unitOf) !== undefined
}

/** The factor of a nought: it is nought in any unit. */
const any = 0

const same = (a: number, b: number): boolean => a === any || Math.abs(a - b) <= 1e-12 * Math.abs(b)

/** SI for one displayed unit of the node's bare number; undefined where bare numbers would not do. */
function factorOf(node: Node, unitOf: UnitOf): number | undefined {
  switch (node.kind) {
    case 'number':
    case 'pi':
      return 1
    case 'quantity':
      return node.value === 0 && node.unit.offset === undefined ? any : plainFactor(node.unit)
    case 'unit':
      return plainFactor(node.unit)
    case 'name':
      return plainFactor(unitOf(node.name))
    case 'negative':
    case 'not':
      return factorOf(node.of, unitOf)
    case 'arithmetic':
      return arithmeticFactor(node, unitOf)
    case 'comparison':
    case 'logic':
      return common([node.left, node.right], unitOf) === undefined ? undefined : 1
    case 'call':
      return callFactor(node, unitOf)
  }
}

function plainFactor(unit: Unit | undefined): number | undefined {
  if (!unit || unit.offset !== undefined) return undefined
  return staysInLine(unit) ? 1 : unit.factor
}

function arithmeticFactor(node: Extract<Node, { kind: 'arithmetic' }>, unitOf: UnitOf): number | undefined {
  const reading = scaleReading(node)
  if (reading) return isShownIn(reading, unitOf) ? 1 : undefined
  if (node.op === '+' || node.op === '-') return common([node.left, node.right], unitOf)
  const left = factorOf(node.left, unitOf)
  const right = factorOf(node.right, unitOf)
  if (left === undefined || right === undefined) return undefined
  if (node.op === '*') return left * right
  if (node.op === '/') return left / right
  return powerFactor(left, { right, exponent: node.right })
}

/** A reading in the unit that the temperature is shown in is the number shown. */
function isShownIn({ of, unit }: ScaleReading, unitOf: UnitOf): boolean {
  const shown = of.kind === 'name' ? unitOf(of.name) : of.kind === 'quantity' ? of.unit : undefined
  return shown?.text === unit.text
}

function powerFactor(base: number, { right, exponent }: { right: number; exponent: Node }): number | undefined {
  if (!same(right, 1)) return undefined
  const by = literalExponent(exponent)
  if (by) return base ** toNumber(by)
  return same(base, 1) ? 1 : undefined
}

/** The factor all nodes share. */
function common(nodes: readonly Node[], unitOf: UnitOf): number | undefined {
  const factors = nodes.map(node => factorOf(node, unitOf))
  const first = factors.find(factor => factor !== any) ?? any
  return factors.every(each => each !== undefined && same(each, first)) ? first : undefined
}

const roots: Readonly<Partial<Record<FunctionName, number>>> = { sqrt: 2, cbrt: 3 }

function callFactor(node: Extract<Node, { kind: 'call' }>, unitOf: UnitOf): number | undefined {
  const shared = common(node.args, unitOf)
  if (shared === undefined) return undefined
  const root = roots[node.fn]
  if (root !== undefined) return shared ** (1 / root)
  if (node.fn === 'abs' || node.fn === 'min' || node.fn === 'max' || node.fn === 'sum') return shared
  if (node.fn === 'atan2') return 1
  return same(shared, 1) && node.fn !== 'interpolate' ? 1 : undefined
}
