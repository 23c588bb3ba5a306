import { basename } from 'node:path'
import { readRecord } from '../checking/read-record.ts'
import type { CheckingRecord } from '../checking/record.ts'
import { decodeText } from '../notebook/decode-text.ts'
import { exitStatus } from './exit-status.ts'
import { isThere } from './is-there.ts'
import { readInput } from './read-input.ts'
import { Stopped } from './stopped.ts'
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

/** A tick of every line of the largest notebook, by several checkers. */
const mostBytes = 8_000_000

/** `shelter.checked.yaml` beside `shelter.md`; any other ending stays in the name, so that `shelter.markdown` beside it has a record of its own. */
export const recordPath = (file: string): string => `${file.replace(/\.md$/, '')}.checked.yaml`

/** Reads the record beside a notebook; an absent file is an empty record. A file with faults is refused whole, so that no tick is lost by writing over it. */
export async function readKept(file: string): Promise<KeptRecord> {
  const path = recordPath(file)
  const notebook = basename(file)
  if (!(await isThere(path))) return { path, notebook, there: false, record: new Map(), bytes: Buffer.alloc(0) }
  return keptOf(path, {
    notebook,
    bytes: await readInput(path, { most: mostBytes, what: 'a checking record', plain: true }),
  })
}

/** The record in these bytes. Refuses faults with their lines. */
export function keptOf(path: string, { notebook, bytes }: { notebook: string; bytes: Uint8Array }): KeptRecord {
  const { record, faults } = readRecord(textOf(path, bytes))
  if (faults.length > 0) throw faulty(faults.map(({ line, says }) => `${path}:${line}  ${says}`).join('\n'))
  return { path, notebook, there: true, record, bytes }
}

function textOf(path: string, bytes: Uint8Array): string {
  const { text, fault } = decodeText(bytes)
  if (!fault) return text.replace(/^\ufeff/, '')
  throw faulty(`${path}:${fault.place.line}  Here is no UTF-8 text, which a record is`)
}

const faulty = (says: string): Stopped =>
  new Stopped(exitStatus.notebook, says, 'Mend the checking record; nothing was written')

/** Writes the record whole or not at all. */
export const keepRecord = (signal: AbortSignal, path: string, text: string): Promise<void> =>
  writeTogether([{ path, bytes: text }], { help: 'The record stands beside its notebook', signal })
