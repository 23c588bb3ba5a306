import type { Method, Solved } from '../method.ts'
import { percentAbove } from '../percent-above.ts'

interface Fill {
  readonly width: number
  readonly depth: number
  readonly gamma: number
  readonly c: number
  readonly friction: number
  readonly surcharge: number
}

const sliceCount = 2000

/** Stress over a yielding strip from the balance of thin slices of the soil above it. */
export const archingSlices: Method = {
  id: 'arching-slices',
  title: 'Soil over the strip, slice by slice',
  says: `From the ground down in ${sliceCount} level slices by the midpoint rule: each adds its weight and hangs on its two sides by friction and cohesion.`,
  takes: {
    width: 'length',
    depth: 'length',
    gamma: 'unit_weight',
    c: 'pressure',
    friction: 'ratio',
    surcharge: 'pressure',
  },
  run: numbers => solved(numbers as unknown as Fill),
}

function solved(fill: Fill): Solved {
  const [coarse, fine] = [marched(fill, sliceCount / 2), marched(fill, sliceCount)]
  const change = Math.abs(fine - coarse) / Math.max(Math.abs(fine), 1)
  if (!(change < 1e-3)) return { ok: false, says: 'the slices do not settle on one stress' }
  return {
    ok: true,
    values: { stress: fine },
    verified: `half as many slices give the same within ${percentAbove(change, 6)} %`,
  }
}

function marched({ width, depth, gamma, c, friction, surcharge }: Fill, count: number): number {
  const growth = (stress: number): number => gamma - (2 * (c + friction * stress)) / width
  const slice = depth / count
  let stress = surcharge
  for (let i = 0; i < count; i += 1) stress += slice * growth(stress + (slice / 2) * growth(stress))
  return stress
}
