import { dimensionless, over, power, times, withinReach } from '../quantity/dimension.ts'
import { dimensionWords } from '../quantity/dimension-names.ts'
import { rational, rationalText } from '../quantity/rational.ts'
import type { Dimension, Rational, System } from '../quantity/types.ts'
import {
  argumentOf,
  begun,
  differenceHelp,
  divideHelp,
  kindWords,
  mixedPoints,
  type ValueKind as Value,
  zeroHelp,
} from './kind-words.ts'
import { literalExponent, thirdNear } from './literal-exponent.ts'
import { type ScaleReading, scaleReading } from './scale-reading.ts'
import type { Fault, Formula, Kind, Node, Proof, Span } from './types.ts'

export type KindOf = (name: string) => Kind | undefined

/**
 * Proves the dimensions of a formula before any number exists. All faults are collected; what hangs on a faulty part stays silent.
 * `to UNIT` must have the dimension of the result. Messages speak of the units of `system`.
 */
export function prove(formula: Formula, kindOf: KindOf, { system }: { readonly system: System }): Proof {
  const proving = new Proving(kindOf, system)
  const result = proving.of(formula.tree)
  if (result) proving.shownIn(formula, result)
  return result && proving.faults.length === 0 ? { ok: true, result } : { ok: false, faults: proving.faults }
}

class Proving {
  readonly faults: Fault[] = []
  private readonly kindOf: KindOf
  private readonly system: System

  constructor(kindOf: KindOf, system: System) {
    this.kindOf = kindOf
    this.system = system
  }

  of(node: Node): Kind | undefined {
    switch (node.kind) {
      case 'number':
      case 'pi':
        return plain
      case 'quantity':
        return { kind: 'value', dimension: node.unit.dimension, ...(node.unit.offset !== undefined && { point: true }) }
      case 'unit':
        return { kind: 'value', dimension: node.unit.dimension }
      case 'name':
        return this.kindOf(node.name) ?? this.unknown(node.name, node.span)
      case 'negative':
        return this.difference(node.of, this.value(node.of))
      case 'arithmetic':
        return this.arithmetic(node)
      case 'comparison':
        return this.comparison(node)
      case 'logic':
        return this.truths([node.left, node.right])
      case 'not':
        return this.truths([node.of])
      case 'call':
        return this.call(node)
    }
  }

  /** The unit after `to` against the result. */
  shownIn({ to, toSpan, tree }: Formula, result: Kind): void {
    if (!to) return
    const span = toSpan ?? tree.span
    if (result.kind !== 'value')
      this.fault(span, `${begun(this.words(result))} has no unit`, 'Leave `to` and the unit away')
    else if (result.dimension !== to.dimension)
      this.fault(
        span,
        `The result is ${this.words(result)}, the unit \`${to.text}\` is that of ${dimensionWords(to.dimension, this.system)}`,
      )
    else if (to.offset !== undefined && !result.point)
      this.fault(span, `The result is a temperature difference, which \`${to.text}\` cannot show`, 'Write `to K`')
  }

  private fault(span: Span, says: string, help?: string): undefined {
    return this.add({ rule: 'dimension-mismatch', span, says, ...(help !== undefined && { help }) })
  }

  private unknown(name: string, span: Span): undefined {
    return this.add({ rule: 'name-unknown', span, says: `Nothing here is named \`${name}\``, name })
  }

  /** The middle of a chain `a < b < c` is proved twice and spoken of once. */
  private add(fault: Fault): undefined {
    const known = this.faults.some(each => each.span.start === fault.span.start && each.says === fault.says)
    if (!known) this.faults.push(fault)
    return undefined
  }

  private words(kind: Kind): string {
    return kindWords(kind, this.system)
  }

  /** The kind of a node where one value must stand. */
  private value(node: Node): Value | undefined {
    const kind = this.of(node)
    if (!kind || kind.kind === 'value') return kind
    const help = {
      list: 'Write `sum(...)`, `min(...)` or `max(...)` of the list',
      table: 'Write `interpolate(table, x)`',
      truth: undefined,
    }[kind.kind]
    return this.fault(node.span, `${begun(this.words(kind))} stands where one value is expected`, help)
  }

  /** A value that is no temperature on a scale. */
  private difference(node: Node, kind: Value | undefined): Value | undefined {
    if (!kind?.point) return kind
    return this.fault(
      node.span,
      'A temperature on a scale can only be compared, or have a difference added or taken away',
      'Write `K` for a difference; `T - (-273.15 degC)` is the absolute temperature',
    )
  }

  private plainNumber(node: Node, of: string): Value | undefined {
    const kind = this.difference(node, this.value(node))
    if (!kind || kind.dimension === dimensionless) return kind
    const help = divideHelp(kind, this.system)
    return this.fault(node.span, `${of} must be a plain number, not ${this.words(kind)}`, help)
  }

  private arithmetic(node: Extract<Node, { kind: 'arithmetic' }>): Value | undefined {
    if (node.op === '^') return this.raised(node)
    const reading = scaleReading(node)
    if (reading) return this.reading(reading)
    const left = this.value(node.left)
    const right = this.value(node.right)
    if (node.op === '+' || node.op === '-') return left && right && this.sum(node, { left, right })
    const a = this.difference(node.left, left)
    const b = this.difference(node.right, right)
    if (!a || !b) return undefined
    const dimension = node.op === '*' ? times(a.dimension, b.dimension) : over(a.dimension, b.dimension)
    return this.reached(dimension, node.at)
  }

  /** Of a name or a typed temperature only, so that its number can be printed. */
  private reading({ of, unit }: ScaleReading): Value | undefined {
    const kind = this.value(of)
    const isAlone = of.kind === 'name' || of.kind === 'quantity'
    if (!kind || (kind.point && isAlone)) return kind && plain
    return this.fault(
      of.span,
      `Only a temperature on a scale is read in \`${unit.text}\`, by its name`,
      kind.point ? 'Give the temperature a name of its own' : 'Divide a difference by `K`',
    )
  }

  private reached(dimension: Dimension, span: Span): Value | undefined {
    if (withinReach(dimension)) return { kind: 'value', dimension }
    const says = 'The exponent of a unit passes 64, or its fraction is too fine'
    return this.add({ rule: 'formula-limit', span, says })
  }

  private sum(
    node: Extract<Node, { kind: 'arithmetic' }>,
    { left, right }: { left: Value; right: Value },
  ): Value | undefined {
    if (left.dimension !== right.dimension) return this.unlike(node, [left, right])
    const subtracting = node.op === '-'
    if (!left.point && !right.point) return left
    if (left.point && right.point && subtracting) return { kind: 'value', dimension: left.dimension }
    if (left.point && right.point)
      return this.fault(node.at, 'Two temperatures on a scale cannot be added', differenceHelp)
    if (right.point && subtracting)
      return this.fault(node.at, 'A temperature on a scale cannot be taken away from a difference', differenceHelp)
    return { kind: 'value', dimension: left.dimension, point: true }
  }

  private unlike(
    node: Extract<Node, { kind: 'arithmetic' | 'comparison' }>,
    [left, right]: readonly [Value, Value],
  ): undefined {
    const says = `\`${node.op}\` needs two alike, got ${this.words(left)} and ${this.words(right)}`
    return this.fault(node.at, says, zeroHelp([node.left, node.right], [left, right], this.system))
  }

  private raised(node: Extract<Node, { kind: 'arithmetic' }>): Value | undefined {
    const base = this.difference(node.left, this.value(node.left))
    const exponent = this.plainNumber(node.right, 'The exponent')
    if (!base || !exponent) return undefined
    if (base.dimension === dimensionless) return plain
    const by = literalExponent(node.right)
    if (by) return this.rootable(base, { by, span: node.right.span })
    return this.fault(
      node.right.span,
      `The exponent of ${this.words(base)} must be written in numbers, as \`2\` or \`(2/3)\``,
      'Divide the base by its unit where the exponent is calculated',
    )
  }

  private rootable(base: Value, { by, span }: { by: Rational; span: Span }): Value | undefined {
    const third = thirdNear(by)
    if (!third) return this.reached(power(base.dimension, by), span)
    const help = rationalText(third) === '1/3' ? 'Write `(1/3)` or `cbrt(...)`' : `Write \`(${rationalText(third)})\``
    return this.fault(
      span,
      `The exponent of ${this.words(base)} is a decimal that is nearly ${rationalText(third)}`,
      help,
    )
  }

  private comparison(node: Extract<Node, { kind: 'comparison' }>): Kind | undefined {
    const left = this.value(node.left)
    const right = this.value(node.right)
    if (!left || !right) return undefined
    if (left.dimension !== right.dimension) return this.unlike(node, [left, right])
    if (!left.point !== !right.point) return this.fault(node.at, mixedPoints(`\`${node.op}\``), differenceHelp)
    return { kind: 'truth' }
  }

  private truths(nodes: readonly Node[]): Kind | undefined {
    const kinds = nodes.map(node => this.truth(node))
    return kinds.every(kind => kind !== undefined) ? { kind: 'truth' } : undefined
  }

  private truth(node: Node): Kind | undefined {
    const kind = this.of(node)
    if (!kind || kind.kind === 'truth') return kind
    return this.fault(
      node.span,
      `A condition is expected here, not ${this.words(kind)}`,
      'Write a comparison, as in `a < b`',
    )
  }

  private call(node: Extract<Node, { kind: 'call' }>): Value | undefined {
    const [first, second] = node.args
    if (!first) return undefined
    switch (node.fn) {
      case 'sqrt':
        return this.root(first, 2)
      case 'cbrt':
        return this.root(first, 3)
      case 'abs':
        return this.difference(first, this.value(first))
      case 'min':
      case 'max':
        return this.alike(
          node,
          node.args.map(arg => this.member(arg)),
        )
      case 'atan2':
        return (
          this.alike(
            node,
            node.args.map(arg => this.difference(arg, this.value(arg))),
          ) && plain
        )
      case 'sum':
        return this.listed(first)
      case 'interpolate':
        return second && this.interpolated([first, second])
      default:
        return this.plainNumber(first, argumentOf(node.fn)) && plain
    }
  }

  private root(node: Node, degree: number): Value | undefined {
    const kind = this.difference(node, this.value(node))
    return kind && this.reached(power(kind.dimension, rational(1, degree)), node.span)
  }

  /** An argument of min and max: a value, or a list whose every value counts. */
  private member(node: Node): Value | undefined {
    const kind = node.kind === 'name' ? this.of(node) : this.value(node)
    if (kind?.kind === 'list') return { ...kind, kind: 'value' }
    return kind?.kind === 'value' || !kind ? kind : this.value(node)
  }

  private alike(node: Extract<Node, { kind: 'call' }>, kinds: readonly (Value | undefined)[]): Value | undefined {
    const first = kinds.find(kind => kind !== undefined)
    if (!first) return undefined
    const other = kinds.findIndex(kind => kind && (kind.dimension !== first.dimension || !kind.point !== !first.point))
    const arg = node.args[other]
    const kind = kinds[other]
    if (!arg || !kind) return kinds.every(each => each) ? first : undefined
    if (kind.dimension === first.dimension) return this.fault(arg.span, mixedPoints(`\`${node.fn}\``), differenceHelp)
    const says = `\`${node.fn}\` needs all alike, got ${this.words(first)} and ${this.words(kind)}`
    return this.fault(
      arg.span,
      says,
      zeroHelp([node.args[kinds.indexOf(first)] ?? arg, arg], [first, kind], this.system),
    )
  }

  private listed(node: Node): Value | undefined {
    const kind = this.of(node)
    if (kind?.kind === 'list') return this.difference(node, { ...kind, kind: 'value' })
    return kind && this.fault(node.span, '`sum` takes a list, and this is none')
  }

  private interpolated([table, at]: readonly [Node, Node]): Value | undefined {
    const kind = this.of(table)
    const x = this.value(at)
    if (!kind || !x) return undefined
    if (kind.kind !== 'table') return this.fault(table.span, '`interpolate` takes a table first, and this is none')
    if (x.dimension !== kind.from)
      return this.fault(at.span, `The table goes by ${dimensionWords(kind.from, this.system)}, not by ${this.words(x)}`)
    if ((x.point ?? false) !== (kind.fromPoint ?? false))
      return this.fault(at.span, mixedPoints('The table'), differenceHelp)
    return { kind: 'value', dimension: kind.to, ...(kind.toPoint && { point: true }) }
  }
}

const plain: Value = { kind: 'value', dimension: dimensionless }
