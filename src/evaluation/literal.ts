import { readFormula } from '../formula/read-formula.ts'
import type { Node } from '../formula/types.ts'
import { fromUnit } from '../quantity/to-unit.ts'
import type { Dimension } from '../quantity/types.ts'
import { one } from '../quantity/unit.ts'
import type { Typed } from './plan-types.ts'
import { settled } from './settled.ts'

/** A number or quantity as typed, with its SI number. */
export interface Literal extends Typed {
  readonly si: number
  readonly dimension: Dimension
  readonly point: boolean
}

/** The literal that a tree is, if it is one: a number, a quantity, or the negative of either, and not too great. */
export function literalOf(tree: Node): Literal | undefined {
  const literal = anyLiteral(tree)
  return literal && Number.isFinite(settled(literal.si)) ? literal : undefined
}

function anyLiteral(tree: Node): Literal | undefined {
  if (tree.kind === 'negative') {
    const inner = tree.of.kind === 'negative' ? undefined : anyLiteral(tree.of)
    return inner && { ...inner, digits: `-${inner.digits}`, si: fromUnit(-Number(inner.digits), inner.unit) }
  }
  if (tree.kind === 'number')
    return { digits: tree.text, unit: one, si: tree.value, dimension: one.dimension, point: false }
  if (tree.kind !== 'quantity') return undefined
  const { unit } = tree
  const point = unit.offset !== undefined
  return { digits: tree.text, unit, si: fromUnit(tree.value, unit), dimension: unit.dimension, point }
}

/** Reads a text that must be a number or quantity; nothing where it is not one. */
export function readLiteral(text: string): Literal | undefined {
  const read = readFormula(text)
  return read.ok && !read.formula.to ? literalOf(read.formula.tree) : undefined
}

/** A literal of a module's own text. Throws where it is none: our own bug. */
export function ownLiteral(text: string): Literal {
  const literal = readLiteral(text)
  if (!literal) throw new Error(`\`${text}\` is not a quantity`)
  return literal
}
