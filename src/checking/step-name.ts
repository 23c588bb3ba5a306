import { keyedLines } from '../evaluation/line-key.ts'
import type { BlockWorking, Line } from '../evaluation/workings.ts'
import { symbolsText } from './line-parts.ts'
import { stepPrint } from './step-print.ts'
import type { StepPrint } from './vouched.ts'

/** How the record knows a step within its block: by a name, and in a list by the words of its row where it has some. */
export interface StepName {
  readonly step: string
  readonly row?: string
}

/** A step of a block with everything by which an entry of the record may be found to be about it. */
export interface NamedStep {
  /** By which it is called: the name of its value with the number of its row. */
  readonly key: string
  readonly name: StepName
  readonly line: Line
  readonly print: StepPrint
}

/** The steps of a block in order. Of two that would share a name the second takes ` (2)`. */
export function namedSteps(block: Exclude<BlockWorking, { kind: 'assume' }>): readonly NamedStep[] {
  const taken = new Set<string>()
  return [...keyedLines(block)].map(([key, line]) => {
    const name = nameOf(line, key, block.kind)
    let free = name
    for (let count = 2; taken.has(textOf(free)); count += 1) free = again(name, count)
    taken.add(textOf(free))
    return { key, name: free, line, print: stepPrint(line) }
  })
}

/** A check of the author's is known by its formula as printed; a step over rows by the words of its row, or by its number where it has none. */
function nameOf(line: Line, key: string, kind: 'calc' | 'work'): StepName {
  if (kind === 'work') return { step: line.kind === 'check' ? symbolsText(line.working, line) : key }
  return line.row?.label ? { step: rowless(key), row: line.row.label } : { step: key }
}

const textOf = ({ step, row }: StepName): string => JSON.stringify([step, row])

const again = ({ step, row }: StepName, count: number): StepName =>
  row === undefined ? { step: `${step} (${count})` } : { step, row: `${row} (${count})` }

const uncounted = (text: string): string => text.replace(/ \(\d+\)$/, '')
const rowless = (step: string): string => uncounted(step).replace(/_\d+$/, '')

/** The steps of a block, to find those that an entry of the record may be about. */
export interface StepIndex {
  /** The very steps that an entry names; one whose row had no words when it was written, by its key. */
  readonly named: (entry: StepName) => readonly NamedStep[]
  /** The steps that an entry names, in any row: those with the same words where it has words. */
  readonly inRows: (entry: StepName) => readonly NamedStep[]
}

export function indexOf(steps: readonly NamedStep[]): StepIndex {
  const byName = gathered(steps, ({ name }) => textOf(name))
  const byKey = gathered(steps, ({ key }) => key)
  const byRow = gathered(
    steps.filter(({ line }) => line.row),
    ({ key }) => rowless(key),
  )
  return {
    named: entry => [
      ...(byName.get(textOf(entry)) ?? []),
      ...(entry.row === undefined ? (byKey.get(entry.step) ?? []) : []),
    ],
    inRows: entry =>
      (byRow.get(rowless(entry.step)) ?? []).filter(
        ({ line }) =>
          entry.row === undefined || entry.row === line.row?.label || uncounted(entry.row) === line.row?.label,
      ),
  }
}

function gathered(steps: readonly NamedStep[], keyOf: (step: NamedStep) => string): ReadonlyMap<string, NamedStep[]> {
  const found = new Map<string, NamedStep[]>()
  for (const step of steps) {
    const own = found.get(keyOf(step))
    if (own) own.push(step)
    else found.set(keyOf(step), [step])
  }
  return found
}
