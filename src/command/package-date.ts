import type { TitleBlock } from '../notebook/types.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

/**
 * The date of a package, never the clock's: `SOURCE_DATE_EPOCH` (seconds, as reproducible builds set it), the title block's date, or the
 * date of the current revision; nothing where none is given.
 */
export function packageDate(
  title: TitleBlock,
  variables: Readonly<Record<string, string | undefined>>,
): Date | undefined {
  const epoch = variables.SOURCE_DATE_EPOCH
  if (epoch) {
    if (!/^\d{1,12}$/.test(epoch))
      throw new Stopped(exitStatus.called, `SOURCE_DATE_EPOCH is \`${epoch}\`; it must be whole seconds`)
    return new Date(Number(epoch) * 1000)
  }
  const written = title.date || title.revisions.find(revision => revision.mark === title.revision)?.date
  return written ? new Date(`${written}T00:00:00Z`) : undefined
}
