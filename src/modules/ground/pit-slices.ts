import type { Method, Solved } from '../method.ts'
import { percentAbove } from '../percent-above.ts'

interface Pit {
  readonly long: number
  readonly wide: number
  readonly depth: number
  readonly slope: number
}

const sliceCount = 200

/** Volume of a pit as a pile of flat slices, each with the plan at its own mid height. */
export const pitSlices: Method = {
  id: 'pit-slices',
  title: 'Pit volume by slices',
  says: `The pit is cut into ${sliceCount} level slices of equal thickness; each has the plan area at its mid height.`,
  takes: { long: 'length', wide: 'length', depth: 'length', slope: 'ratio' },
  run: numbers => solved({ long: 0, wide: 0, depth: 0, slope: 0, ...(numbers as Partial<Pit>) }),
}

function solved(pit: Pit): Solved {
  const volume = sliced(pit, sliceCount)
  const finer = sliced(pit, 2 * sliceCount)
  const change = Math.abs(finer - volume) / finer
  if (!(change < 1e-4)) return { ok: false, says: 'the slices do not settle on one volume' }
  return {
    ok: true,
    values: { volume },
    verified: `with ${2 * sliceCount} slices the volume changes by less than ${percentAbove(change, 5)} %`,
  }
}

function sliced({ long, wide, depth, slope }: Pit, count: number): number {
  let volume = 0
  for (let i = 0; i < count; i += 1) {
    const out = 2 * slope * depth * ((i + 0.5) / count)
    volume += ((long + out) * (wide + out) * depth) / count
  }
  return volume
}
