import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { readRecord } from '../checking/read-record.ts'
import type { CheckingRecord } from '../checking/record.ts'
import { exitStatus } from './exit-status.ts'
import { codeOf, reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { writeTogether } from './write-together.ts'

/** The checking record beside a notebook. */
export interface KeptRecord {
  readonly path: string
  readonly notebook: string
  readonly there: boolean
  readonly record: CheckingRecord
  /** Of the file; none where it is not there. */
  readonly bytes: Uint8Array
}

/** Reads `shelter.checked.yaml` beside `shelter.md`; an absent file is an empty record. A file with faults is refused whole, so that no tick is lost by writing over it. */
export async function readKept(file: string): Promise<KeptRecord> {
  const path = `${file.replace(/\.(?:md|markdown)$/i, '')}.checked.yaml`
  const bytes = await readFile(path).catch((thrown: unknown) => {
    if (codeOf(thrown) === 'ENOENT') return undefined
    throw new Stopped(exitStatus.called, `\`${path}\` cannot be read: ${reasonOf(thrown)}`)
  })
  const notebook = basename(file)
  return bytes
    ? keptOf(path, { notebook, bytes })
    : { path, notebook, there: false, record: new Map(), bytes: Buffer.alloc(0) }
}

/** The record in these bytes. Refuses faults with their lines. */
export function keptOf(path: string, { notebook, bytes }: { notebook: string; bytes: Uint8Array }): KeptRecord {
  const { record, faults } = readRecord(Buffer.from(bytes).toString('utf8'))
  if (faults.length > 0)
    throw new Stopped(
      exitStatus.notebook,
      faults.map(({ line, says }) => `${path}:${line}  ${says}`).join('\n'),
      'Mend the checking record; nothing was written',
    )
  return { path, notebook, there: true, record, bytes }
}

/** Writes the record whole or not at all. */
export async function keepRecord({ untilStopped }: Surroundings, path: string, text: string): Promise<void> {
  await untilStopped(signal =>
    writeTogether([{ path, bytes: text }], { help: 'The record stands beside its notebook', signal }),
  )
}
