import type { Method, Solved } from '../method.ts'

interface Clay {
  readonly thickness: number
  readonly gamma: number
  readonly C_c: number
  readonly C_r: number
  readonly e_0: number
  readonly sigma_p: number
}

interface Base {
  readonly width: number
  readonly length: number
  readonly depth: number
  readonly q_n: number
  readonly stress: number
  readonly gamma_w: number
  readonly water: number
}

type Numbers = Readonly<Record<string, number | readonly number[]>>

const sliceCount = 100

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
    sigma_p: 'pressure',
    width: 'length',
    length: 'length',
    depth: 'length',
    q_n: 'pressure',
    stress: 'pressure',
    gamma_w: 'unit_weight',
    water: 'length',
  },
  run: numbers => solved(baseOf(numbers), claysOf(numbers)),
}

function baseOf(numbers: Numbers): Base {
  const at = (name: string): number => Number(numbers[name])
  return {
    width: at('width'),
    length: at('length'),
    depth: at('depth'),
    q_n: at('q_n'),
    stress: at('stress'),
    gamma_w: at('gamma_w'),
    water: at('water'),
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
    sigma_p: at('sigma_p', i),
  }))
}

function solved(base: Base, clays: readonly Clay[]): Solved {
  const [coarse, fine] = [sliced(base, clays, sliceCount), sliced(base, clays, 2 * sliceCount)]
  const change = fine === coarse ? 0 : Math.abs(fine - coarse) / Math.abs(fine)
  if (!(change < 1e-3)) return { ok: false, says: 'the slices do not settle on one answer' }
  return {
    ok: true,
    values: { settlement: fine },
    verified: `half as many slices give the same within ${(Math.ceil(change * 1e6) / 1e4).toString()} %`,
  }
}

function sliced(base: Base, clays: readonly Clay[], count: number): number {
  let depth = 0
  let total = base.stress
  let settlement = 0
  for (const clay of clays) {
    const slice = clay.thickness / count
    for (let i = 0; i < count; i += 1) {
      const middle = depth + slice / 2
      const water = base.gamma_w * Math.max(0, base.depth + middle - base.water)
      const before = total + (clay.gamma * slice) / 2 - water
      const spread = (1 + middle / base.width) * (1 + middle / base.length)
      settlement += (slice * voidsLost(clay, before, before + base.q_n / spread)) / (1 + clay.e_0)
      depth += slice
      total += clay.gamma * slice
    }
  }
  return settlement
}

/** Loss of void ratio: along the flat branch to the greatest past stress, along the steep one beyond it. */
function voidsLost({ C_c, C_r, sigma_p }: Clay, before: number, after: number): number {
  const decades = (from: number, to: number): number => Math.log(to / from) / Math.LN10
  if (before >= sigma_p) return C_c * decades(before, after)
  if (after <= sigma_p) return C_r * decades(before, after)
  return C_r * decades(before, sigma_p) + C_c * decades(sigma_p, after)
}
