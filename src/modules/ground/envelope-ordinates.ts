interface Envelope {
  readonly full: number
  readonly depth: number
}

/** The apparent pressure at a level: even in sand, rising over the top quarter in clay, falling over the lowest in stiff clay. */
export function ordinate(ground: string, { full, depth }: Envelope): (z: number) => number {
  const share = (x: number): number => Math.min(1, (4 * x) / depth)
  if (ground === 'sand') return () => full
  if (ground === 'stiff clay') return z => full * Math.min(share(z), share(depth - z))
  return z => full * share(z)
}

/** Load of the envelope down to a level, piece by piece: each piece is straight, so its mean times its height is exact. */
export function loadDown(ground: string, envelope: Envelope, z: number): number {
  const pressure = ordinate(ground, envelope)
  const breaks = [0, envelope.depth / 4, (3 * envelope.depth) / 4, envelope.depth].map(at => Math.min(at, z))
  return breaks.slice(1).reduce((sum, to, i) => {
    const from = breaks[i] ?? 0
    return sum + ((pressure(from) + pressure(to)) / 2) * (to - from)
  }, 0)
}
