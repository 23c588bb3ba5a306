import { createHash } from 'node:crypto'
import { shownWords } from '../evaluation/shown-words.ts'
import type { Line, Printed, Substitution } from '../evaluation/workings.ts'
import { formulaText } from '../formula/formula-text.ts'

/** What a tick vouches for, in the order in which it is written. */
export const vouched = ['formula', 'source', 'inputs', 'result'] as const
export type Vouched = (typeof vouched)[number]

/** The characters of a step as printed, parted into what a checker vouches for. */
export type StepText = Readonly<Record<Vouched, string>>

/** Eight hexadecimal digits of SHA-256 for each part. */
export type StepPrint = Readonly<Record<Vouched, string>>

/** What the step says on paper: its formula or method, its source, the numbers put in, and what came out. */
export function stepText(line: Line): StepText {
  const source = line.reference ? `${line.reference.key} ${line.reference.at}` : ''
  if (line.kind === 'look') {
    const axes = [line.rowAxis, ...(line.columnAxis ? [line.columnAxis] : [])]
    return {
      formula: [line.title, ...axes.map(({ says }) => says)].join('; '),
      source: [source, line.corners.flat().join(' ')].join('; '),
      inputs: axes.map(({ key }) => (typeof key === 'string' ? key : printedText(key))).join('; '),
      result: shownWords(line.result),
    }
  }
  if (line.kind === 'solve')
    return {
      formula: `${line.title}; ${line.method}`,
      source,
      inputs: line.takes.map(({ value }) => operandText(value)).join('; '),
      result: line.gives.map(({ printed }) => printedText(printed)).join('; '),
    }
  const { working } = line
  return {
    formula: working ? formulaText(working.formula) : line.says,
    source,
    inputs: working ? inputsText(working) : '',
    result: resultText(line),
  }
}

/** The result of a step as printed. */
export const stepResult = (line: Line): string => stepText(line).result

/** The fingerprint of a step as printed. */
export function stepPrint(line: Line): StepPrint {
  const text = stepText(line)
  return {
    formula: digest(text.formula),
    source: digest(text.source),
    inputs: digest(text.inputs),
    result: digest(text.result),
  }
}

const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 8)

function resultText(line: Exclude<Line, { kind: 'look' | 'solve' }>): string {
  if (line.kind === 'formula') return shownWords(line.result)
  if (line.kind === 'check') return line.verdict
  return line.because ?? (line.holds ? 'holds' : 'does not hold')
}

const inputsText = ({ operands }: Substitution): string =>
  [...operands].map(([name, value]) => `${name} = ${operandText(value)}`).join('; ')

const printedText = ({ shown }: Printed): string => shownWords(shown)

function operandText(value: string | Printed | readonly Printed[]): string {
  if (typeof value === 'string') return value
  return 'shown' in value ? printedText(value) : value.map(printedText).join(', ')
}
