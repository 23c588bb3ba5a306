import type { Method } from '../method.ts'
import { type ContinuousActions, continuousBeam } from '../numerics/continuous-beam.ts'

/** How many equal spans a strip has; past five the inner ones no longer change. */
export const spanWords = {
  'two spans': 'one interior support',
  'three spans': 'two interior supports',
  'four spans': 'three interior supports',
  'five spans or more': 'reckoned with as five',
} as const

const counts: Readonly<Record<string, number>> = {
  'two spans': 2,
  'three spans': 3,
  'four spans': 4,
  'five spans or more': 5,
}

/**
 * Coefficients of a strip over equal spans on supports that turn freely: moments over w l^2 and shears over w l, w being
 * the whole load. A share `live` of it may be missing on any spans; each answer is the worst of all arrangements, and `inner`
 * is the largest sum that a span between interior supports makes of its sagging moment and the mean of its two hogging ones.
 * Places that a strip of so few spans does not have are nil.
 */
export const continuousStrip: Method = {
  id: 'continuous-strip',
  title: 'Continuous beam, all arrangements of load',
  says: "Clapeyron's three moments for equal spans of one stiffness, for every arrangement of the part of the load that may be missing; the worst of each.",
  takes: { live: 'ratio' },
  run: ({ live }, { spans = '' }) => {
    const share = Number(live)
    const count = counts[spans]
    if (count === undefined || !(share >= 0 && share <= 1))
      return { ok: false, says: 'the share of the load that may be missing must lie between 0 and 1' }
    const all = arrangements(count).map(loaded => actionsUnder(loaded, share))
    return { ok: true, values: worst(all, count), verified: `the worst of ${all.length} arrangements` }
  },
}

const arrangements = (count: number): readonly (readonly boolean[])[] =>
  Array.from({ length: 2 ** count }, (_, mask) => Array.from({ length: count }, (__, i) => ((mask >> i) & 1) === 1))

const actionsUnder = (loaded: readonly boolean[], share: number): ContinuousActions =>
  continuousBeam({ spans: loaded.map(() => 1), loads: loaded.map(full => (full ? 1 : 1 - share)) })

function worst(all: readonly ContinuousActions[], count: number): Readonly<Record<string, number>> {
  const most = (read: (actions: ContinuousActions) => number | undefined): number =>
    Math.max(0, ...all.map(actions => read(actions) ?? 0))
  const sagging = (i: number): number => most(({ spans }) => spans[i]?.sagging)
  const hogging = (i: number): number => most(({ supports }) => -(supports[i] ?? 0))
  const inner = Array.from({ length: count - 2 }, (_, i) => i + 1)
  return {
    end: sagging(0),
    first: hogging(1),
    inner: Math.max(0, ...inner.map(i => sagging(i) + (hogging(i) + hogging(i + 1)) / 2)),
    v_end: most(({ spans }) => spans[0]?.left),
    v_outer: most(({ spans }) => spans[0]?.right),
    v_inner: most(({ spans }) => spans[1]?.left),
  }
}
