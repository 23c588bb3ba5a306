import { type BeamSolution, type BeamSpan, beamActionsAt, solveBeam } from './beam-solution.ts'
import { entry } from './numeric-refusal.ts'

/** A moment (N m, sagging positive) and its place (m from the start). */
export type BeamMoment = { readonly moment: number; readonly at: number }

/** What acts at one end: moment (N m, hogging negative) and reaction (N, positive against the load). */
export type BeamSupport = { readonly moment: number; readonly reaction: number }

/** Answers of a single span. */
export type Beam = {
  readonly solution: BeamSolution
  readonly start: BeamSupport
  readonly end: BeamSupport
  /** Places (m) inside the span where the shear is nil; both ends of a stretch that has none. */
  readonly zeroShear: readonly number[]
  /** Greatest sagging and hogging moments anywhere, ends included. */
  readonly sagging: BeamMoment
  readonly hogging: BeamMoment
}

/**
 * End moments, reactions, zero-shear places and greatest moments of a single span, exact (no mesh). Any other place:
 * `beamActionsAt(result.solution, x)`. Units: m, N/m, N, N m. Refuses what `solveBeam` refuses.
 */
export function beam(span: BeamSpan): Beam {
  const solution = solveBeam(span)
  const zeroShear = zeroShearPlaces(solution)
  const last = beamActionsAt(solution, span.length)
  // Off a fixed end the moment, and on a free end the shear, is nil by the end condition: what is left is rounding.
  const start = { moment: solution.atStart.moment, reaction: solution.atStart.shear }
  const end = { moment: span.end === 'fixed' ? last.moment : 0, reaction: span.end === 'free' ? 0 : -last.shear }
  const inside = zeroShear.map(at => ({ moment: beamActionsAt(solution, at).moment, at }))
  const moments = [{ moment: start.moment, at: 0 }, ...inside, { moment: end.moment, at: span.length }]
  const sagging = moments.reduce((best, next) => (next.moment > best.moment ? next : best))
  const hogging = moments.reduce((best, next) => (next.moment < best.moment ? next : best))
  return { solution, start, end, zeroShear, sagging, hogging }
}

function zeroShearPlaces(solution: BeamSolution): readonly number[] {
  const { span, stretches } = solution
  const breaks = [0, ...stretches.flatMap(({ start, end }) => [start, end]), span.length]
  const cuts = breaks.filter((at, i) => i === 0 || at > entry(breaks, i - 1))
  const places = cuts.slice(1).flatMap((to, i) => zerosBetween(solution, entry(cuts, i), to))
  const inside = places.filter(at => at > 0 && at < span.length).sort((a, b) => a - b)
  return inside.filter((at, i) => i === 0 || at - entry(inside, i - 1) > 1e-12 * span.length)
}

// Between cuts the load is straight, so the shear is a parabola: shear - p t - rise t^2/2 from the first cut.
function zerosBetween(solution: BeamSolution, from: number, to: number): readonly number[] {
  const stretch = solution.stretches.find(({ start, end }) => start <= from && end >= to)
  const [shear, end] = [beamActionsAt(solution, from).shear, beamActionsAt(solution, to).shear]
  const noise = 1e-13 * largestShear(solution)
  if (!stretch) return Math.abs(shear) <= noise ? [from, to] : []
  const rise = (stretch.atEnd - stretch.atStart) / (stretch.end - stretch.start)
  const intensity = stretch.atStart + rise * (from - stretch.start)
  if (intensity === 0 && rise === 0) return Math.abs(shear) <= noise ? [from, to] : []
  const roots = quadraticRoots(-rise / 2, -intensity, shear).map(t => from + t)
  const atEnds = [Math.abs(shear) <= noise ? [from] : [], Math.abs(end) <= noise ? [to] : []].flat()
  return [...atEnds, ...roots.filter(at => at > from && at < to)]
}

function largestShear({ stretches }: BeamSolution): number {
  return stretches.reduce((sum, { start, end, atStart, atEnd }) => {
    return sum + Math.max(Math.abs(atStart), Math.abs(atEnd)) * (end - start)
  }, 0)
}

// The form that keeps its digits when one root is far the smaller.
function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  const discriminant = b * b - 4 * a * c
  if (discriminant < 0) return []
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2
  if (half === 0) return [0]
  return a === 0 ? [c / half] : [half / a, c / half]
}
