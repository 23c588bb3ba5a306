/** A slope of one ground, its foot at x = 0, y = 0, rising to the right; lengths in metres, weights in newtons. */
export interface Slope {
  readonly height: number
  /** Tangent of the slope, and where the crest begins. */
  readonly rise: number
  readonly crest: number
  /** Depth of the hard ground below the foot. */
  readonly hard: number
  readonly cohesion: number
  readonly friction: number
  readonly gamma: number
  readonly gammaSat: number
  readonly gammaW: number
  /** Height of the water above the foot, and pore pressure as a part of the weight above. */
  readonly water: number
  readonly ratio: number
  readonly load: number
  readonly loadFrom: number
  readonly crack: number
  readonly crackWater: number
}

/** The lower arc of a circle, from where it leaves the ground to where it enters; angles of its base above the horizontal. */
export interface Slip {
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly out: number
  readonly into: number
  readonly from: number
  readonly to: number
}

/** Height of the ground above the foot. */
export const groundAt = ({ rise, height }: Slope, x: number): number => Math.min(Math.max(x * rise, 0), height)

/**
 * The circle through two places of the ground, `share` of the way from a straight line to the deepest that is allowed: it keeps above
 * the hard ground and does not hang over where it enters. Nothing where the arc would come out of the ground between.
 */
export function slipThrough(slope: Slope, at: { out: number; into: number; share: number }): Slip | undefined {
  const { out, into, share } = at
  const cracked = slope.crack > 0
  if (cracked && into < slope.crest) return undefined
  const [low, high] = [groundAt(slope, out), groundAt(slope, into) - (cracked ? slope.crack : 0)]
  const [dx, dy] = [into - out, high - low]
  if (!(dx > 0 && dy > 0)) return undefined
  const chord = Math.hypot(dx, dy)
  const [sine, cosine] = [dy / chord, dx / chord]
  const upright = ((1 - sine) / (2 * cosine)) * chord
  const above = (low + high) / 2 + slope.hard
  const tangent = (above + Math.sqrt(Math.max(above ** 2 - dy ** 2 / 4, 0))) / (1 + cosine)
  const sag = share * Math.min(upright, tangent)
  const radius = (chord ** 2 / 4 + sag ** 2) / (2 * sag)
  const x = (out + into) / 2 - sine * (radius - sag)
  const y = (low + high) / 2 + cosine * (radius - sag)
  return slipOf({ x, y, radius, out, into })
}

/** The arc with its angles; nothing where the foot of the slope lies below it. */
export function slipOf(circle: Omit<Slip, 'from' | 'to'>): Slip | undefined {
  const { x, y, radius, out, into } = circle
  if (out < 0 && Math.hypot(x, y) > radius * (1 + 1e-9)) return undefined
  const angle = (at: number): number => Math.asin(Math.min(Math.max((at - x) / radius, -1), 1))
  return { ...circle, from: angle(out), to: angle(into) }
}
