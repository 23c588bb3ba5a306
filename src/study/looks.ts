import { neededFor } from '../evaluation/needed-ops.ts'
import { entitiesOf } from '../evaluation/operands.ts'
import type { Entity } from '../evaluation/plan-types.ts'
import type { Look, Searched } from './look.ts'
import { firstLoss } from './loss.ts'
import { type Varied, varied } from './varied.ts'
import { excess, readsOf, type Watch } from './watch.ts'

/** The looks of a search along one assumption: a place is worked out whole once, and what is followed only as far as it needs. */
export function looksOf(entity: Entity, { runs, watch }: { runs: Varied; watch: Watch }, ran: () => void): Searched {
  const { checks } = watch
  const known = new Map<number, Look>()
  const only = (slots: readonly number[]) => {
    const part = varied(runs.plan, [entity], neededFor(slots, runs.ops))
    return (x: number): Float64Array => {
      ran()
      return part.at([x])
    }
  }
  const whole = (x: number): Float64Array => {
    ran()
    return runs.at([x])
  }
  const seen = (x: number): Look => {
    const slots = whole(x)
    return {
      x,
      states: checks.map(check => watch.state(check, slots)),
      excess: checks.map(check => excess(check, slots)),
      lost: watch.isLost(slots),
    }
  }
  return {
    checks,
    look: x => {
      const look = known.get(x) ?? seen(x)
      known.set(x, look)
      return look
    },
    followCheck: index => {
      const check = checks[index]
      if (!check) throw new Error('a check that is not watched')
      const part = only([...readsOf(check), ...entitiesOf(check.operands).map(({ slot }) => slot)])
      return x => {
        const look = known.get(x)
        if (look) return { state: look.states[index] ?? 'lost', excess: look.excess[index] ?? Number.NaN }
        const slots = part(x)
        return { state: watch.state(check, slots), excess: excess(check, slots) }
      }
    },
    followLost: lostAt => {
      const loss = firstLoss(watch.probes, runs.ops, whole(lostAt))
      const part = only(loss.reads)
      return x => loss.isLost(part(x))
    },
  }
}
