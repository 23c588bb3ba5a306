import { findRoot } from '../numerics/find-root.ts'

/** A slice as Bishop's equation sees it: slope of its base, and its strength before it is divided. */
export interface BishopSlice {
  readonly sine: number
  readonly cosine: number
  readonly strength: number
}

/** Cosine of the base plus sine by the friction that is used; at the factor `F`. */
export const mAlpha = ({ sine, cosine }: Omit<BishopSlice, 'strength'>, friction: number, F: number): number =>
  cosine + (sine * friction) / F

/**
 * The factor at which the strength of the slices, each divided by its `mAlpha`, is the factor times the shear.
 * 0 where no factor balances them; infinite where nothing drives.
 */
export function bishopRoot(slices: readonly BishopSlice[], friction: number, shear: number): number {
  if (!(shear > 0)) return Number.POSITIVE_INFINITY
  const left = (F: number): number => {
    let strength = 0
    for (const slice of slices) strength += slice.strength / mAlpha(slice, friction, F)
    return strength - F * shear
  }
  if (friction === 0) return left(1) / shear + 1
  // Below this factor the base of some slice that dips backwards would bear without end.
  let pole = 0
  for (const { sine, cosine } of slices) pole = Math.max(pole, (-sine * friction) / cosine)
  const from = pole > 0 ? pole * (1 + 1e-9) : 1e-6
  if (!(left(from) > 0)) return 0
  let to = 2 * from + 1
  while (left(to) > 0) to *= 2
  return findRoot(left, { from, to, tolerance: 1e-9 * to }).root
}
