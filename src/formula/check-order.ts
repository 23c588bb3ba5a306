import { listedUnit } from '../quantity/units.ts'
import { decimalComma } from './comma-help.ts'
import { functionHint } from './functions.ts'
import { beyond, type FormulaFault, limits, refused, syntax, type Token } from './token.ts'

interface State {
  readonly tokens: readonly Token[]
  readonly open: { readonly token: Token; readonly call: boolean; powers: number }[]
  powers: number
  minuses: number
}

/**
 * Walks the tokens as a reader does, a value and a sign in turn, and throws a FormulaFault at the first that stands wrongly: a
 * missing `*`, two quantities side by side, an open bracket, a sign with nothing behind it, a division whose extent is in doubt.
 * What passes is a formula that the parser can read in one way only.
 */
export function checkOrder(tokens: readonly Token[], text: string): void {
  const state: State = { tokens, open: [], powers: 0, minuses: 0 }
  let wantsValue = true
  for (let at = 0; at < tokens.length; at++) wantsValue = wantsValue ? value(state, at) : sign(state, at)
  if (wantsValue) throw ended(tokens, text)
  const left = state.open.at(-1)
  if (left) throw syntax(left.token.span, 'This bracket is not closed')
}

function ended(tokens: readonly Token[], text: string): FormulaFault {
  const last = tokens.at(-1)
  if (!last) return syntax({ start: 0, end: text.length }, 'A formula is expected here')
  return syntax(last.span, `Nothing stands behind \`${last.text}\``)
}

/** Reads a token where a value is due; returns whether a value is still due behind it. */
function value(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (!token) return true
  if (token.kind !== 'operator') state.minuses = 0
  switch (token.kind) {
    case 'number':
    case 'pi':
      return false
    case 'unit':
      return pointAlone(state, at)
    case 'name':
      return named(state, at)
    case 'quantity':
      return quantity(state, at)
    case 'function':
      return true
    case '(':
      return opened(state, at)
    case 'operator':
      return minus(state, token)
    case 'word':
      return not(state, at)
    default:
      throw misplaced(state, at)
  }
}

/** A bare scale only reads a temperature: `T / degC`. */
function pointAlone({ tokens }: State, at: number): boolean {
  const token = tokens[at]
  if (!token || listedUnit(token.text)?.offset === undefined) return false
  if (tokens[at - 1]?.text === '/' && tokens[at + 1]?.text !== '^') return false
  const help = `Write \`${token.text === 'degC' ? 'K' : 'delta_degF'}\` for a temperature difference`
  throw refused(token.span, `\`${token.text}\` stands only behind a number, \`/\` or \`to\``, help)
}

function named(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (token && state.tokens[at + 1]?.kind === '(') throw unknownCall(token)
  return false
}

function unknownCall(token: Token): FormulaFault {
  const help = functionHint(token.text) ?? `Write \`${token.text} * (...)\` if a product is meant`
  return refused(token.span, `There is no function \`${token.text}\``, help)
}

function opened(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (!token) return true
  if (state.open.length >= limits.depth) throw beyond(token.span, `Brackets stand at most ${limits.depth} deep`)
  state.open.push({ token, call: state.tokens[at - 1]?.kind === 'function', powers: state.powers })
  state.powers = 0
  return true
}

function minus(state: State, token: Token): boolean {
  if (token.text === '+') throw refused(token.span, 'A plus sign stands only between two values')
  if (token.text !== '-') throw syntax(token.span, `A value is expected before \`${token.text}\``)
  if (++state.minuses > limits.minuses) throw beyond(token.span, `At most ${limits.minuses} minus signs stand in a row`)
  return true
}

function not(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (token?.text !== 'not') throw misplaced(state, at)
  if (state.tokens[at + 1]?.kind !== '(') throw refused(token.span, '`not` needs brackets', 'Write `not (a < b)`')
  return true
}

function misplaced(state: State, at: number): FormulaFault {
  const token = state.tokens[at]
  const before = state.tokens[at - 1]
  if (!token) return syntax({ start: 0, end: 0 }, 'A formula is expected here')
  if (token.kind === ')' && before?.kind === '(') return syntax(token.span, 'Nothing stands in these brackets')
  if (token.kind === ')' && !state.open.length) return syntax(token.span, 'This bracket has no opening one')
  const where = before ? ` behind \`${before.text}\`` : ''
  return syntax(token.span, `A value is expected${where}, not \`${token.text}\``)
}

function quantity(state: State, at: number): boolean {
  const token = state.tokens[at]
  const before = state.tokens[at - 1]
  if (token?.kind !== 'quantity' || before?.kind !== 'operator') return false
  const doubt = before.text === '^' || (before.text === '/' && !dividesPlainly(state.tokens, at))
  if (!doubt) return false
  const help = `Put brackets round \`${token.text}\`, or round what stands before it`
  throw refused(token.span, `The \`${before.text}\` before \`${token.text}\` can be read in two ways`, help)
}

/** `20 kN / 4 m` can be read in one way; `1/2 m`, `w/2 m` and `M / 2 kN/m` cannot. */
function dividesPlainly(tokens: readonly Token[], at: number): boolean {
  const above = tokens[at - 2]
  const below = tokens[at]
  return above?.kind === 'quantity' && below?.kind === 'quantity' && below.unit.parts.length === 1
}

/** Reads a token where a sign is due; returns whether a value is due behind it. */
function sign(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (!token) return false
  switch (token.kind) {
    case 'operator':
      return binary(state, token)
    case ')':
      return closed(state, token)
    case ',':
      return comma(state, at)
    case 'word':
      if (token.text === 'and' || token.text === 'or') return binary(state, token)
      throw beside(state.tokens, at)
    default:
      throw beside(state.tokens, at)
  }
}

function binary(state: State, token: Token): boolean {
  state.powers = token.text === '^' ? state.powers + 1 : 0
  if (state.powers > limits.powers) throw beyond(token.span, `At most ${limits.powers} powers stand in a row`)
  return true
}

function closed(state: State, token: Token): boolean {
  const open = state.open.pop()
  if (!open) throw syntax(token.span, 'This bracket has no opening one')
  state.powers = open.powers
  return false
}

function comma(state: State, at: number): boolean {
  const token = state.tokens[at]
  if (token && state.open.at(-1)?.call !== true) {
    const help = decimalComma(state.tokens, at)
    throw refused(token.span, 'A comma stands only between the arguments of a function', help)
  }
  state.powers = 0
  return true
}

function beside(tokens: readonly Token[], at: number): FormulaFault {
  const left = tokens[at - 1]
  const right = tokens[at]
  if (!left || !right) return syntax({ start: 0, end: 0 }, 'A formula is expected here')
  if (left.kind === 'number' && right.kind === 'number') return twoNumbers(left, right)
  if (left.kind === 'quantity' && right.kind === 'unit') return twoUnits(left, right)
  if (left.kind === 'quantity' && (right.kind === 'quantity' || right.kind === 'number'))
    return twoQuantities(left, right)
  if (right.text === 'to') return refused(right.span, '`to` stands only at the end of a formula')
  const help = `Write \`*\` between \`${left.text}\` and \`${right.text}\` if a product is meant`
  return refused(right.span, `A sign is missing between \`${left.text}\` and \`${right.text}\``, help)
}

function twoNumbers(left: Token, right: Token): FormulaFault {
  const grouped = /^\d{3}$/.test(right.text) && /^\d{1,3}$/.test(left.text)
  const help = grouped ? `Write \`${left.text}${right.text}\`` : 'Write the sign that is meant between them'
  return refused(right.span, `Two numbers stand side by side, \`${left.text}\` and \`${right.text}\``, help)
}

function twoUnits(left: Token, right: Token): FormulaFault {
  const help = `Write \`${left.text}*${right.text}\` for a product, \`to ${right.text}\` to change the unit`
  return refused(right.span, `The unit \`${right.text}\` stands beside another`, help)
}

function twoQuantities(left: Token, right: Token): FormulaFault {
  const help = `Write \`${left.text} + ${right.text}\` for a sum`
  return refused(right.span, `Two quantities stand side by side, \`${left.text}\` and \`${right.text}\``, help)
}
