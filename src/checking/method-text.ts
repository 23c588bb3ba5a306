import { shownWords } from '../evaluation/shown-words.ts'
import type { LookedAxis, LookLine, SolveLine } from '../evaluation/workings.ts'
import { inputsText, operandText, symbolsText } from './line-parts.ts'
import { ownRow } from './row-symbol.ts'
import type { StepText } from './vouched.ts'

/** What every step has: its words and its source. */
interface Head {
  readonly words: readonly string[]
  readonly source: string
}

/** A look-up as printed: table, axes, the cells round the value, and the interpolation between them. */
export function lookText(line: LookLine, { words, source }: Head): StepText {
  const axes = [line.rowAxis, ...(line.columnAxis ? [line.columnAxis] : [])]
  const between = line.interpolations
  return {
    words: [...words, line.status, ...between.map(({ says }) => says)].join('\n'),
    formula: [
      ownRow(line.symbol, line.row),
      line.title,
      ...axes.map(({ says }) => says),
      ...between.map(({ working }) => symbolsText(working, line)),
    ].join('; '),
    source: [source, ...axes.map(keysText), line.corners.map(row => row.join(' ')).join(' / ')].join('; '),
    inputs: [
      ...axes.map(({ key }) => operandText(key)),
      ...between.map(({ working, result }) => `${inputsText(working)} = ${shownWords(result)}`),
    ].join('; '),
    result: shownWords(line.result),
  }
}

const keysText = ({ lower, upper, unit }: LookedAxis): string => `${lower} to ${upper} ${unit?.text ?? ''}`

/** A numerical method as printed: what went in, what came out, and how it verified itself. */
export function solveText(line: SolveLine, { words, source }: Head): StepText {
  return {
    words: [...words, ...line.takes.map(({ says }) => says), ...line.gives.map(({ says }) => says), line.verified].join(
      '\n',
    ),
    formula: [...line.gives.map(({ printed }) => ownRow(printed.symbol, line.row)), line.title, line.method].join('; '),
    source,
    inputs: line.takes.map(({ value }) => operandText(value)).join('; '),
    result: line.gives.map(({ printed }) => operandText(printed)).join('; '),
  }
}
