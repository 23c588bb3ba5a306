/** Median of several batches, in nanoseconds a call; each batch long enough to be measured. Warm. */
export function nanoseconds(call: () => void, batches = 7): number {
  let calls = 1
  while (timed(call, calls) < 20) calls *= 2
  const each = Array.from({ length: batches }, () => (timed(call, calls) * 1e6) / calls)
  return each.sort((a, b) => a - b)[batches >> 1] ?? Number.NaN
}

/** Several calls measured in turn, many short batches of each: whatever else the machine does falls on all of them. Nanoseconds a call, by round. */
export function inTurn(calls: readonly (() => void)[], rounds = 41): readonly (readonly number[])[] {
  const counts = calls.map(call => {
    let count = 1
    while (timed(call, count) < 4) count *= 2
    return count
  })
  const each = calls.map((): number[] => [])
  for (let round = 0; round < rounds; round += 1)
    for (const [at, call] of calls.entries()) {
      const count = counts[at] ?? 1
      each[at]?.push((timed(call, count) * 1e6) / count)
    }
  return each
}

/** The same for something asynchronous, once a round, in milliseconds. */
export async function inTurnOnce(
  runs: readonly (() => Promise<void> | void)[],
  rounds = 5,
): Promise<readonly (readonly number[])[]> {
  const each = runs.map((): number[] => [])
  for (let round = 0; round < rounds; round += 1)
    for (const [at, run] of runs.entries()) {
      const start = performance.now()
      await run()
      each[at]?.push(performance.now() - start)
    }
  return each
}

export const median = (of: readonly number[]): number => [...of].sort((a, b) => a - b)[of.length >> 1] ?? Number.NaN

/** How many times one takes what the other takes: the median of the rounds, each of which measured both. */
export const timesOf = (one: readonly number[] = [], other: readonly number[] = []): number =>
  median(one.map((value, round) => value / (other[round] ?? Number.NaN)))

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
