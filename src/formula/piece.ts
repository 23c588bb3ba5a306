/** A printed part of a formula. Its strength is that of what is printed, not of the node it came from. */
export interface Piece {
  readonly tex: string
  readonly strength: number
  /** True where the print begins with a minus sign. */
  readonly minus?: boolean
  /** About how many letters wide. */
  readonly width: number
  /** How many fractions stand on each other in it; a root counts half. */
  readonly stack: number
  /** A bare unit that counts as 1 in a line without units. */
  readonly unity?: boolean
}

/** How strongly a print holds together; an operand needs brackets where it is weaker than its place asks. */
export const strengths = {
  logic: -1,
  not: -0.5,
  comparison: 0,
  sum: 1,
  negativeMeasured: 1.4,
  negative: 1.5,
  series: 1.9,
  product: 2,
  measured: 2.5,
  overUnit: 2.6,
  fraction: 3,
  power: 8.5,
  call: 8.8,
  atom: 9,
} as const

export const atom = (tex: string, width: number): Piece => ({ tex, strength: strengths.atom, width, stack: 0 })

const widestTall = 30

/** Brackets that grow only round something tall and short; the others let a line break inside. */
export function bracketed(piece: Piece): Piece {
  const [open, close] =
    piece.stack === 0 ? ['(', ')'] : piece.width <= widestTall ? ['\\left(', '\\right)'] : ['\\bigl(', '\\bigr)']
  return { tex: `${open}${piece.tex}${close}`, strength: strengths.atom, width: piece.width + 2, stack: piece.stack }
}

/** The piece as it is, or in brackets where it is weaker than `least`. */
export const atLeast = (piece: Piece, least: number): Piece => (piece.strength >= least ? piece : bracketed(piece))

/** The piece for a place behind a sign: stronger than `than`, and not beginning with a minus. */
export const behind = (piece: Piece, least: number): Piece => (piece.minus ? bracketed(piece) : atLeast(piece, least))

/** Pieces joined on one line. */
export function joined(parts: readonly (Piece | string)[], strength: number): Piece {
  const pieces = parts.filter(part => typeof part !== 'string')
  const first = parts[0]
  return {
    tex: parts.map(part => (typeof part === 'string' ? part : part.tex)).join(''),
    strength,
    width: pieces.reduce((so, each) => so + each.width, 0) + 2 * (parts.length - pieces.length),
    stack: Math.max(0, ...pieces.map(each => each.stack)),
    ...(typeof first === 'object' && first.minus && { minus: true }),
  }
}
