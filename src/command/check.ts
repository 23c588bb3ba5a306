import { diagnosticData } from '../diagnostic/diagnostic-data.ts'
import { printable } from '../diagnostic/printable.ts'
import { doubtsData } from '../evaluation/line-data.ts'
import { shownWords } from '../evaluation/shown-words.ts'
import type { CheckLine, Workings } from '../evaluation/workings.ts'
import { tallyChecks } from '../typesetting/tally-checks.ts'
import { columns } from './columns.ts'
import { countOf, plural } from './count-of.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { Stopped } from './stopped.ts'
import type { Terminal } from './terminal.ts'

interface CheckOptions {
  readonly format: 'text' | 'json'
}

/** `check FILE...`: diagnostics and the summary of checks. A file that cannot be read keeps no other from being checked. */
export async function check(
  terminal: Terminal,
  files: readonly string[],
  { format }: CheckOptions,
): Promise<ExitStatus> {
  if (files.filter(file => file === '-').length > 1)
    throw new Stopped(exitStatus.called, 'Standard input can be read once: give `-` once')
  const data: object[] = []
  const statuses: ExitStatus[] = []
  for (const file of files) {
    terminal.doing(`evaluating ${file}`)
    const found = await evaluatedOr(file)
    statuses.push(found.status)
    if (format === 'json') data.push(dataOf(file, found))
    else if (found instanceof Stopped) terminal.say(found.words)
    else sayFile(terminal, found)
  }
  if (format === 'json') terminal.answer(JSON.stringify(data, null, 2))
  return worstOf(statuses)
}

const evaluatedOr = (file: string): Promise<Evaluated | Stopped> =>
  evaluateFile(file).catch((thrown: unknown) => {
    if (thrown instanceof Stopped) return thrown
    throw thrown
  })

/** A file that was not read outweighs an error, and an error a check that is not satisfied. */
function worstOf(statuses: readonly ExitStatus[]): ExitStatus {
  const order: readonly ExitStatus[] = [exitStatus.called, exitStatus.notebook, exitStatus.check]
  return order.find(status => statuses.includes(status)) ?? exitStatus.well
}

interface Summed {
  readonly block: string
  readonly check: CheckLine
}

/** Every check that was reached, in the package's order, with its block. */
const summedOf = ({ blocks }: Workings): Summed[] =>
  blocks.flatMap(block => block.checks.map(check => ({ block: block.name, check })))

function dataOf(path: string, found: Evaluated | Stopped) {
  if (found instanceof Stopped) return { path, unread: found.message, checks: [], diagnostics: [] }
  const { notebook, workings, diagnostics } = found
  return {
    path: notebook.path,
    checks: summedOf(workings).map(({ block, check: line }) => ({
      block,
      number: line.number,
      says: line.says,
      satisfied: line.satisfied,
      ...doubtsData(line),
      ...(line.ratio ? { ratio: line.ratio.value } : {}),
    })),
    diagnostics: diagnostics.map(fault => diagnosticData(fault, notebook.path)),
  }
}

function sayFile(terminal: Terminal, evaluated: Evaluated): void {
  const { notebook, workings, diagnostics } = evaluated
  sayDiagnostics(terminal, notebook, diagnostics)
  const checks = summedOf(workings)
  if (checks.length > 0) terminal.answer(tableOf(checks))
  terminal.answer(`${printable(notebook.path)}: ${verdictOf(evaluated, checks)}`)
}

const tableOf = (checks: readonly Summed[]): string =>
  columns(
    ['step', 'block', 'check', 'demand', 'capacity', 'ratio', 'result'],
    checks.map(({ block, check: line }) => [
      line.number,
      block,
      line.says,
      line.demand ? shownWords(line.demand) : '',
      line.capacity ? shownWords(line.capacity) : '',
      line.ratio ? line.ratio.shown.digits : '',
      line.satisfied ? line.verdict : 'NOT SATISFIED',
    ]),
  )

/** One line that never sounds better than it is: with errors, some check may not have been reached at all. */
function verdictOf({ diagnostics, status }: Evaluated, checks: readonly Summed[]): string {
  const faulty = status === exitStatus.notebook ? `${countOf(diagnostics).errors}; ` : ''
  if (checks.length === 0) return `${faulty}no check was reached`
  const reached = `${plural(checks.length, 'check')}${faulty ? ' reached' : ''}`
  return `${faulty}${reached}, ${tallied(checks.map(each => each.check))}${largestOf(checks)}`
}

function tallied(checks: readonly CheckLine[]): string {
  const tally = tallyChecks(checks)
  if (tally.get('satisfied')?.length === checks.length) return 'all satisfied'
  return [...tally].map(([words, { length }]) => `${length} ${words}`).join(', ')
}

function largestOf(checks: readonly Summed[]): string {
  const ratios = checks.flatMap(({ check: { ratio } }) => ratio ?? []).sort((a, b) => b.value - a.value)
  return ratios[0] ? `, largest ratio ${ratios[0].shown.digits}` : ''
}
