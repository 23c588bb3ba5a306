/** Median of several batches, in nanoseconds a call; each batch long enough to be measured. Warm. */
export function nanoseconds(call: () => void, batches = 7): number {
  let calls = 1
  while (timed(call, calls) < 20) calls *= 2
  const each = Array.from({ length: batches }, () => (timed(call, calls) * 1e6) / calls)
  return each.sort((a, b) => a - b)[batches >> 1] ?? Number.NaN
}

function timed(call: () => void, calls: number): number {
  const start = performance.now()
  for (let index = 0; index < calls; index += 1) call()
  return performance.now() - start
}

/** Median of several runs of something asynchronous, in milliseconds. */
export async function milliseconds(run: () => Promise<void> | void, runs = 5): Promise<number> {
  const each: number[] = []
  for (let index = 0; index < runs; index += 1) {
    const start = performance.now()
    await run()
    each.push(performance.now() - start)
  }
  return each.sort((a, b) => a - b)[runs >> 1] ?? Number.NaN
}

/** One line of the bench: what, the ratio or time, the goal, and whether it was met. */
export function say(what: string, value: string, goal?: { readonly text: string; readonly met: boolean }): void {
  const verdict = goal ? `  goal ${goal.text}: ${goal.met ? 'met' : 'MISSED'}` : ''
  process.stdout.write(`${what.padEnd(58)} ${value.padStart(14)}${verdict}\n`)
}
