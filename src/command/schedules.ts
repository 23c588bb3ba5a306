import { basename, extname, join } from 'node:path'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { printable } from '../diagnostic/printable.ts'
import type { Workings } from '../evaluation/workings.ts'
import { columns } from './columns.ts'
import { evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { drawingCsv, scheduleCsv } from './schedule-csv.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { makeRoomFor, writeTogether } from './write-together.ts'

export interface SchedulesOptions {
  readonly out?: string
}

interface Csv {
  readonly name: string
  readonly title: string
  readonly rows: number
  readonly text: () => string
}

/**
 * `schedules FILE [NAME]`: the values for the drawings and the schedules of the calculations, as CSV. Without a name they are listed;
 * `--out` writes each to a file. A notebook with errors gives none, because half a schedule could pass for a whole one.
 */
export async function schedules(
  around: Surroundings,
  { file, name }: { readonly file: string; readonly name: string | undefined },
  { out }: SchedulesOptions,
): Promise<ExitStatus> {
  const { terminal } = around
  const { notebook, workings, diagnostics, status } = await evaluateFile(file)
  sayDiagnostics(terminal, notebook, diagnostics)
  if (status === exitStatus.notebook) return status
  const all = csvsOf(workings)
  const asked = name === undefined ? all : [named(all, name)]
  if (asked.length === 0) terminal.say('The notebook has no schedules, and no values that go to the drawings')
  if (out !== undefined) await write(around, { file, out }, asked)
  else if (name !== undefined) terminal.exactly(asked[0]?.text() ?? '')
  else if (all.length > 0)
    terminal.answer(
      columns(
        ['name', 'lines', 'schedule'],
        all.map(({ name, rows, title }) => [name, String(rows), title]),
      ),
    )
  return status
}

/** No block can be called so: a hyphen is no part of a name. */
const valuesName = 'drawing-values'

function csvsOf({ drawing, schedules: tables }: Workings): readonly Csv[] {
  const values = {
    name: valuesName,
    title: 'Values for the drawings',
    rows: drawing.length,
    text: () => drawingCsv(drawing),
  }
  const others = tables.map(table => ({
    name: table.block.name,
    title: table.title,
    rows: table.rows.length,
    text: () => scheduleCsv(table),
  }))
  return [...(drawing.length > 0 ? [values] : []), ...others]
}

function named(all: readonly Csv[], name: string): Csv {
  const found = all.find(each => each.name === name)
  if (found) return found
  const names = all.map(each => each.name)
  const nearest = nearestName(name, names)
  const help = nearest ? `Did you mean \`${nearest}\`?` : `Its schedules are: ${names.join(', ') || 'none'}`
  throw new Stopped(exitStatus.called, `The notebook has no schedule \`${name}\``, help)
}

async function write(
  { terminal, untilStopped }: Surroundings,
  { file, out }: { file: string; out: string },
  all: readonly Csv[],
): Promise<void> {
  const help = 'Name another folder with `--out FOLDER`'
  const stem = file === '-' ? 'notebook' : basename(file, extname(file))
  const outputs = all.map(({ name, text }) => ({ path: join(out, `${stem}.${name}.csv`), bytes: text() }))
  await untilStopped(async signal => {
    await makeRoomFor(
      outputs.map(({ path }) => path),
      { help, signal },
    )
    await writeTogether(outputs, { help, signal })
  })
  for (const { path } of outputs) terminal.answer(`Wrote ${printable(path)}`)
}
