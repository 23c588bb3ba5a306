import { exitStatus } from './exit-status.ts'
import { isSame } from './is-same.ts'
import { recordPath } from './kept-record.ts'
import { Stopped } from './stopped.ts'

/** Refuses to write an answer over the notebook it is of, or over its checking record: what stands there would be lost. */
export async function refuseOwnFiles(out: string, file: string, help: string): Promise<void> {
  if (await isSame(out, file)) throw refused(`\`${out}\` is the notebook itself, which would be lost`, help)
  if (file !== '-' && (await isSame(out, recordPath(file))))
    throw refused(`\`${out}\` is the checking record of the notebook, which would be lost`, help)
}

const refused = (says: string, help: string): Stopped => new Stopped(exitStatus.called, says, help)
