import { basename } from 'node:path'
import { type ResultsData, resultsData } from '../evaluation/results-data.ts'
import { columns } from './columns.ts'
import { evaluateFile } from './evaluated.ts'
import type { ExitStatus } from './exit-status.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { sha256 } from './sha256.ts'
import type { Surroundings } from './surroundings.ts'

/** `results FILE`: every value, step and check, as JSON or a table. Diagnostics go to standard error. */
export async function results(
  around: Surroundings,
  file: string,
  options: { readonly format: 'json' | 'table' },
): Promise<ExitStatus> {
  const { terminal, version } = around
  const evaluated = await evaluateFile(file)
  const data = resultsData(evaluated.results, evaluated.workings, {
    tool: `undercroft ${version}`,
    path: file === '-' ? 'standard input' : basename(file),
    sha256: sha256(evaluated.bytes),
  })
  sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  terminal.answer(options.format === 'json' ? JSON.stringify(data, null, 2) : tableOf(data))
  return evaluated.status
}

function tableOf(data: ResultsData): string {
  const rows = data.blocks.flatMap(block =>
    Object.entries(block.outputs).map(([name, { step, shown, unit, says }]) => [
      step,
      `${block.name}.${name}`,
      `${shown} ${unit}`.trim(),
      says,
    ]),
  )
  return columns(['step', 'value', 'result', 'meaning'], rows)
}
