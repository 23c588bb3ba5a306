import type { Element } from 'hast'
import { beside, closes, lastFigure, readAnswer } from './answer.ts'
import { all, attribute, classed, first, textOf } from './find-elements.ts'
import { judge } from './judge.ts'
import type { Failing, LineProof } from './line-proof.ts'
import { type Mark, marksText, Unreadable } from './mark.ts'
import { readMath } from './read-math.ts'
import { reckon } from './reckon.ts'

/** One step of the page: its equations, its table entry, or its verdict. */
export function proveLine(step: Element, figures: number): LineProof {
  const number = attribute(step, 'dataLine') ?? ''
  const equations = all(step, element => classed(element, 'equation'))
  const proofs = equations.map(equation => proveEquation(equation, { step, number, figures }))
  const own = attribute(step, 'dataKind') === 'look' ? [...proofs, proveEntry(step, number)] : proofs
  return { lines: own.length, failing: own.flatMap(failing => (failing ? [failing] : [])) }
}

interface At {
  readonly step: Element
  readonly number: string
  readonly figures: number
}

function proveEquation(equation: Element, at: At): Failing | undefined {
  const put = marksIn(equation, 'put')
  const result = marksIn(equation, 'result')
  try {
    return classed(equation, 'comparison') ? proveVerdict(put, at) : proveResult(put, result, at)
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error
    return { number: at.number, printed: marksText([...put, ...result]), recomputed: `not read: ${error.message}` }
  }
}

function proveResult(put: readonly Mark[], result: readonly Mark[], at: At): Failing | undefined {
  const answer = readAnswer(result, figuresAt(at))
  const amounts = beside(reckon(withoutEquals(put)), answer)
  if (amounts.some(amount => closes(amount, answer))) return undefined
  const recomputed = amounts.length > 0 ? String(amounts[0]) : 'another unit'
  return { number: at.number, printed: marksText([...put, ...result]), recomputed }
}

function proveVerdict(put: readonly Mark[], at: At): Failing | undefined {
  const judged = judge(put)
  const word = first(at.step, element => classed(element, 'verdict'))
  const said = word ? !/\bnot\b/.test(textOf(word)) : undefined
  const printed = `${marksText(put)}: ${word ? textOf(word).trim() : 'no verdict'}`
  if (said !== judged.holds)
    return { number: at.number, printed, recomputed: judged.holds ? 'it holds' : 'it does not hold' }
  const ratio = first(at.step, element => classed(element, 'ratio'))
  if (!ratio) return undefined
  const text = textOf(ratio).trim()
  const recomputed = judged.sides ? judged.sides.demand.value / judged.sides.capacity.value : Number.NaN
  const shown = { value: plainValue(text), lastFigure: lastFigure(text.replace('−', ''), at.figures) }
  return closes(recomputed, shown)
    ? undefined
    : { number: at.number, printed: `ratio ${text}`, recomputed: String(recomputed) }
}

/** A value taken from a table is the marked cell as it stands, or what the last interpolation gave. */
function proveEntry(step: Element, number: string): Failing | undefined {
  const entry = first(step, element => classed(element, 'entry'))
  const printed = entry ? numeral(mathMarks(entry)) : ''
  const cell = all(step, element => classed(element, 'taken')).at(-1)
  const between = all(step, element => classed(element, 'interpolation')).at(-1)
  const last = between && first(between, element => classed(element, 'result'))
  const from = cell ? textOf(cell).trim() : last ? numeral(mathMarks(last)) : ''
  return from && plainValue(from) === plainValue(printed)
    ? undefined
    : { number, printed, recomputed: from || 'no entry is marked' }
}

/** The number of `= 26.08 kPa`, in the characters of running text. */
function numeral(marks: readonly Mark[]): string {
  return String(readAnswer(marks, 4).value)
}

/** A number in running text: real minus, thin spaces. */
function plainValue(text: string): number {
  return Number(
    text
      .replaceAll('−', '-')
      .replaceAll(/[\u202f\u2009\u00a0]/g, '')
      .split(' ')[0],
  )
}

/** Where the line itself says that it shows fewer figures, closing noughts are place holders. */
function figuresAt({ step, figures }: At): number {
  return first(step, element => classed(element, 'fewer')) ? 1 : figures
}

function withoutEquals(marks: readonly Mark[]): readonly Mark[] {
  const head = marks[0]
  return head?.kind === 'sign' && head.text === '=' ? marks.slice(1) : marks
}

function marksIn(equation: Element, name: string): readonly Mark[] {
  const holder = first(equation, element => classed(element, name))
  return holder ? mathMarks(holder) : []
}

function mathMarks(holder: Element): readonly Mark[] {
  return all(holder, element => element.tagName === 'math').flatMap(readMath)
}
