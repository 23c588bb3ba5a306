import type { TitleBlock } from '../notebook/types.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

/** The last second of the year 9999: PDF dates have four digits for the year. */
const latest = 253_402_300_799

/**
 * The date of a package, never the clock's: `SOURCE_DATE_EPOCH` (seconds, as reproducible builds set it), the title block's date, or the
 * date of the current revision; nothing where none is given.
 */
export function packageDate(
  title: TitleBlock,
  { SOURCE_DATE_EPOCH: epoch }: Readonly<Record<string, string | undefined>>,
): Date | undefined {
  if (epoch) return dateOfEpoch(epoch)
  const written = title.date || title.revisions.find(revision => revision.mark === title.revision)?.date
  return written ? new Date(`${written}T00:00:00Z`) : undefined
}

function dateOfEpoch(epoch: string): Date {
  if (!/^\d{1,12}$/.test(epoch) || Number(epoch) > latest)
    throw new Stopped(
      exitStatus.called,
      `SOURCE_DATE_EPOCH is \`${epoch}\`; it must be whole seconds since 1970, at most ${latest}`,
      'Unset it, or write for instance `SOURCE_DATE_EPOCH=1772409600`',
    )
  return new Date(Number(epoch) * 1000)
}
