import { atom, bracketed, joined, type Piece, strengths } from './piece.ts'
import type { FunctionName, Node } from './types.ts'

/** What the print of a call asks of the print of the whole tree. */
export interface TexPrinter {
  of(node: Node): Piece
  /** The same raised, where fractions stand on the line. */
  exponent(node: Node): Piece
  readonly leaves: {
    readonly list: (name: string) => Piece
    /** Arguments of min and max, where a list stands for all its values. */
    readonly members: (name: string) => readonly Piece[]
  }
}

/** Widest fraction and root, in letters; a wider one is printed on the line, where it can break. */
export const widest = 40

/** A function of the language in TeX: roots, brackets and exponents where mathematics has them, otherwise its name with what it takes. */
export function callPiece(printer: TexPrinter, node: Extract<Node, { kind: 'call' }>): Piece {
  const [first] = node.args
  if (!first) return atom('', 0)
  switch (node.fn) {
    case 'sqrt':
      return root(printer, first, { index: '', exponent: '1/2' })
    case 'cbrt':
      return root(printer, first, { index: '[3]', exponent: '1/3' })
    case 'exp':
      return exponential(printer, first)
    case 'sum':
      return first.kind === 'name' ? printer.leaves.list(first.name) : printer.of(first)
    case 'min':
    case 'max':
      return applied(
        `\\${node.fn}`,
        node.args.flatMap(arg => members(printer, arg)),
      )
    case 'abs':
    case 'floor':
    case 'ceil':
      return fenced(node.fn, printer.of(first))
    default:
      return applied(
        words[node.fn] ?? '',
        node.args.map(arg => printer.of(arg)),
      )
  }
}

function members(printer: TexPrinter, node: Node): readonly Piece[] {
  return node.kind === 'name' ? printer.leaves.members(node.name) : [printer.of(node)]
}

function root(printer: TexPrinter, node: Node, { index, exponent }: { index: string; exponent: string }): Piece {
  const inner = printer.of(node)
  if (inner.unity) return inner
  const stack = inner.stack + 0.5
  if (inner.width <= widest)
    return { ...atom(`\\sqrt${index}{${inner.tex}}`, inner.width + 2), strength: strengths.call, stack }
  const held = bracketed(inner)
  return { tex: `${held.tex}^{${exponent}}`, strength: strengths.power, width: held.width + 2, stack }
}

function exponential(printer: TexPrinter, node: Node): Piece {
  const exponent = printer.exponent(node)
  const tex = `e^{${exponent.tex}}`
  if (exponent.width <= 24) return { tex, strength: strengths.power, width: 1 + exponent.width * 0.7, stack: 0 }
  return applied('\\exp', [printer.of(node)])
}

function applied(name: string, args: readonly Piece[]): Piece {
  const inside = joined(
    args.flatMap((arg, i) => (i ? [',\\ \\allowbreak ', arg] : [arg])),
    strengths.logic,
  )
  return { ...joined([`${name}`, bracketed(inside)], strengths.call) }
}

function fenced(fn: 'abs' | 'floor' | 'ceil', inner: Piece): Piece {
  const [open, close] = fences[fn]
  const [left, right] = inner.width <= 30 ? ['\\left', '\\right'] : ['\\bigl', '\\bigr']
  return { ...atom(`${left}${open} ${inner.tex} ${right}${close}`, inner.width + 2), stack: inner.stack }
}

const fences = { abs: ['|', '|'], floor: ['\\lfloor', '\\rfloor'], ceil: ['\\lceil', '\\rceil'] } as const

const words: Readonly<Partial<Record<FunctionName, string>>> = {
  log: '\\ln',
  log10: '\\log_{10}',
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  asin: '\\arcsin',
  acos: '\\arccos',
  atan: '\\arctan',
  atan2: '\\operatorname{atan2}',
  round: '\\operatorname{round}',
  interpolate: '\\operatorname{interpolate}',
}
