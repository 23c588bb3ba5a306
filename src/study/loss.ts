import type { Op } from '../evaluation/plan-types.ts'
import { isLostAt, type Probes } from './watch.ts'

/** One place where something is lost, to be followed. */
export interface Loss {
  /** Every slot that `isLost` looks at. */
  readonly reads: readonly number[]
  readonly isLost: (slots: Float64Array) => boolean
}

/** Of all that is lost in a run, what is written first: the rest may come of it. */
export function firstLoss(probes: Probes, ops: readonly Op[], slots: Float64Array): Loss {
  const losses = lossesOf(probes)
  for (const op of ops)
    for (const slot of op.writes) {
      const lost = losses.get(slot)?.find(({ isLost }) => isLost(slots))
      if (lost) return lost
    }
  throw new Error('nothing is lost')
}

/** What may be lost, by the slot that shows it. */
function lossesOf({ living, open, guarded }: Probes): ReadonlyMap<number, readonly Loss[]> {
  const losses = new Map<number, Loss[]>()
  const add = (slot: number, loss: Loss) => losses.set(slot, [...(losses.get(slot) ?? []), loss])
  for (const slot of living) add(slot, { reads: [slot], isLost: slots => slots[slot] !== 1 })
  for (const slot of open) add(slot, { reads: [slot], isLost: slots => Number.isNaN(slots[slot]) })
  for (const probe of guarded)
    add(probe.slot, { reads: [...probe.guards, probe.slot], isLost: slots => isLostAt(probe, probe.slot, slots) })
  return losses
}
