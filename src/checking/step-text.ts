import { shownWords } from '../evaluation/shown-words.ts'
import type { Line } from '../evaluation/workings.ts'
import { inputsText, symbolsText } from './line-parts.ts'
import { lookText, solveText } from './method-text.ts'
import { ownRow } from './row-symbol.ts'
import type { StepText } from './vouched.ts'

/**
 * What the step says on paper: its words, formula or method, source, the numbers put in, and what came out. Names are their symbols, as in
 * print. Its own number and that of its row are left out: they only say where it stands.
 */
export function stepText(line: Line): StepText {
  const words = [line.says, line.row?.label ?? '']
  const source = line.reference ? `${line.reference.key} ${line.reference.at}` : ''
  if (line.kind === 'look') return lookText(line, { words, source })
  if (line.kind === 'solve') return solveText(line, { words, source })
  const { working } = line
  const symbols = working ? [symbolsText(working, line)] : []
  return {
    words: [...words, line.kind === 'formula' && line.fewer ? 'fewer figures' : ''].join('\n'),
    formula: [...(line.kind === 'formula' ? [ownRow(line.symbol, line.row)] : []), ...symbols].join(' = '),
    source,
    inputs: working ? inputsText(working) : '',
    result: resultText(line),
  }
}

function resultText(line: Exclude<Line, { kind: 'look' | 'solve' }>): string {
  if (line.kind === 'formula') return shownWords(line.result)
  if (line.kind === 'check')
    return [line.verdict, ...(line.ratio ? [`ratio ${shownWords(line.ratio.shown)}`] : [])].join(', ')
  return [...(line.because ? [line.because] : []), line.holds ? 'holds' : 'does not hold'].join(': ')
}
