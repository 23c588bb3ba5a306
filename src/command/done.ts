import type { ExitStatus } from './exit-status.ts'

/** Hears what a command came to. */
export type Done = (status: ExitStatus) => void
