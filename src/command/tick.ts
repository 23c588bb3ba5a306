import { addComment, addTicks, dropGone, removeTicks, settleComments } from '../checking/change-record.ts'
import { type CheckedStep, type CheckingState, checkingState } from '../checking/checking-state.ts'
import { chooseSteps } from '../checking/choose-steps.ts'
import type { CheckingRecord, Signed } from '../checking/record.ts'
import { writeRecord } from '../checking/write-record.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { plural } from './count-of.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type KeptRecord, keepRecord, readKept } from './kept-record.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { stateData, stateText } from './tick-state.ts'

export interface TickOptions {
  readonly by?: string
  readonly on?: string
  readonly remove?: boolean
  readonly comment?: string
  readonly settle?: string
  readonly begin?: boolean
  readonly format: 'text' | 'json'
}

/** `tick FILE [STEP...]`: the checking record. Without steps it tells how the record stands and writes nothing. */
export async function tick(
  around: Surroundings,
  file: string,
  { steps, options }: { steps: readonly string[]; options: TickOptions },
): Promise<ExitStatus> {
  if (file === '-') throw new Stopped(exitStatus.called, 'The record stands beside its notebook: name a file')
  const evaluated = await evaluateFile(file)
  const kept = await readKept(file)
  if (steps.length === 0 && !options.begin) return tell(around, { file, evaluated, kept, options })
  if (evaluated.status === exitStatus.notebook) {
    sayDiagnostics(around.terminal, evaluated.notebook, evaluated.diagnostics)
    around.terminal.say('Nothing was ticked: a notebook with errors cannot be checked')
    return exitStatus.notebook
  }
  if (options.begin) return begin(around, { file, evaluated, kept, options })
  return write(around, { file, evaluated, kept, options }, steps)
}

interface Job {
  readonly file: string
  readonly evaluated: Evaluated
  readonly kept: KeptRecord
  readonly options: TickOptions
}

function tell({ terminal }: Surroundings, { file, evaluated, kept, options }: Job): ExitStatus {
  if (evaluated.status === exitStatus.notebook) sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  const state = checkingState(evaluated.workings, kept.record)
  terminal.answer(
    options.format === 'json' ? JSON.stringify(stateData(state), null, 2) : stateText(state, evaluated.workings),
  )
  if (!kept.there)
    terminal.say(`\`${kept.path}\` is not there yet: \`undercroft tick ${file} STEP --by NAME\` begins it`)
  return evaluated.status === exitStatus.notebook ? exitStatus.notebook : exitStatus.well
}

async function begin(around: Surroundings, job: Job): Promise<ExitStatus> {
  if (job.kept.there) throw new Stopped(exitStatus.written, `\`${job.kept.path}\` is there already`)
  await keep(around, job, job.kept.record)
  around.terminal.answer(`Wrote ${job.kept.path}, with a place for each block`)
  return exitStatus.well
}

async function write(around: Surroundings, job: Job, words: readonly string[]): Promise<ExitStatus> {
  const { evaluated, kept, options } = job
  const signed = signedBy(job)
  const state = checkingState(evaluated.workings, kept.record)
  const steps = [...new Set(words.flatMap(word => chosen(state, word)))]
  const record = changed(kept.record, { state, steps, signed, options })
  await keep(around, job, record)
  const { counts } = checkingState(evaluated.workings, record)
  const did = options.remove ? 'unticked' : options.comment ? 'commented on' : options.settle ? 'settled' : 'ticked'
  around.terminal.answer(
    `${plural(steps.length, 'step')} ${did}; ${counts.checked} of ${counts.steps} checked, ${counts.fallen} fallen, ${counts.open} open`,
  )
  return exitStatus.well
}

interface Change {
  readonly state: CheckingState
  readonly steps: readonly CheckedStep[]
  readonly signed: Signed
  readonly options: TickOptions
}

function changed(record: CheckingRecord, { state, steps, signed, options }: Change): CheckingRecord {
  const { remove, comment, settle } = options
  if (comment !== undefined) return addComment(record, { steps, signed, says: comment })
  if (settle !== undefined) {
    if (!steps.some(({ comments }) => comments.some(({ settled }) => !settled)))
      throw new Stopped(exitStatus.called, 'No comment is open at these steps')
    return settleComments(record, { steps, signed, says: settle })
  }
  const without = dropGone(
    record,
    state.gone.filter(
      ({ block, entry }) => 'of' in entry && entry.by === signed.by && steps.some(step => step.block === block),
    ),
  )
  return remove
    ? removeTicks(without, { steps, by: signed.by })
    : addTicks(without, { steps, all: state.steps, signed })
}

function chosen(state: CheckingState, word: string): readonly CheckedStep[] {
  const steps = chooseSteps(state.steps, word)
  if (steps.length > 0) return steps
  const names = [...new Set(state.steps.flatMap(({ block, key, line }) => [block, `${block}.${key}`, line.number]))]
  const near = nearestName(word, names)
  throw new Stopped(
    exitStatus.called,
    `No step is called \`${word}\``,
    near
      ? `The nearest is \`${near}\``
      : 'Name a step (`4.07`), a range (`4.03-4.09`), a block (`roof`) or a value (`roof.M_x`)',
  )
}

/** Who signs, and the day. Refuses the one who prepared the package, unless it says that it is checked by its own author. */
function signedBy({ evaluated, options }: Job): Signed {
  const by = options.by?.trim() ?? ''
  if (by === '') throw new Stopped(exitStatus.called, 'A tick is signed: give `--by NAME`')
  const on = options.on ?? new Date().toISOString().slice(0, 10)
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on)))
    throw new Stopped(exitStatus.called, `\`--on\` takes a date as 2026-03-04, not \`${on}\``)
  if ([options.remove === true, options.comment !== undefined, options.settle !== undefined].filter(Boolean).length > 1)
    throw new Stopped(exitStatus.called, 'Give one of `--remove`, `--comment` and `--settle`')
  const { prepared, checkLevel } = evaluated.notebook.title
  const ticks = options.comment === undefined && options.settle === undefined && !options.remove
  if (ticks && checkLevel !== 'self' && person(prepared) !== '' && person(prepared) === person(by))
    throw new Stopped(
      exitStatus.called,
      `${by} prepared this package, and another person has to check it`,
      'Where that is meant, write `check level: self` in the title block',
    )
  return { by, on }
}

const person = (text: string): string => (text.split(',')[0] ?? '').trim().toLowerCase()

async function keep(around: Surroundings, { evaluated, kept }: Job, record: CheckingRecord): Promise<void> {
  const blocks = evaluated.workings.blocks.filter(({ kind }) => kind !== 'assume').map(({ name }) => name)
  await keepRecord(around, kept.path, writeRecord(record, { notebook: kept.notebook, blocks }))
}
