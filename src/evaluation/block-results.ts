import type { Results } from './evaluate.ts'
import { shownWords } from './shown-words.ts'
import type { Answer, BlockWorking, CheckLine, Line } from './workings.ts'

/**
 * The results of a calculation or a work block as rows of words: name, result, meaning. Of a module those that it calls its results; then
 * every check, and how the two methods agree. No number of a step stands there, so that a line more changes no other row.
 */
export function blockResults(results: Results, block: BlockWorking): readonly (readonly string[])[] {
  if (block.kind === 'assume') return []
  const { plan } = results
  const planned = plan.blocks[block.index]
  const wanted = planned?.kind === 'calc' ? new Set(planned.module.results) : undefined
  return [
    ...block.lines.flatMap(line => (line.kind === 'check' ? [checkRow(line)] : valueRows(line, wanted))),
    ...(block.kind === 'calc' ? secondRows(block) : []),
  ]
}

/** An answer to a mention as words; nothing where there is none, or where it is no value. */
export function answerWords(answer: Answer | undefined): string | undefined {
  if (answer?.kind === 'value') return shownWords(answer.printed.shown)
  return answer?.kind === 'word' ? answer.text : undefined
}

function valueRows(line: Exclude<Line, CheckLine>, wanted: ReadonlySet<string> | undefined): string[][] {
  const { row } = line
  const rowLabel = row ? `, ${row.label || `row ${row.index}`}` : ''
  const isWanted = (name: string): boolean => !wanted || wanted.has(row ? name.replace(/_\d+$/, '') : name)
  if (line.kind === 'formula' || line.kind === 'look')
    return isWanted(line.name) ? [[`\`${line.name}\``, shownWords(line.result), `${line.says}${rowLabel}`]] : []
  if (line.kind !== 'solve') return []
  return line.gives
    .filter(({ name }) => isWanted(name))
    .map(({ name, printed, says }) => [`\`${name}\``, shownWords(printed.shown), `${says}${rowLabel}`])
}

function checkRow({ satisfied, ratio, says }: CheckLine): string[] {
  const verdict = satisfied ? 'satisfied' : 'NOT SATISFIED'
  return ['check', ratio ? `${verdict}, ratio ${ratio.shown.digits}` : verdict, says]
}

function secondRows({ second }: Extract<BlockWorking, { kind: 'calc' }>): string[][] {
  const checks = second?.lines.filter(line => line.kind === 'check').map(checkRow) ?? []
  const compared = second?.comparisons ?? []
  return [
    ...checks,
    ...compared.map(({ agrees, first, differenceShown, bandShown }) => [
      'second method',
      agrees ? 'agrees' : 'DOES NOT AGREE',
      `${differenceShown} from \`${first.symbol}\`, ${bandShown} allowed`,
    ]),
  ]
}
