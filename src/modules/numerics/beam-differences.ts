import { solveBand } from './banded-cholesky.ts'
import type { BeamMoment, BeamSupport } from './beam.ts'
import { type BeamSpan, checkedSpan } from './beam-solution.ts'
import { intensityWithin, type LoadStretch, loadStretches } from './line-load.ts'
import { entry, finite, whole } from './numeric-refusal.ts'
import { symmetricBand } from './symmetric-band.ts'

/** Answers of a span by differences, and how far they moved when the cells were halved. */
export type BeamDifferences = {
  readonly cells: number
  readonly start: BeamSupport
  readonly end: BeamSupport
  readonly sagging: BeamMoment
  /** Moments (N m, sagging positive) at the ends of the cells. */
  readonly moments: readonly number[]
  /** Largest change of an end or span moment from half as many cells, as a share of the largest moment. */
  readonly change: number
}

/**
 * A second method for `beam`: the span as a chain of `cells` rigid links with a spring at every joint, the load shared
 * out to the joints. Errors fall with the square of the cell. Units and refusals as `beam`; `cells` even, 8 to 1000.
 * Source: central differences of EI w'''' = p; Hencky's bar chain (memory).
 */
export function beamDifferences(span: BeamSpan, cells = 400): BeamDifferences {
  checkedSpan(span)
  whole(cells / 2, 'cells', { least: 4, most: 500 })
  const stretches = loadStretches(span.load, span.length)
  const [fine, coarse] = [solveChain(span, stretches, cells), solveChain(span, stretches, cells / 2)]
  const largest = Math.max(...fine.moments.map(Math.abs))
  const changes = [
    fine.start.moment - coarse.start.moment,
    fine.end.moment - coarse.end.moment,
    fine.sagging.moment - coarse.sagging.moment,
  ]
  return { cells, ...fine, change: largest === 0 ? 0 : Math.max(...changes.map(Math.abs)) / largest }
}

type Chain = Omit<BeamDifferences, 'cells' | 'change'>

function solveChain(span: BeamSpan, stretches: readonly LoadStretch[], cells: number): Chain {
  const h = span.length / cells
  const loads = jointLoads(stretches, { cells, h })
  const joints = springs(span, cells)
  const deflections = solveJoints(joints, loads, { span, h })
  const moments = joints.map(
    ({ reach }) => reach.reduce((sum, [at, c]) => sum - c * entry(deflections, at), 0) / h ** 2,
  )
  const [first, second, before, last] = [0, 1, cells - 1, cells].map(i => entry(moments, i))
  const shearIn = (from = 0, to = 0) => (to - from) / h
  return {
    start: support(span.start, { moment: first, force: entry(loads, 0) + shearIn(first, second) }),
    end: support(span.end, { moment: last, force: entry(loads, cells) - shearIn(before, last) }),
    sagging: greatest(moments, h),
    moments,
  }
}

function support(
  kind: BeamSpan['start'],
  { moment = 0, force }: { moment: number | undefined; force: number },
): BeamSupport {
  return { moment: kind === 'fixed' ? moment : 0, reaction: kind === 'free' ? 0 : force }
}

/** A joint's curvature in terms of the deflections it reaches (times h^2), and the share of a cell that bends there. */
type Spring = { readonly reach: readonly (readonly [at: number, coefficient: number])[]; readonly share: number }

function springs({ start, end }: BeamSpan, cells: number): readonly Spring[] {
  return Array.from({ length: cells + 1 }, (_, i) => {
    if (i > 0 && i < cells)
      return {
        reach: [
          [i - 1, 1],
          [i, -2],
          [i + 1, 1],
        ],
        share: 1,
      }
    const next = i === 0 ? 1 : cells - 1
    // The mirror image beyond a fixed end doubles its neighbour; at a pinned or free end there is no moment.
    return (i === 0 ? start : end) === 'fixed'
      ? {
          reach: [
            [i, -2],
            [next, 2],
          ],
          share: 0.5,
        }
      : { reach: [], share: 0 }
  })
}

type Frame = { readonly span: BeamSpan; readonly h: number }

function solveJoints(joints: readonly Spring[], loads: readonly number[], { span, h }: Frame): readonly number[] {
  const last = joints.length - 1
  const moves = joints.map((_, i) => (i > 0 && i < last) || (i === 0 ? span.start : span.end) === 'free')
  const shift = moves[0] ? 0 : 1
  const matrix = symmetricBand(moves.filter(Boolean).length, 2)
  for (const { reach, share } of joints) {
    const free = reach.filter(([at]) => moves[at])
    for (const [i, a] of free) {
      for (const [j, b] of free) {
        const place = (i - shift) * 3 + 2 - (i - j)
        if (j <= i) matrix.rows[place] = entry(matrix.rows, place) + (share * a * b) / h ** 3
      }
    }
  }
  const solved = solveBand(matrix, Float64Array.from(loads.filter((_, i) => moves[i])))
  return joints.map((_, i) => (moves[i] ? entry(solved, i - shift) : 0))
}

/** Load of every joint: each cell's load goes to its two joints as to the supports of a simple beam. */
function jointLoads(stretches: readonly LoadStretch[], { cells, h }: { cells: number; h: number }): readonly number[] {
  const loads = new Array<number>(cells + 1).fill(0)
  for (let cell = 0; cell < cells; cell++) {
    for (const stretch of stretches) {
      const [from, to] = [Math.max(cell * h, stretch.start), Math.min((cell + 1) * h, stretch.end)]
      if (to <= from) continue
      // Two Gauss places are exact: the product of load and share is a parabola.
      for (const s of [-1 / Math.sqrt(3), 1 / Math.sqrt(3)]) {
        const at = (from + to) / 2 + (s * (to - from)) / 2
        const force = (intensityWithin(stretch, at) * (to - from)) / 2
        const share = at / h - cell
        loads[cell] = entry(loads, cell) + force * (1 - share)
        loads[cell + 1] = entry(loads, cell + 1) + force * share
      }
    }
  }
  return loads
}

// The top of the parabola through the greatest joint and its neighbours.
function greatest(moments: readonly number[], h: number): BeamMoment {
  const i = moments.indexOf(finite(Math.max(...moments), 'moments'))
  const middle = entry(moments, i)
  if (i === 0 || i === moments.length - 1) return { moment: middle, at: i * h }
  const [before, after] = [entry(moments, i - 1), entry(moments, i + 1)]
  const bend = before - 2 * middle + after
  if (bend >= 0) return { moment: middle, at: i * h }
  const offset = (before - after) / (2 * bend)
  return { moment: middle - ((before - after) * offset) / 4, at: (i + offset) * h }
}
