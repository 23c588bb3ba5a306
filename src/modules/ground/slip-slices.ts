import { bishopRoot, mAlpha } from './bishop-root.ts'
import { groundAt, type Slip, type Slope } from './slip-circle.ts'

/** Least divisor of a slice at the ends of the arc, where friction counts: below it the method misleads (Whitman and Bailey 1967, memory). */
export const leastDivisor = 0.2

/** One slice: its base, its weight without and with the load on the crest, and the pore pressure below it by its width. */
export interface Slice {
  readonly sine: number
  readonly cosine: number
  readonly width: number
  readonly own: number
  readonly load: number
  readonly pore: number
}

/** Slices of equal angle at the centre, each by the ground over the middle of its arc. Nothing where the arc comes out of the ground. */
export function slicesOf(slope: Slope, slip: Slip, count: number): readonly Slice[] | undefined {
  const step = (slip.to - slip.from) / count
  const slices: Slice[] = []
  for (let i = 0; i < count; i += 1) {
    const angle = slip.from + (i + 0.5) * step
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)]
    const width = 2 * slip.radius * Math.sin(step / 2) * cosine
    const [x, base] = [slip.x + slip.radius * sine, slip.y - slip.radius * cosine]
    const high = groundAt(slope, x) - base
    if (high < 0) return undefined
    const wet = Math.max(Math.min(high, slope.water - base), 0)
    const own = width * (slope.gamma * (high - wet) + slope.gammaSat * wet)
    const load = slope.load * Math.min(Math.max(x + width / 2 - slope.loadFrom, 0), width)
    const pore = width * (slope.ratio * slope.gamma * high + slope.gammaW * wet)
    slices.push({ sine, cosine, width, own, load, pore })
  }
  return slices
}

/** What the water in the crack adds to the shear along the arc. */
export function crackShear(slope: Slope, { y, radius }: Slip): number {
  const { crack, crackWater, gammaW, height } = slope
  return (((gammaW * crackWater ** 2) / 2) * (y - height + crack - crackWater / 3)) / radius
}

/** Bishop's factor of an arc, with its slices; `load` is the part of the load on the crest that acts. */
export interface SlipFactor {
  readonly factor: number
  readonly load: 0 | 1
  readonly slices: readonly Slice[]
}

/** The lesser factor with and without the load on the crest; nothing where the arc comes out of the ground. */
export function slipFactor(slope: Slope, slip: Slip, count: number): SlipFactor | undefined {
  const slices = slicesOf(slope, slip, count)
  if (!slices) return undefined
  const bare = factorOf(slope, slip, slices, 0)
  const laden = slope.load > 0 ? factorOf(slope, slip, slices, 1) : bare
  return { factor: Math.min(bare, laden), load: laden < bare ? 1 : 0, slices }
}

/** The same for a search: nothing either where friction counts and the arc stands too steep at an end. */
export function searchedFactor(slope: Slope, slip: Slip, count: number): SlipFactor | undefined {
  const found = slipFactor(slope, slip, count)
  if (!found || slope.friction === 0) return found
  const divisor = (at: number): number =>
    mAlpha({ sine: Math.sin(at), cosine: Math.cos(at) }, slope.friction, found.factor)
  return Math.min(divisor(slip.from), divisor(slip.to)) < leastDivisor ? undefined : found
}

function factorOf(slope: Slope, slip: Slip, slices: readonly Slice[], part: 0 | 1): number {
  let shear = crackShear(slope, slip)
  const parts = slices.map(({ sine, cosine, width, own, load, pore }) => {
    const weight = own + part * load
    shear += weight * sine
    return { sine, cosine, strength: slope.cohesion * width + (weight - pore) * slope.friction }
  })
  return bishopRoot(parts, slope.friction, shear)
}

/** The ordinary method: forces between slices left away, each slice by itself. Fellenius 1936. */
export function ordinaryFactor(slope: Slope, slip: Slip, { slices, load: part }: SlipFactor): number {
  let [strength, shear] = [0, crackShear(slope, slip)]
  for (const { sine, cosine, width, own, load, pore } of slices) {
    const weight = own + part * load
    shear += weight * sine
    const across = Math.max(weight * cosine - pore / cosine, 0)
    strength += (slope.cohesion * width) / cosine + across * slope.friction
  }
  return strength / shear
}
