import { unitTex } from '../quantity/unit.ts'
import { atLeast, atom, behind, bracketed, joined, type Piece, strengths } from './piece.ts'
import { callPiece, type TexPrinter, widest } from './tex-call.ts'
import type { Comparison, Node } from './types.ts'

/** What the leaves of a tree are printed as. */
export interface Leaves {
  readonly name: (name: string) => Piece
  readonly number: (text: string) => Piece
  readonly quantity: (node: Extract<Node, { kind: 'quantity' }>) => Piece
  readonly unit: (node: Extract<Node, { kind: 'unit' }>) => Piece
  readonly list: (name: string) => Piece
  /** Arguments of min and max, where a list stands for all its values. */
  readonly members: (name: string) => readonly Piece[]
  /** The whole of `left / right` where it is printed in a way of its own. */
  readonly overUnit: (node: Extract<Node, { kind: 'arithmetic' }>) => Piece | undefined
  readonly dot: string
}

/** TeX of a tree over its leaves. Brackets are made anew from what is printed. */
export function texTree(node: Node, leaves: Leaves): Piece {
  return new Printer(leaves).of(node)
}

class Printer implements TexPrinter {
  readonly leaves: Leaves
  /** Above 0 inside an exponent, where fractions stand on the line. */
  private raisedBy = 0

  constructor(leaves: Leaves) {
    this.leaves = leaves
  }

  of(node: Node): Piece {
    switch (node.kind) {
      case 'number':
        return this.leaves.number(node.text)
      case 'quantity':
        return this.leaves.quantity(node)
      case 'unit':
        return this.leaves.unit(node)
      case 'name':
        return this.leaves.name(node.name)
      case 'pi':
        return atom('\\pi', 1)
      case 'negative':
        return this.negative(this.of(node.of))
      case 'arithmetic':
        return this.arithmetic(node)
      case 'comparison':
        return this.comparison(node)
      case 'logic':
        return this.logic(node)
      case 'not':
        return joined(['\\text{not }', bracketed(this.of(node.of))], strengths.not)
      case 'call':
        return callPiece(this, node)
    }
  }

  private negative(of: Piece): Piece {
    return { ...joined(['-', behind(of, strengths.product)], strengths.negative), minus: true }
  }

  private arithmetic(node: Extract<Node, { kind: 'arithmetic' }>): Piece {
    switch (node.op) {
      case '+':
        return this.sum(node, strengths.sum)
      case '-':
        return this.sum(node, strengths.negative)
      case '*':
        return this.product(this.of(node.left), this.of(node.right))
      case '/':
        return this.leaves.overUnit(node) ?? this.quotient(node)
      case '^':
        return this.power(node)
    }
  }

  private sum(node: Extract<Node, { kind: 'arithmetic' }>, right: number): Piece {
    const parts = [atLeast(this.of(node.left), strengths.sum), ` ${node.op} `, behind(this.of(node.right), right)]
    return joined(parts, strengths.sum)
  }

  private product(left: Piece, right: Piece): Piece {
    if (right.unity) return left
    if (left.unity) return right
    const before = left.strength === strengths.negative ? left : atLeast(left, strengths.product)
    const parts = [before, ` ${this.leaves.dot} `, behind(right, strengths.measured)]
    return joined(parts, before.minus ? strengths.negative : strengths.product)
  }

  /** a / b / c stands over one line, as a over b times c. */
  private quotient(node: Extract<Node, { kind: 'arithmetic' }>): Piece {
    const divisors = [node.right]
    let above = node.left
    while (above.kind === 'arithmetic' && above.op === '/' && !this.leaves.overUnit(above)) {
      divisors.unshift(above.right)
      above = above.left
    }
    const below = divisors.map(each => this.of(each)).reduce((left, right) => this.product(left, right))
    return below.unity ? this.of(above) : this.over(this.of(above), below)
  }

  private over(above: Piece, below: Piece): Piece {
    if (this.raisedBy > 0) return this.onLine(above, { below, sign: '/' })
    const stack = 1 + Math.max(above.stack, below.stack)
    const isWide = Math.max(above.width, below.width) > widest || stack > 2.5
    if (isWide) return this.onLine(above, { below, sign: ' \\mathbin{/} ' })
    const tex = `\\frac{${above.tex}}{${below.tex}}`
    return { tex, strength: strengths.fraction, width: Math.max(above.width, below.width), stack }
  }

  private onLine(above: Piece, { below, sign }: { below: Piece; sign: string }): Piece {
    return joined([atLeast(above, strengths.product), sign, behind(below, strengths.fraction + 0.1)], strengths.product)
  }

  private power(node: Extract<Node, { kind: 'arithmetic' }>): Piece {
    const base = this.of(node.left)
    if (base.unity) return base
    const held = atLeast(base, strengths.atom)
    const exponent = this.exponent(node.right)
    const width = held.width + exponent.width * 0.7
    return { tex: `${held.tex}^{${exponent.tex}}`, strength: strengths.power, width, stack: held.stack }
  }

  exponent(node: Node): Piece {
    this.raisedBy++
    const piece = this.of(node)
    this.raisedBy--
    return piece
  }

  private comparison(node: Extract<Node, { kind: 'comparison' }>): Piece {
    const sides = [this.of(node.left), this.of(node.right)].map(side => atLeast(side, strengths.sum)) as [Piece, Piece]
    return joined([sides[0], ` ${relations[node.op]} `, sides[1]], strengths.comparison)
  }

  /** The chain `a < b <= c`, which the reader made two comparisons of, is printed as the chain. */
  private logic(node: Extract<Node, { kind: 'logic' }>): Piece {
    const { left, right } = node
    const before = left.kind === 'logic' ? left.right : left
    const isChain =
      node.op === 'and' && right.kind === 'comparison' && before.kind === 'comparison' && before.right === right.left
    if (!isChain) return this.conjunction(node)
    const last = atLeast(this.of(right.right), strengths.sum)
    return joined([this.of(left), ` ${relations[right.op]} `, last], strengths.logic)
  }

  private conjunction(node: Extract<Node, { kind: 'logic' }>): Piece {
    const sides = [node.left, node.right].map(side => {
      const piece = this.of(side)
      return side.kind === 'logic' && side.op !== node.op ? bracketed(piece) : piece
    }) as [Piece, Piece]
    return joined([sides[0], `\\;\\text{ ${node.op} }\\;\\allowbreak `, sides[1]], strengths.logic)
  }
}

const relations: Readonly<Record<Comparison, string>> = {
  '<': '<',
  '<=': '\\le',
  '>': '>',
  '>=': '\\ge',
  '==': '=',
  '!=': '\\ne',
}

/** A unit that stands by itself. */
export function unitPiece(node: Extract<Node, { kind: 'unit' }>): Piece {
  const isSimple = node.unit.parts.length === 1 && node.unit.parts[0]?.exponent.n === 1
  const strength = isSimple ? strengths.atom : strengths.measured
  return { tex: unitTex(node.unit), strength, width: node.unit.text.length, stack: 0 }
}
