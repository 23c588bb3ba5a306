import { finite, NumericRefusal, whole } from './numeric-refusal.ts'

/** An integral, its estimated error and the number of places the function was asked at. */
export type Integral = { readonly value: number; readonly error: number; readonly evaluations: number }

export type IntegralRange = {
  readonly from: number
  readonly to: number
  /** Error that is still an answer: relative to the integral of |f| (1e-10), and absolute (0), the larger counts. */
  readonly relative?: number
  readonly absolute?: number
  /** Most intervals the range is cut into (500). */
  readonly most?: number
}

/**
 * Integral of `f` between two finite ends, by the 7 and 15 place Gauss-Kronrod pair on intervals that are halved where
 * the two differ most. `error` is the sum of those differences, usually far above the true error.
 * Refuses ends and values that are not finite, tolerances below 0, and a range not settled within `most` intervals.
 * Source: QUADPACK (Piessens and others, 1983), nodes and weights of the pair (memory; checked by the degree it is exact to).
 */
export function integrate(f: (x: number) => number, range: IntegralRange): Integral {
  const { from, to, relative = 1e-10, absolute = 0, most = 500 } = range
  whole(most, 'most', { least: 1, most: 100_000 })
  if (!(relative >= 0 && absolute >= 0)) throw new NumericRefusal('relative', 'Expected tolerances not below 0')
  const parts = [kronrod(f, finite(from, 'from'), finite(to, 'to'))]
  while (parts.length <= most) {
    const [error, size] = [total(parts, part => part.error), total(parts, part => part.size)]
    const rounding = 50 * Number.EPSILON * size
    if (error <= Math.max(absolute, relative * size, rounding)) {
      return {
        value: total(parts, part => part.value),
        error: Math.max(error, Number.EPSILON * size),
        evaluations: evaluations(parts),
      }
    }
    halveWorst(f, parts)
  }
  throw new NumericRefusal('most', `Expected \`most\` intervals enough for the tolerance, got ${most}`)
}

type Part = {
  readonly from: number
  readonly to: number
  readonly value: number
  readonly error: number
  readonly size: number
}

function total(parts: readonly Part[], of: (part: Part) => number): number {
  return parts.reduce((sum, part) => sum + of(part), 0)
}

// Every halving asks at 30 new places and leaves one interval more.
function evaluations(parts: readonly Part[]): number {
  return 15 + 30 * (parts.length - 1)
}

function halveWorst(f: (x: number) => number, parts: Part[]): void {
  const at = parts.reduce((worst, part, i) => (part.error > (parts[worst]?.error ?? 0) ? i : worst), 0)
  const worst = parts[at]
  if (!worst) return
  const middle = (worst.from + worst.to) / 2
  parts.splice(at, 1, kronrod(f, worst.from, middle), kronrod(f, middle, worst.to))
}

// Places above 0 of the 15, with the weights of the 15 and (where they belong to the 7) of the 7; then those of place 0.
const pairs = [
  [0.9914553711208126, 0.022935322010529224, 0],
  [0.9491079123427585, 0.06309209262997856, 0.1294849661688697],
  [0.8648644233597691, 0.10479001032225019, 0],
  [0.7415311855993945, 0.14065325971552592, 0.27970539148927664],
  [0.5860872354676911, 0.1690047266392679, 0],
  [0.4058451513773972, 0.19035057806478542, 0.3818300505051189],
  [0.20778495500789848, 0.20443294007529889, 0],
] as const
const middleWeights = [0.20948214108472782, 0.4179591836734694] as const

function kronrod(f: (x: number) => number, from: number, to: number): Part {
  const [centre, half] = [(from + to) / 2, (to - from) / 2]
  const at = (x: number) => finite(f(x), 'f')
  const middle = at(centre)
  const sum = {
    fine: middleWeights[0] * middle,
    coarse: middleWeights[1] * middle,
    size: middleWeights[0] * Math.abs(middle),
  }
  for (const [place, fine, coarse] of pairs) {
    const [below, above] = [at(centre - half * place), at(centre + half * place)]
    sum.fine += fine * (below + above)
    sum.coarse += coarse * (below + above)
    sum.size += fine * (Math.abs(below) + Math.abs(above))
  }
  const error = Math.abs(half * (sum.fine - sum.coarse))
  return { from, to, value: half * sum.fine, error, size: Math.abs(half) * sum.size }
}
