import { solveBand } from './banded-cholesky.ts'
import { entry, finite, NumericRefusal, whole } from './numeric-refusal.ts'
import { symmetricBand } from './symmetric-band.ts'

/** Spans (m) of one stiffness on supports that turn freely, each under its own uniform load (N/m). */
export type ContinuousBeam = { readonly spans: readonly number[]; readonly loads: readonly number[] }

/** Moments over the supports (N m, hogging negative), and of each span its greatest sagging moment and end shears (N). */
export type ContinuousActions = {
  readonly supports: readonly number[]
  readonly spans: readonly { readonly sagging: number; readonly left: number; readonly right: number }[]
}

/**
 * Support moments of a continuous beam by Clapeyron's three moments, and what follows in each span. The outermost supports
 * carry no moment. A span that sags nowhere has the larger of its end moments as `sagging`.
 * Refuses fewer than two or more than 40 spans, and spans that are not positive. Source: beam theory (memory).
 */
export function continuousBeam({ spans, loads }: ContinuousBeam): ContinuousActions {
  whole(spans.length, 'spans', { least: 2, most: 40 })
  whole(loads.length, 'loads', { least: spans.length, most: spans.length })
  for (const span of spans) {
    if (!(finite(span, 'spans') > 0)) throw new NumericRefusal('spans', `Expected spans above 0, got ${span}`)
  }
  const supports = [0, ...threeMoments(spans, loads), 0]
  return { supports, spans: spans.map((_, i) => inSpan({ spans, loads }, supports, i)) }
}

// M_(i-1) l_i + 2 M_i (l_i + l_(i+1)) + M_(i+1) l_(i+1) = -(w_i l_i^3 + w_(i+1) l_(i+1)^3) / 4
function threeMoments(spans: readonly number[], loads: readonly number[]): Float64Array {
  const inner = spans.length - 1
  const matrix = symmetricBand(inner, 1)
  const right = Float64Array.from({ length: inner }, (_, i) => {
    const [l, next] = [entry(spans, i), entry(spans, i + 1)]
    matrix.rows[2 * i + 1] = 2 * (l + next)
    if (i > 0) matrix.rows[2 * i] = l
    return -(finite(entry(loads, i), 'loads') * l ** 3 + finite(entry(loads, i + 1), 'loads') * next ** 3) / 4
  })
  return solveBand(matrix, right)
}

function inSpan({ spans, loads }: ContinuousBeam, supports: readonly number[], i: number) {
  const [l, w, from, to] = [entry(spans, i), entry(loads, i), entry(supports, i), entry(supports, i + 1)]
  const left = (w * l) / 2 + (to - from) / l
  const right = w * l - left
  const peaks = w > 0 && left > 0 && right > 0 ? from + left ** 2 / (2 * w) : Number.NEGATIVE_INFINITY
  return { sagging: Math.max(from, to, peaks), left, right }
}
