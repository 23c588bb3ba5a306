import { unitSpelling } from '../quantity/unit-parts.ts'
import { isUnitName } from '../quantity/units.ts'
import { groupedComma } from './comma-help.ts'
import { isFunctionName } from './functions.ts'
import { namePattern, nameSpelling, strangeWords } from './names.ts'
import { strangeCharacter } from './strange-character.ts'
import { beyond, limits, type Operator, refused, syntax, type Token } from './token.ts'
import type { Span } from './types.ts'

const blanks = /\s*/uy
const number = /(?:\d+\.?\d*|\.\d+)(?:[eE][+\-−]?\d+)?/uy
const word = new RegExp(`${namePattern}(?:\\.${namePattern})?`, 'uy')
const superscript = /⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/uy
const degree = /°[CF]?|[℃℉]/uy
const operator = /<=|>=|==|!=|[-+*/^<>·⋅×∙÷−–≤≥≠]/uy
const bracket = /[(),]/uy

const spellings: ReadonlyMap<string, Operator> = new Map([
  ...['·', '⋅', '×', '∙'].map(typed => [typed, '*'] as const),
  ...['−', '–'].map(typed => [typed, '-'] as const),
  ['÷', '/'],
  ['≤', '<='],
  ['≥', '>='],
  ['≠', '!='],
])

/** Characters of a formula to tokens, each with its place. Throws a FormulaFault at the first thing that formulas do not have. */
export function lex(text: string): readonly Token[] {
  if (text.length > limits.characters)
    throw beyond(
      { start: limits.characters, end: text.length },
      `A formula is at most ${limits.characters} characters long`,
    )
  const tokens: Token[] = []
  for (let at = skip(text, 0); at < text.length; at = skip(text, tokens.at(-1)?.span.end ?? 0)) {
    tokens.push(...tokensAt(text, at))
    if (tokens.length > limits.tokens)
      throw beyond({ start: at, end: text.length }, `A formula has at most ${limits.tokens} numbers, names and signs`)
  }
  return tokens
}

const skip = (text: string, from: number): number => from + (match(blanks, text, from)?.length ?? 0)

function match(pattern: RegExp, text: string, from: number): string | undefined {
  pattern.lastIndex = from
  return pattern.exec(text)?.[0]
}

function tokensAt(text: string, start: number): readonly Token[] {
  const span = (found: string): Span => ({ start, end: start + found.length })
  const digits = match(number, text, start)
  if (digits !== undefined) return [numberToken(text, digits, span(digits))]
  const name = match(word, text, start)
  if (name !== undefined) return [wordToken(text, name, span(name))]
  const raised = match(superscript, text, start)
  if (raised !== undefined) return superscriptTokens(raised, span(raised))
  const degrees = match(degree, text, start)
  if (degrees !== undefined) return [{ kind: 'unit', text: unitSpelling(degrees), span: span(degrees) }]
  const mark = match(bracket, text, start)
  if (mark !== undefined) return [{ kind: mark as '(' | ')' | ',', text: mark, span: span(mark) }]
  return [operatorToken(text, start)]
}

function numberToken(text: string, typed: string, span: Span): Token {
  const after = text.slice(span.end)
  if (after.startsWith('_')) throw refused(span, 'A number has no `_` in it', `Write \`${typed}${digitsOnly(after)}\``)
  if (/^,\d{3}(?!\d)/.test(after))
    throw refused(span, 'A number has no comma in it', groupedComma(text.slice(0, span.start), { typed, after }))
  if (/^[ \u00a0\u2009\u202f]\d{3}(?!\d)/.test(after) && /^\d{1,3}$/.test(typed))
    throw refused(span, 'A number has no blank in it', `Write \`${typed}${after.slice(1, 4)}\``)
  if (/^0\d/.test(typed))
    throw refused(span, `\`${typed}\` starts with 0`, `Write \`${typed.replace(/^0+(?=\d)/, '')}\``)
  const plain = typed.replace('−', '-')
  const value = Number(plain)
  if (!Number.isFinite(value)) throw refused(span, `\`${typed}\` is too large a number`)
  if (value === 0 && /[1-9]/.test(plain.split(/e/i)[0] ?? '')) throw refused(span, `\`${typed}\` is too small a number`)
  return { kind: 'number', text: plain, span }
}

const digitsOnly = (after: string): string => (/^(?:[,_]\d+)*/.exec(after)?.[0] ?? '').replace(/[,_]/g, '')

function wordToken(text: string, typed: string, span: Span): Token {
  const after = text[span.end]
  if (after === '.') throw syntax({ start: span.end, end: span.end + 1 }, dotFault(typed))
  if (after === "'" || after === '′')
    throw refused(span, 'A name has no prime in it', 'Give the name an index instead, as in `gamma_eff`')
  if (strangeWords.has(typed)) throw refused(span, `\`${typed}\` is not part of formulas`)
  const called = text[skip(text, span.end)] === '('
  if (called && isFunctionName(typed)) return { kind: 'function', text: typed, span }
  if (typed === 'to' || typed === 'and' || typed === 'or' || typed === 'not') return { kind: 'word', text: typed, span }
  if (typed === 'pi' || typed === 'π') return { kind: 'pi', text: 'pi', span }
  if (isUnitName(unitSpelling(typed))) return { kind: 'unit', text: unitSpelling(typed), span }
  if (isFunctionName(typed)) throw syntax(span, `\`${typed}\` is a function`, `Write \`${typed}(...)\``)
  return { kind: 'name', text: nameSpelling(typed), span }
}

const dotFault = (typed: string): string =>
  typed.includes('.')
    ? `\`${typed}\` already names a block and a value; a name has one dot at most`
    : `Nothing stands behind the dot of \`${typed}.\``

/** `²` is `^2`, `⁻¹` is `^-1`; all of them stand where the raised characters stand. */
function superscriptTokens(raised: string, span: Span): readonly Token[] {
  const digits = [...raised.replace('⁻', '')].map(c => '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c)).join('')
  const minus: Token[] = raised.startsWith('⁻') ? [{ kind: 'operator', text: '-', span }] : []
  return [{ kind: 'operator', text: '^', span }, ...minus, { kind: 'number', text: digits, span }]
}

function operatorToken(text: string, start: number): Token {
  const typed = match(operator, text, start)
  if (typed === undefined) throw strangeCharacter(text, start)
  const span = { start, end: start + typed.length }
  const next = text[span.end]
  if (typed === '*' && next === '*')
    throw syntax({ start, end: start + 2 }, '`**` is not a sign of formulas', 'Write a power as `^`')
  if (typed === '<' && next === '>')
    throw syntax({ start, end: start + 2 }, '`<>` is not a sign of formulas', 'Write `!=`')
  return { kind: 'operator', text: spellings.get(typed) ?? (typed as Operator), span }
}
