import type { Method, Solved } from '../method.ts'
import { beam } from '../numerics/beam.ts'
import { beamDifferences } from '../numerics/beam-differences.ts'
import type { BeamEnd, BeamSpan } from '../numerics/beam-solution.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'

type Run = Method['run']
const takes = { z: 'length', q: 'pressure', height: 'length' }

/**
 * Where the moment in a strip is largest, by the exact elastic beam: `z` from the top, `q` straight between the points.
 * Refuses what `beam` refuses, and a strip in which the shear is nil nowhere between its ends.
 */
export const wallStripZeroShear: Method = {
  id: 'wall-strip-zero-shear',
  title: 'Place of no shear',
  says: 'Exact elastic beam: the load integrated in closed form, the zero of the shear by the quadratic of its segment.',
  takes,
  run: (numbers, words) =>
    answered(numbers, words, span => {
      const { zeroShear, sagging } = beam(span)
      if (!zeroShear.includes(sagging.at)) return { ok: false, says: 'the shear is nil nowhere between the ends' }
      return {
        ok: true,
        values: { z_zero: sagging.at },
        verified: 'the place is put back into the load in the next lines',
      }
    }),
}

/** The same strip as a chain of links with springs, by finite differences. Refuses what `beamDifferences` refuses. */
export const wallStripDifferences: Method = {
  id: 'wall-strip-differences',
  title: 'Beam by finite differences',
  says: 'The strip as 400 rigid links with a spring at every joint (central differences of the beam equation), the load shared out to the joints.',
  takes,
  run: (numbers, words) =>
    answered(numbers, words, span => {
      const { start, end, sagging, change } = beamDifferences(span)
      return {
        ok: true,
        values: {
          top: start.moment,
          base: end.moment,
          span: sagging.moment,
          at: sagging.at,
          r_top: start.reaction,
          r_base: end.reaction,
        },
        verified: `moments change by ${(100 * change).toPrecision(1)} % from half as many links`,
      }
    }),
}

function answered(numbers: Parameters<Run>[0], words: Parameters<Run>[1], solve: (span: BeamSpan) => Solved): Solved {
  try {
    return solve(spanOf(numbers, words))
  } catch (error) {
    if (error instanceof NumericRefusal) return { ok: false, says: error.message }
    throw error
  }
}

// A strip 1 m wide from the top (start) to the base (end). The last point may miss the base by a hair and is put on it;
// of several points at one depth the first and the last make the jump.
function spanOf({ z, q, height }: Parameters<Run>[0], { top, base }: Parameters<Run>[1]): BeamSpan {
  const [depths, pressures, length] = [z as readonly number[], q as readonly number[], Number(height)]
  const last = depths.length - 1
  const load = depths.map((depth, i) => [place(depth, { i, last, length }), pressures[i] ?? Number.NaN] as const)
  return {
    length,
    start: top as BeamEnd,
    end: base as BeamEnd,
    load: load.filter(([at], i) => !(load[i - 1]?.[0] === at && load[i + 1]?.[0] === at)),
  }
}

function place(depth: number, { i, last, length }: { i: number; last: number; length: number }): number {
  if (i === 0) return 0
  return i === last ? length : Math.min(depth, length)
}
