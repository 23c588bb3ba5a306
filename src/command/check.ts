import { diagnosticData } from '../diagnostic/diagnostic-data.ts'
import type { CheckLine, Line, Workings } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import { unitText } from '../quantity/unit.ts'
import { columns } from './columns.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { plural, sayDiagnostics } from './say-diagnostics.ts'
import type { Terminal } from './terminal.ts'

/** `check FILE...`: diagnostics and the summary of checks. The worst status of all files. */
export async function check(
  terminal: Terminal,
  files: readonly string[],
  options: { readonly format: 'text' | 'json' },
): Promise<ExitStatus> {
  const all: { path: string; evaluated: Evaluated }[] = []
  for (const path of files) all.push({ path, evaluated: await evaluateFile(path) })
  if (options.format === 'json')
    terminal.answer(
      JSON.stringify(
        all.map(({ evaluated }) => dataOf(evaluated)),
        null,
        2,
      ),
    )
  else for (const { evaluated } of all) sayFile(terminal, evaluated)
  const statuses = all.map(({ evaluated }) => evaluated.status)
  return (
    statuses.find(status => status === exitStatus.notebook) ??
    statuses.find(status => status === exitStatus.check) ??
    exitStatus.well
  )
}

interface Summed {
  readonly block: string
  readonly check: CheckLine
}

/** Every check that was reached, in the package's order. */
export function checksOf(workings: Workings): Summed[] {
  const isCheck = (line: Line): line is CheckLine => line.kind === 'check'
  return workings.blocks.flatMap(block =>
    block.kind === 'assume' ? [] : block.lines.filter(isCheck).map(line => ({ block: block.name, check: line })),
  )
}

function dataOf({ notebook, workings, diagnostics }: Evaluated) {
  return {
    path: notebook.path,
    checks: checksOf(workings).map(({ block, check: line }) => ({
      block,
      number: line.number,
      says: line.says,
      satisfied: line.satisfied,
      ...(line.ratio ? { ratio: line.ratio.value } : {}),
    })),
    diagnostics: diagnostics.map(fault => diagnosticData(fault, notebook.path)),
  }
}

function sayFile(terminal: Terminal, { notebook, workings, diagnostics }: Evaluated): void {
  sayDiagnostics(terminal, notebook, diagnostics)
  const checks = checksOf(workings)
  if (checks.length === 0) {
    terminal.answer(`${notebook.path}: no check was reached`)
    return
  }
  const rows = checks.map(({ block, check: line }) => [
    line.number,
    block,
    line.says,
    line.demand ? shownText(line.demand) : '',
    line.capacity ? shownText(line.capacity) : '',
    line.ratio ? line.ratio.shown.digits : '',
    line.satisfied ? 'satisfied' : 'NOT SATISFIED',
  ])
  const failing = checks.filter(({ check: line }) => !line.satisfied).length
  const worst = Math.max(...checks.map(({ check: line }) => line.ratio?.value ?? 0))
  terminal.answer(columns(['step', 'block', 'check', 'demand', 'capacity', 'ratio', 'result'], rows))
  const verdict = failing === 0 ? 'all satisfied' : `${failing} not satisfied`
  terminal.answer(
    `${notebook.path}: ${plural(checks.length, 'check')}, ${verdict}${worst > 0 ? `, largest ratio ${worst.toFixed(3)}` : ''}`,
  )
}

const shownText = ({ digits, unit }: Shown): string => `${plainNumber(digits)} ${unitText(unit)}`.trim()
