import { type FormulaFault, refused } from './token.ts'

type Sentence = readonly [says: string, help?: string]

const sentences: ReadonlyMap<string, Sentence> = new Map([
  ['%', ['`%` is not a sign of formulas', 'Write the unit `percent`, as in `5 percent`']],
  ['=', ['One `=` gives a name to a value and does not stand inside a formula', 'Write `==` to compare']],
  ['!', ['Formulas have no factorial', 'Write `not (...)` to turn a condition round, `!=` for unequal']],
  ['&', ['`&` is not a sign of formulas', 'Write `and`']],
  ['|', ['`|` is not a sign of formulas', 'Write `or` to join conditions, `abs(...)` for a size without sign']],
  ["'", ['A prime is not a sign of formulas', 'Give the name an index instead, as in `gamma_eff`']],
  ['′', ['A prime is not a sign of formulas', 'Give the name an index instead, as in `gamma_eff`']],
  ['"', ['Formulas have no text in quotation marks']],
  [':', ['Formulas have no ranges', 'Write a slope as a quotient, `1 / 1.5`']],
  [';', ['A formula is one expression', 'Put the next one on its own line']],
  ['?', ['Formulas have no choices with `?`', 'Use `min`, `max` or two steps']],
  ['[', ['Formulas have no lists in square brackets', 'Use round brackets']],
  [']', ['Formulas have no lists in square brackets', 'Use round brackets']],
  ['{', ['Formulas have no braces', 'Use round brackets']],
  ['}', ['Formulas have no braces', 'Use round brackets']],
  ['#', ['A remark does not stand inside a formula']],
  ['√', ['`√` is not a sign of formulas', 'Write `sqrt(...)`']],
  ['∛', ['`∛` is not a sign of formulas', 'Write `cbrt(...)`']],
  ['_', ['A name does not start with `_`', 'Start it with a letter']],
  ['.', ['A name does not start with a dot', 'Write `block.name`']],
  ['$', ['`$` is not a sign of formulas', 'Write names without it']],
  ['@', ['`@` is not a sign of formulas']],
  ['\\', ['Formulas are not TeX', 'Write `alpha`, `sqrt(x)`, `a / b`']],
])

/** The fault for a character that no token of formulas begins with. */
export function strangeCharacter(text: string, start: number): FormulaFault {
  const character = String.fromCodePoint(text.codePointAt(start) ?? 0xfffd)
  const span = { start, end: start + character.length }
  const [says, help] = sentences.get(character) ?? unnamed(character)
  return refused(span, says, help)
}

function unnamed(character: string): Sentence {
  if (/\p{L}/u.test(character)) return [`Names are of Latin and Greek letters, not \`${character}\``]
  const visible = /[\p{P}\p{S}]/u.test(character)
  const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`
  return [visible ? `\`${character}\` is not a sign of formulas` : `The character ${code} is not a sign of formulas`]
}
