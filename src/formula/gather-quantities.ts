import { readUnit } from '../quantity/unit.ts'
import { nearUnitHelp, unitHelp, unknownUnitHelp } from './names.ts'
import { FormulaFault, refused, type Token } from './token.ts'
import type { Span } from './types.ts'

/**
 * Joins a number and the unit expression behind it, `2 kN/m^2`, into one quantity token. The unit reaches as far as units do:
 * over `*` and `/` while a unit follows, over `^` and a whole number, over `/ (...)` that holds units only.
 */
export function gatherQuantities(tokens: readonly Token[], text: string): readonly Token[] {
  const gathered: Token[] = []
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]
    if (!token) break
    if (token.kind === 'number') unknownUnit(token, tokens[at + 1])
    if (token.kind !== 'number' || tokens[at + 1]?.kind !== 'unit') {
      gathered.push(token)
      continue
    }
    const last = unitEnd(tokens, at + 1)
    gathered.push(quantity(token, spanOf(tokens, { first: at + 1, last }), text))
    refuseOtherPower(gathered, tokens[last + 1])
    at = last
  }
  return gathered
}

function unknownUnit(number: Token, next: Token | undefined): void {
  if (next?.kind !== 'name') return
  const product = `Write \`${number.text} * ${next.text}\` if \`${next.text}\` is the name of a value`
  const help = unitHelp(next.text) ?? [nearUnitHelp(next.text) ?? [], product].flat().join(' ')
  const says = `No unit is named \`${next.text}\``
  throw new FormulaFault({ rule: 'unit-unknown', span: next.span, says, help, name: next.text })
}

const spanOf = (tokens: readonly Token[], { first, last }: { first: number; last: number }): Span => ({
  start: tokens[first]?.span.start ?? 0,
  end: tokens[last]?.span.end ?? 0,
})

function quantity(number: Token, at: Span, text: string): Token {
  const typed = text.slice(at.start, at.end)
  const read = readUnit(typed)
  if (!read.ok) throw unitFault(read.fault, at.start)
  const span = { start: number.span.start, end: at.end }
  return { kind: 'quantity', text: text.slice(span.start, span.end), span, number: number.text, unit: read.unit }
}

type UnitFault = Extract<ReturnType<typeof readUnit>, { ok: false }>['fault']

/** A fault of a unit text that starts at `offset` of the formula. */
export function unitFault(fault: UnitFault, offset: number): FormulaFault {
  const { says, name } = fault
  const help = unknownUnitHelp(fault)
  return new FormulaFault({
    rule: fault.rule === 'unit-unknown' ? 'unit-unknown' : 'formula-syntax',
    span: { start: fault.start + offset, end: fault.end + offset },
    says,
    ...(help !== undefined && { help }),
    ...(name !== undefined && { name }),
  })
}

/** Index of the last token of the unit expression that starts at `first`. */
function unitEnd(tokens: readonly Token[], first: number): number {
  let last = powerEnd(tokens, first)
  for (let op = tokens[last + 1]; op?.text === '*' || op?.text === '/'; op = tokens[last + 1]) {
    const next = tokens[last + 2]
    const end =
      next?.kind === 'unit' ? powerEnd(tokens, last + 2) : op.text === '/' ? unitsInBrackets(tokens, last + 2) : last
    if (end === last) break
    last = end
  }
  return last
}

/** The end of `unit`, `unit^2`, `unit^-1` or `unit^(1/2)`. */
function powerEnd(tokens: readonly Token[], unit: number): number {
  if (tokens[unit + 1]?.text !== '^') return unit
  const length = exponentLength(tokens, unit + 2)
  return length === 0 ? unit : unit + 1 + length
}

/** How many tokens from `at` are an exponent of a unit; 0 where something else stands. */
function exponentLength(tokens: readonly Token[], at: number): number {
  if (tokens[at]?.text === '(') return fractionLength(tokens, at)
  const minus = tokens[at]?.text === '-' ? 1 : 0
  return isWhole(tokens[at + minus]) ? minus + 1 : 0
}

function fractionLength(tokens: readonly Token[], open: number): number {
  const n = open + (tokens[open + 1]?.text === '-' ? 2 : 1)
  const close = tokens[n + 1]?.text === '/' && isWhole(tokens[n + 2]) ? n + 3 : n + 1
  return isWhole(tokens[n]) && tokens[close]?.text === ')' ? close - open + 1 : 0
}

const isWhole = (token: Token | undefined): boolean => token?.kind === 'number' && /^\d+$/.test(token.text)

/** The closing bracket of brackets that hold units, whole numbers and signs between them only; otherwise the token before the sign. */
function unitsInBrackets(tokens: readonly Token[], open: number): number {
  if (tokens[open]?.kind !== '(') return open - 2
  const close = tokens.findIndex((token, at) => at > open && token.kind === ')')
  const inside = tokens.slice(open + 1, close)
  const isPure = close > open + 1 && inside[0]?.kind === 'unit' && inside.every(isOfUnit) && alternates(inside)
  return isPure ? close : open - 2
}

const isOfUnit = ({ kind, text }: Token): boolean =>
  kind === 'unit' ||
  text === '*' ||
  text === '/' ||
  text === '^' ||
  text === '-' ||
  (kind === 'number' && /^\d+$/.test(text))

/** Every number in it is an exponent, and every minus the exponent's own. */
const alternates = (inside: readonly Token[]): boolean =>
  inside.every((token, at) => {
    const before = inside[at - 1]?.text
    if (token.text === '-') return before === '^'
    return token.kind !== 'number' || before === '^' || before === '-'
  })

function refuseOtherPower(gathered: readonly Token[], next: Token | undefined): void {
  const typed = gathered.at(-1)
  if (next?.text !== '^' || !typed) return
  throw refused(
    next.span,
    'The exponent of a unit is a whole number',
    `Put brackets round \`${typed.text}\` to raise it as a whole`,
  )
}
