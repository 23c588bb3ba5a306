const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const

/** Work that is told when the user stops it. */
export type Stoppable = <Result>(work: (signal: AbortSignal) => Promise<Result>) => Promise<Result>

/**
 * Runs work that has something to tidy up when it is stopped: a browser, a temporary file. The signal aborts it; once it has ended, the process
 * ends by that same signal, as a shell expects. Outside such work a signal ends the process at once, which leaves nothing behind.
 */
export const untilStopped: Stoppable = async work => {
  const stop = new AbortController()
  const abort = (signal: NodeJS.Signals): void => stop.abort(signal)
  for (const signal of signals) process.on(signal, abort)
  try {
    return await work(stop.signal)
  } finally {
    for (const signal of signals) process.off(signal, abort)
    if (stop.signal.aborted) process.kill(process.pid, stop.signal.reason)
  }
}
