import type { Terminal } from './terminal.ts'
import type { Stoppable } from './until-stopped.ts'

/** What a command needs of the process. */
export interface Surroundings {
  readonly terminal: Terminal
  readonly version: string
  /** Folder of the templates and fonts that came with the program. */
  readonly assets: string
  readonly variables: Readonly<Record<string, string | undefined>>
  readonly untilStopped: Stoppable
}
