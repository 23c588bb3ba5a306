/** Why no PDF came: each foreseeable cause has its own word, so that a caller can choose what to do. */
export type PrintReason = 'no-browser' | 'library-missing' | 'no-font' | 'print-failed' | 'check-failed'

/** A refusal as data: `says` is what is wrong, `help` what to do about it (may have several lines). */
export interface PrintFailure {
  readonly ok: false
  readonly reason: PrintReason
  readonly says: string
  readonly help: string
  /** The characters that no font of the package has, where that is why. */
  readonly characters?: string
}

/** Returns a refusal. */
export function printFailure(reason: PrintReason, says: string, help: string): PrintFailure {
  return { ok: false, reason, says, help }
}

/** What the browser, or the disk under it, did against us; turned into a `PrintFailure` at the edge of this folder. */
export class BrowserTrouble extends Error {
  override readonly name = 'BrowserTrouble'
}

/** A PDF that is not in the plain form our reader knows; turned into a `PrintFailure` at the edge of this folder. */
export class UnreadablePdf extends Error {
  override readonly name = 'UnreadablePdf'
}

/** Returns the message of anything thrown, one line, without a final stop. */
export function messageOf(thrown: unknown): string {
  const message = thrown instanceof Error ? thrown.message : String(thrown)
  return (message.split('\n')[0] ?? '').replace(/\.$/, '')
}

/** Returns the system's code of an error (`ENOENT`, `EACCES`), or undefined where it has none. */
export function systemCode(thrown: unknown): string | undefined {
  return thrown instanceof Error && 'code' in thrown && typeof thrown.code === 'string' ? thrown.code : undefined
}
