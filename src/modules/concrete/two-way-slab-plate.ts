import type { Method, Solved } from '../method.ts'
import { gaussLegendre } from '../numerics/gauss-legendre.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { plateStateAt } from '../numerics/plate-state.ts'
import { type ThinPlate, thinPlate } from '../numerics/thin-plate.ts'
import type { PanelWord } from './is456-table-26.ts'
import { panelEdges } from './panel-edges.ts'
import { plateVerified } from './plate-verified.ts'

/**
 * Coefficients of an elastic panel under uniform load with its true edges (continuous: fixed; discontinuous: simply
 * supported), x along the short span: moments over w l_x^2, edge reactions over w l_x. `strip` is the hogging moment of
 * an edge averaged over its middle three quarters. Refuses what `thinPlate` refuses.
 */
export const twoWaySlabPlate: Method = {
  id: 'two-way-slab-plate',
  title: 'Elastic thin plate',
  says: 'Ritz method for the thin plate, polynomial shapes in three elements each way; continuous edges fixed, discontinuous edges simply supported.',
  takes: { ratio: 'ratio', nu: 'ratio' },
  run: ({ ratio, nu }, { edges }) => {
    try {
      return answers(thinPlate(panel({ ratio: Number(ratio), nu: Number(nu), edges: edges as PanelWord })))
    } catch (error) {
      if (error instanceof NumericRefusal) return { ok: false, says: error.message }
      throw error
    }
  },
}

const kind = (runsOn: boolean) => (runsOn ? 'fixed' : 'simple')

function panel({ ratio, nu, edges }: { readonly ratio: number; readonly nu: number; readonly edges: PanelWord }) {
  const { long, short } = panelEdges[edges]
  const [left, right, bottom, top] = [...long, ...short].map(kind) as ['fixed', 'fixed', 'fixed', 'fixed']
  return { ratio, nu, edges: { left, right, bottom, top }, load: { uniform: 1 } }
}

// Where only one edge of a pair is continuous it is the first of the pair: `left` or `bottom`.
function answers(plate: ThinPlate): Solved {
  const { edges, sagging, verification } = plate
  const reaction = (...names: ('left' | 'right' | 'bottom' | 'top')[]) =>
    Math.max(...names.map(name => edges[name].reaction?.peak.value ?? 0))
  return {
    ok: true,
    values: {
      x_mid: sagging.x.value,
      y_mid: sagging.y.value,
      x_peak: Math.abs(edges.left.hogging?.value ?? 0),
      y_peak: Math.abs(edges.bottom.hogging?.value ?? 0),
      x_strip: stripMean(plate, 'left'),
      y_strip: stripMean(plate, 'bottom'),
      v: reaction('left', 'right', 'bottom', 'top'),
    },
    verified: plateVerified(verification),
  }
}

function stripMean({ field, edges }: ThinPlate, edge: 'left' | 'bottom'): number {
  if (edges[edge].kind !== 'fixed') return 0
  const { places, weights } = gaussLegendre(16)
  const hogging = places.map(s => {
    const share = 0.5 + 0.375 * s
    return edge === 'left' ? -plateStateAt(field, 0, share).mx : -plateStateAt(field, share, 0).my
  })
  return hogging.reduce((sum, value, i) => sum + (value * (weights[i] ?? 0)) / 2, 0)
}
