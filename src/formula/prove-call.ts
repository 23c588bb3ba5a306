import { power } from '../quantity/dimension.ts'
import { dimensionWords } from '../quantity/dimension-names.ts'
import { rational } from '../quantity/rational.ts'
import { argumentOf, differenceHelp, mixedPoints, type ValueKind as Value, zeroHelp } from './kind-words.ts'
import { type Prover, plain } from './prover.ts'
import type { Node } from './types.ts'

/** The kind of a function of the language over its arguments; its faults go to the prover. */
export function callKind(prover: Prover, node: Extract<Node, { kind: 'call' }>): Value | undefined {
  const [first, second] = node.args
  if (!first) return undefined
  switch (node.fn) {
    case 'sqrt':
      return root(prover, first, 2)
    case 'cbrt':
      return root(prover, first, 3)
    case 'abs':
      return prover.difference(first, prover.value(first))
    case 'min':
    case 'max':
      return alike(
        prover,
        node,
        node.args.map(arg => member(prover, arg)),
      )
    case 'atan2':
      return (
        alike(
          prover,
          node,
          node.args.map(arg => prover.difference(arg, prover.value(arg))),
        ) && plain
      )
    case 'sum':
      return listed(prover, first)
    case 'interpolate':
      return second && interpolated(prover, [first, second])
    default:
      return prover.plainNumber(first, argumentOf(node.fn)) && plain
  }
}

function root(prover: Prover, node: Node, degree: number): Value | undefined {
  const kind = prover.difference(node, prover.value(node))
  return kind && prover.reached(power(kind.dimension, rational(1, degree)), node.span)
}

/** An argument of min and max: a value, or a list whose every value counts. */
function member(prover: Prover, node: Node): Value | undefined {
  const kind = node.kind === 'name' ? prover.of(node) : prover.value(node)
  if (kind?.kind === 'list') return { ...kind, kind: 'value' }
  return kind?.kind === 'value' || !kind ? kind : prover.value(node)
}

function alike(
  prover: Prover,
  node: Extract<Node, { kind: 'call' }>,
  kinds: readonly (Value | undefined)[],
): Value | undefined {
  const first = kinds.find(kind => kind !== undefined)
  if (!first) return undefined
  const other = kinds.findIndex(kind => kind && (kind.dimension !== first.dimension || !kind.point !== !first.point))
  const arg = node.args[other]
  const kind = kinds[other]
  if (!arg || !kind) return kinds.every(each => each) ? first : undefined
  if (kind.dimension === first.dimension) return prover.fault(arg.span, mixedPoints(`\`${node.fn}\``), differenceHelp)
  const says = `\`${node.fn}\` needs all alike, got ${prover.words(first)} and ${prover.words(kind)}`
  return prover.fault(
    arg.span,
    says,
    zeroHelp([node.args[kinds.indexOf(first)] ?? arg, arg], [first, kind], prover.system),
  )
}

function listed(prover: Prover, node: Node): Value | undefined {
  const kind = prover.of(node)
  if (kind?.kind === 'list') return prover.difference(node, { ...kind, kind: 'value' })
  return kind && prover.fault(node.span, '`sum` takes a list, and this is none')
}

function interpolated(prover: Prover, [table, at]: readonly [Node, Node]): Value | undefined {
  const kind = prover.of(table)
  const x = prover.value(at)
  if (!kind || !x) return undefined
  if (kind.kind !== 'table') return prover.fault(table.span, '`interpolate` takes a table first, and this is none')
  if (x.dimension !== kind.from)
    return prover.fault(
      at.span,
      `The table goes by ${dimensionWords(kind.from, prover.system)}, not by ${prover.words(x)}`,
    )
  if ((x.point ?? false) !== (kind.fromPoint ?? false))
    return prover.fault(at.span, mixedPoints('The table'), differenceHelp)
  return { kind: 'value', dimension: kind.to, ...(kind.toPoint && { point: true }) }
}
