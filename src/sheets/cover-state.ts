import type { CalcWorking, CheckLine, Workings } from '../evaluation/workings.ts'
import { plainNumber } from '../quantity/number-print.ts'
import { isDoubtful, tallyChecks } from '../typesetting/tally-checks.ts'
import { checkingWords, isBegun } from './checking-sheet.ts'
import { coverageWords, isOpen } from './coverage-tables.ts'
import type { EarlyModel } from './package-model.ts'
import { noticeId } from './place-workings.ts'
import { assumptionRows } from './register-sheet.ts'

/** One line of the state of the package: what, the finding in words, and whether it calls for a look. */
export interface StateLine {
  readonly what: string
  readonly finding: string
  readonly to?: string
  readonly attention: boolean
}

/** The state of the package, one line each, in the order a reviewer asks. */
export function coverState(model: EarlyModel): StateLine[] {
  return [
    ...errors(model),
    ...checks(model.workings),
    holds(model),
    warnings(model.workings),
    unbased(model.workings),
    typed(model.workings),
    limits(model.workings),
    seconds(model.workings),
    coverage(model.workings),
    level(model),
    ...checking(model),
    proof(model),
  ]
}

function errors({ workings }: EarlyModel): StateLine[] {
  const count = workings.diagnostics.filter(each => each.severity === 'error').length
  if (count === 0) return []
  return [{ what: 'Errors', finding: `${count}; this is not a package`, to: 'messages', attention: true }]
}

/** Strength, stability and service in one line, geometry in a line of its own where anything checks it. */
function checks(workings: Workings): StateLine[] {
  const all = workings.blocks.flatMap(block => block.checks)
  const geometry = all.filter(({ aspect }) => aspect === 'geometry')
  const main = all.filter(check => !geometry.includes(check))
  return [checkLine('Checks', main), ...(geometry.length > 0 ? [checkLine('Checks of geometry', geometry)] : [])]
}

function checkLine(what: string, all: readonly CheckLine[]): StateLine {
  const tally = [...tallyChecks(all)]
  const state = tallied(all)
  const worst = all.toSorted((a, b) => (b.ratio?.value ?? 0) - (a.ratio?.value ?? 0))[0]
  const finding = worst?.ratio
    ? `${state}; highest ratio ${plainNumber(worst.ratio.shown.digits)} at ${worst.number}`
    : state
  const attention = tally.some(([words]) => words !== 'satisfied')
  return { what, finding: all.length === 0 ? 'none made' : finding, to: 'checks', attention }
}

/** `180 of 181 satisfied; 1 satisfied but outside limits: 57.39`. What is not satisfied stands first. */
function tallied(all: readonly CheckLine[]): string {
  const tally = [...tallyChecks(all)]
  const fails = tally.filter(([, [one]]) => one && !one.satisfied)
  const plain = tally.filter(([words]) => words === 'satisfied')
  const doubtful = tally.filter(([, some]) => some.some(isDoubtful))
  if (tally.length === 1 && plain.length === 1 && all.length > 1) return `all ${all.length} satisfied`
  const parts = [...fails, ...plain, ...doubtful].map(([words, some], index) => {
    const numbers = words === 'satisfied' ? '' : `: ${numbersOf(some)}`
    return `${some.length}${index === 0 ? ` of ${all.length}` : ''} ${words}${numbers}`
  })
  return parts.join('; ')
}

function numbersOf(some: readonly CheckLine[]): string {
  const more = some.length > mostNamed ? ` and ${some.length - mostNamed} more` : ''
  const numbers = some.slice(0, mostNamed).map(({ number }) => number)
  return numbers.join(', ') + more
}

/** So many checks to be looked at are named on the cover. */
const mostNamed = 6

function holds({ workings, notebook }: EarlyModel): StateLine {
  const held = assumptionRows(workings)
    .filter(row => row.status === 'hold')
    .map(row => row.number)
  const boxed = notebook.notices.flatMap((notice, index) => (notice.kind === 'hold' ? [noticeId(index)] : []))
  const count = held.length + boxed.length
  if (count === 0) return { what: 'Holds', finding: 'none open', attention: false }
  const named =
    held.length > 0 ? `${held.join(', ')}${boxed.length > 0 ? ` and ${boxed.length} in the text` : ''}` : 'in the text'
  return { what: 'Holds', finding: `${count} open: ${named}`, to: boxed[0] ?? 'register', attention: true }
}

function warnings(workings: Workings): StateLine {
  const count = workings.diagnostics.filter(each => each.severity === 'warning').length
  const sheet = workings.diagnostics.some(each => each.severity === 'error') ? 'Errors and warnings' : 'Warnings'
  return count === 0
    ? { what: 'Warnings', finding: 'none', attention: false }
    : { what: 'Warnings', finding: `${count}, listed under ${sheet}`, to: 'messages', attention: true }
}

function unbased(workings: Workings): StateLine {
  const rows = assumptionRows(workings)
  const without = rows.filter(row => row.basis === '').map(row => row.number)
  const finding =
    without.length === 0 ? `none of ${rows.length}` : `${without.length} of ${rows.length}: ${without.join(', ')}`
  return { what: 'Assumptions without a basis', finding, to: 'register', attention: without.length > 0 }
}

function typed({ typed: of }: Workings): StateLine {
  if (of.length === 0) return { what: 'Values typed in blocks', finding: 'none', attention: false }
  const finding = `${of.length}, without a basis in the register`
  return { what: 'Values typed in blocks', finding, to: 'typed', attention: true }
}

function limits(workings: Workings): StateLine {
  const exceeded = calcs(workings).filter(block => block.limits.some(limit => !limit.kept))
  const first = exceeded[0]
  if (!first) return { what: 'Limits of validity', finding: 'all kept', attention: false }
  return {
    what: 'Limits of validity',
    finding: `exceeded in ${exceeded.map(named).join(', ')}`,
    to: first.id,
    attention: true,
  }
}

function seconds(workings: Workings): StateLine {
  const compared = calcs(workings).filter(block => (block.second?.comparisons.length ?? 0) > 0)
  const apart = compared.filter(block => block.second?.comparisons.some(comparison => !comparison.agrees))
  const of = `${compared.length} of ${calcs(workings).length} calculations`
  const first = apart[0]
  if (first)
    return {
      what: 'Second methods',
      finding: `${of}; differ in ${apart.map(named).join(', ')}`,
      to: first.id,
      attention: true,
    }
  return { what: 'Second methods', finding: compared.length > 0 ? `${of}, all agree` : 'none', attention: false }
}

function coverage({ coverage: lines }: Workings): StateLine {
  return { what: 'Coverage', finding: coverageWords(lines), to: 'basis', attention: lines.some(isOpen) }
}

const named = (block: CalcWorking): string => `${block.number} ${block.name}`

function level({ notebook: { title } }: EarlyModel): StateLine {
  const checker = title.checked || 'not yet checked'
  const finding = title.checkLevel ? `${title.checkLevel}: ${checker}` : checker
  return { what: 'Level of check', finding, attention: title.checked === '' }
}

/** How much of the package a checker has ticked; nothing before the first tick. */
function checking({ checking: state }: EarlyModel): StateLine[] {
  if (!state || !isBegun(state)) return []
  const { fallen, open } = state.counts
  return [{ what: 'Checking record', finding: checkingWords(state), to: 'checking', attention: fallen + open > 0 }]
}

function proof({ proof: of }: EarlyModel): StateLine {
  if (!of) return { what: 'Pencil proof', finding: 'not made', attention: true }
  const solved = of.notPencil > 0 ? `; ${of.notPencil} by a numerical method` : ''
  const finding = `${of.closing} of ${of.lines} lines close${solved}`
  return { what: 'Pencil proof', finding, attention: of.closing < of.lines }
}

export function calcs(workings: Workings): CalcWorking[] {
  return workings.blocks.flatMap(block => (block.kind === 'calc' ? [block] : []))
}
