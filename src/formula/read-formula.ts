import { create, parseDependencies } from 'mathjs/number'
import { readUnit } from '../quantity/unit.ts'
import { checkOrder } from './check-order.ts'
import { gatherQuantities, unitFault } from './gather-quantities.ts'
import { lex } from './lex.ts'
import { namesOf } from './names-of.ts'
import { narrow, type Parsed } from './narrow.ts'
import { FormulaFault, refused, syntax, type Token } from './token.ts'
import type { Formula, Read, Span } from './types.ts'

const { parse } = create(parseDependencies ?? {})

/**
 * Reads one formula: tokens of our own, quantities gathered, order checked, then the parser for precedence, then our own tree with
 * places. Never throws for what an author wrote: the first thing that stands wrongly is the fault, with its place in `text`.
 */
export function readFormula(text: string): Read {
  try {
    return { ok: true, formula: formulaOf(text) }
  } catch (error) {
    if (error instanceof FormulaFault) return { ok: false, fault: error.fault }
    throw error
  }
}

function formulaOf(text: string): Formula {
  const all = lex(text)
  const to = all.findIndex(token => token.text === 'to')
  const before = to < 0 ? all : all.slice(0, to)
  if (to >= 0) refuseInBrackets(all, to)
  const tokens = gatherQuantities(before, text)
  checkOrder(tokens, text)
  const tree = narrow(parsed(tokens, text), tokens)
  return { text, tree, names: namesOf(tree), ...(to >= 0 && shownIn(text, all[to]?.span ?? { start: 0, end: 0 })) }
}

/** The parser sees signs and the numbers of tokens only, `v0 * ( v3 + v5 )`: no name, number or unit of the author's reaches it. */
function parsed(tokens: readonly Token[], text: string): Parsed {
  const spelled = tokens.map((token, at) => spelling(token, at)).join(' ')
  try {
    return parse(spelled) as unknown as Parsed
  } catch {
    throw syntax({ start: 0, end: text.length }, 'The formula cannot be read')
  }
}

function spelling(token: Token, at: number): string {
  if (token.kind === 'function') return `f${at}`
  const isValue =
    token.kind === 'number' ||
    token.kind === 'quantity' ||
    token.kind === 'unit' ||
    token.kind === 'name' ||
    token.kind === 'pi'
  return isValue ? `v${at}` : token.text
}

function refuseInBrackets(all: readonly Token[], to: number): void {
  const depth = all.slice(0, to).reduce((so, { kind }) => so + (kind === '(' ? 1 : kind === ')' ? -1 : 0), 0)
  const token = all[to]
  if (token && depth > 0) throw refused(token.span, '`to` stands only at the end of a formula, not in brackets')
}

function shownIn(text: string, word: Span): Pick<Formula, 'to' | 'toSpan'> {
  const start = word.end + (text.slice(word.end).length - text.slice(word.end).trimStart().length)
  const toSpan = { start, end: Math.max(start, text.trimEnd().length) }
  const typed = text.slice(start)
  if (!typed) throw syntax(word, 'A unit is expected behind `to`')
  const read = readUnit(typed)
  if (read.ok) return { to: read.unit, toSpan }
  if (/\bto\b/.test(typed)) throw refused(toSpan, '`to` stands once, at the end of a formula')
  throw unitFault(read.fault, start)
}
