import type { Method, Solved } from '../method.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { type ThinPlate, thinPlate } from '../numerics/thin-plate.ts'
import { plateVerified } from './plate-verified.ts'
import { type WallWord, wallEdges } from './wall-plate-edges.ts'

/**
 * Coefficients of a wall held on three or four edges under pressure that rises evenly to the base, x downwards: moments over p a^2,
 * reactions over p a, p at the base and a the height. `ratio` is width over height, `top` the pressure at the top over that at the
 * base. Poisson's ratio is 0.2, hogging negative. Values of an edge that is not fixed or not held are nil. Refuses what `thinPlate` refuses.
 */
export const wallPlateMethod: Method = {
  id: 'wall-plate-thin-plate',
  title: 'Elastic thin plate, Poisson ratio 0.2',
  says: 'Ritz method for the thin plate, polynomial shapes in three elements each way; the largest values are sought along each edge and in the panel, clear of a corner of a fixed and a free edge by a tenth of the shorter side.',
  takes: { ratio: 'ratio', top: 'ratio' },
  run: ({ ratio, top }, { edges }) => {
    const held = wallEdges[edges as WallWord]
    const share = Number(top)
    try {
      return answers(
        thinPlate({
          ratio: Number(ratio),
          nu: 0.2,
          edges: { left: held.top, right: held.base, bottom: held.sides, top: held.sides },
          load: { uniform: share, varying: 1 - share, along: 'x' },
        }),
      )
    } catch (error) {
      if (error instanceof NumericRefusal) return { ok: false, says: error.message }
      throw error
    }
  },
}

function answers({ edges, sagging, verification }: ThinPlate): Solved {
  return {
    ok: true,
    values: {
      top: edges.left.hogging?.value ?? 0,
      base: edges.right.hogging?.value ?? 0,
      side: edges.bottom.hogging?.value ?? 0,
      side_middle: edges.bottom.hoggingMiddle ?? 0,
      vertical: sagging.x.value,
      horizontal: sagging.y.value,
      v_top: edges.left.reaction?.peak.value ?? 0,
      v_base: edges.right.reaction?.peak.value ?? 0,
      v_side: edges.bottom.reaction?.peak.value ?? 0,
    },
    verified: plateVerified(verification),
  }
}
