import type { Method } from '../method.ts'

/** How a room is aired: changes of its air and what is made of the gas, both in a second, and the share outdoors. */
export interface Air {
  readonly perHour: number
  readonly makes: number
  readonly out: number
}

/** A share of gas after a time, by the midpoint rule in even steps. */
export function stepped(start: number, { perHour, makes, out }: Air, about: { time: number; steps: number }): number {
  const dt = about.time / about.steps
  const rate = (c: number): number => makes - perHour * (c - out)
  let share = start
  for (let step = 0; step < about.steps; step += 1) share += dt * rate(share + (dt / 2) * rate(share))
  return share
}

/** The share of a gas in an aired room after a time, from its rate of change. Refuses air that is changed too often for its steps. */
export const gasStepping: Method = {
  id: 'gas-stepping',
  title: 'The gas step by step',
  says: 'The share of the gas from its rate of change in 2000 even steps, without exponential or logarithm.',
  takes: { volume: 'volume', makes: 'flow', air: 'flow', outdoors: 'ratio', time: 'time' },
  run: numbers => {
    const one = (name: string): number => Number(numbers[name])
    const [volume, out] = [one('volume'), one('outdoors')]
    const air = { perHour: one('air') / volume, makes: one('makes') / volume, out }
    const [coarse, fine] = [1000, 2000].map(steps => stepped(out, air, { time: one('time'), steps })) as [
      number,
      number,
    ]
    if (!(Math.abs(fine - coarse) <= 1e-4 * fine)) return { ok: false, says: 'the air is changed too often for steps' }
    return { ok: true, values: { share: fine }, verified: 'half the steps change the share by less than 0.01 %' }
  },
}
