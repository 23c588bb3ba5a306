import { dimensionless, over, power, times } from '../quantity/dimension.ts'
import { rationalText } from '../quantity/rational.ts'
import type { Rational } from '../quantity/types.ts'
import { differenceHelp, type ValueKind as Value } from './kind-words.ts'
import { literalExponent, thirdNear } from './literal-exponent.ts'
import { type Prover, plain } from './prover.ts'
import { type ScaleReading, scaleReading } from './scale-reading.ts'
import type { Node, Span } from './types.ts'

type Arithmetic = Extract<Node, { kind: 'arithmetic' }>

/** The kind of a sum, product, quotient or power; its faults go to the prover. */
export function arithmeticKind(prover: Prover, node: Arithmetic): Value | undefined {
  if (node.op === '^') return raised(prover, node)
  const reading = scaleReading(node)
  if (reading) return readOff(prover, reading)
  const left = prover.value(node.left)
  const right = prover.value(node.right)
  if (node.op === '+' || node.op === '-') return left && right && sum(prover, node, { left, right })
  const a = prover.difference(node.left, left)
  const b = prover.difference(node.right, right)
  if (!a || !b) return undefined
  const dimension = node.op === '*' ? times(a.dimension, b.dimension) : over(a.dimension, b.dimension)
  return prover.reached(dimension, node.at)
}

/** Of a name or a typed temperature only, so that its number can be printed. */
function readOff(prover: Prover, { of, unit }: ScaleReading): Value | undefined {
  const kind = prover.value(of)
  const isAlone = of.kind === 'name' || of.kind === 'quantity'
  if (!kind || (kind.point && isAlone)) return kind && plain
  return prover.fault(
    of.span,
    `Only a temperature on a scale is read in \`${unit.text}\`, by its name`,
    kind.point ? 'Give the temperature a name of its own' : 'Divide a difference by `K`',
  )
}

function sum(prover: Prover, node: Arithmetic, { left, right }: { left: Value; right: Value }): Value | undefined {
  if (left.dimension !== right.dimension) return prover.unlike(node, [left, right])
  const subtracting = node.op === '-'
  if (!left.point && !right.point) return left
  if (left.point && right.point && subtracting) return { kind: 'value', dimension: left.dimension }
  if (left.point && right.point)
    return prover.fault(node.at, 'Two temperatures on a scale cannot be added', differenceHelp)
  if (right.point && subtracting)
    return prover.fault(node.at, 'A temperature on a scale cannot be taken away from a difference', differenceHelp)
  return { kind: 'value', dimension: left.dimension, point: true }
}

function raised(prover: Prover, node: Arithmetic): Value | undefined {
  const base = prover.difference(node.left, prover.value(node.left))
  const exponent = prover.plainNumber(node.right, 'The exponent')
  if (!base || !exponent) return undefined
  if (base.dimension === dimensionless) return plain
  const by = literalExponent(node.right)
  if (by) return rootable(prover, base, { by, span: node.right.span })
  return prover.fault(
    node.right.span,
    `The exponent of ${prover.words(base)} must be written in numbers, as \`2\` or \`(2/3)\``,
    'Divide the base by its unit where the exponent is calculated',
  )
}

function rootable(prover: Prover, base: Value, { by, span }: { by: Rational; span: Span }): Value | undefined {
  const third = thirdNear(by)
  if (!third) return prover.reached(power(base.dimension, by), span)
  const help = rationalText(third) === '1/3' ? 'Write `(1/3)` or `cbrt(...)`' : `Write \`(${rationalText(third)})\``
  return prover.fault(
    span,
    `The exponent of ${prover.words(base)} is a decimal that is nearly ${rationalText(third)}`,
    help,
  )
}
