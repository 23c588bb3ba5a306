import type { Method, Solved } from '../method.ts'

const day = 24

/**
 * State of charge of a bank hour by hour under an even draw, from full: how deep it is after the days without charging,
 * and how long it lasts until the allowed depth. Refuses a draw or a capacity that is not above zero.
 */
export const chargeStepping: Method = {
  id: 'charge-stepping',
  title: 'State of charge by the hour',
  says: 'From full, each hour takes its share of the daily charge out of the cold and aged bank; no formula for capacity is used.',
  takes: { daily: 'charge', bank: 'charge', loss: 'ratio', allowed: 'ratio', autonomy: 'time' },
  run: numbers => {
    const one = (name: string): number => Number(numbers[name])
    const hourly = one('daily') / day / (one('bank') / one('loss'))
    if (!(hourly > 0 && Number.isFinite(hourly))) return { ok: false, says: 'nothing is drawn, or there is no bank' }
    return stepped(hourly, { allowed: one('allowed'), hours: one('autonomy') / 3600 })
  },
}

const mostHours = 24 * 366

function stepped(hourly: number, { allowed, hours }: { readonly allowed: number; readonly hours: number }): Solved {
  let taken = 0
  let depth = Number.NaN
  let last = Number.NaN
  let hour = 0
  for (; hour < mostHours && (Number.isNaN(depth) || Number.isNaN(last)); hour += 1) {
    if (Number.isNaN(depth) && hour + 1 >= hours) depth = taken + hourly * (hours - hour)
    if (Number.isNaN(last) && taken + hourly >= allowed) last = hour + (allowed - taken) / hourly
    taken += hourly
  }
  if (Number.isNaN(last)) return { ok: false, says: 'the bank lasts for more than a year' }
  return { ok: true, values: { depth, last: last * 3600 }, verified: `${hour} hours were stepped through` }
}
