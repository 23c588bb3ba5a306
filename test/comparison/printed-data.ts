import { resultsData } from '../../src/evaluation/results-data.ts'
import type { RunText } from '../evaluation/run-text.ts'

export interface PrintedData {
  readonly number: string
  readonly block: string
  /** All that `results` gives of the line but its number; renamed blocks in their old names. */
  readonly text: string
}

/** Every printed line as `results` publishes it: a second reading of the same page, independent of how `compare` reads it. */
export function printedData(
  { results, workings }: RunText,
  renamed: Readonly<Record<string, string>> = {},
): PrintedData[] {
  const data = resultsData(results, workings, { tool: 'test', path: 'trial.md', sha256: '' })
  const inOld = (text: string): string =>
    Object.entries(renamed).reduce((all, [now, old]) => all.replaceAll(`${now}.`, `${old}.`), text)
  return data.blocks.flatMap(block => {
    const second = 'second' in block && block.second && 'steps' in block.second ? block.second.steps : []
    const lines = [...block.steps, ...block.checks, ...second]
    return lines.map(line => {
      // A check of the author's is called by its place in the block.
      const { number, ...rest } = line
      const said = 'satisfied' in rest && block.kind === 'work' ? { ...rest, name: '' } : rest
      return { number, block: renamed[block.name] ?? block.name, text: inOld(JSON.stringify(said)) }
    })
  })
}
