import type { Method, Solved } from '../method.ts'
import { percentAbove } from '../percent-above.ts'

interface Clay {
  readonly thickness: number
  readonly gamma: number
  readonly C_c: number
  readonly C_r: number
  readonly e_0: number
  /** Stress before and yield stress in the middle of the layer. */
  readonly s_0: number
  readonly s_y: number
}

interface Base {
  readonly width: number
  readonly length: number
  readonly depth: number
  readonly pressure: number
  /** Total stress at the level of the base before the pit was dug. */
  readonly total: number
  readonly gamma_w: number
  readonly water: number
  readonly swollen: boolean
}

type Numbers = Readonly<Record<string, number | readonly number[]>>

// Under swollen ground the stress begins at nothing, and its logarithm wants thin slices.
const sliceCount = 2000

/** Consolidation of clay layers by thin slices, with the curve of void ratio followed in each. */
export const claySlices: Method = {
  id: 'clay-slices',
  title: 'Consolidation by slices',
  says: `Each layer is cut into ${sliceCount} slices; in each the void ratio is followed along its curve from the stress before to the stress after.`,
  takes: {
    thickness: 'length',
    gamma: 'unit_weight',
    C_c: 'ratio',
    C_r: 'ratio',
    e_0: 'ratio',
    s_0: 'pressure',
    s_y: 'pressure',
    width: 'length',
    length: 'length',
    depth: 'length',
    pressure: 'pressure',
    total: 'pressure',
    gamma_w: 'unit_weight',
    water: 'length',
  },
  run: (numbers, words) => solved(baseOf(numbers, words.heave === 'swollen'), claysOf(numbers)),
}

function baseOf(numbers: Numbers, swollen: boolean): Base {
  const at = (name: string): number => Number(numbers[name])
  return {
    width: at('width'),
    length: at('length'),
    depth: at('depth'),
    pressure: at('pressure'),
    total: at('total'),
    gamma_w: at('gamma_w'),
    water: at('water'),
    swollen,
  }
}

function claysOf(numbers: Numbers): readonly Clay[] {
  const list = (name: string) => numbers[name] as readonly number[]
  const at = (name: string, i: number): number => list(name)[i] ?? Number.NaN
  return list('thickness').map((thickness, i) => ({
    thickness,
    gamma: at('gamma', i),
    C_c: at('C_c', i),
    C_r: at('C_r', i),
    e_0: at('e_0', i),
    s_0: at('s_0', i),
    s_y: at('s_y', i),
  }))
}

function solved(base: Base, clays: readonly Clay[]): Solved {
  const [coarse, fine] = [sliced(base, clays, sliceCount), sliced(base, clays, 2 * sliceCount)]
  // Less than a millimetre is judged as a millimetre.
  const change = Math.abs(fine - coarse) / Math.max(Math.abs(fine), 1e-3)
  if (!(change < 1e-3)) return { ok: false, says: 'the slices do not settle on one answer' }
  return {
    ok: true,
    values: { settlement: fine },
    verified: `half as many slices give the same within ${percentAbove(change, 4)} %`,
  }
}

function sliced(base: Base, clays: readonly Clay[], count: number): number {
  const drained = base.total - base.gamma_w * Math.max(0, base.depth - base.water)
  const net = base.pressure - base.total
  let depth = 0
  let total = base.total
  let settlement = 0
  for (const clay of clays) {
    const slice = clay.thickness / count
    for (let i = 0; i < count; i += 1) {
      const middle = depth + slice / 2
      const water = base.gamma_w * Math.max(0, base.depth + middle - base.water)
      const before = total + (clay.gamma * slice) / 2 - water
      const spread = (1 + middle / base.width) * (1 + middle / base.length)
      const [open, after] = base.swollen
        ? [before - drained / spread, before + net / spread]
        : [before, before + Math.max(0, net) / spread]
      settlement += (slice * voidsLost(clay, { before, open, after })) / (1 + clay.e_0)
      depth += slice
      total += clay.gamma * slice
    }
  }
  return settlement
}

/** Loss of void ratio: along the flat branch to the yield stress, along the steep one beyond it. */
function voidsLost(clay: Clay, stress: { before: number; open: number; after: number }): number {
  const { before, open, after } = stress
  const yields = before + clay.s_y - clay.s_0
  const decades = (from: number, to: number): number => Math.log(to / from) / Math.LN10
  if (after <= yields) return clay.C_r * decades(open, after)
  return clay.C_r * decades(open, yields) + clay.C_c * decades(yields, after)
}
