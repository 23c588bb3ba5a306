/** What the program ends with. */
export const exitStatus = {
  /** All is well. */
  well: 0,
  /** The notebook has errors. */
  notebook: 1,
  /** The command was called wrongly. */
  called: 2,
  /** Evaluated, and a check is not satisfied. */
  check: 3,
  /** The package could not be written: browser, disk. */
  written: 4,
  /** Our bug. */
  bug: 70,
} as const

export type ExitStatus = (typeof exitStatus)[keyof typeof exitStatus]
