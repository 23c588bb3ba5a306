import { shownWords } from '../evaluation/shown-words.ts'
import type { Line, Substitution } from '../evaluation/workings.ts'
import { formulaText } from '../formula/formula-text.ts'
import { operandText } from './line-parts.ts'
import type { StepText } from './vouched.ts'

/** What ticks of earlier versions vouched for: no words, and names in place of symbols. Those ticks stand by it. */
export function earlierText(line: Line): Omit<StepText, 'words'> {
  const source = line.reference ? `${line.reference.key} ${line.reference.at}` : ''
  if (line.kind === 'look') {
    const axes = [line.rowAxis, ...(line.columnAxis ? [line.columnAxis] : [])]
    return {
      formula: [line.title, ...axes.map(({ says }) => says)].join('; '),
      source: [source, line.corners.flat().join(' ')].join('; '),
      inputs: axes.map(({ key }) => operandText(key)).join('; '),
      result: shownWords(line.result),
    }
  }
  if (line.kind === 'solve')
    return {
      formula: `${line.title}; ${line.method}`,
      source,
      inputs: line.takes.map(({ value }) => operandText(value)).join('; '),
      result: line.gives.map(({ printed }) => operandText(printed)).join('; '),
    }
  const { working } = line
  return {
    formula: working ? formulaText(working.formula) : line.says,
    source,
    inputs: working ? inputsText(working) : '',
    result: resultText(line),
  }
}

function resultText(line: Exclude<Line, { kind: 'look' | 'solve' }>): string {
  if (line.kind === 'formula') return shownWords(line.result)
  if (line.kind === 'check') return line.verdict
  return line.because ?? (line.holds ? 'holds' : 'does not hold')
}

const inputsText = ({ operands }: Substitution): string =>
  [...operands].map(([name, value]) => `${name} = ${operandText(value)}`).join('; ')
