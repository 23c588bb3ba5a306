import { printableLines } from '../diagnostic/printable.ts'
import type { ExitStatus } from './exit-status.ts'

/** Ends a command with a status and a sentence for the user; foreseeable, so no stack is shown. */
export class Stopped extends Error {
  readonly status: ExitStatus
  readonly help: string | undefined

  constructor(status: ExitStatus, says: string, help?: string) {
    super(says)
    this.status = status
    this.help = help
  }

  /** What is said of it. Names in it may come from anybody. */
  get words(): string {
    return printableLines(this.help ? `${this.message}\n${this.help}` : this.message)
  }
}
