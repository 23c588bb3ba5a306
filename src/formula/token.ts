import type { Unit } from '../quantity/types.ts'
import type { Fault, FunctionName, Span } from './types.ts'

export type Operator = '+' | '-' | '*' | '/' | '^' | '<' | '<=' | '>' | '>=' | '==' | '!='

/** What the lexer makes of the characters of a formula. `text` is the spelling of the list, not always as typed. */
export type Token =
  | { readonly kind: 'number'; readonly text: string; readonly span: Span }
  | { readonly kind: 'name' | 'unit'; readonly text: string; readonly span: Span }
  | { readonly kind: 'pi'; readonly text: string; readonly span: Span }
  | { readonly kind: 'function'; readonly text: FunctionName; readonly span: Span }
  | { readonly kind: 'operator'; readonly text: Operator; readonly span: Span }
  | { readonly kind: 'word'; readonly text: 'and' | 'or' | 'not' | 'to'; readonly span: Span }
  | { readonly kind: '(' | ')' | ','; readonly text: string; readonly span: Span }
  | {
      readonly kind: 'quantity'
      readonly text: string
      readonly span: Span
      readonly number: string
      readonly unit: Unit
    }

/** Limits of a formula, stated in the documentation. */
export const limits = { characters: 1000, tokens: 400, depth: 50, powers: 8, minuses: 4 } as const

/** Thrown inside the reader only; `readFormula` turns it into its fault. */
export class FormulaFault extends Error {
  readonly fault: Fault
  constructor(fault: Fault) {
    super(fault.says)
    this.fault = fault
  }
}

/** A fault of grammar: the formula cannot be read. */
export const syntax = (span: Span, says: string, help?: string): FormulaFault =>
  new FormulaFault({ rule: 'formula-syntax', span, says, ...(help !== undefined && { help }) })

/** A fault of language: readable, but formulas do not have it. */
export const refused = (span: Span, says: string, help?: string): FormulaFault =>
  new FormulaFault({ rule: 'formula-refused', span, says, ...(help !== undefined && { help }) })

/** A limit that is passed. */
export const beyond = (span: Span, says: string): FormulaFault =>
  new FormulaFault({ rule: 'formula-limit', span, says })
