import { finite, NumericRefusal, whole } from './numeric-refusal.ts'

/** A root, what is left of the function there, and the bracket it was last known in. */
export type Root = {
  readonly root: number
  readonly residual: number
  readonly bracket: readonly [number, number]
  readonly evaluations: number
}

export type RootSearch = {
  readonly from: number
  readonly to: number
  /** Largest error of the root that is still an answer, in the unit of the root; 1e-12 of the bracket unless given. */
  readonly tolerance?: number
  readonly most?: number
}

/**
 * A root of `f` between `from` and `to` by Brent's method: the bracket always holds a sign change.
 * Refuses ends without a sign change, values of `f` that are not finite, a tolerance that is not positive, and a search
 * not done within `most` evaluations (200 unless given). A jump through zero is found as a root: look at `residual`.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (memory).
 */
export function findRoot(f: (x: number) => number, search: RootSearch): Root {
  const { from, to, tolerance = 1e-12 * Math.abs(to - from), most = 200 } = search
  whole(most, 'most', { least: 3, most: 10_000 })
  if (!(finite(tolerance, 'tolerance') > 0)) throw refusal('tolerance', 'above 0', tolerance)
  const at = (x: number): Point => ({ x, y: finite(f(x), 'f') })
  let state = bracketed(at(finite(from, 'from')), at(finite(to, 'to')))
  for (let evaluations = 2; evaluations < most; evaluations++) {
    const { best, other } = state
    const limit = 2 * Number.EPSILON * Math.abs(best.x) + tolerance / 2
    if (best.y === 0 || Math.abs(other.x - best.x) / 2 <= limit) return done(state, evaluations)
    state = brentStep(state, limit, at)
  }
  throw refusal('most', 'enough evaluations to find the root', most)
}

type Point = { readonly x: number; readonly y: number }

/** `best` and `other` hold the sign change, `last` was best before; `step` and `before` are the last two steps. */
type State = {
  readonly best: Point
  readonly other: Point
  readonly last: Point
  readonly step: number
  readonly before: number
}

function bracketed(a: Point, b: Point): State {
  if (a.y !== 0 && b.y !== 0 && a.y > 0 === b.y > 0) {
    throw new NumericRefusal('from', `Expected a change of sign between \`from\` and \`to\`, got ${a.y} and ${b.y}`)
  }
  return ordered({ best: b, other: a, last: a, step: b.x - a.x, before: b.x - a.x })
}

function ordered(state: State): State {
  const { best, other } = state
  return Math.abs(other.y) < Math.abs(best.y) ? { ...state, best: other, other: best, last: best } : state
}

function brentStep(state: State, limit: number, at: (x: number) => Point): State {
  const { best, other } = state
  const half = (other.x - best.x) / 2
  const tried = Math.abs(state.before) > limit ? interpolatedStep(state) : half
  const short = tried * half > 0 && Math.abs(tried) < Math.min(1.5 * Math.abs(half), Math.abs(state.before) / 2)
  const step = short ? tried : half
  const next = at(best.x + (Math.abs(step) > limit ? step : Math.sign(half) * limit))
  const holds = next.y > 0 === other.y > 0 && next.y !== 0
  if (holds) return ordered({ best: next, other: best, last: best, step: next.x - best.x, before: next.x - best.x })
  return ordered({ best: next, other, last: best, step, before: short ? state.step : half })
}

// Inverse quadratic through three points, the secant through two.
function interpolatedStep({ best, other, last }: State): number {
  const s = best.y / last.y
  const half = (other.x - best.x) / 2
  if (last.x === other.x) return (2 * half * s) / (s - 1)
  const [q, r] = [last.y / other.y, best.y / other.y]
  const p = s * (2 * half * q * (q - r) - (best.x - last.x) * (r - 1))
  return -p / ((q - 1) * (r - 1) * (s - 1))
}

function done({ best, other }: State, evaluations: number): Root {
  const bracket = [Math.min(best.x, other.x), Math.max(best.x, other.x)] as const
  return { root: best.x, residual: best.y, bracket: best.y === 0 ? [best.x, best.x] : bracket, evaluations }
}

function refusal(input: string, expected: string, got: number): NumericRefusal {
  return new NumericRefusal(input, `Expected \`${input}\` ${expected}, got ${got}`)
}
