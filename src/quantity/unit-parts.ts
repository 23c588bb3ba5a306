import { multiply, negate, rational, unity } from './rational.ts'
import type { Rational } from './types.ts'

/** A name in a unit expression, not yet looked up, with its exponent and its place in the text. */
export interface NamedPart {
  readonly name: string
  readonly exponent: Rational
  readonly start: number
  readonly end: number
}

/** Where and why a unit expression cannot be read. */
export interface PartsFault {
  readonly says: string
  readonly help?: string
  readonly start: number
  readonly end: number
}

export type Parts =
  | { readonly ok: true; readonly parts: readonly NamedPart[] }
  | { readonly ok: false; readonly fault: PartsFault }

interface Token {
  readonly text: string
  readonly start: number
  readonly end: number
}

interface Cursor {
  readonly tokens: readonly Token[]
  next: number
  depth: number
}

class Unreadable extends Error {
  readonly fault: PartsFault
  constructor(fault: PartsFault) {
    super(fault.says)
    this.fault = fault
  }
}

const limits = { characters: 120, depth: 6, exponent: 12 }
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/** Typed characters turned into the spelling of the list: `µm` is `um`, `°C` is `degC`, `Ω` is `ohm`, `%` is `percent`. */
export function unitSpelling(typed: string): string {
  if (/^\w*$/.test(typed)) return typed
  return typed
    .replace(/^[µμ](?=[A-Za-z])/u, 'u')
    .replace(/^(?:°C|℃)$/u, 'degC')
    .replace(/^(?:°F|℉)$/u, 'degF')
    .replace(/^°$/u, 'deg')
    .replace(/^%$/u, 'percent')
    .replace(/[\u03A9\u2126]$/u, 'ohm')
}

/**
 * Reads a unit expression, `kN*m/m`, `W/(m^2*K)`, `1/m`, `m^-1`, into names with exponents, in the order written.
 * Products and quotients group from the left. Units side by side, numbers other than 1 and exponents past 12 are refused.
 */
export function readParts(text: string): Parts {
  try {
    if (text.length > limits.characters) throw unreadable('The unit is too long', { text, start: 0, end: text.length })
    const cursor = { tokens: tokensOf(text), next: 0, depth: 0 }
    const parts = cursor.tokens.length ? product(cursor, unity) : []
    const left = cursor.tokens[cursor.next]
    if (left) throw unreadable(...besides(left))
    return { ok: true, parts }
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, fault: error.fault }
    throw error
  }
}

function unreadable(says: string, at: Token, help?: string): Unreadable {
  return new Unreadable({ says, start: at.start, end: at.end, ...(help && { help }) })
}

function besides(left: Token): [string, Token, string?] {
  if (left.text === ')') return ['A closing bracket has no opening one', left]
  if (isName(left.text)) return [`\`${left.text}\` stands beside another unit`, left, 'Write `*` between units: `kN*m`']
  return [`\`${left.text}\` cannot stand here in a unit`, left]
}

function tokensOf(text: string): Token[] {
  const word =
    /\s*([µμ]?[A-Za-z][A-Za-z0-9_]*[\u03A9\u2126]?|°[CF]?|[℃℉\u03A9\u2126]|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+|\d+|[-*·⋅×∙/÷^()%−])/uy
  const end = text.trimEnd().length
  const tokens: Token[] = []
  while (word.lastIndex < end) {
    const from = word.lastIndex
    const found = word.exec(text)?.[1]
    if (found === undefined) throw strange(text, from)
    tokens.push({ text: spelling(found), start: word.lastIndex - found.length, end: word.lastIndex })
  }
  return tokens
}

function strange(text: string, from: number): Unreadable {
  const start = from + (text.slice(from).length - text.slice(from).trimStart().length)
  const character = [...text.slice(start)][0] ?? ''
  return unreadable(`\`${character}\` has no meaning in a unit`, {
    text: character,
    start,
    end: start + character.length,
  })
}

function spelling(typed: string): string {
  if (/[·⋅×∙]/u.test(typed)) return '*'
  if (typed === '−') return '-'
  return typed === '÷' ? '/' : unitSpelling(typed)
}

const isName = (text: string): boolean => /^[A-Za-z]/.test(text)

function product(cursor: Cursor, sign: Rational): NamedPart[] {
  const parts = factor(cursor, sign)
  for (let op = peek(cursor); op === '*' || op === '/'; op = peek(cursor)) {
    cursor.next++
    parts.push(...factor(cursor, op === '*' ? sign : negate(sign)))
  }
  return parts
}

const peek = (cursor: Cursor): string | undefined => cursor.tokens[cursor.next]?.text

function take(cursor: Cursor, wanted: string): Token {
  const token = cursor.tokens[cursor.next++]
  if (token) return token
  const end = cursor.tokens.at(-1)?.end ?? 0
  throw unreadable(`The unit ends where ${wanted} is expected`, { text: '', start: end, end })
}

function factor(cursor: Cursor, sign: Rational): NamedPart[] {
  const parts = atom(cursor, sign)
  const exponent = exponentAfter(cursor)
  return exponent ? parts.map(part => ({ ...part, exponent: raised(part, exponent) })) : parts
}

function raised(part: NamedPart, by: Rational): Rational {
  const exponent = multiply(part.exponent, by)
  if (Math.abs(exponent.n) <= limits.exponent * exponent.d && exponent.d <= limits.exponent) return exponent
  throw unreadable(`The exponent of \`${part.name}\` passes ${limits.exponent}`, { ...part, text: part.name })
}

function atom(cursor: Cursor, sign: Rational): NamedPart[] {
  const token = take(cursor, 'a unit')
  if (token.text === '(') return bracketed(cursor, sign)
  if (token.text === '1') return []
  if (isName(token.text)) return [{ name: token.text, exponent: sign, start: token.start, end: token.end }]
  if (/^\d/.test(token.text)) throw unreadable('A unit holds no number but 1 and exponents', token)
  throw unreadable(`\`${token.text}\` cannot stand here in a unit`, token)
}

function bracketed(cursor: Cursor, sign: Rational): NamedPart[] {
  const open = cursor.tokens[cursor.next - 1]
  if (++cursor.depth > limits.depth && open) throw unreadable('The unit has too many brackets', open)
  const parts = product(cursor, sign)
  const close = take(cursor, 'a closing bracket')
  if (close.text !== ')') throw unreadable(...besides(close))
  cursor.depth--
  return parts
}

function exponentAfter(cursor: Cursor): Rational | undefined {
  const found = peek(cursor)
  if (found !== undefined && /^[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]/u.test(found)) return superscript(take(cursor, 'an exponent'))
  if (found !== '^') return undefined
  cursor.next++
  return peek(cursor) === '(' ? fractionInBrackets(cursor) : rational(wholeNumber(cursor))
}

function superscript(token: Token): Rational {
  const plain = [...token.text].map(c => (c === '⁻' ? '-' : String(superscripts.indexOf(c)))).join('')
  if (!/^-?\d{1,2}$/.test(plain)) throw unreadable('The exponent of a unit is a small whole number', token)
  return rational(Number(plain))
}

function wholeNumber(cursor: Cursor): number {
  const first = take(cursor, 'an exponent')
  const digits = first.text === '-' ? take(cursor, 'an exponent') : first
  if (!/^\d{1,2}$/.test(digits.text)) throw unreadable('The exponent of a unit is a small whole number', digits)
  return first.text === '-' ? -Number(digits.text) : Number(digits.text)
}

function fractionInBrackets(cursor: Cursor): Rational {
  cursor.next++
  const n = wholeNumber(cursor)
  const below = peek(cursor) === '/' && cursor.next++ ? wholeNumber(cursor) : 1
  const close = take(cursor, 'a closing bracket')
  if (close.text !== ')' || below === 0)
    throw unreadable('The exponent of a unit is a whole number or a fraction like `(1/2)`', close)
  return rational(n, below)
}
