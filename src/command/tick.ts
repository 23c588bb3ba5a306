import { type CheckingState, checkingState } from '../checking/checking-state.ts'
import type { CheckingRecord } from '../checking/record.ts'
import { writeRecord } from '../checking/write-record.ts'
import { printable } from '../diagnostic/printable.ts'
import { plural } from './count-of.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { holding } from './hold-file.ts'
import { type KeptRecord, keepRecord, readKept, recordPath } from './kept-record.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { signedBy } from './signed-by.ts'
import { stepsMeant } from './steps-meant.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { changedRecord } from './tick-change.ts'
import type { TickOptions } from './tick-options.ts'
import { stateData, stateText } from './tick-state.ts'

interface Asked {
  readonly steps: readonly string[]
  readonly options: TickOptions
}

/** `tick FILE [STEP...]`: the checking record. Without steps it tells how the record stands and writes nothing. */
export async function tick(around: Surroundings, file: string, { steps, options }: Asked): Promise<ExitStatus> {
  if (file === '-') throw called('The record stands beside its notebook: name a file')
  refuseIdle({ steps, options })
  const evaluated = await evaluateFile(file)
  if (steps.length === 0 && !options.begin) return tell(around, { file, evaluated, options })
  if (evaluated.status === exitStatus.notebook) {
    sayDiagnostics(around.terminal, evaluated.notebook, evaluated.diagnostics)
    around.terminal.say('Nothing was ticked: a notebook with errors cannot be checked')
    return exitStatus.notebook
  }
  const answer = await around.untilStopped(signal =>
    holding(recordPath(file), signal, async () => {
      const kept = await readKept(file)
      const { record, says } = options.begin ? begun(kept) : changed(evaluated, kept, { steps, options })
      await keep(signal, { evaluated, kept }, record)
      return says
    }),
  )
  around.terminal.answer(answer)
  return exitStatus.well
}

/** Refuses options that would go unheeded: what the checker wrote would be lost. */
function refuseIdle({ steps, options }: Asked): void {
  const { by, on, remove, comment, settle, begin } = options
  const given = Object.entries({ by, on, remove, comment, settle }).flatMap(([name, value]) =>
    value === undefined ? [] : [`\`--${name}\``],
  )
  if (begin && steps.length + given.length > 0)
    throw called('`--begin` lays down an empty record and ticks nothing', 'Give `--begin` alone, then tick')
  if (!begin && steps.length === 0 && given.length > 0)
    throw called(`${given.join(' and ')} without a step: nothing was written`, 'Name the steps, as in `4.07`, `roof`')
}

async function tell(
  { terminal }: Surroundings,
  { file, evaluated, options }: { file: string; evaluated: Evaluated; options: TickOptions },
): Promise<ExitStatus> {
  const kept = await readKept(file)
  if (evaluated.status === exitStatus.notebook) sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  const state = checkingState(evaluated.workings, kept.record)
  terminal.answer(
    options.format === 'json' ? JSON.stringify(stateData(state), null, 2) : stateText(state, evaluated.workings),
  )
  if (!kept.there)
    terminal.say(
      `\`${printable(kept.path)}\` is not there yet: \`undercroft tick ${printable(file)} STEP --by NAME\` begins it`,
    )
  return evaluated.status === exitStatus.notebook ? exitStatus.notebook : exitStatus.well
}

/** The record to be written, and what to answer. */
interface Written {
  readonly record: CheckingRecord
  readonly says: string
}

function begun(kept: KeptRecord): Written {
  if (kept.there) throw new Stopped(exitStatus.written, `\`${kept.path}\` is there already`)
  return { record: kept.record, says: `Wrote ${kept.path}, with a place for each block` }
}

function changed({ notebook, workings }: Evaluated, kept: KeptRecord, { steps: words, options }: Asked): Written {
  const signed = signedBy(notebook.title, options)
  const state = checkingState(workings, kept.record)
  const steps = [...new Set(words.flatMap(word => stepsMeant(word, state.steps, workings)))]
  const { record, did } = changedRecord({ state, steps, signed, options })
  const after = checkingState(workings, record)
  const { counts } = after
  const done = `${did}; ${counts.checked} of ${counts.steps} checked, ${counts.fallen} fallen, ${counts.open} open`
  return { record, says: [done, ...carriedWords(kept.record, after)].join('\n') }
}

/** Which blocks this run puts under another name, where ticks from before stand. */
const carriedWords = (kept: CheckingRecord, { renamed, record }: CheckingState): string[] =>
  renamed
    .filter(({ was }) => kept.has(was) && !record.has(was))
    .map(
      ({ block, was, steps }) =>
        `\`${was}\` is called \`${block}\` now: its ticks stand there at ${plural(steps.length, 'step')}, marked \`from: ${was}\``,
    )

async function keep(
  signal: AbortSignal,
  { evaluated, kept }: { evaluated: Evaluated; kept: KeptRecord },
  record: CheckingRecord,
): Promise<void> {
  const blocks = evaluated.workings.blocks.filter(({ kind }) => kind !== 'assume').map(({ name }) => name)
  await keepRecord(signal, kept.path, writeRecord(record, { notebook: kept.notebook, blocks }))
}

const called = (says: string, help?: string): Stopped => new Stopped(exitStatus.called, says, help)
