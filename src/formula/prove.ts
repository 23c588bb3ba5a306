import { dimensionless, withinReach } from '../quantity/dimension.ts'
import { dimensionWords } from '../quantity/dimension-names.ts'
import type { Dimension, System } from '../quantity/types.ts'
import {
  begun,
  differenceHelp,
  divideHelp,
  kindWords,
  mixedPoints,
  type ValueKind as Value,
  zeroHelp,
} from './kind-words.ts'
import { arithmeticKind } from './prove-arithmetic.ts'
import { callKind } from './prove-call.ts'
import { type Prover, plain } from './prover.ts'
import type { Fault, Formula, Kind, Node, Proof, Span } from './types.ts'

/** The kind of a name; undefined for one that nothing has. */
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

class Proving implements Prover {
  readonly faults: Fault[] = []
  private readonly kindOf: KindOf
  readonly system: System

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
        return arithmeticKind(this, node)
      case 'comparison':
        return this.comparison(node)
      case 'logic':
        return this.truths([node.left, node.right])
      case 'not':
        return this.truths([node.of])
      case 'call':
        return callKind(this, node)
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

  fault(span: Span, says: string, help?: string): undefined {
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

  words(kind: Kind): string {
    return kindWords(kind, this.system)
  }

  value(node: Node): Value | undefined {
    const kind = this.of(node)
    if (!kind || kind.kind === 'value') return kind
    const help = {
      list: 'Write `sum(...)`, `min(...)` or `max(...)` of the list',
      table: 'Write `interpolate(table, x)`',
      truth: undefined,
    }[kind.kind]
    return this.fault(node.span, `${begun(this.words(kind))} stands where one value is expected`, help)
  }

  difference(node: Node, kind: Value | undefined): Value | undefined {
    if (!kind?.point) return kind
    return this.fault(
      node.span,
      'A temperature on a scale can only be compared, or have a difference added or taken away',
      'Write `K` for a difference; `T - (-273.15 degC)` is the absolute temperature',
    )
  }

  plainNumber(node: Node, of: string): Value | undefined {
    const kind = this.difference(node, this.value(node))
    if (!kind || kind.dimension === dimensionless) return kind
    const help = divideHelp(kind, this.system)
    return this.fault(node.span, `${of} must be a plain number, not ${this.words(kind)}`, help)
  }

  reached(dimension: Dimension, span: Span): Value | undefined {
    if (withinReach(dimension)) return { kind: 'value', dimension }
    const says = 'The exponent of a unit passes 64, or its fraction is too fine'
    return this.add({ rule: 'formula-limit', span, says })
  }

  unlike(
    node: Extract<Node, { kind: 'arithmetic' | 'comparison' }>,
    [left, right]: readonly [Value, Value],
  ): undefined {
    const says = `\`${node.op}\` needs two alike, got ${this.words(left)} and ${this.words(right)}`
    return this.fault(node.at, says, zeroHelp([node.left, node.right], [left, right], this.system))
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
}
